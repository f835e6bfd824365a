import { gas } from "../../taskpane/sheets/gas";
import { JOINTS } from "../../taskpane/sheets/gas/inputs";
import { computed } from "./computed";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

/**
 * u with E₁(u) = 4πkhθ/q at v·b/4α = 0.4: a number of the suggested speed alone, found by numerical integration of K₀ and
 * K₁ and the series of E₁ outside this project. The dwell is b²/(16αu).
 */
const U = 0.048_377_104_521;
const DIFFUSIVITY: Record<string, number> = { "316L": 5.848, "304L": 5.8167 };

interface Worked {
  readonly joints: number;
  readonly cycle: number;
  readonly purge: number;
  readonly arcGas: number;
  readonly purgeGas: number;
}

/** One line of the bid by hand. Lengths in mm, flows in volume a second, the volume unit given by its mm³. */
function worked(
  joints: number,
  od: number,
  wall: number,
  metal: string,
  torch: number,
  purge: number,
  spacing: number,
  mm3: number,
): Worked {
  const alpha = DIFFUSIVITY[metal] ?? NaN;
  const bead = 1 + 2 * wall;
  const speed = (1.6 * alpha) / bead;
  const dwell = bead ** 2 / (16 * alpha * U);
  const turn = (Math.PI * od) / speed;
  const cycle = 30 + dwell + turn * (380 / 360) + (3 * bead) / speed + 15;
  const volume = ((Math.PI / 4) * (od - 2 * wall) ** 2 * spacing) / mm3;
  const seconds = (Math.log(209_500 / 50) * volume) / purge;
  return {
    joints,
    cycle,
    purge: seconds,
    arcGas: joints * torch * cycle,
    purgeGas: joints * purge * (seconds + cycle),
  };
}

const sum = (lines: readonly Worked[], part: keyof Worked): number =>
  lines.reduce((total, line) => total + line[part], 0);

/** The invented list in US units: 20 ft³/h at the torch, 15 in the bore, dams 24 in apart. */
const US = JOINTS.map(([joints, od, wall, metal]) =>
  worked(joints, od.US * 25.4, wall.US * 25.4, metal, 20 / 3600, 15 / 3600, 24 * 25.4, 304.8 ** 3),
);
/** The invented list in SI units: 10 L/min at the torch, 7 in the bore, dams 600 mm apart. */
const SI = JOINTS.map(([joints, od, wall, metal]) =>
  worked(joints, od.SI, wall.SI, metal, 10 / 60, 7 / 60, 600, 1e6),
);

function expectLines(sheet: OpenSheet, lines: readonly Worked[]): void {
  lines.forEach(({ cycle, purge, arcGas, purgeGas }, row) => {
    [cycle, purge, arcGas, purgeGas, arcGas + purgeGas].forEach((expected, column) => {
      const value = Number(sheet.beside("list_first", column, row));
      expect([row, column, Math.abs(value / expected - 1) < 1e-8]).toEqual([row, column, true]);
    });
  });
}

describe("the gas estimate against a bid worked by hand, line by line (list and prices invented)", () => {
  test("in US units", async () => {
    const sheet = await openSheet(gas, "US");
    expectLines(sheet, US);
    const total = sum(US, "arcGas") + sum(US, "purgeGas");
    expect(sheet.value("joints")).toBe(120 + 220 + 90 + 64 + 36 + 18);
    expect(sheet.value("total_gas")).toBeCloseTo(total, 5);
    expect(sheet.value("purge_share")).toBeCloseTo(sum(US, "purgeGas") / total, 9);
    expect(sheet.value("gas_bought")).toBeCloseTo(total / 0.9, 5);
    // Hours: cycle and 600 s of handling for every joint.
    expect(sheet.value("hours")).toBeCloseTo(
      US.reduce((h, { joints, cycle }) => h + (joints * (cycle + 600)) / 3600, 0),
      6,
    );
    // 49.0 L at 2640 psig hold 331.25 ft³ (real argon, 70 °F); 1.76 ft³ is 49.837 L; 50 psig keep (64.7/14.696) volumes.
    const usable = 331.25 * (49.837 / 49.0) - 1.76 * (64.7 / 14.696);
    expect(Math.abs(Number(sheet.value("usable")) / usable - 1)).toBeLessThan(0.002);
    const containers = Math.ceil(total / 0.9 / usable);
    expect(sheet.value("containers")).toBe(containers);
    expect(sheet.value("cost")).toBeCloseTo(containers * 95, 9);
    expect(sheet.value("cost_per_joint")).toBeCloseTo((containers * 95) / 548, 9);
    expect(sheet.value("lines_verdict")).toBe("all lines counted");
  });

  test("in SI units", async () => {
    const sheet = await openSheet(gas, "SI");
    expectLines(sheet, SI);
    const total = sum(SI, "arcGas") + sum(SI, "purgeGas");
    expect(sheet.value("total_gas")).toBeCloseTo(total, 4);
    // 50 L at 200 bar abs and 15 °C hold 10.6672 m³ (15 °C, 1 bar); 201.01 bar abs a little more, 4.51 bar abs stay.
    expect(
      Math.abs(Number(sheet.value("usable")) / (10_667.2 * (201.01 / 200) - 50 * 4.51) - 1),
    ).toBeLessThan(0.003);
    expect(sheet.beside("torch_flow", 1)).toBe("L/min");
    const texts = computed(sheet).map(({ text }) => text);
    // 3.5 bar is not 4.
    expect(texts).toContain("3.5");
  });

  test("every check is fine and no cell holds an error", async () => {
    const sheet = await openSheet(gas, "US");
    const { cells } = await sheet.form();
    for (const name of cells.keys()) {
      if (name.startsWith("check_")) expect([name, sheet.value(name)]).toEqual([name, "fine"]);
      expect([name, String(sheet.value(name)).startsWith("#")]).toEqual([name, false]);
    }
  });
});

describe("what an estimator does with the list", () => {
  const line = (sheet: OpenSheet, row: number, cells: readonly string[]): void => {
    cells.forEach((content, column) => {
      sheet.typeBeside("od", column - 1, row, content);
    });
  };

  test("a line more, a line blanked, another cylinder", async () => {
    const sheet = await openSheet(gas, "US");
    line(sheet, 6, ["10", "1", "0.065", "316L"]);
    const one = US[1];
    const share = 10 / (one?.joints ?? NaN);
    const total = sum(US, "arcGas") + sum(US, "purgeGas");
    const more = ((one?.arcGas ?? NaN) + (one?.purgeGas ?? NaN)) * share;
    expect(sheet.value("total_gas")).toBeCloseTo(total + more, 5);
    line(sheet, 6, ["", "", "", ""]);
    expect(sheet.value("total_gas")).toBeCloseTo(total, 5);
    const before = Number(sheet.value("containers_exact"));
    sheet.type("water_volume", "0.88");
    expect(sheet.value("containers_exact")).toBeCloseTo(2 * before, 6);
  });

  test("a row inserted inside the list joins in", async () => {
    const sheet = await openSheet(gas, "US");
    sheet.insertRow("od", 3);
    line(sheet, 3, ["65", "1", "0.065", "316L"]);
    const total = sum(US, "arcGas") + sum(US, "purgeGas");
    const more = (((US[1]?.arcGas ?? NaN) + (US[1]?.purgeGas ?? NaN)) * 65) / 220;
    expect(sheet.value("total_gas")).toBeCloseTo(total + more, 5);
    expect(sheet.value("joints")).toBe(548 + 65);
  });

  test("a line that cannot be is omitted with its reason, and said so in the totals", async () => {
    const sheet = await openSheet(gas, "US");
    line(sheet, 1, ["220", "1", "0.6", "316L"]);
    const rest = US.filter((_, i) => i !== 1);
    expect(String(sheet.beside("list_first", 5, 1))).toMatch(/wall.*must be less than half of od/);
    expect(sheet.value("total_gas")).toBeCloseTo(sum(rest, "arcGas") + sum(rest, "purgeGas"), 5);
    expect(sheet.value("lines_verdict")).toMatch(/1 line omitted/);
    expect(sheet.value("joints")).toBe(548 - 220);
  });

  test("an empty list has no totals and says so, a price or not", async () => {
    const sheet = await openSheet(gas, "US");
    for (let row = 0; row < JOINTS.length; row += 1) line(sheet, row, ["", "", "", ""]);
    const totals =
      "joints arc_gas purge_gas total_gas gas_used purge_share gas_bought gas_per_joint hours containers_exact containers cost cost_per_joint";
    for (const name of totals.split(" ")) expect([name, sheet.value(name)]).toEqual([name, ""]);
    expect(sheet.value("lines_verdict")).toBe("no lines to count");
    expect(sheet.value("check_list")).toBe("no lines to count");
    line(sheet, 0, ["5", "1", "", ""]);
    expect(sheet.value("lines_verdict")).toBe("1 line omitted");
    for (const name of totals.split(" ")) expect([name, sheet.value(name)]).toEqual([name, ""]);
  });

  test("what all lines share is checked too: a handling time that cannot be", async () => {
    const sheet = await openSheet(gas, "US");
    sheet.type("handling", "-5");
    expect(sheet.value("check_list")).toBe("handlingSeconds = -5 s: must be 0 or more");
    expect(sheet.value("lines_verdict")).toBe("none counted: see the checks");
    expect(["containers", "cost"].map((name) => sheet.value(name))).toEqual(["", ""]);
  });

  test("numbers stored as text count", async () => {
    const sheet = await openSheet(gas, "US");
    const total = sheet.value("total_gas");
    line(sheet, 1, ['="220"', '="1"', '="0.065"', "316L"]);
    expect(sheet.value("total_gas")).toBeCloseTo(Number(total), 6);
    expect(sheet.value("joints")).toBe(548);
  });

  test("no purge, no purge gas; liquid in place of cylinders", async () => {
    const sheet = await openSheet(gas, "US");
    sheet.type("purge_flow", "0");
    expect(sheet.value("purge_gas")).toBe(0);
    expect(sheet.value("total_gas")).toBeCloseTo(sum(US, "arcGas"), 5);
    sheet.type("supply", "liquid");
    // 2018 International Fire Code: a liter of liquid argon gives 29.71 ft³.
    expect(sheet.value("usable")).toBeCloseTo(230 * 0.9 * 29.71, 9);
  });

  test("walls of the other system are noticed", async () => {
    const sheet = await openSheet(gas, "SI");
    sheet.typeBeside("wall", 0, 0, "0.065");
    sheet.typeBeside("wall", 0, 1, "0.065");
    for (let row = 2; row < JOINTS.length; row += 1) sheet.typeBeside("wall", 0, row, "0.083");
    expect(sheet.value("check_units")).toBe("The walls look like inches; this sheet is in millimetres.");
  });

  test("conversion takes inserted lines along and keeps gas, hours and cost", async () => {
    const sheet = await openSheet(gas, "US");
    sheet.insertRow("od", 2);
    line(sheet, 2, ["5", "0.75", "0.065", "316L"]);
    const before = ["joints", "hours", "purge_share"].map((name) => Number(sheet.value(name)));
    const liters = Number(sheet.value("gas_used")) * 28.316_846_592;
    expect(await sheet.convert()).toBe("");
    expect(sheet.beside("od", 0, 2)).toBeCloseTo(19.05, 10);
    ["joints", "hours", "purge_share"].forEach((name, i) => {
      expect(sheet.value(name)).toBeCloseTo(before[i] ?? NaN, 8);
    });
    expect(Number(sheet.value("gas_used")) / liters).toBeCloseTo(1, 9);
    expect(await sheet.convert()).toBe("");
    expect(sheet.beside("od", 0, 2)).toBe(0.75);
  });
});
