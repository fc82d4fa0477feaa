import { requireNode } from "./require-node.mjs";

// What runs before the runs that measure the built pages (`npm run accuracy:shaft` and the like): installs and builds what is missing or has changed.
requireNode(process.version);

const { tellErrors } = await import("./told-error.mjs");
const { ensureInstalled } = await import("./ensure-installed.mjs");
const { ensureBuilt } = await import("./ensure-built.mjs");

await tellErrors(async () => {
  await ensureInstalled();
  await ensureBuilt();
});
