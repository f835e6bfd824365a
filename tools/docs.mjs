/**
 * npm run docs: writes the pages of docs/ that are made and not written. `npm test` makes them again and fails on any
 * that differ, so that none can say what is no longer so.
 */

import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { build } from "./build.mjs";
import { RECORDS } from "./checks-reporter.mjs";
import { checksPage } from "./help/checks.mjs";
import { factsOf } from "./help/facts.mjs";
import { referencePage } from "./help/reference.mjs";
import { writeNotice } from "./notice.mjs";
import { root } from "./project.mjs";
import { writeRefusals } from "./refusals.mjs";

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
