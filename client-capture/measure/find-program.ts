import { constants } from "node:fs";
import { access } from "node:fs/promises";
import { delimiter, join } from "node:path";

/** The path of the first of these programs on the PATH, else of the first at one of the usual places; null where there is none. */
export async function findProgram(names: readonly string[], usualPlaces: readonly string[]): Promise<string | null> {
  const folders = (process.env["PATH"] ?? "").split(delimiter).filter((folder) => folder !== "");
  const onPath = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  for (const place of [...onPath, ...usualPlaces]) if (await isProgram(place)) return place;
  return null;
}

export async function isProgram(path: string): Promise<boolean> {
  try {
    await access(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
