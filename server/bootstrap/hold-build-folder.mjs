import { readFile, rm, writeFile } from "node:fs/promises";
import { setTimeout as wait } from "node:timers/promises";

const lookAgainMs = 200;

/**
 * Waits until nobody else builds (a start and a test run may meet), then holds the folder. A lock whose owner no longer
 * runs is taken over.
 * @returns {Promise<() => Promise<void>>} lets go.
 */
export async function holdBuildFolder(lockFile) {
  for (;;) {
    try {
      await writeFile(lockFile, String(process.pid), { flag: "wx" });
      return () => rm(lockFile, { force: true });
    } catch (error) {
      if (error.code !== "EEXIST") throw error;
    }
    const owner = Number(await readFile(lockFile, "utf8").catch(() => ""));
    // An empty file is a lock being written: look again.
    if (owner > 0 && !runs(owner)) await rm(lockFile, { force: true });
    await wait(lookAgainMs);
  }
}

function runs(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === "EPERM";
  }
}
