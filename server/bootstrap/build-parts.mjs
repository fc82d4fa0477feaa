const shared = ["package-lock.json", "shared-geometry/src", "tsconfig.base.json"];
const vite = "node_modules/vite/bin/vite.js";

/**
 * What is built, in order: from which files, into which folder, and how. A part whose `needs` file is not in the checkout
 * is skipped with a word.
 */
export const buildParts = [
  {
    name: "pose model",
    needs: "client-capture/build-pose-model.ts",
    sources: ["package-lock.json", "client-capture/build-pose-model.ts", "client-capture/pose-model", "LICENSE"],
    output: "build/capture-public/pose",
    command: ["client-capture/build-pose-model.ts"],
  },
  {
    name: "phone page",
    needs: "client-capture/vite.config.ts",
    sources: [...shared, "client-capture", "build/stamps/pose-model.txt"],
    output: "build/client-capture",
    command: [vite, "build", "--config", "client-capture/vite.config.ts", "--logLevel", "warn"],
  },
  {
    name: "ground screen and coach's page",
    needs: "client-display/vite.config.mjs",
    sources: [...shared, "client-display"],
    output: "build/client-display",
    command: [vite, "build", "--config", "client-display/vite.config.mjs", "--logLevel", "warn"],
  },
];
