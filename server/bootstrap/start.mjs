import { requireNode } from "./require-node.mjs";

requireNode(process.version);

const { tellErrors } = await import("./told-error.mjs");
const { ensureInstalled } = await import("./ensure-installed.mjs");
const { ensureBuilt } = await import("./ensure-built.mjs");
const { becomeRelay } = await import("./become-relay.mjs");

await tellErrors(async () => {
  await ensureInstalled();
  await ensureBuilt();
  await becomeRelay(process.argv.slice(2));
});
