import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";

import { FORMULAS } from "../../../functions/catalogue";
import { formulaOf, SCRIPT } from "./formula-of";
import type { Row } from "./measure";
import { median, short } from "./measure";

const BUDGET = 45_000;
const ROUNDS = 15;

export function fileRows(): Row[] {
  const script = readFileSync(SCRIPT);
  const packed = gzipSync(script).length;
  const loads = Array.from({ length: ROUNDS }, loadMilliseconds);
  return [
    { what: "size", value: `${kilobytes(script.length)} KB` },
    {
      what: "gzip",
      value: `${kilobytes(packed)} KB, ${packed <= BUDGET ? "under" : "OVER"} the budget of ${kilobytes(BUDGET)} KB`,
    },
    { what: "of that, what ABOUT tells", value: `${kilobytes(gzipSync(toldByAbout()).length)} KB` },
    { what: "load", value: `${String(short(median(loads)))} ms` },
  ];
}

function toldByAbout(): string {
  const about = formulaOf("ABOUT");
  return JSON.stringify(FORMULAS.map(({ id }) => about(id)));
}

function kilobytes(bytes: number): string {
  return (bytes / 1000).toFixed(1);
}

/** In a process of its own, since a second load of the same script is spared the compiling. */
function loadMilliseconds(): number {
  const loader = path.join(import.meta.dirname, "load-once.ts");
  return Number(execFileSync(process.execPath, ["--import", "tsx", loader, SCRIPT], { encoding: "utf8" }));
}
