import { existsSync } from "node:fs";
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { buildParts } from "./build-parts.mjs";
import { checkout } from "./checkout.mjs";
import { hashSources } from "./hash-sources.mjs";
import { runOnProjectNode } from "./run.mjs";
import { ToldError } from "./told-error.mjs";
import { holdBuildFolder } from "./hold-build-folder.mjs";

const stamps = join(checkout, "build/stamps");

/**
 * Builds the pose model bundle and both clients where their sources changed since the last time.
 * @throws ToldError with the builder's own words where a build fails.
 */
export async function ensureBuilt() {
  await mkdir(stamps, { recursive: true }).catch((error) => {
    throw new ToldError(
      `The build folder cannot be written (${error.code}): make ${join(checkout, "build")} writable.`,
    );
  });
  const release = await holdBuildFolder(join(checkout, "build/building.lock"));
  try {
    for (const part of buildParts) await ensurePart(part);
  } finally {
    await release();
  }
}

async function ensurePart({ name, needs, sources, output, command }) {
  if (!existsSync(join(checkout, needs))) {
    console.log(`The ${name} is left out: this checkout has no ${needs}.`);
    return;
  }
  const stampFile = join(stamps, `${name.replaceAll(/[^a-z]+/g, "-")}.txt`);
  const hash = await hashSources(sources);
  const built = await readFile(stampFile, "utf8").catch(() => "");
  if (built === hash && existsSync(join(checkout, output))) return;

  console.log(`Building the ${name} ...`);
  await rm(stampFile, { force: true });
  const { code, output: said } = await runOnProjectNode(command);
  if (code !== 0) {
    throw new ToldError(`Building the ${name} failed, so nothing was started. The builder said:\n${said.trim()}`);
  }
  await writeFile(stampFile, hash);
}
