import { build, type LibraryOptions } from "vite";

/** A module and all that it imports as one script for a bare page or worker, as current browsers take it. */
export async function bundleScript(lib: Extract<LibraryOptions, object>): Promise<string> {
  const built = await build({ logLevel: "silent", configFile: false, build: { write: false, target: "es2024", lib } });
  const bundle = Array.isArray(built) ? built[0] : built;
  if (bundle === undefined || !("output" in bundle)) throw new Error("vite built no bundle");
  return bundle.output[0].code;
}
