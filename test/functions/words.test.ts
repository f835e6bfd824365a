/** Metals by whatever name people know them. */

import { DESIGNATIONS } from "../../src/metal/material";
import { OTHER_NAMES } from "../../src/metal/names";
import { bead, number, refusal, table } from "../bead";
import { evidence, INPUT_DATA } from "../evidence";

/** The current tells the metals apart. */
const amps = (material?: unknown): number => number("AMPS_WALL", 0.065, material);
const MUST = /: must be one of 304L, 316L, 2205, CS, TI-2, TI-6-4, 625, C-276, C12200, C70600$/;

describe("a designation", () => {
  test("of digits alone, which a cell holds as a number", () => {
    expect(amps(2205)).toBe(amps("2205"));
    expect(number("TRAVEL_SUGGEST", 0.065, null, 625)).toBe(number("TRAVEL_SUGGEST", 0.065, null, "625"));
  });

  test("case and surrounding blanks are ignored, and 316L stands for nothing given", () => {
    expect(amps(" ti-6-4 ")).toBe(amps("TI-6-4"));
    expect(amps()).toBe(amps("316L"));
    expect(bead("AMPS_WALL", 0.065, "CS")).not.toBe(bead("AMPS_WALL", 0.065));
  });

  test("no two metals of the table take the same current, so that a wrong one is seen here", () => {
    expect(new Set(DESIGNATIONS.map(amps)).size).toBe(DESIGNATIONS.length);
  });
});

describe(
  evidence(
    "MATERIALS",
    INPUT_DATA,
    "en-10088-1",
    "grade, UNS and EN numbers, with [sae-hs-1086]; from memory",
  ),
  () => {
    test.each<[designation: string, names: unknown[]]>([
      ["316L", ["316", 316, "SS316L", "SS 316 L", "TP316L", "tp316", "316/316L", "316L/316", "AISI 316"]],
      ["316L", ["S31603", "UNS S31603", "S31600", "1.4404", 1.4404, "1.4401", 1.4401, "1.4435", "EN 1.4404"]],
      ["316L", ["316L SS", "316L stainless", "W.Nr. 1.4404", "1.4404/316L", "ASTM TP316L", "Type 316L"]],
      [
        "304L",
        ["304", 304, "304/304L", "304/304L SS", "TP304L", "S30403", "1.4307", 1.4307, "1.4301", "SS304"],
      ],
      ["2205", ["S31803", "S32205", "1.4462", 1.4462, "Duplex 2205", "UNS S32205"]],
      ["CS", ["carbon steel", "Carbon Steel", "mild steel", "A106"]],
      ["TI-2", ["Ti Gr 2", "titanium grade 2", "R50400", 3.7035]],
      ["TI-6-4", ["Ti-6Al-4V", "Ti 6Al 4V", "R56400"]],
      ["625", ["N06625", "alloy 625", "2.4856", 2.4856]],
      ["C-276", ["C276", "N10276", "Alloy C-276", "c 276"]],
      ["C12200", ["copper", "Cu-DHP"]],
      ["C70600", ["CuNi 90/10", "90/10 CuNi", "Copper-Nickel 90/10"]],
    ])("%s: %j", (designation, names) => {
      for (const name of names) expect([name, amps(name)]).toEqual([name, amps(designation)]);
    });
  },
);

test.each([
  [317],
  ["317L"],
  ["304/316L"],
  ["316L/CS"],
  ["316/"],
  ["/316L"],
  ["316 L 304"],
  ["SS"],
  ["stainless"],
  ["duplex"],
  ["UNS"],
  ["1.44"],
  [1.44],
  ["316Ti"],
  ["SS SS"],
  ["__proto__"],
])("%p is no metal of the table", (name) => {
  expect(refusal("AMPS_WALL", 0.065, name)).toMatch(MUST);
});

describe("MATERIALS lists every other name", () => {
  const NAMES = 12;

  test.each(table("MATERIALS").map((row) => [String(row[0]), String(row[NAMES])]))(
    "%s: %s",
    (designation, names) => {
      for (const name of names.split(", ")) expect([name, amps(name)]).toEqual([name, amps(designation)]);
      const known: Readonly<Record<string, readonly string[]>> = OTHER_NAMES;
      expect(names).toBe(known[designation]?.join(", "));
    },
  );

  test("no name leads to two metals", () => {
    const all = DESIGNATIONS.flatMap((designation) => [designation, ...OTHER_NAMES[designation]]);
    const plain = all.map((name) => name.toUpperCase().replace(/[\s-]/g, ""));
    expect(plain.filter((name, i) => plain.indexOf(name) < i)).toEqual(["C276"]);
  });
});
