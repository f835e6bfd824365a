/**
 * Mutation testing of src/: does a test fail when the code is made wrong? `npm run mutate` takes an hour and a
 * half; a second run asks only about what changed. A few files with the tests that are about them take minutes:
 * `RINGBEAD_TESTS=feeler npm run mutate -- --mutate src/gap/feeler.ts`.
 */

export default {
  testRunner: "jest",
  plugins: [import.meta.resolve("@stryker-mutator/jest-runner")],
  jest: { configFile: "tools/mutation/jest.config.mjs", enableFindRelatedTests: false },
  mutate: ["src/**/*.ts"],
  coverageAnalysis: "perTest",
  ignorePatterns: ["/dist", "/docs", "/test-output", "/.cache", "/coverage"],
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
