import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";

import { bundles } from "../webpack.mjs";
import { folder, run } from "./load.mjs";
import { median, short } from "./measure.mjs";

const BUDGET = 60_000;
const ROUNDS = 15;

/** @returns {Promise<import("./measure.mjs").Row[]>} */
export async function fileRows() {
  const configuration = bundles.find(({ name }) => name === "functions");
  if (configuration === undefined) throw new Error("no bundle of the functions");
  // As the build makes it, without touching dist/.
  await run({ ...configuration, output: { ...configuration.output, path: folder } });
  const file = path.join(folder, "functions.js");
  const script = readFileSync(file);
  const packed = gzipSync(script).length;
  const loads = Array.from({ length: ROUNDS }, () => loadMilliseconds(file));
  return [
    { what: "size", value: `${kilobytes(script.length)} KB` },
    {
      what: "gzip",
      value: `${kilobytes(packed)} KB, ${packed <= BUDGET ? "under" : "OVER"} the budget of ${kilobytes(BUDGET)} KB`,
    },
    { what: "load", value: `${short(median(loads))} ms` },
  ];
}

/** @param {number} bytes */
function kilobytes(bytes) {
  return (bytes / 1000).toFixed(1);
}

/** In a process of its own, since a second load of the same script is spared the compiling. @param {string} file */
function loadMilliseconds(file) {
  const loader = path.join(import.meta.dirname, "load-once.mjs");
  return Number(execFileSync(process.execPath, [loader, file], { encoding: "utf8" }));
}
