/** What the help is made from: the formulas' comments, the functions as built, the tests' records and the figures. */

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import { loadFunctions } from "../built.mjs";
import { readMetadata } from "../metadata.mjs";
import { dist, root } from "../project.mjs";

/** What the tests of the last full run recorded, as it stands in the repository. */
export const COMMITTED_RECORDS = path.join(root, "docs", "checks.json");

/** @returns {import("../checks-reporter.mjs").CheckRecord[]} */
export function committedRecords() {
  return JSON.parse(readFileSync(COMMITTED_RECORDS, "utf8"));
}

/**
 * What the pages tell of. The functions are those of the build.
 * @param {import("../checks-reporter.mjs").CheckRecord[]} records
 * @returns {Promise<import("./reference.mjs").Facts>}
 */
export async function factsOf(records) {
  const { help, reference } = await readMetadata("help.html");
  const functions = loadFunctions(readFileSync(path.join(dist, "functions.js"), "utf8"));
  return { help, reference, functions, records, figures: figures() };
}

/** Figures by name, with what each shows. */
export function figures() {
  const folder = path.join(root, "docs", "help", "figures");
  const files = readdirSync(folder).filter((name) => name.endsWith(".svg"));
  return new Map(
    files.map((file) => {
      const svg = readFileSync(path.join(folder, file), "utf8");
      const shows = /<desc[^>]*>([^<]+)<\/desc>/.exec(svg)?.[1] ?? "";
      return [path.basename(file, ".svg"), shows.replace(/\s+/g, " ").trim()];
    }),
  );
}
