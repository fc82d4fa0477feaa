import { chmod, mkdir, open, readFile, rename, stat } from "node:fs/promises";
import { dirname } from "node:path";

/** Writes a file that only its owner may read. It is there whole or not at all, also after a loss of power. */
export async function writePrivateFile(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true, mode: 0o700 });
  const draft = `${path}.new`;
  const file = await open(draft, "w", 0o600);
  try {
    // The mode above counts for a new file only: a draft left by a kill may have another.
    await file.chmod(0o600);
    await file.writeFile(text);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(draft, path);
}

/** Reads a private file, first closing it to others where somebody opened it; null where there is none. */
export async function readPrivateFile(path: string): Promise<string | null> {
  try {
    const { mode } = await stat(path);
    if ((mode & 0o077) !== 0) await chmod(path, 0o600);
    return await readFile(path, "utf8");
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return null;
    throw error;
  }
}
