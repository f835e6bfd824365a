import js from "@eslint/js";
import globals from "globals";
import ts from "typescript-eslint";

/**
 * Arrows between the rooms run one way.
 * @param {string[]} patterns @param {string} message
 * @returns {import("eslint").Linter.RulesRecord}
 */
function noImport(patterns, message) {
  return { "no-restricted-imports": ["error", { patterns: [{ regex: patterns.join("|"), message }] }] };
}

/** Names that exist in a page or in Office but not in the bare runtime a formula may run in. */
const HOST_NAMES = [
  "Office",
  "Excel",
  "OfficeRuntime",
  "window",
  "document",
  "navigator",
  "location",
  "localStorage",
  "sessionStorage",
  "indexedDB",
  "fetch",
  "XMLHttpRequest",
  "setTimeout",
  "setInterval",
  "process",
  "require",
];

export default ts.config(
  { ignores: ["dist/", "generated/", "coverage/", "**/node_modules/", "test-output/", ".cache/"] },
  js.configs.recommended,
  {
    files: ["**/*.ts"],
    extends: [ts.configs.strictTypeChecked, ts.configs.stylisticTypeChecked],
    languageOptions: {
      parserOptions: {
        project: [
          "functions/tsconfig.json",
          "taskpane/tsconfig.json",
          "tools/tsconfig.json",
          "test/tsconfig.json",
        ],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      "@typescript-eslint/consistent-type-imports": "error",
      // The host's own error class is no subclass of Error in its typings, a refusal has no stack on purpose.
      "@typescript-eslint/only-throw-error": [
        "error",
        {
          allow: [
            { from: "file", name: "Refusal" },
            { from: "package", package: "@types/custom-functions-runtime", name: "Error" },
            { from: "package", package: "custom-functions-runtime", name: "Error" },
          ],
        },
      ],
      "@typescript-eslint/switch-exhaustiveness-check": "error",
      "@typescript-eslint/explicit-function-return-type": ["error", { allowExpressions: true }],
      "max-lines": ["error", { max: 400, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    files: ["src/**/*.ts"],
    rules: noImport(
      ["^(?!\\./|\\.\\./(?!functions|taskpane|generated|tools|test|\\.\\./))"],
      "src imports only src",
    ),
  },
  {
    files: ["functions/**/*.ts"],
    rules: noImport(["taskpane", "tools", "^[^.]"], "functions import only src and their own room"),
  },
  {
    files: ["src/**/*.ts", "functions/**/*.ts"],
    rules: {
      "no-restricted-globals": ["error", ...HOST_NAMES],
      "no-eval": "error",
      "no-implied-eval": "error",
      "no-new-func": "error",
    },
  },
  {
    files: ["taskpane/sheets/**/*.ts"],
    rules: {
      "@typescript-eslint/no-restricted-imports": [
        "error",
        {
          patterns: [
            {
              regex: ["functions/(?!namespace$)", "/hosts/", "/pane/", "/files/"].join("|"),
              message:
                "a sheet is data: it knows no host, page or formula code, only the types of the records",
              allowTypeImports: true,
            },
          ],
        },
      ],
    },
  },
  {
    files: ["taskpane/pictures/**/*.ts"],
    rules: {
      ...noImport(
        ["functions/", "/hosts/", "/pane/", "/files/", "^[^.]"],
        "a picture is drawn from numbers: it knows no host, page or formula code",
      ),
      "no-restricted-globals": ["error", ...HOST_NAMES],
    },
  },
  {
    files: ["taskpane/pane/**/*.ts", "taskpane/hosts/*.ts", "taskpane/hosts/excel/**/*.ts"],
    rules: noImport(
      ["/browser/", "/files/", "^hucre", "^fflate"],
      "what runs in Excel carries neither the browser sheet nor the file writer",
    ),
  },
  {
    files: ["**/*.mjs"],
    languageOptions: { globals: globals.node },
  },
);
