/**
 * Mutation testing of src/: does a test fail when the code is made wrong? `npm run mutate` takes an hour and a
 * half; a second run asks only about what changed. A few files with the tests that are about them take minutes:
 * `RINGBEAD_TESTS=feeler npx stryker run --mutate src/gap/feeler.ts`, then `node tools/mutation.mjs` with the reports.
 */

import { generate } from "./tools/generate.mjs";

process.env.RINGBEAD_RUNS = "50";
// The tests call the formulas as the build reads them from their comments.
await generate();

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  testRunner: "jest",
  jest: { configFile: "jest.mutate.config.mjs", enableFindRelatedTests: false },
  mutate: ["src/**/*.ts"],
  coverageAnalysis: "perTest",
  ignorePatterns: ["dist", "docs", "test-output", ".cache", "coverage"],
  incremental: true,
  incrementalFile: ".cache/mutation/incremental.json",
  tempDirName: ".cache/mutation/sandbox",
  reporters: ["json", "html", "progress-append-only"],
  jsonReporter: { fileName: "test-output/mutation/mutation.json" },
  htmlReporter: { fileName: "test-output/mutation/mutation.html" },
  concurrency: 2,
  timeoutMS: 8_000,
  timeoutFactor: 1.25,
};
