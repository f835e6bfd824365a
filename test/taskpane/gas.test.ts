import { gas } from "../../taskpane/sheets/gas";
import { computed } from "./computed";
import type { HandLine, Worked } from "./gas-by-hand";
import { gasOf, hoursOf, SI_LINES, SI_TERMS, sum, US_LINES, worked, workedInches } from "./gas-by-hand";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

const US = US_LINES.map(workedInches);
const SI = SI_LINES.map((line: HandLine) => worked(line, SI_TERMS));
/** mm/s of the unit of travel: in/min, mm/min. */
const TRAVEL = { US: 25.4 / 60, SI: 1 / 60 } as const;

function expectLines(sheet: OpenSheet, lines: readonly Worked[], travelUnit: number): void {
  lines.forEach(({ joints, travel, cycle, purge, arcGas, purgeGas }, i) => {
    const hours = (joints * (cycle + 600)) / 3600;
    const expected = [joints, travel / travelUnit, cycle, purge, hours, arcGas, purgeGas, arcGas + purgeGas];
    expected.forEach((value, column) => {
      const there = Number(sheet.beside("takeoff", column, i + 1));
      expect([i, column, Math.abs(there / value - 1) < 1e-8]).toEqual([i, column, true]);
    });
    expect(sheet.beside("takeoff", 8, i + 1)).toBe("");
  });
}

const SIZE_NAMES = [
  "0.5 × 0.049 316L",
  "1 × 0.065 316L",
  "1.5 × 0.065 316L",
  "2 × 0.065 316L",
  "3 × 0.065 304L",
  "4 × 0.083 304L",
];
const TOTALS =
  "joints gas_used purge_share gas_bought gas_per_joint hours containers_exact containers cost cost_per_joint".split(
    " ",
  );

let sheet: OpenSheet;
beforeAll(async () => {
  sheet = await openSheet(gas, "US");
});

describe("the gas estimate against a bid worked by hand, line by line (list and prices invented)", () => {
  test("in US units", () => {
    expectLines(sheet, US, TRAVEL.US);
    const total = gasOf(US);
    expect(sheet.value("joints")).toBe(120 + 220 + 90 + 64 + 36 + 18);
    expect(sheet.value("gas_used")).toBeCloseTo(total, 5);
    expect(sheet.value("purge_share")).toBeCloseTo(sum(US, "purgeGas") / total, 9);
    expect(sheet.value("gas_bought")).toBeCloseTo(total / 0.9, 5);
    expect(sheet.value("gas_per_joint")).toBeCloseTo(total / 0.9 / 548, 7);
    expect(sheet.value("hours")).toBeCloseTo(hoursOf(US), 6);
    // 49.0 L at 2640 psig hold 331.25 ft³ (real argon, 70 °F); 1.76 ft³ is 49.837 L; 50 psig keep (64.7/14.696) volumes.
    const usable = 331.25 * (49.837 / 49.0) - 1.76 * (64.7 / 14.696);
    expect(Math.abs(Number(sheet.value("usable")) / usable - 1)).toBeLessThan(0.002);
    const containers = Math.ceil(total / 0.9 / usable);
    expect(sheet.value("containers")).toBe(containers);
    expect(sheet.value("cost")).toBeCloseTo(containers * 95, 9);
    expect(sheet.value("cost_per_joint")).toBeCloseTo((containers * 95) / 548, 9);
    expect(sheet.value("lines")).toBe("6 of 6");
    // Each size of the list stands once, so the table by size repeats its lines.
    US.forEach(({ joints, arcGas, purgeGas }, i) => {
      const row = [3, 5, 6, 7].map((column) => sheet.beside("by_size", column, i));
      expect(sheet.beside("by_size", 10, i)).toBe(SIZE_NAMES[i]);
      expect(row[0]).toBe(joints);
      [arcGas, purgeGas, arcGas + purgeGas].forEach((gas, c) => {
        expect(Math.abs(Number(row[c + 1]) / gas - 1)).toBeLessThan(1e-8);
      });
    });
  });

  test("a bar is not named by the tail of a computed size", () => {
    sheet.typeBeside("takeoff", -2, 1, "0.052000000000000005");
    expect(sheet.beside("by_size", 10)).toBe("0.5 × 0.052 316L");
    sheet.undo();
    expect(sheet.beside("by_size", 10)).toBe(SIZE_NAMES[0]);
  });

  test("in SI units", async () => {
    const si = await openSheet(gas, "SI");
    expectLines(si, SI, TRAVEL.SI);
    expect(si.value("gas_used")).toBeCloseTo(gasOf(SI), 4);
    // 50 L at 200 bar abs and 15 °C hold 10.6672 m³ (15 °C, 1 bar); 201.01 bar abs a little more, 4.51 bar abs stay.
    expect(Math.abs(Number(si.value("usable")) / (10_667.2 * (201.01 / 200) - 50 * 4.51) - 1)).toBeLessThan(
      0.003,
    );
    expect(si.beside("torch_flow", 1)).toBe("L/min");
    const texts = computed(si).map(({ text }) => text);
    // 3.5 bar is not 4.
    expect(texts).toContain("3.5");
    expect(si.holds()).toBe(true);
  });

  test("every check holds, the summary counts them, and no cell holds an error", async () => {
    const { cells } = await sheet.form();
    const checks = [...cells.keys()].filter((name) => name.startsWith("check_"));
    for (const name of checks) expect([name, sheet.value(name)]).toEqual([name, "✓ holds"]);
    expect(sheet.value("summary")).toMatch(new RegExp(`^✓ All ${String(checks.length)} checks hold\\.`));
    for (const name of cells.keys()) {
      expect([name, String(sheet.value(name)).startsWith("#")]).toEqual([name, false]);
    }
  });
});

describe("what an estimator types", () => {
  afterEach(() => {
    expect(sheet.holds()).toBe(true);
  });

  test("another cylinder, and liquid in place of cylinders", () => {
    const before = Number(sheet.value("containers_exact"));
    sheet.having({ water_volume: "0.88" }, () => {
      expect(sheet.value("containers_exact")).toBeCloseTo(2 * before, 6);
    });
    sheet.having({ supply: "liquid" }, () => {
      // 29.71 ft³ of gas from a liter of liquid (2018 International Fire Code).
      expect(sheet.value("usable")).toBeCloseTo(230 * 0.9 * 29.71, 9);
      expect(sheet.holds()).toBe(true);
    });
  });

  test("less oxygen to reach takes longer and more gas, by the logarithm", () => {
    sheet.having({ target_ppm: "10" }, () => {
      const ratio = Math.log(209_500 / 10) / Math.log(209_500 / 50);
      expect(sheet.beside("takeoff", 3, 2)).toBeCloseTo((US[1]?.purge ?? NaN) * ratio, 7);
    });
  });

  /** What is typed, in which check it is told and how; nothing that is made of it stands. */
  test.each<[Record<string, string>, string, RegExp, string]>([
    [{ waste: "10" }, "check_typed", /Waste.*: 10 is not between 0 and 0\.6$/, "gas_bought containers cost"],
    [{ waste: "1" }, "check_typed", /Waste.*: 1 is not between 0 and 0\.6$/, "gas_bought containers cost"],
    [{ price: "-5" }, "check_typed", /Price per container: -5 is not between 1 and/, "cost cost_per_joint"],
    [
      { purge_flow: "-15" },
      "check_list",
      /^▲ purgeFlow = -15 ft³\/h: /,
      "joints gas_used hours containers cost",
    ],
    [
      { dam_spacing: "-24" },
      "check_list",
      /^▲ damSpacing = -24 in: /,
      "joints gas_used hours containers cost",
    ],
    [{ dam_spacing: "" }, "check_typed", /^▲ Dam spacing: is blank$/, ""],
    [
      { handling: "-5" },
      "check_list",
      /^▲ handlingSeconds = -5 s: /,
      "joints gas_used hours containers cost",
    ],
    [
      { supply: "dewar" },
      "check_typed",
      /Supply: “dewar” is not one of the words in its list$/,
      "usable containers cost",
    ],
    [{ supply: "liquid", liquid_share: "90" }, "check_supply", /^▲ usable = 90: /, "containers cost"],
    [{ supply: "liquid", liquid_share: "-1" }, "check_supply", /^▲ usable = -1: /, "containers cost"],
    [{ water_volume: "50" }, "check_typed", /: 50 is not between 0\.07 and 2\.9 ft³; it may be L$/, ""],
    [{ full_pressure: "200" }, "check_typed", /: 200 is not between 460 and 6500 psi; it may be bar$/, ""],
    [{ residual: "2640" }, "check_supply", /^▲ /, "containers cost"],
    [{ target_ppm: "0" }, "check_purge", /^▲ ppm = 0 ppm: |^▲ ppm = /, ""],
    [{ supply_ppm: "60" }, "check_purge", /^▲ /, ""],
    [
      { torch_flow: "twenty" },
      "check_typed",
      /^▲ Torch flow: “twenty” is text; type the number alone$/,
      "joints cost",
    ],
    [
      { target_ppm: "1 000" },
      "check_typed",
      /^▲ Oxygen to reach: “1 000” is text; type the number alone$/,
      "joints cost",
    ],
    [
      { handling: "0:30" },
      "check_typed",
      /^▲ Handling per joint: “0:30” is text; type the number alone$/,
      "joints cost",
    ],
    [
      { handling: "0.0208333" },
      "check_typed",
      /type seconds: the sheet turns 0:30 into a fraction of a day$/,
      "",
    ],
  ])("%j is told", (typed, check, sentence, empty) => {
    sheet.having(typed, () => {
      expect(sheet.holds()).toBe(false);
      expect(sheet.value(check)).toMatch(sentence);
      for (const name of empty.split(" ").filter((one) => one !== "")) {
        expect([name, typeof sheet.value(name)]).toEqual([name, "string"]);
      }
      for (const name of TOTALS) expect([name, Number(sheet.value(name)) >= 0]).not.toEqual([name, false]);
    });
  });

  test("6 000 mm between the dams is told in SI, and 12,700 for a wall is refused in its line", async () => {
    const si = await openSheet(gas, "SI");
    si.type("dam_spacing", "6 000");
    expect(si.value("check_typed")).toMatch(/^▲ Dam spacing: “6 000” is no size/);
    si.type("dam_spacing", "600");
    si.typeBeside("takeoff", -2, 1, "12,700");
    expect(si.beside("takeoff", 8, 1)).toMatch(/^wall: .*comma/);
    expect(si.value("lines")).toBe("5 of 6");
    expect(si.value("check_list")).toMatch(/^▲ 1 of 6 lines not counted/);
  });
});
