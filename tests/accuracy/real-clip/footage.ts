import { existsSync } from "node:fs";
import { join } from "node:path";

/** Real footage lies beside the checkout where it is to be had at all, and is never part of it. */
const folder = join(import.meta.dirname, "../../../../shared/footage");

/** The path of a file of the footage; null where it is not there. */
export function footage(name: string): string | null {
  const path = join(folder, name);
  return existsSync(path) ? path : null;
}
