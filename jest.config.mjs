/**
 * What all tests have in common, those in a browser and in LibreOffice too.
 * @satisfies {import("jest").Config}
 */
export const common = {
  modulePathIgnorePatterns: ["<rootDir>/tools/mutation/node_modules", "<rootDir>/.cache", "<rootDir>/dist"],
  // Makes what the sources import from generated/, so that any test runs in a fresh copy.
  globalSetup: "<rootDir>/test/generate.ts",
  setupFiles: [
    "<rootDir>/test/custom-functions-host.ts",
    ...(process.env.CI === undefined ? [] : ["<rootDir>/test/fixed-seed.ts"]),
  ],
  transform: {
    "\\.(ts|mjs|js|cjs)$": [
      "<rootDir>/test/transform.mjs",
      { jsc: { parser: { syntax: "typescript" }, target: "es2022" } },
    ],
  },
  // The file writer comes as ES modules only; the browser sheet's engine and what tries at random are much faster so.
  transformIgnorePatterns: ["/node_modules/(?!@odoo/|hucre/|fast-check/|pure-rand/)"],
  moduleFileExtensions: ["ts", "mjs", "js", "json"],
  // With the other things that are made once, so that a copy of the project does not use another's.
  cacheDirectory: "<rootDir>/.cache/jest",
};

/** In a browser or in LibreOffice. */
const ELSEWHERE = ["<rootDir>/test/browser/", "<rootDir>/test/office/"];
/**
 * Tests that call the formulas some hundred thousand times, or through a sheet: counting each branch costs them the most,
 * and what they try at random is no ground to say that a branch is tested.
 */
const UNCOUNTED = [
  "taskpane/",
  "functions/any-cells",
  "functions/bounded-work",
  "functions/host-model-templates",
  "functions/lengths-as-text",
  "functions/scripts-",
  "functions/units-agree",
].map((begins) => `<rootDir>/test/${begins}`);

/** @type {import("jest").Config} */
export default {
  projects: [
    {
      ...common,
      testMatch: ["<rootDir>/test/**/*.test.ts"],
      testPathIgnorePatterns: ["/node_modules/", ...ELSEWHERE, ...UNCOUNTED],
    },
    {
      ...common,
      testMatch: UNCOUNTED.map((begins) => `${begins}**`.replace("/**", "/**/*.test.ts")),
      testPathIgnorePatterns: ["/node_modules/"],
      coveragePathIgnorePatterns: ["/src/"],
    },
  ],
  // No check of speed: only so that a test that hangs ends, also on a busy machine.
  testTimeout: 60_000,
  // `npm test` measures it: no branch of src/ that a test does not take.
  collectCoverageFrom: ["src/**/*.ts"],
  coverageThreshold: { global: { statements: 100, branches: 100, functions: 100, lines: 100 } },
  coverageReporters: ["text"],
};
