import { procedure } from "../../taskpane/templates/procedure";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

/** Values of a column of the cycle table, which the formula named `phases` spills. */
function phaseColumn(sheet: OpenSheet, column: number): unknown[] {
  return Array.from({ length: 7 }, (_, row) => sheet.beside("phases", column, row));
}

describe("the procedure sheet in US units, against hand calculations (example values invented)", () => {
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(procedure, "US");
  });

  /** od 1 in, wall 0.065 in, 316L, α 5.848 mm²/s; v = 1.6·α/b with b = 1 mm + 2·1.651 mm = 4.302 mm. */
  const speed = ((1.6 * 5.848) / 4.302 / 25.4) * 60;
  const volts = 8.5 + 0.8 * (0.065 / 2 + 0.01) * 25.4;
  const volume = (Math.PI / 4) * 0.87 ** 2 * 24;
  const changes = Math.log(209_500 / 50);

  test.each([
    ["electrode", 0.04, "AWS A5.12: 65 A lies in 15–80 A of 0.040 in"],
    ["standoff", 0.065 / 2 + 0.01, "half the wall plus ten thousandths"],
    ["gap_least", 0.0425 - 0.0025 - 0.002, "half the tolerance and half the runout off"],
    ["electrode_length", 1.5 - 0.5 - 0.0425, "reach less radius less standoff"],
    ["volts", volts, "8.5 V + 0.8 V/mm"],
    ["amps", 65, "one ampere per thousandth of an inch"],
    ["speed", speed, "v·b/4α = 0.4"],
    ["rpm", speed / Math.PI, "v/(π·1 in)"],
    ["overlap", 20, "360·0.16937/(π·1) = 19.41°, up to a multiple of 5"],
    ["heat", (60 * volts * 65) / (1000 * speed), "60·V·A/v, J/in"],
    ["bore", 1 - 2 * 0.065, "od less two walls"],
    ["purge_volume", volume / 1728, "π/4·d²·L, 1728 in³ to the ft³"],
    ["purge_changes", changes, "ln(209 500/50)"],
    ["purge_time", ((changes * volume) / 1728 / 15) * 3600, "changes·volume/flow"],
    ["purge_gas", (changes * volume) / 1728, "changes·volume"],
    ["cycle", 30 + 2 + ((Math.PI * (380 / 360)) / speed) * 60 + 6 + 15 + 240, "sum of the phases"],
  ])("%s", (name, expected) => {
    const value = sheet.value(name);
    expect(typeof value).toBe("number");
    expect(Math.abs(Number(value) / expected - 1)).toBeLessThan(1e-9);
  });

  test("greatest gap, feeler leaves, verdict", () => {
    expect(sheet.beside("gap_least", 1)).toBeCloseTo(0.0425 + 0.0025 + 0.002, 12);
    expect(sheet.value("feeler")).toBe("0.035 + 0.008");
    expect(sheet.value("verdict")).toBe("Within the maximum");
  });

  test("the cycle table: seven phases that follow one another", () => {
    const turn = (Math.PI / speed) * 60;
    const lasts = [30, 2, turn, (turn * 20) / 360, 6, 15, 240];
    expect(phaseColumn(sheet, 0)).toEqual([
      "Prepurge",
      "Start dwell",
      "Full turn",
      "Overlap",
      "Downslope",
      "Postpurge",
      "Handling",
    ]);
    let clock = 0;
    lasts.forEach((seconds, row) => {
      expect(sheet.beside("phases", 1, row)).toBeCloseTo(clock, 9);
      expect(sheet.beside("phases", 2, row)).toBeCloseTo(seconds, 9);
      clock += seconds;
    });
    expect(phaseColumn(sheet, 3)).toEqual([false, true, true, true, true, false, false]);
  });

  test("every check is fine and no cell holds an error", async () => {
    const { contents } = await sheet.form();
    for (const name of contents.keys()) {
      if (name.startsWith("check_")) expect([name, sheet.value(name)]).toEqual([name, "fine"]);
      expect([name, String(sheet.value(name)).startsWith("#")]).toEqual([name, false]);
    }
  });
});

describe("the procedure sheet in SI units", () => {
  test("od 25.4 mm, wall 1.65 mm, against hand calculations", async () => {
    const sheet = await openSheet(procedure, "SI");
    const speed = ((1.6 * 5.848) / (1 + 2 * 1.65)) * 60;
    const volts = 8.5 + 0.8 * (1.65 / 2 + 0.254);
    const amps = 1.65 / 0.0254;
    const litres = ((Math.PI / 4) * 22.1 ** 2 * 600) / 1e6;
    expect(sheet.value("standoff")).toBeCloseTo(1.079, 12);
    expect(sheet.value("electrode")).toBeCloseTo(1.0, 12);
    expect(sheet.value("amps")).toBeCloseTo(amps, 9);
    expect(sheet.value("speed")).toBeCloseTo(speed, 9);
    expect(sheet.value("heat")).toBeCloseTo((60 * volts * amps) / (1000 * speed), 9);
    expect(sheet.value("purge_volume")).toBeCloseTo(litres, 12);
    expect(sheet.value("purge_time")).toBeCloseTo(((Math.log(209_500 / 50) * litres) / 7) * 60, 9);
    expect(sheet.value("feeler")).toBe("1 + 0.1");
    expect(sheet.value("verdict")).toBe("Within the maximum");
    expect(sheet.beside("wall", 1)).toBe("mm");
    expect(sheet.beside("purge_flow", 1)).toBe("L/min");
  });
});

describe("what a person types", () => {
  test("another wall changes everything that hangs on it", async () => {
    const sheet = await openSheet(procedure, "US");
    const before = ["standoff", "amps", "speed", "heat", "purge_volume", "cycle"].map((name) =>
      sheet.value(name),
    );
    sheet.type("wall", "0.083");
    const after = ["standoff", "amps", "speed", "heat", "purge_volume", "cycle"].map((name) =>
      sheet.value(name),
    );
    after.forEach((value, i) => {
      expect(value).not.toBe(before[i]);
    });
    expect(sheet.value("standoff")).toBeCloseTo(0.0515, 12);
    expect(sheet.value("bore")).toBeCloseTo(0.834, 12);
  });

  test("a negative wall is refused in words, in the cell and in the check", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("wall", "-0.065");
    expect(sheet.value("standoff")).toBe("#VALUE!");
    expect(sheet.message("standoff")).toBe("wall = -0.065 in: must be above 0");
    expect(sheet.value("check_standoff")).toBe("wall = -0.065 in: must be above 0");
    expect(sheet.value("check_heat")).toBe("waits for the checks above");
    expect(sheet.value("verdict")).toBe("No heat input to judge");
  });

  test("text, blank and a wall too thick for the tube each say what is wrong", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("wall", "Wall (in)");
    expect(sheet.value("check_standoff")).toBe('wall = "Wall (in)": must be a number (in)');
    sheet.type("wall", "");
    expect(sheet.value("check_standoff")).toMatch(/^wall = .+: /);
    sheet.type("wall", "0.5");
    expect(sheet.value("check_tube")).toMatch(/look like millimetres/);
    sheet.type("od", "0.4");
    sheet.type("wall", "0.25");
    expect(sheet.value("check_tube")).toBe("wall = 0.25 in: must be under half of od, 0.2 in");
  });

  test("numbers of the other system are noticed", async () => {
    const us = await openSheet(procedure, "US");
    us.type("od", "25.4");
    us.type("wall", "1.65");
    expect(us.value("check_tube")).toBe(
      "Outside diameter and wall look like millimetres; this sheet is in inches.",
    );
    const si = await openSheet(procedure, "SI");
    si.type("wall", "0.065");
    expect(si.value("check_tube")).toBe(
      "Outside diameter and wall look like inches; this sheet is in millimetres.",
    );
  });

  test("typed current, speed and overlap take the place of the suggested ones", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("amps_typed", "50");
    sheet.type("speed_typed", "4");
    sheet.type("overlap_typed", "0");
    expect(["amps", "speed", "overlap"].map((name) => sheet.value(name))).toEqual([50, 4, 0]);
    expect(sheet.value("heat")).toBeCloseTo((60 * Number(sheet.value("volts")) * 50) / 4000, 9);
  });

  test("a heat input above the qualified maximum is called so; no maximum, no verdict", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("heat_most", "7");
    expect(sheet.value("verdict")).toBe("ABOVE the maximum");
    sheet.type("heat_most", "");
    expect(sheet.value("verdict")).toBe("No qualified maximum typed");
  });

  test("the units cell and the material take only their own words", async () => {
    const sheet = await openSheet(procedure, "US");
    const { places } = await sheet.form();
    expect(places.get("sheet_units")).toBe("B3");
    const rules = sheet.model.getters.getDataValidationRules(sheet.model.getters.getActiveSheetId());
    const allowed = rules.map(({ isBlocking, criterion }) => [isBlocking, criterion.values]);
    expect(allowed).toContainEqual([true, ["US"]]);
    expect(allowed.some(([blocking, values]) => blocking === true && String(values).includes("316L"))).toBe(
      true,
    );
  });
});

describe("conversion to the other system", () => {
  const PHYSICS = ["volts", "amps", "rpm", "overlap", "purge_changes", "purge_time", "cycle"];

  test("rewrites the typed numbers, keeps the physics, and comes back to what was typed", async () => {
    const sheet = await openSheet(procedure, "US");
    const typed = new Map((await sheet.form()).contents);
    const before = PHYSICS.map((name) => Number(sheet.value(name)));
    const standoff = Number(sheet.value("standoff"));

    expect(await sheet.convert()).toBe("");
    expect(sheet.value("sheet_units")).toBe("SI");
    expect(sheet.value("wall")).toBeCloseTo(1.651, 12);
    expect(sheet.value("heat_most")).toBeCloseTo(8 / 25.4, 12);
    expect(sheet.beside("wall", 1)).toBe("mm");
    expect(sheet.value("standoff")).toBeCloseTo(standoff * 25.4, 10);
    PHYSICS.forEach((name, i) => {
      expect([name, Math.abs(Number(sheet.value(name)) / (before[i] ?? NaN) - 1) < 1e-9]).toEqual([
        name,
        true,
      ]);
    });

    expect(await sheet.convert()).toBe("");
    const again = (await sheet.form()).contents;
    for (const [name, content] of typed) expect([name, again.get(name)]).toEqual([name, content]);
  });

  test("follows cells that moved when a row was inserted", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.insertRowAbove("wall");
    expect(await sheet.convert()).toBe("");
    expect(sheet.value("wall")).toBeCloseTo(1.651, 12);
    expect(sheet.value("bore")).toBeCloseTo(22.098, 10);
    expect(sheet.value("check_tube")).toBe("fine");
  });

  test("changes nothing when a typed cell holds a formula of the person's own or text", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("wall", "=0.13/2");
    expect(await sheet.convert()).toMatch(/^Nothing was changed\. .*B10 \(wall\)/);
    expect(sheet.value("sheet_units")).toBe("US");
    expect(sheet.value("od")).toBe(1);
    sheet.type("wall", "thin");
    expect(await sheet.convert()).toMatch(/^Nothing was changed\./);
  });
});
