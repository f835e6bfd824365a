import { common } from "./jest.config.mjs";

/** @type {import("jest").Config} */
export default {
  ...common,
  testMatch: ["<rootDir>/test/office/**/*.test.ts"],
  testPathIgnorePatterns: ["/node_modules/"],
  testTimeout: 120_000,
  maxWorkers: 1,
};
