/** The tests that mutation testing runs: those that call src/, without browser, sheet engine and build. */

import jest from "../../jest.config.mjs";

/** @type {import("jest").Config} */
export default {
  ...jest,
  rootDir: "../..",
  testMatch: ["<rootDir>/test/mutation/every-test.cjs"],
  testEnvironment: "./test/mutation/first-failure.cjs",
  moduleFileExtensions: [...(jest.moduleFileExtensions ?? []), "cjs"],
  transform: { ...jest.transform, "\\.cjs$": Object.values(jest.transform ?? {})[0] ?? "" },
  // What is in generated/ is made once, not before each of the thousand runs.
  globalSetup: null,
};
