import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";

import { FORMULAS } from "../../../functions/catalogue";
import { SCRIPT } from "./formula-of";
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
    {
      what: "gzip without what ABOUT tells",
      value: `${kilobytes(gzipSync(withoutWords(script)).length)} KB`,
    },
    { what: "load", value: `${String(short(median(loads)))} ms` },
  ];
}

/** The build writes all that ABOUT tells as one text, by far the longest of the script. */
function withoutWords(script: Buffer): string {
  const code = script.toString("utf8");
  const texts = code.match(/`[^`]*`/g) ?? [];
  const longest = texts.reduce((most, text) => (text.length > most.length ? text : most), "");
  if (!longest.includes(FORMULAS[0]?.meaning ?? "\n\n"))
    throw new Error(`${SCRIPT} has no words in one text`);
  return code.replace(longest, () => "``");
}

function kilobytes(bytes: number): string {
  return (bytes / 1000).toFixed(1);
}

/** In a process of its own, since a second load of the same script is spared the compiling. */
function loadMilliseconds(): number {
  const loader = path.join(import.meta.dirname, "load-once.ts");
  return Number(execFileSync(process.execPath, ["--import", "tsx", loader, SCRIPT], { encoding: "utf8" }));
}
