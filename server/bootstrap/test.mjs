import { requireNode } from "./require-node.mjs";

requireNode(process.version);

const { tellErrors } = await import("./told-error.mjs");
const { ensureInstalled } = await import("./ensure-installed.mjs");
const { runOnProjectNode } = await import("./run.mjs");

await tellErrors(async () => {
  await ensureInstalled();
  // The rest is written for the project's own Node.
  const { code } = await runOnProjectNode(["server/bootstrap/run-tests.mjs", ...process.argv.slice(2)], { show: true });
  process.exitCode = code;
});
