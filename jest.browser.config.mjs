import { common } from "./jest.config.mjs";

/** @type {import("jest").Config} */
export default {
  ...common,
  testMatch: ["<rootDir>/test/browser/**/*.test.ts"],
  testPathIgnorePatterns: ["/node_modules/"],
  testTimeout: 60_000,
  maxWorkers: 2,
};
