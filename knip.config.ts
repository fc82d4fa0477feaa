import type { KnipConfig } from "knip";

const config: KnipConfig = {
  workspaces: {
    ".": { entry: [] },
    "shared-geometry": { entry: ["src/**/*.ts"] },
    "client-capture": { entry: ["src/**/*.test-only.ts"] },
    "client-display": { entry: [] },
    server: { entry: ["src/main.ts", "bootstrap/*.mjs"] },
    tests: { entry: ["**/*.test.ts", "**/*.run.ts"] },
  },
};

export default config;
