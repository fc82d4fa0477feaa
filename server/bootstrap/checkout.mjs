import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's folder. */
export const checkout = join(dirname(fileURLToPath(import.meta.url)), "../..");

/** The Node that the project brings: everything but this bootstrap runs on it. */
export const projectNode = join(checkout, "node_modules/node/bin", process.platform === "win32" ? "node.exe" : "node");
