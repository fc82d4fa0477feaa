import { defineConfig } from "vitest/config";

/** In a browser, but hardly waiting for it: goes with those that reckon. */
const beside = "tests/browser/end-to-end/ladder-walk.test.ts";

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          include: ["tests/{unit,laws,oracle,accuracy,relay}/**/*.test.ts"],
          // They run beside the browser's, and give way to them.
          testTimeout: 240_000,
        },
      },
      {
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          exclude: [beside],
          testTimeout: 300_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
      {
        test: {
          name: "beside",
          include: [beside],
          testTimeout: 900_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
