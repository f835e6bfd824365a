/** A program of one's own on the procedure sheet: typed sector by sector, judged beside the schedule. */

import { byName, table } from "../bead";
import { procedure } from "../../taskpane/sheets/procedure";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

let sheet: OpenSheet;
beforeAll(async () => {
  sheet = await openSheet(procedure, "US");
});

const verdict = (sector: number): unknown => sheet.beside("own_verdicts", 0, sector - 1);
const face = (sector: number): number => Number(sheet.beside("own_faces", 0, sector - 1));
const root = (sector: number): number => Number(sheet.beside("own_roots", 0, sector - 1));

test("with nothing set it is the schedule that is judged", () => {
  [1, 2, 3, 4, 5].forEach((sector) => {
    expect(face(sector)).toBeCloseTo(Number(sheet.beside("faces", 0, sector - 1)), 6);
    expect(root(sector)).toBeCloseTo(Number(sheet.beside("roots", 0, sector - 1)), 6);
    expect(verdict(sector)).toBe("✓ holds");
  });
  expect(sheet.value("own_heat")).toBeCloseTo(Number(sheet.value("heat")), 9);
  expect(sheet.value("check_program")).toBe("✓ holds");
});

test("a peak that is set counts in its sector, and warms those after it; the schedule stays", () => {
  const [before, scheduled] = [face(3), sheet.value("mean_first")];
  const first = face(1);
  sheet.having({ set_second: "80" }, () => {
    expect(sheet.beside("own_verdicts", -2, 1)).toBe(80);
    // The mean in the proportion of the peaks: share and background stay.
    const mean = Number(sheet.beside("sectors", 3, 1)) * (80 / Number(sheet.beside("sectors", 5, 1)));
    expect(sheet.beside("own_verdicts", -1, 1)).toBeCloseTo(mean, 9);
    expect(face(1)).toBeCloseTo(first, 4);
    expect(face(2)).toBeGreaterThan(first * 1.1);
    expect(face(3)).toBeGreaterThan(before);
    expect(sheet.value("mean_first")).toBe(scheduled);
  });
});

test("a typed share makes the means: the sheet's table is PROGRAM_BEAD's", () => {
  sheet.having({ share_set: "0.7", rate_set: "3", set_first: "60", wall_tolerance: "0.05" }, () => {
    const number = (name: string): number => Number(sheet.value(name));
    const rows = table(
      "PROGRAM_BEAD",
      ...byName("PROGRAM_BEAD", {
        od: 1,
        wall: 0.065,
        speed: number("speed"),
        peaks: [[60], ...[1, 2, 3].map((i) => [sheet.beside("sectors", 5, i)])],
        share: 0.7,
        background: 0.3,
        rate: 3,
        beadWidth: number("bead"),
        dwell: number("dwell"),
        dwellAmps: number("dwell_amps"),
        overlap: number("overlap"),
        volts: number("volts"),
        arcSize: number("arc_spot"),
        wallTolerance: 0.05,
        overlapPeak: sheet.beside("sectors", 5, 4),
      }),
    );
    [1, 2, 3, 4, 5].forEach((sector) => {
      const row = rows[sector - 1] ?? [];
      expect(face(sector)).toBeCloseTo(Number(row[4]), 9);
      expect(root(sector)).toBeCloseTo(Number(row[5]), 9);
      expect(sheet.beside("own_roots_least", 0, sector - 1)).toBeCloseTo(Number(row[6]), 9);
    });
    // 60·(0.3 + 0.7·0.7) = 47.4 A.
    expect(sheet.beside("own_verdicts", -1, 0)).toBeCloseTo(47.4, 9);
  });
});

test("every verdict, from too little current to too much", () => {
  const told: unknown[] = [];
  for (const peak of [35, 58, 60.4, 65, 78, 90]) {
    sheet.having({ set_first: String(peak) }, () => {
      told.push(verdict(1));
      expect(sheet.value("check_program") === "✓ holds").toBe(verdict(1) === "✓ holds");
    });
  }
  const order = [
    "▲ root does not melt through",
    "▲ root may be missing: thick wall, weak arc",
    "▲ root may fall under half the wall",
    "✓ holds",
    "▲ face may pass 1.5 beads",
    "▲ face over 1.5 beads",
  ];
  // Each as far along as the current is, and all of them met.
  const places = told.map((words) => order.indexOf(String(words)));
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(new Set(places)).toEqual(new Set([0, 1, 2, 3, 4, 5]));
});

test("the overlap is set and judged by itself, and nothing before it changes", () => {
  const before = [1, 2, 3, 4].map(face);
  sheet.having({ set_overlap: "25" }, () => {
    expect(sheet.beside("own_verdicts", -2, 4)).toBe(25);
    expect(verdict(5)).toBe("▲ root does not melt through");
    expect(sheet.value("check_program")).toBe("▲ 1 of 5 sectors need attention: see Your own program");
    [1, 2, 3, 4].forEach((sector, i) => {
      expect(face(sector)).toBeCloseTo(before[i] ?? NaN, 4);
      expect(verdict(sector)).toBe("✓ holds");
    });
  });
  sheet.having({ set_overlap: "110" }, () => {
    expect(verdict(5)).toBe("▲ face over 1.5 beads");
    expect(sheet.value("check_heat")).toMatch(/^▲ your own program is above the qualified maximum/);
  });
});

test("no overlap: nothing is judged that does not exist, and the check says so", () => {
  sheet.having({ overlap_typed: "0" }, () => {
    expect([verdict(5), sheet.beside("own_faces", 0, 4)]).toEqual(["", ""]);
    expect(sheet.holds()).toBe(false);
  });
});

test("heat input follows what is set, and the maximum holds for it too", () => {
  sheet.having({ set_fourth: "110" }, () => {
    expect(Number(sheet.value("own_heat"))).toBeGreaterThan(8);
    expect(sheet.value("check_heat")).toMatch(
      /^▲ your own program is above the qualified maximum: 8\.\d+ against 8$/,
    );
    expect(sheet.value("heat")).toBeLessThan(6);
  });
});

test.each([
  ["-5", /set_?|peaks = -5 A: must be above 0/],
  ["0", /peaks = 0 A: must be above 0/],
  ["sixty", /peaks/],
])("a set current typed as %s is refused in words and breaks no table", (typed, sentence) => {
  sheet.having({ set_third: typed }, () => {
    expect(sheet.value("check_program")).toMatch(sentence);
    expect(sheet.value("check_typed")).toMatch(/Sector 3, set/);
    // What is left of it, the dwell, has a heat input that is not the program's.
    expect(sheet.value("own_heat")).toBe("");
    expect([1, 2, 3, 4, 5].map((sector) => verdict(sector))).toEqual(["", "", "", "", ""]);
    expect(sheet.value("check_sectors")).toBe("✓ holds");
  });
});

test("a steady arc is set by its current, whatever stands in the share", () => {
  sheet.having({ style: "steady", set_first: "48", share_set: "0.5" }, () => {
    expect(sheet.beside("own_verdicts", -1, 0)).toBeCloseTo(48, 12);
    expect(verdict(1)).toBe("✓ holds");
  });
});
