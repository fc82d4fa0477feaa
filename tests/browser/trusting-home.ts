import { execFile } from "node:child_process";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";

const run = promisify(execFile);

/** Whether this machine has the tool that puts an authority into Chromium's database (Debian: libnss3-tools). */
export const hasCertutil = await run("certutil", ["-L", "-d", "sql:/nowhere"]).then(
  () => true,
  (error: unknown) => !(error instanceof Error && "code" in error && error.code === "ENOENT"),
);

/**
 * A home folder whose Chromium trusts the authority, in place of this process's own until the answered function is called: Chromium on Linux keeps
 * the authorities that a person added in a database under the home folder. @param pem The authority's certificate.
 */
export async function moveToTrustingHome(
  pem: string,
): Promise<{ readonly home: string; readonly leave: () => Promise<void> }> {
  const before = process.env["HOME"];
  const home = await mkdtemp(join(tmpdir(), "overcue-home-"));
  const database = join(home, ".pki/nssdb");
  await mkdir(database, { recursive: true });
  await writeFile(join(home, "authority.pem"), pem);
  await run("certutil", ["-N", "--empty-password", "-d", `sql:${database}`]);
  await run("certutil", [
    "-A",
    "-n",
    "overcue",
    "-t",
    "C,,",
    "-i",
    join(home, "authority.pem"),
    "-d",
    `sql:${database}`,
  ]);
  process.env["HOME"] = home;
  return {
    home,
    leave: async () => {
      if (before === undefined) delete process.env["HOME"];
      else process.env["HOME"] = before;
      await rm(home, { recursive: true, force: true });
    },
  };
}
