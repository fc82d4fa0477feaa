import { requireNode } from "../../server/bootstrap/require-node.mjs";

// What is behind `npm run measure` on a fresh clone: installs and builds what is missing, then measures on the project's own Node.
requireNode(process.version);

const { tellErrors } = await import("../../server/bootstrap/told-error.mjs");
const { ensureInstalled } = await import("../../server/bootstrap/ensure-installed.mjs");
const { ensureBuilt } = await import("../../server/bootstrap/ensure-built.mjs");
const { runOnProjectNode } = await import("../../server/bootstrap/run.mjs");

await tellErrors(async () => {
  await ensureInstalled();
  await ensureBuilt();
  const { code } = await runOnProjectNode(["client-capture/measure/measure.ts", ...process.argv.slice(2)], {
    show: true,
  });
  process.exitCode = code;
});
