import { existsSync } from "node:fs";
import { join } from "node:path";

const folder = join(import.meta.dirname, "../../../build/client-display");

/** The built pages. @throws Error with what to do where they were not built. */
export function builtPages(): string {
  if (!existsSync(join(folder, "ground/index.html"))) {
    throw new Error("The pages are not built: npx vite build --config client-display/vite.config.mjs");
  }
  return folder;
}
