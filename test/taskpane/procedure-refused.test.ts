/** A procedure sheet for what cannot be: nothing that waits shows a number, and the checks name what to fix. */

import { procedure } from "../../taskpane/sheets/procedure";
import { computed } from "./computed";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

let sheet: OpenSheet;
beforeAll(async () => {
  sheet = await openSheet(procedure, "US");
});
afterEach(() => {
  expect(sheet.holds()).toBe(true);
});

/** What hangs on the tube: of the schedule nothing is shown, of the formulas that it feeds no number. */
const EMPTY =
  "electrode standoff volts bead speed rpm overlap dwell downslope pulse_share pulse_rate mean_first mean_of_turn heat bore dam_distance cycle";
const NO_NUMBER = "gap_least electrode_length purge_volume purge_time purge_gas laminar ceiling dam_heat";

test.each([
  ["1", "-0.065", /^▲ wall = -0\.065 in: must be above 0$/],
  ["1", "0", /^▲ wall = 0 in: must be above 0$/],
  ["1", "", /^▲ wall = blank: needs a number \(in\)$/],
  ["1", "thin", /^▲ wall = "thin": must be a number or a size/],
  ["1", "Wall (in)", /^▲ wall = "Wall \(in\)": must be a number or a size/],
  ["1", "0.5", /^▲ wall = 0\.5 in: must be .*half of od, 0\.5 in$/],
  ["1", "1.65", /^▲ wall = 1\.65 in: /],
  ["0.12", "0.065", /^▲ wall = 0\.065 in: must be .*half of od, 0\.06 in$/],
  ["", "0.065", /^▲ od = blank: needs a number \(in\)$/],
  ["-1", "0.065", /^▲ od = -1 in: must be above 0$/],
])("od %s and wall %s are no tube", (od, wall, sentence) => {
  sheet.having({ od, wall }, () => {
    for (const name of EMPTY.split(" ")) expect([name, sheet.value(name)]).toEqual([name, ""]);
    for (const name of NO_NUMBER.split(" ")) {
      expect([name, typeof sheet.value(name)]).toEqual([name, "string"]);
    }
    expect(sheet.value("check_tube")).toMatch(sentence);
    for (const check of ["gap", "sectors", "heat", "purge", "flow", "vent", "dams", "cycle"]) {
      expect([check, sheet.value(`check_${check}`)]).toEqual([check, expect.stringMatching(/^▲ /)]);
    }
    const errors = computed(sheet).filter(({ text }) => text === "#DIV/0!" || text === "#ERROR");
    expect(errors).toEqual([]);
  });
});

test("a diameter in millimeters over a wall in inches is told, though it could be computed", () => {
  sheet.having({ od: "12.7", wall: "0.049" }, () => {
    expect(sheet.value("check_tube")).toBe(
      "▲ outside diameter and wall do not belong together: check the units of both",
    );
  });
});

test("a negative wall is refused in words in the cell of the schedule", () => {
  sheet.having({ wall: "-0.065" }, () => {
    expect(sheet.message("schedule")).toBe("wall = -0.065 in: must be above 0");
  });
});

test("numbers of the other system are told, and which they may be", async () => {
  sheet.having({ od: "25.4", wall: "1.65" }, () => {
    expect(sheet.value("check_typed")).toBe(
      "▲ Outside diameter: 25.4 is not between 0.06 and 20 in; it may be mm; Wall: 1.65 is not between 0.005 and 0.5 in; it may be mm",
    );
  });
  const si = await openSheet(procedure, "SI");
  si.type("wall", "0.065");
  expect(si.value("check_typed")).toBe("▲ Wall: 0.065 is not between 0.127 and 12.7 mm; it may be in");
});

test("a tube that is none under a typed speed has no times, and no speed stands", () => {
  sheet.having({ speed_typed: "5", wall: "-0.065" }, () => {
    expect(["speed", "downslope", "cycle"].map((name) => sheet.value(name))).toEqual(["", "", ""]);
  });
  sheet.having({ speed_typed: "-5" }, () => {
    expect(sheet.value("downslope")).toBe("");
    expect(sheet.value("check_tube")).toBe("▲ speed = -5 in/min: must be above 0");
    expect(sheet.value("check_typed")).toBe(
      "▲ Travel speed (blank: suggested): -5 is not between 0.8 and 30 in/min",
    );
  });
});

test("a bead width that cannot be leaves the schedule empty and is named", () => {
  sheet.having({ bead_typed: "-0.1", speed_typed: "5" }, () => {
    const waiting = ["bead", "overlap", "mean_first", "cycle"].map((name) => sheet.value(name));
    expect(waiting).toEqual(["", "", "", ""]);
    expect(sheet.value("check_tube")).toBe("▲ beadWidth = -0.1 in: must be above 0");
  });
});

test("a peak under which no pulse gives the mean is refused with that reason", () => {
  sheet.having({ peak_typed: "40" }, () => {
    expect(sheet.value("check_tube")).toMatch(/^▲ peak = 40 A: the first sector needs a mean of .+ A/);
    expect(sheet.value("pulse_share")).toBe("");
  });
});

test("no standard electrode carries the current of copper: no electrode, no gap, and it is told", () => {
  sheet.having({ od: "4", wall: "0.15", material: "C12200" }, () => {
    expect(sheet.value("electrode")).toBe("");
    expect(sheet.value("check_tube")).toMatch(/^▲ wall = 0\.15 in: .*no standard electrode/);
    expect(sheet.value("check_gap")).toBe("▲ no electrode or no standoff");
    expect(sheet.value("check_heat")).toBe("▲ a sector has no heat input");
  });
});

test.each(["0", "-15", ""])(
  "with a purge flow of “%s” nothing divides by it, and no flow is called laminar",
  (flow) => {
    sheet.having({ purge_flow: flow }, () => {
      for (const name of ["purge_displaced", "purge_common", "purge_time", "purge_gas", "pressure"]) {
        expect([name, typeof sheet.value(name)]).toEqual([name, "string"]);
      }
      expect(sheet.value("check_flow")).toBe("▲ no flow to judge");
      expect(sheet.value("check_purge")).toMatch(/^▲ flow = .+: /);
      expect(computed(sheet).filter(({ text }) => text === "#DIV/0!")).toEqual([]);
    });
  },
);

test("a vent of 1/16 in is refused by name, typed as a number or as a fraction", () => {
  for (const vent of ["0.0625", "1/16"]) {
    sheet.having({ vent }, () => {
      expect(sheet.value("pressure")).toBe("#VALUE!");
      expect(sheet.value("check_vent")).toMatch(
        /^▲ ventDiameter = 0\.0625 in: must be at least 0\.08\d+ in for this flow/,
      );
    });
  }
});

test("a vent as wide as the bore is none", () => {
  sheet.having({ vent: "0.87" }, () => {
    expect(sheet.value("check_vent")).toBe("▲ the vent is not smaller than the bore");
  });
});

test("a fraction that a sheet turned into a date is told as one", () => {
  sheet.having({ od: "46024" }, () => {
    expect(sheet.value("check_typed")).toMatch(
      /^▲ Outside diameter: 46024 is not between 0\.06 and 20 in; looks like a size that the sheet turned into a date; type it as 0 1\/2, '1\/2 or 0\.5$/,
    );
  });
});

describe("the qualified heat input", () => {
  test.each([
    ["8 kJ/in", /text; type the number alone/],
    ["8,0", /text; type the number alone/],
    ["'8", /text; type the number alone/],
    ["see WPS", /text; type the number alone/],
    ["", /is blank/],
    ["-8", /is not between 1 and 60 kJ\/in/],
    ["0.315", /it may be kJ\/mm/],
  ])("typed as “%s” judges nothing", (content, sentence) => {
    sheet.having({ heat_most: content }, () => {
      expect(sheet.value("check_typed")).toMatch(sentence);
      expect(sheet.value("check_heat")).toBe("▲ no qualified maximum to judge by");
      expect(sheet.value("summary")).toMatch(/^▲ 2 of \d+ need attention: Typed cells: Qualified heat input/);
    });
  });

  test("that the hottest sector passes is in the summary", () => {
    sheet.having({ heat_most: "5" }, () => {
      expect(sheet.value("summary")).toMatch(
        /^▲ 1 of \d+ need attention: Heat input: above the qualified maximum: 5\.\d+ against 5$/,
      );
      expect(sheet.beside("whatif_step", 3, 6)).toBe("ABOVE the maximum");
    });
  });

  test("in SI a comma is no point: 0,315 is not read as 315", async () => {
    const si = await openSheet(procedure, "SI");
    si.type("heat_most", "0,315");
    expect(si.value("check_heat")).toBe("▲ no qualified maximum to judge by");
    // As another program may hand it over.
    si.type("heat_most", "315");
    expect(si.value("check_typed")).toBe(
      "▲ Qualified heat input, maximum: 315 is not between 0.02 and 2.4 kJ/mm",
    );
    expect(si.value("check_heat")).toBe("▲ no qualified maximum to judge by");
  });
});
