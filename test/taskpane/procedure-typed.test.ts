/** What a person types on the procedure sheet, and what follows. */

import { DESIGNATIONS } from "../../src/metal/material";
import { procedure } from "../../taskpane/sheets/procedure";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";
import { number } from "../bead";

/** Columns of the table of sectors, from its label on. */
const [MEAN, PEAK, BACK] = [3, 5, 6];

let sheet: OpenSheet;
beforeAll(async () => {
  sheet = await openSheet(procedure, "US");
});
afterEach(() => {
  expect(sheet.holds()).toBe(true);
});

test("another wall changes everything that hangs on it", () => {
  const names = ["standoff", "mean_first", "speed", "heat", "purge_volume", "cycle"];
  const before = names.map((name) => sheet.value(name));
  sheet.having({ wall: "0.083" }, () => {
    names.forEach((name, i) => {
      expect([name, sheet.value(name)]).not.toEqual([name, before[i]]);
    });
    expect(sheet.value("standoff")).toBeCloseTo(0.0515, 12);
    expect(sheet.value("bore")).toBeCloseTo(0.834, 12);
  });
});

test("typed peak, speed, overlap, dwell and volts take the place of the computed ones, and their labels tell", () => {
  const typed = { speed: "6", overlap: "30", dwell: "3", volts: "10", bead: "0.2" };
  const names = Object.keys(typed);
  const contents = Object.fromEntries(Object.entries(typed).map(([name, text]) => [`${name}_typed`, text]));
  const labels = (): unknown[] => names.map((name) => sheet.beside(name, -1));
  for (const label of labels()) expect(label).not.toMatch(/typed/);
  sheet.having({ ...contents, peak_typed: "110" }, () => {
    expect(names.map((name) => sheet.value(name))).toEqual([6, 30, 3, 10, 0.2]);
    for (const label of labels()) expect(label).toMatch(/, typed$/);
    expect(sheet.value("heat")).toBeCloseTo((60 * 10 * Number(sheet.value("dwell_amps"))) / 6000, 9);
    expect(sheet.beside("sectors", PEAK)).toBeCloseTo(110, 9);
    // 360° and 30° more.
    expect(sheet.beside("sectors", 2, 4)).toBe(390);
  });
});

test("a blank of spaces is a blank: default and label of it", () => {
  const before = sheet.value("speed");
  sheet.having({ speed_typed: "  ", bore_typed: " " }, () => {
    expect([sheet.value("speed"), sheet.beside("speed", -1)]).toEqual([before, "Travel speed"]);
    expect(sheet.value("bore")).toBeCloseTo(0.87, 12);
    expect(sheet.holds()).toBe(true);
  });
});

test("beside the heat input a pulsed arc is told that its power decides, a steady one is not", () => {
  const below = (): unknown => sheet.beside("heat", -1, 1);
  expect(below()).toMatch(/^Pulsed arcs are judged by metered or instantaneous power.*HEAT_PULSED\.$/);
  sheet.having({ style: "steady" }, () => {
    expect(below()).toBe("");
  });
});

test("steady style sets the mean and leaves the pulse out", () => {
  // A pulse melts as much with a smaller mean.
  const steady = sheet.value("steady_first");
  expect(steady).toBeGreaterThan(Number(sheet.value("mean_first")));
  sheet.having({ style: "steady" }, () => {
    expect(["pulse_share", "pulse_rate"].map((name) => sheet.value(name))).toEqual(["", ""]);
    expect([MEAN, PEAK, BACK].map((column) => sheet.beside("sectors", column))).toEqual([steady, "", ""]);
    expect(sheet.value("electrode")).toBeCloseTo(0.04, 12);
    expect(sheet.holds()).toBe(true);
  });
});

test("the travel speed is that of TRAVEL_SUGGEST for every metal that has a schedule", () => {
  let scheduled = 0;
  for (const metal of DESIGNATIONS) {
    sheet.having({ material: metal }, () => {
      const speed = sheet.value("speed");
      if (speed === "") {
        expect([metal, sheet.value("check_tube")]).toEqual([metal, expect.stringMatching(/^▲ /)]);
        return;
      }
      scheduled += 1;
      const suggested = number("TRAVEL_SUGGEST", 0.065, null, metal);
      expect([metal, Math.abs(Number(speed) / suggested - 1) < 1e-9]).toEqual([metal, true]);
    });
  }
  expect(scheduled).toBeGreaterThanOrEqual(DESIGNATIONS.length - 2);
  expect(sheet.value("overlap")).toBe(number("OVERLAP_SUGGEST", 1, 0.065));
});

// 1 in = 25.4 mm exactly (NIST SP 811).
test.each([
  ["1-1/2", 1.5],
  ["1 1/2 in", 1.5],
  ['1.5"', 1.5],
  ["38.1 mm", 1.5],
  ["½", 0.5],
  ["1/2", 0.5],
])("an outside diameter written as %s is %d in", (text, od) => {
  const names = ["bore", "speed", "mean_first", "electrode_length", "purge_time", "cycle"];
  const values = (): unknown[] => names.map((name) => sheet.value(name));
  let plain: unknown[] = [];
  sheet.having({ od: String(od) }, () => {
    plain = values();
    expect(sheet.holds()).toBe(true);
  });
  sheet.having({ od: text }, () => {
    values().forEach((value, i) => {
      expect(value).toBeCloseTo(Number(plain[i]), 9);
    });
    expect(sheet.holds()).toBe(true);
  });
});

test("sizes as text in every cell of a length, judged as the numbers they say", () => {
  const sizes = {
    wall: "0.065 in",
    allowance: "0.010 in",
    od_tolerance: "0.005in",
    runout: "0.1016 mm",
    reach: "1 1/2",
    bore_typed: "7/8",
    dam_spacing: '24"',
    dam_least: "6 in",
    vent: "3/16",
  };
  sheet.having(sizes, () => {
    expect(sheet.value("bore")).toBe(0.875);
    expect(sheet.value("dam_distance")).toBe(6);
    expect(sheet.value("summary")).toMatch(/^✓/);
  });
  // Out of the range of an inch cell as well when written: 1 in is 1000 mm at most 508.
  sheet.having({ od: "600 mm" }, () => {
    expect(sheet.value("check_typed")).toMatch(/^▲ Outside diameter: 600 mm is not between 0\.06 and 20 in/);
  });
  sheet.having({ dam_spacing: "8 in" }, () => {
    expect(sheet.value("check_dams")).toMatch(/^▲ dams too near/);
  });
});

test("the everyday names of a metal are as good as its designation", () => {
  const before = sheet.value("mean_first");
  for (const name of ["316", "SS316L", "TP316L", "S31603", "1.4404"]) {
    sheet.having({ material: name }, () => {
      expect([name, sheet.value("mean_first"), sheet.holds()]).toEqual([name, before, true]);
    });
  }
});

test("the units cell takes only its own word, the material is offered as a list", async () => {
  const { cells } = await sheet.form();
  expect(cells.get("sheet_units")?.length).toBe(1);
  const rules = sheet.model.getters.getDataValidationRules(sheet.model.getters.getActiveSheetId());
  const allowed = rules.map(({ isBlocking, criterion }) => [isBlocking, criterion.values]);
  expect(allowed).toContainEqual([true, ["US"]]);
  expect(allowed.some(([blocking, values]) => blocking === true && String(values).includes("316L"))).toBe(
    true,
  );
});
