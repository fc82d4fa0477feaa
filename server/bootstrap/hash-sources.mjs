import { createHash } from "node:crypto";
import { readdir, readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { checkout } from "./checkout.mjs";

const skipped = new Set(["node_modules", "build", ".git"]);

/** One hash over the content of files and of all files in folders, so that a checkout's new dates build nothing. */
export async function hashSources(paths) {
  const hash = createHash("sha256");
  const files = (await Promise.all(paths.map((path) => filesUnder(path)))).flat().sort();
  for (const file of files) {
    hash.update(`${file.replaceAll("\\", "/")}\0`);
    hash.update(await readFile(join(checkout, file)));
    hash.update("\0");
  }
  return hash.digest("hex");
}

async function filesUnder(path) {
  const info = await stat(join(checkout, path)).catch(() => null);
  if (info === null) return [];
  if (!info.isDirectory()) return [path];
  const entries = await readdir(join(checkout, path), { withFileTypes: true });
  const lists = entries
    .filter((entry) => !skipped.has(entry.name))
    .map((entry) => {
      const inner = join(path, entry.name);
      return entry.isDirectory() ? filesUnder(inner) : [inner];
    });
  return (await Promise.all(lists)).flat();
}
