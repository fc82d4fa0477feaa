import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { checkout, projectNode } from "./checkout.mjs";

/**
 * Whether node_modules holds what the lock file asks for. npm leaves a list of what it installed there; packages for
 * other platforms are optional in the lock file and may be missing.
 */
export async function isInstalled() {
  if (!existsSync(projectNode)) return false;
  try {
    const wanted = await packagesOf("package-lock.json");
    const installed = await packagesOf("node_modules/.package-lock.json");
    return Object.entries(wanted).every(([path, { version, optional, link }]) => {
      if (!path.includes("node_modules/") || optional || link) return true;
      return installed[path]?.version === version;
    });
  } catch {
    return false;
  }
}

async function packagesOf(file) {
  return JSON.parse(await readFile(join(checkout, file), "utf8")).packages;
}
