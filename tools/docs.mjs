/**
 * npm run docs: writes the pages of docs/ that are made and not written. `npm test` makes them again and fails on any
 * that differ, so that none can say what is no longer so.
 */

import { existsSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { loadFunctions } from "./built.mjs";
import { checksPage } from "./help/checks.mjs";
import { figures } from "./help/page.mjs";
import { referencePage } from "./help/reference.mjs";
import { readMetadata } from "./metadata.mjs";
import { dist, root } from "./project.mjs";

/** What the tests of the last full run recorded, as it stands in the repository. */
export const COMMITTED_RECORDS = path.join(root, "docs", "checks.json");

/** @returns {import("./checks-reporter.mjs").CheckRecord[]} */
export function committedRecords() {
  return JSON.parse(readFileSync(COMMITTED_RECORDS, "utf8"));
}

/**
 * What the pages tell of. The functions are those of the build.
 * @param {import("./checks-reporter.mjs").CheckRecord[]} records
 * @returns {Promise<import("./help/reference.mjs").Facts>}
 */
export async function factsOf(records) {
  const { help, reference } = await readMetadata("help.html");
  const functions = loadFunctions(readFileSync(path.join(dist, "functions.js"), "utf8"));
  return { help, reference, functions, records, figures: figures() };
}

/**
 * The made files, by their path in the repository.
 * @param {import("./checks-reporter.mjs").CheckRecord[]} records
 * @returns {Promise<Map<string, string>>}
 */
export async function madeFiles(records) {
  const facts = await factsOf(records);
  return new Map([
    ["docs/checks.json", `${JSON.stringify(records, null, 1)}\n`],
    ["docs/reference.md", referencePage(facts)],
    ["docs/how-the-numbers-are-checked.md", checksPage(facts)],
  ]);
}

/** Files whose committed text is not what is made now. @param {Map<string, string>} made */
export function stale(made) {
  return [...made].filter(([file, text]) => committed(file) !== text).map(([file]) => file);
}

/** @param {string} file */
function committed(file) {
  const place = path.join(root, file);
  return existsSync(place) ? readFileSync(place, "utf8") : undefined;
}

if (process.argv[1] === import.meta.filename) {
  const { spawnSync } = await import("node:child_process");
  const { RECORDS } = await import("./checks-reporter.mjs");
  const { build } = await import("./build.mjs");
  const { writeNotice } = await import("./notice.mjs");
  const { writeRefusals } = await import("./refusals.mjs");
  console.log("running the tests, for what they check against");
  const { status } = spawnSync(
    "npx",
    ["--no-install", "jest", "test/(published|src|functions)/", "--silent"],
    {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, RINGBEAD_RECORD: "checks" },
      shell: process.platform === "win32",
    },
  );
  if (status !== 0) {
    console.error("A test failed, so there is nothing true to write: npm test says which.");
    process.exit(1);
  }
  await build();
  const made = await madeFiles(JSON.parse(readFileSync(RECORDS, "utf8")));
  for (const file of stale(made)) {
    writeFileSync(path.join(root, file), made.get(file) ?? "");
    console.log(file);
  }
  writeNotice();
  await writeRefusals();
}
