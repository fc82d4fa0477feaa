import { rm } from "node:fs/promises";
import { join } from "node:path";
import { checkout } from "./checkout.mjs";
import { countTests } from "./count-tests.mjs";
import { ensureBuilt } from "./ensure-built.mjs";
import { ensureChromium } from "./ensure-chromium.mjs";
import { ensureSecondEngine } from "./ensure-second-engine.mjs";
import { runNpm, runOnProjectNode } from "./run.mjs";
import { tellErrors } from "./told-error.mjs";

const resultsFile = join(checkout, "build/test-results.json");
const count = { passed: 0, failed: 0, skipped: 0 };

/** Everything counts once: finding a browser and building where they fail, the check, and each test. */
async function step(work) {
  let done = false;
  await tellErrors(async () => {
    done = await work();
  });
  count[done ? "passed" : "failed"] += 1;
}

await step(async () => {
  await ensureChromium();
  await ensureSecondEngine();
  await ensureBuilt();
  return true;
});
await step(async () => (await runNpm(["run", "--silent", "check"], { show: true })).code === 0);

await rm(resultsFile, { force: true });
const vitest = ["node_modules/vitest/vitest.mjs", "run", "--reporter=default", "--reporter=json"];
const { code } = await runOnProjectNode([...vitest, `--outputFile.json=${resultsFile}`, ...process.argv.slice(2)], {
  show: true,
});
const tests = await countTests(resultsFile, code);
for (const kind of Object.keys(count)) count[kind] += tests[kind];

const skipped = count.skipped === 0 ? "" : `, ${count.skipped} skipped`;
console.log(`\n${count.passed} passed, ${count.failed} failed${skipped}`);
process.exitCode = count.failed === 0 ? 0 : 1;
