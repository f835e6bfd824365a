/**
 * What else a metal of the table is called: grade numbers of ASTM, UNS numbers ([sae-hs-1086]) and EN material numbers
 * ([en-10088-1] for stainless), all from memory. A straight grade leads to its low-carbon twin: in what heat flow needs they are
 * one metal, and tube of this trade is dual-marked.
 */

import type { Designation } from "./material";
import { DESIGNATIONS } from "./material";

export const OTHER_NAMES: Readonly<Record<Designation, readonly string[]>> = {
  "304L": ["304", "S30400", "S30403", "1.4301", "1.4306", "1.4307"],
  "316L": ["316", "S31600", "S31603", "1.4401", "1.4404", "1.4435"],
  "2205": ["S31803", "S32205", "1.4462"],
  CS: ["carbon steel", "mild steel", "A106", "A53", "A179"],
  "TI-2": ["titanium grade 2", "Ti Gr 2", "Gr 2", "R50400", "3.7035"],
  "TI-6-4": ["Ti-6Al-4V", "titanium grade 5", "Ti Gr 5", "Gr 5", "R56400"],
  "625": ["N06625", "2.4856"],
  "C-276": ["C276", "N10276", "2.4819"],
  C12200: ["copper", "Cu-DHP"],
  C70600: ["CuNi 90/10", "90/10 CuNi", "copper-nickel 90/10"],
};

/** Words that people set before or behind a grade and that say nothing more. */
const PREFIXES = /^(?:SS|TP|AISI|ASTM|UNS|EN|ALLOY|TYPE|DUPLEX|W\.?NR\.?|STAINLESS)+/;
const SUFFIXES = /(?:SS|STAINLESS)+$/;

/** The designation that a name leads to; undefined for a metal that is not in the table. */
export function designationOf(name: string): Designation | undefined {
  const whole = KNOWN.get(plain(name));
  if (whole !== undefined) return whole;
  // Dual-marked tube, 304/304L, is one metal only if both marks lead to it.
  const marks = name.split("/").map((mark) => KNOWN.get(plain(mark)));
  return marks.length > 1 && marks.every((mark) => mark === marks[0]) ? marks[0] : undefined;
}

function plain(name: string): string {
  const letters = name.toUpperCase().replace(/[\s_-]+/g, "");
  const bare = letters.replace(PREFIXES, "").replace(SUFFIXES, "");
  return bare === "" ? letters : bare;
}

const KNOWN: ReadonlyMap<string, Designation> = new Map(
  DESIGNATIONS.flatMap((designation) =>
    [designation, ...OTHER_NAMES[designation]].map((name) => [plain(name), designation] as const),
  ),
);
