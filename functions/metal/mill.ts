/** What a mill certificate says of a weld. */

import { equivalents, METHODS } from "../../src/metal/equivalents";
import { MOST_SULFUR, SULFUR_WINDOW, sulfurOfPair } from "../../src/metal/sulfur";
import type { Percent } from "../../src/quantity";
import { PERCENT, plainNumber, SHARE, si } from "../../src/quantity";
import type { Argument, NumberArgument } from "../argument";
import { number, orDefault, word } from "../argument";
import { formula } from "../formula";
import { column, row, words } from "../gives";

function element(what: string): NumberArgument<"percent"> {
  return number(what, PERCENT);
}

function optional(what: string): Argument<Percent, true> {
  return orDefault(element(what), si(0, PERCENT));
}

export const MILL_RATIO = formula({
  id: "MILL_RATIO",
  meaning: "Chromium and nickel equivalents of a heat, and their ratio",
  args: {
    cr: element("Chromium"),
    ni: element("Nickel"),
    mo: optional("Molybdenum"),
    mn: optional("Manganese"),
    si: optional("Silicon"),
    c: optional("Carbon"),
    n: optional("Nitrogen"),
    cu: optional("Copper"),
    nb: optional("Niobium"),
    method: word('"WRC-1992" (default), "Schaeffler" or "Hammar-Svensson"', METHODS, "WRC-1992"),
  },
  gives: row({
    chromium: column("chromium equivalent", PERCENT),
    nickel: column("nickel equivalent", PERCENT),
    ratio: column("ratio", SHARE),
  }),
  equation:
    "WRC-1992: Cr + Mo + 0.7 Nb; Ni + 35 C + 20 N + 0.25 Cu. Schaeffler: Cr + Mo + 1.5 Si + 0.5 Nb; Ni + 30 C + 0.5 Mn. Hammar-Svensson: Cr + 1.37 Mo + 1.5 Si + 2 Nb; Ni + 0.31 Mn + 22 C + 14.2 N + Cu",
  validity:
    "Austenitic stainless steel; percent by mass, cr and ni above 0, all together 100 % at most. The ratios of one heat differ between methods by more than the limits are wide: use a limit only with the equivalents it was made for. Hammar-Svensson without its 3 Ti. Published ranges are from 1.42 (316L) or 1.52 (304L) to 1.9; which equivalents they use was not read. Validate by welding.",
  source:
    "[kotecki-siewert-1992]; [schaeffler-1949]; [hammar-svensson-1979]; ranges of the ratio by [korinko-malene-2001]",
  unconfirmed: "Schaeffler's nickel equivalent and both of Hammar and Svensson are from memory.",
  related: ["MILL_SULFUR", "MATERIALS"],
  synonyms: [
    "mill certificate",
    "MTR",
    "heat chemistry",
    "ferrite",
    "Creq Nieq",
    "hot cracking",
    "solidification",
    "delta ferrite",
    "chromium equivalent",
    "nickel equivalent",
    "cert",
  ],
  example: {
    args: [16.6, 10.3, 2.1, 1.6, 0.4, 0.015, 0.04, 0.3],
    gives: "18.7, 11.7, 1.59829",
  },
  calc: ({ method, ...heat }) => equivalents(heat, method),
});

const [LEAST, MOST] = SULFUR_WINDOW;

export const MILL_SULFUR = formula({
  id: "MILL_SULFUR",
  meaning: "What the sulfur of the two sides of a joint means for the bead, in words",
  args: {
    sulfur: element("Sulfur of one side"),
    otherSulfur: element("Sulfur of the other side"),
  },
  gives: words(),
  equation: `Inside ${plainNumber(LEAST)} to ${plainNumber(MOST)} % or not; unequal where one side alone is below`,
  validity: `316L; above 0 to ${plainNumber(MOST_SULFUR)} % by mass, ppm divided by 10000. More sulfur is not always deeper: in one study of 316 it was, of 304 it was not. Weld a coupon of the two heats.`,
  source:
    "Range of [astm-a270-s2]; low and high sulfur by [korinko-malene-2001]; the contrary study is [aidun-martin-1997]",
  unconfirmed: "That the bead shifts toward the side with less sulfur is from memory.",
  unchecked: "Words for a range: the check is the range of the standard, tried at its ends",
  related: ["MILL_RATIO", "MATERIALS", "AMPS_MELT"],
  synonyms: [
    "sulphur",
    "heat to heat variation",
    "penetration",
    "bead shift",
    "arc deflection",
    "mismatch",
    "MTR",
    "mill certificate",
    "cert",
    "Marangoni",
    "low sulfur",
  ],
  example: {
    args: [0.002, 0.012],
    gives:
      '"0.002 % is below 0.005 to 0.017 %: expect a wide, shallow bead, less penetration and a weld pool that wanders; 0.012 % is inside 0.005 to 0.017 %; unequal: expect the bead to shift toward the 0.002 % side"',
  },
  calc: ({ sulfur, otherSulfur }) => sulfurOfPair(sulfur, otherSulfur),
});
