/** The tests that mutation testing runs: those that call src/, without browser, sheet engine and build. */

import jest from "./jest.config.mjs";

/** @type {import("jest").Config} */
export default {
  ...jest,
  testMatch: ["src", "published", "functions"].map((room) => `<rootDir>/test/${room}/**/*.test.ts`),
  testPathIgnorePatterns: ["/node_modules/", "host-model"],
};
