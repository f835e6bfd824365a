/**
 * npm run mutate: changes src/ in one place at a time, asks whether a test notices, and writes docs/mutation.md. The
 * mutation tester has a folder of its own and is installed there by the first run. Options go on to it;
 * `npm run mutate -- --join one.json two.json` only joins the reports of several runs.
 */

import { existsSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { generate } from "../build/generate";
import { root } from "../build/project";
import type { Report } from "../docs/mutation";
import { joined, mutationPage, reasons } from "../docs/mutation";
import { run } from "./program";

const FOLDER = path.join("tools", "mutation");
const REPORT = path.join(root, "test-output", "mutation", "mutation.json");
const PAGE = path.join(root, "docs", "mutation.md");

const [option, ...given] = process.argv.slice(2);
if (option !== "--join") {
  // The tests read what is generated from the records.
  await generate();
  const program = path.join(root, FOLDER, "node_modules", "@stryker-mutator", "core", "bin", "stryker.js");
  if (!existsSync(program))
    run("npm", ["ci", "--prefix", FOLDER, "--ignore-scripts", "--no-audit", "--no-fund", "--loglevel=error"]);
  const options = process.argv.slice(2);
  run(process.execPath, [program, "run", path.join(FOLDER, "stryker.config.mjs"), ...options], {
    RINGBEAD_RUNS: "50",
    RINGBEAD_SEED: "130417",
  });
}
const places = option === "--join" ? given : [REPORT];
const reports = places.map((place) => JSON.parse(readFileSync(place, "utf8")) as Report);
writeFileSync(PAGE, mutationPage(joined(reports), reasons()));
console.log(path.relative(root, PAGE));
