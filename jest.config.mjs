/** @type {import("jest").Config} */
export default {
  testMatch: ["<rootDir>/test/**/*.test.ts"],
  testPathIgnorePatterns: ["/node_modules/", "<rootDir>/test/browser/", "<rootDir>/test/office/"],
  modulePathIgnorePatterns: ["<rootDir>/tools/mutation/node_modules", "<rootDir>/.cache", "<rootDir>/dist"],
  // Makes what the sources import from generated/, so that any test runs in a fresh copy.
  globalSetup: "<rootDir>/test/generate.ts",
  setupFiles: ["<rootDir>/test/custom-functions-host.ts"],
  transform: {
    "\\.(ts|mjs|js)$": [
      "<rootDir>/test/transform.mjs",
      { jsc: { parser: { syntax: "typescript" }, target: "es2022" } },
    ],
  },
  // The browser sheet's engine and the file writer come as ES modules only.
  transformIgnorePatterns: ["/node_modules/(?!@odoo/|hucre/)"],
  moduleFileExtensions: ["ts", "mjs", "js", "json"],
  // No check of speed: only so that a test that hangs ends, also on a busy machine.
  testTimeout: 60_000,
  // `npm test` measures it: no branch of src/ that a test does not take.
  collectCoverageFrom: ["src/**/*.ts"],
  coverageThreshold: { global: { statements: 100, branches: 100, functions: 100, lines: 100 } },
  coverageReporters: ["text"],
};
