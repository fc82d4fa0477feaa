import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";

interface Counted {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

let folder: string;
let countTests: (reportFile: string, exitCode: number) => Promise<Counted>;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-count-"));
  // The bootstrap is plain JavaScript, so its shape is said here.
  const path: string = join(import.meta.dirname, "../../../server/bootstrap/count-tests.mjs");
  const module = (await import(path)) as { countTests: typeof countTests };
  countTests = module.countTests;
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

async function count(files: readonly (readonly [string, ...string[]])[], exitCode: number): Promise<Counted> {
  const report = join(folder, "report.json");
  const testResults = files.map(([status, ...tests]) => ({
    status,
    assertionResults: tests.map((test) => ({ status: test })),
  }));
  await writeFile(report, JSON.stringify({ testResults }));
  return countTests(report, exitCode);
}

it("S4 counts each test once by how it ended", async () => {
  const files = [
    ["passed", "passed", "passed", "skipped"],
    ["failed", "failed", "passed", "todo", "pending"],
  ] as const;
  expect(await count(files, 1)).toEqual({ passed: 3, failed: 1, skipped: 3 });
});

it("S4 a file that could not be read is one failure", async () => {
  expect(await count([["failed"], ["passed", "passed"]], 1)).toEqual({ passed: 1, failed: 1, skipped: 0 });
});

it("S4 a run that failed outside of any test is one failure", async () => {
  expect(await count([["passed", "passed"]], 1)).toEqual({ passed: 1, failed: 1, skipped: 0 });
});

it("S4 a run without a single passed test, or without a report, is a failure", async () => {
  expect(await count([], 0)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  expect(await countTests(join(folder, "missing.json"), 0)).toEqual({ passed: 0, failed: 1, skipped: 0 });
});
