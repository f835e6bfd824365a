/**
 * npm test: installs what is missing, a browser too, then checks everything: types, lint, layout of the code, unit and
 * sheet tests, the build, browser tests, and the exported files in LibreOffice. Closes with one line that counts what passed and failed.
 */

import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";

import { installPackages } from "./install.mjs";

const total = { passed: 0, failed: 0 };

const LEFT_OUT = "left out: this machine has no program for it, and none can be installed here";

/** A step that was left out counts as nothing. @param {string} title @param {() => Promise<string | void> | string | void} check */
async function step(title, check) {
  const began = Date.now();
  console.log(`\n== ${title}`);
  try {
    const leftOut = await check();
    if (leftOut === undefined) total.passed += 1;
    else console.log(`   ${leftOut}`);
  } catch (problem) {
    total.failed += 1;
    console.error(problem instanceof Error ? problem.message : problem);
  }
  console.log(`   ${((Date.now() - began) / 1000).toFixed(1)} s`);
}

/** @param {string} tool a program that the packages bring @param {string[]} args */
function tool(tool, ...args) {
  const { status } = spawnSync("npx", ["--no-install", tool, ...args], {
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (status !== 0) throw new Error(`${tool} found something`);
}

/**
 * Runs a set of tests and adds up what it counted.
 * @param {string} config @param {Record<string, string>} env @param {string[]} options
 */
function jest(config, env = {}, ...options) {
  const report = path.join("test-output", `${path.basename(config, ".mjs")}.json`);
  rmSync(report, { force: true });
  const { status } = spawnSync(
    "npx",
    ["--no-install", "jest", "--config", config, "--json", `--outputFile=${report}`, ...options],
    {
      // The report goes to the file; what people read comes on the other stream.
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, ...env },
      shell: process.platform === "win32",
    },
  );
  const { numPassedTests, numFailedTests, numTotalTests } = JSON.parse(readFileSync(report, "utf8"));
  total.passed += numPassedTests;
  total.failed += numFailedTests;
  if (numFailedTests > 0 || numTotalTests === 0)
    throw new Error(`${numFailedTests} of ${numTotalTests} tests failed`);
  if (status !== 0) throw new Error("jest found something besides the tests, said above");
}

installPackages();
mkdirSync("test-output", { recursive: true });
const { ensureChromium } = await import("./chromium.mjs");
const { ensureOffice } = await import("./office.mjs");
const { generate } = await import("./generate.mjs");
const { writeTemplates } = await import("./templates.mjs");
const { build } = await import("./build.mjs");
const { RECORDS } = await import("./checks-reporter.mjs");
const { madeFiles, stale } = await import("./docs.mjs");

await step("formulas' comments", async () => void (await generate()));
await step("types", () => {
  for (const room of ["functions", "taskpane", "tools", "test"]) tool("tsc", "-p", room);
});
await step("lint", () => tool("eslint", ".", "--max-warnings", "0"));
await step("layout of the code", () => tool("prettier", "--check", "--log-level", "warn", "."));
await step("unit and sheet tests, every branch of src/", () =>
  jest("jest.config.mjs", { RINGBEAD_RECORD: "checks" }, "--coverage"),
);
await step("build", () => build(undefined, (line) => console.log(`   ${line}`)));
await step("pages of docs/ that are made", async () => {
  const old = stale(await madeFiles(JSON.parse(readFileSync(RECORDS, "utf8"))));
  if (old.length > 0) throw new Error(`no longer so: ${old.join(", ")}; npm run docs makes them anew`);
});
await step("browser tests", async () => {
  const chromium = await ensureChromium();
  jest("jest.browser.config.mjs", chromium === undefined ? {} : { RINGBEAD_CHROMIUM: chromium });
});
await step("exported files, opened in LibreOffice", async () => {
  if (ensureOffice() === undefined) return LEFT_OUT;
  await writeTemplates();
  jest("jest.office.config.mjs");
  return undefined;
});

console.log(`\nRingbead: ${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 ? 0 : 1;
