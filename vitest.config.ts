import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

/** Left to itself the runner keeps one processor free, which of two is half. */
const maxWorkers = availableParallelism();

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          include: ["tests/{unit,laws,oracle,accuracy,relay}/**/*.test.ts"],
          testTimeout: 60_000,
          maxWorkers,
        },
      },
      {
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          testTimeout: 300_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
