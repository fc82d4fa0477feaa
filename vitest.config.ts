import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

/** Left to itself the runner keeps one processor free, which of two is half. */
const maxWorkers = availableParallelism();

/** Node runs the project's TypeScript as it is. The runner's own rewriting of every import makes reckoning half as slow again. */
const experimental = { viteModuleRunner: false, nodeLoader: false };

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          experimental,
          include: ["tests/{unit,laws,oracle,accuracy,relay}/**/*.test.ts"],
          testTimeout: 60_000,
          maxWorkers,
        },
      },
      {
        test: {
          name: "browser",
          experimental,
          include: ["tests/browser/**/*.test.ts"],
          testTimeout: 300_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
