/** npm run docs: runs the tests for what they check against, and writes the pages of docs/ that are generated. */

import { writeFileSync } from "node:fs";
import path from "node:path";

import { root } from "../build/project";
import { runTests } from "../dev/jest";
import { recordsIn } from "./check-records";
import { madeFiles, stale } from "./made-files";

console.log("running the tests, for what they check against");
const { report, failed, output } = await runTests("jest.config.mjs", [
  "test/(published|src|functions)/",
  "--silent",
]);
if (failed > 0) throw new Error(`A test failed, so there is nothing true to write:\n${output}`);
const made = madeFiles(recordsIn(report));
for (const file of stale(made)) {
  writeFileSync(path.join(root, file), made.get(file) ?? "");
  console.log(file);
}
