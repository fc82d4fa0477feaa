import vitest from "@vitest/eslint-plugin";
import { defineConfig, globalIgnores } from "eslint/config";
import reactHooks from "eslint-plugin-react-hooks";
import tseslint from "typescript-eslint";

const pureFolders = [
  "shared-geometry/src/**/*.ts",
  "client-capture/src/{picture,shaft,swing,station,pipeline,demo-motion}/**/*.ts",
  "server/src/practice/**/*.ts",
  "client-display/src/ground-view/draw-list/**/*.ts",
];

const ambient = (name, cure) => ({ name, message: `Pure code gets its effects as arguments: ${cure}` });

export default defineConfig(
  globalIgnores(["build/", "**/node_modules/", "data/", "**/*.mjs"]),
  tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-non-null-assertion": "error",
      "@typescript-eslint/switch-exhaustiveness-check": "error",
      eqeqeq: "error",
      "max-lines": ["error", { max: 400, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    files: pureFolders,
    rules: {
      "no-restricted-globals": [
        "error",
        ambient("document", "draw from what is passed in."),
        ambient("window", "take what you need as an argument."),
        ambient("performance", "take the time as an argument."),
        ambient("setTimeout", "return what should happen later."),
        ambient("process", "read settings at the door and pass them in."),
      ],
      "no-restricted-properties": [
        "error",
        { object: "Date", property: "now", message: "Pure code takes the time as an argument." },
        { object: "Math", property: "random", message: "Pure code takes its random source as an argument." },
      ],
      "no-restricted-syntax": [
        "error",
        {
          selector: "NewExpression[callee.name='Date'][arguments.length=0]",
          message: "Pure code takes the time as an argument.",
        },
      ],
    },
  },
  { files: ["client-*/src/**/*.{ts,tsx}"], extends: [reactHooks.configs.flat.recommended] },
  {
    files: ["tests/**/*.test.ts"],
    plugins: { vitest },
    rules: {
      ...vitest.configs.recommended.rules,
      "vitest/expect-expect": ["error", { assertFunctionNames: ["expect", "expect*", "fc.assert"] }],
      "vitest/valid-expect": ["error", { maxArgs: 2 }],
      "vitest/no-focused-tests": "error",
    },
  },
);
