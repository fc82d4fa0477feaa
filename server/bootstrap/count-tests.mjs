import { readFile } from "node:fs/promises";

/**
 * Counts a Vitest run by its JSON report. A file that could not even be read counts as one failed test, and so do a run
 * that left no report and one that failed outside of any test.
 * @returns {Promise<{ passed: number, failed: number, skipped: number }>}
 */
export async function countTests(reportFile, exitCode) {
  let report;
  try {
    report = JSON.parse(await readFile(reportFile, "utf8"));
  } catch {
    return { passed: 0, failed: 1, skipped: 0 };
  }
  const tests = report.testResults.flatMap((file) => file.assertionResults.map((test) => test.status));
  const brokenFiles = report.testResults.filter((file) => {
    return file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed");
  }).length;
  const passed = tests.filter((status) => status === "passed").length;
  const failed = tests.filter((status) => status === "failed").length + brokenFiles;
  const skipped = tests.length - passed - tests.filter((status) => status === "failed").length;
  const failedOutside = failed === 0 && (exitCode !== 0 || passed === 0) ? 1 : 0;
  return { passed, failed: failed + failedOutside, skipped };
}
