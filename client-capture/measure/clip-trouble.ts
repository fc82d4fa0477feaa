import { access, constants, stat } from "node:fs/promises";

/** What is wrong with a clip's path before anything is started: one sentence, or null where nothing is. */
export async function clipTrouble(path: string): Promise<string | null> {
  const found = await stat(path).catch(() => null);
  if (found === null) return `There is no file ${path}: check the path.`;
  if (!found.isFile()) return `${path} is not a file: name one clip.`;
  if (found.size === 0) return `${path} is empty: choose a recorded clip.`;
  const readable = await access(path, constants.R_OK).then(
    () => true,
    () => false,
  );
  return readable ? null : `${path} may not be read by this user: check its permissions.`;
}
