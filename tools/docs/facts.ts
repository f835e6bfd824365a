/** What the help pages tell apart from the records of the formulas: what the tests recorded, and the figures. */

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import { root } from "../build/project";
import type { CheckRecord } from "./check-records";

/** What the tests of the last full run recorded, as it stands in the repository. */
const COMMITTED_RECORDS = path.join(root, "docs", "checks.json");

export interface Facts {
  readonly records: readonly CheckRecord[];
  /** Name and what it shows. */
  readonly figures: ReadonlyMap<string, string>;
}

export function committedRecords(): CheckRecord[] {
  return JSON.parse(readFileSync(COMMITTED_RECORDS, "utf8")) as CheckRecord[];
}

export function factsOf(records: readonly CheckRecord[]): Facts {
  return { records, figures: figures() };
}

/** Figures by name, with what each shows. */
export function figures(): Map<string, string> {
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
