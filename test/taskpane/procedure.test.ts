import { DESIGNATIONS } from "../../src/metal/material";
import { procedure } from "../../taskpane/sheets/procedure";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";
import { number } from "../bead";

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
    ["bead", 4.302 / 25.4, "1 mm + 2 × wall"],
    ["peak", 65, "one ampere per thousandth of an inch"],
    ["speed", speed, "v·b/4α = 0.4"],
    ["rpm", speed / Math.PI, "v/(π·1 in)"],
    ["overlap", 20, "360·0.16937/(π·1) = 19.41°, up to a multiple of 5"],
    ["downslope", ((3 * 4.302) / 25.4 / speed) * 60, "three bead widths of travel"],
    ["pulse_rate", speed / 60 / ((4.302 / 25.4) * 0.25), "spots overlap by three quarters"],
    ["bore", 1 - 2 * 0.065, "od less two walls"],
    ["purge_volume", volume / 1728, "π/4·d²·L, 1728 in³ to the ft³"],
    ["purge_changes", changes, "ln(209 500/50)"],
    ["purge_time", ((changes * volume) / 1728 / 15) * 3600, "changes·volume/flow"],
    ["purge_gas", (changes * volume) / 1728, "changes·volume"],
  ])("%s", (name, expected) => {
    const value = sheet.value(name);
    expect(typeof value).toBe("number");
    expect(Math.abs(Number(value) / expected - 1)).toBeLessThan(1e-9);
  });

  test("the current of the first sector: Wells' formula, which agrees with the model within 8 %", () => {
    // Wells 1952: Q = 8kθh·(0.2 + v·w/4α), with k 28.387 W/mK, θ 1430 K, h 1.651 mm, v·w/4α = 0.4, efficiency 0.78.
    const wells = (8 * 28.387 * 1430 * 0.001_651 * 0.6) / (0.78 * volts);
    expect(Math.abs(Number(sheet.value("mean_first")) / wells - 1)).toBeLessThan(0.08);
  });

  test("the purge block: times side by side, laminar limit, vent, pressure, blow-out and sample", () => {
    const FT3H = 0.3048 ** 3 / 3600;
    const [density, viscosity, bore, flow] = [1.66182, 22.3065e-6, 0.87 * 0.0254, 15 * FT3H];
    const seconds = (volume / 1728 / 15) * 3600;
    expect(sheet.value("purge_displaced")).toBeCloseTo(seconds, 9);
    expect(sheet.value("purge_common")).toBeCloseTo(6 * seconds, 9);
    // 209 500 ppm·e⁻⁶: 519.299 ppm, recomputed.
    expect(sheet.value("purge_common_ppm")).toBeCloseTo(519.299, 3);
    const laminar = (2000 * Math.PI * viscosity * bore) / (4 * density) / FT3H;
    expect(sheet.value("laminar")).toBeCloseTo(laminar, 6);
    expect(sheet.value("laminar_verdict")).toBe("Laminar: little mixing");
    // A round sharp-edged orifice: Q = 0.61·A·√(2Δp/ρ); 1 inH₂O = 249.08891 Pa.
    const hole = (pascal: number): number =>
      Math.sqrt((4 * flow) / (Math.PI * 0.61 * Math.sqrt((2 * pascal) / density))) / 0.0254;
    expect(sheet.value("vent_wanted")).toBeCloseTo(hole(0.3 * 249.08891), 9);
    expect(hole(Number(sheet.value("pressure")) * 249.08891)).toBeCloseTo(0.1875, 9);
    // 2σ/w with σ 1.593 N/m (Pichler et al. 2022) and the bead width.
    expect(sheet.value("ceiling")).toBeCloseTo((2 * 1.593) / 0.004_302 / 249.08891, 9);
    expect(sheet.value("pressure_verdict")).toBe("Safe by a factor of 2");
    expect(sheet.value("tint")).toBe(3);
  });

  test("the oxygen curve starts at air and crosses the target at the purge time", () => {
    expect(sheet.beside("moments", 1)).toBeCloseTo(209_500, 6);
    for (let r = 0; r < 21; r += 1) {
      const moment = Number(sheet.beside("moments", 0, r));
      const below = Number(sheet.beside("moments", 1, r)) <= 50;
      expect([r, below]).toEqual([r, moment >= Number(sheet.value("purge_time"))]);
      expect(sheet.beside("moments", 2, r)).toBeCloseTo(Math.log10(Number(sheet.beside("moments", 1, r))), 9);
      expect(sheet.beside("moments", 3, r)).toBeCloseTo(Math.log10(50), 12);
    }
  });

  test("the table of sectors hangs together: peak, background and heat input follow mean and share", () => {
    const first = Number(sheet.value("mean_first"));
    const bounds = [0, 90, 180, 270, 360, 380];
    const heats: number[] = [];
    for (let row = 0; row < 5; row += 1) {
      const [from, to, mean, share, , peak, back, heat] = Array.from({ length: 8 }, (_, column) =>
        Number(sheet.beside("sectors", column, row)),
      );
      expect([from, to]).toEqual([bounds[row], bounds[row + 1]]);
      expect(mean).toBeCloseTo(first * Number(share), 9);
      expect(peak).toBeCloseTo(65 * Number(share), 9);
      expect(back).toBeCloseTo(0.3 * 65 * Number(share), 9);
      expect(heat).toBeCloseTo((60 * volts * Number(mean)) / (1000 * speed), 9);
      heats.push(Number(heat));
      if (row > 0) expect(Number(mean)).toBeLessThan(Number(sheet.beside("sectors", 2, row - 1)));
    }
    expect(sheet.value("heat")).toBeCloseTo(Math.max(...heats), 9);
    // Peak share: (mean − background)/(peak − background).
    expect(sheet.value("pulse_share")).toBeCloseTo((first - 19.5) / (65 - 19.5), 9);
  });

  test("the dam stands at the larger of what the heat asks and six inches", () => {
    expect(Number(sheet.value("dam_heat"))).toBeGreaterThan(1);
    expect(sheet.value("dam_distance")).toBe(Math.max(6, Number(sheet.value("dam_heat"))));
    expect(sheet.value("dam_verdict")).toBe("Far enough");
  });

  test("what if: no change gives the bead aimed at; more current, a wider bead and more heat", () => {
    const row = (r: number, column: number): number => Number(sheet.beside("whatif_step", column, r + 2));
    const widths = [0, 1, 2, 3, 4].map((r) => row(r, 1));
    expect(widths[2]).toBeCloseTo(4.302 / 25.4, 6);
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
    const first = Number(sheet.value("mean_first"));
    [-0.1, -0.05, 0, 0.05, 0.1].forEach((change, r) => {
      expect(row(r, 0)).toBeCloseTo(first * (1 + change), 9);
      expect(row(r, 2)).toBeCloseTo((60 * volts * first * (1 + change)) / (1000 * speed), 9);
    });
  });

  test("the chart's two courses: what the tube needs and what four sectors set", () => {
    for (let r = 0; r < 24; r += 1) {
      expect(sheet.beside("course", 0, r)).toBeCloseTo(15 * r, 9);
      expect(sheet.beside("course", 5, r)).toBe(sheet.beside("sectors", 2, Math.floor(r / 6)));
    }
    const needed = Array.from({ length: 6 }, (_, i) => Number(sheet.beside("course", 2, 18 + i)));
    const mean = needed.reduce((sum, amps) => sum + amps, 0) / 6;
    // The mean over six fine sectors is the mean of the quarter they fill.
    expect(Math.abs(mean / Number(sheet.beside("sectors", 2, 3)) - 1)).toBeLessThan(0.001);
  });

  test("maximum gap, feeler leaves, verdict", () => {
    expect(sheet.beside("gap_least", 1)).toBeCloseTo(0.0425 + 0.0025 + 0.002, 12);
    expect(sheet.value("feeler")).toBe("0.035 + 0.008");
    expect(sheet.value("verdict")).toBe("Within the maximum");
  });

  test("the cycle table: seven phases that follow one another", () => {
    const turn = (Math.PI / speed) * 60;
    const dwell = Number(sheet.value("dwell"));
    const lasts = [30, dwell, turn, (turn * 20) / 360, ((3 * 4.302) / 25.4 / speed) * 60, 15, 240];
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
    expect(sheet.value("cycle")).toBeCloseTo(clock, 9);
    expect(phaseColumn(sheet, 3)).toEqual([false, true, true, true, true, false, false]);
  });

  test("every check is fine and no cell holds an error", async () => {
    const { cells } = await sheet.form();
    for (const name of cells.keys()) {
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
    const liters = ((Math.PI / 4) * 22.1 ** 2 * 600) / 1e6;
    expect(sheet.value("standoff")).toBeCloseTo(1.079, 12);
    expect(sheet.value("electrode")).toBeCloseTo(1.0, 12);
    expect(sheet.value("peak")).toBeCloseTo(amps, 9);
    expect(sheet.value("speed")).toBeCloseTo(speed, 9);
    const mean = Number(sheet.value("mean_first"));
    expect(sheet.value("heat")).toBeCloseTo((60 * volts * mean) / (1000 * speed), 9);
    expect(Number(sheet.value("dam_distance"))).toBeGreaterThanOrEqual(150);
    expect(sheet.value("purge_volume")).toBeCloseTo(liters, 12);
    expect(sheet.value("purge_time")).toBeCloseTo(((Math.log(209_500 / 50) * liters) / 7) * 60, 9);
    expect(sheet.value("feeler")).toBe("1 + 0.1");
    expect(sheet.value("verdict")).toBe("Within the maximum");
    expect(sheet.beside("wall", 1)).toBe("mm");
    expect(sheet.beside("purge_flow", 1)).toBe("L/min");
  });
});

describe("what a person types", () => {
  test("another wall changes everything that hangs on it", async () => {
    const sheet = await openSheet(procedure, "US");
    const before = ["standoff", "mean_first", "speed", "heat", "purge_volume", "cycle"].map((name) =>
      sheet.value(name),
    );
    sheet.type("wall", "0.083");
    const after = ["standoff", "mean_first", "speed", "heat", "purge_volume", "cycle"].map((name) =>
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
    expect(sheet.value("check_tube")).toBe("wall = 0.25 in: must be less than half of od, 0.2 in");
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

  test("typed peak, speed, overlap, dwell and volts take the place of the computed ones", async () => {
    const sheet = await openSheet(procedure, "US");
    for (const [name, value] of [
      ["peak", "70"],
      ["speed", "6"],
      ["overlap", "0"],
      ["dwell", "3"],
      ["volts", "10"],
    ]) {
      sheet.type(`${String(name)}_typed`, String(value));
    }
    expect(["peak", "speed", "overlap", "dwell", "volts"].map((name) => sheet.value(name))).toEqual([
      70, 6, 0, 3, 10,
    ]);
    expect(sheet.value("heat")).toBeCloseTo((60 * 10 * Number(sheet.value("mean_first"))) / 6000, 9);
    expect(sheet.beside("sectors", 5)).toBeCloseTo(70, 9);
    // Without overlap there is no fifth row.
    expect([2, 5, 7].map((column) => sheet.beside("sectors", column, 4))).toEqual(["", "", ""]);
  });

  test("a small vent is called too small, a strong flow turbulent", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("vent", "0.125");
    expect(sheet.value("pressure_verdict")).toBe("TOO HIGH: larger vent");
    sheet.type("purge_flow", "200");
    expect(sheet.value("laminar_verdict")).toBe("ABOVE laminar: it mixes");
    sheet.type("vent", "0");
    expect(sheet.value("check_vent")).toMatch(/^\w+ = .+: /);
  });

  test("beside the verdict a pulsed arc is told that its power decides, a steady one is not", async () => {
    const sheet = await openSheet(procedure, "US");
    const below = (): unknown => sheet.beside("heat", -1, 1);
    expect(below()).toMatch(/^Pulsed arcs are judged by metered or instantaneous power.*HEAT_PULSED\.$/);
    sheet.type("style", "steady");
    expect(below()).toBe("");
  });

  test("steady style sets the mean and leaves the pulse out", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("style", "steady");
    expect(["peak", "pulse_share", "pulse_rate"].map((name) => sheet.value(name))).toEqual(["", "", ""]);
    expect(sheet.beside("sectors", 5)).toBe(sheet.value("mean_first"));
    expect(sheet.beside("sectors", 6)).toBe("");
    expect(sheet.value("check_pulse")).toBe("fine");
    expect(sheet.value("electrode")).toBeCloseTo(0.04, 12);
  });

  test("the native travel speed is that of TRAVEL_SUGGEST for every metal", async () => {
    const sheet = await openSheet(procedure, "US");
    for (const metal of DESIGNATIONS) {
      sheet.type("material", metal);
      const suggested = number("TRAVEL_SUGGEST", 0.065, null, metal);
      expect([metal, Math.abs(Number(sheet.value("speed")) / suggested - 1) < 1e-9]).toEqual([metal, true]);
    }
    expect(sheet.value("overlap")).toBe(number("OVERLAP_SUGGEST", 1, 0.065));
  });

  test("a metal whose mean current is no pulse of the rule's peak is refused with that reason", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("peak_typed", "40");
    expect(sheet.value("check_pulse")).toMatch(/^meanAmps = .+ A: must be between 12 A and 40 A$/);
  });

  test("a heat input above the qualified maximum is called so; no maximum, no verdict", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("heat_most", "5");
    expect(sheet.value("verdict")).toBe("ABOVE the maximum");
    sheet.type("heat_most", "");
    expect(sheet.value("verdict")).toBe("No qualified maximum typed");
  });

  test("the units cell and the material take only their own words", async () => {
    const sheet = await openSheet(procedure, "US");
    const { cells } = await sheet.form();
    expect(cells.get("sheet_units")?.[0]?.at).toBe("B3");
    const rules = sheet.model.getters.getDataValidationRules(sheet.model.getters.getActiveSheetId());
    const allowed = rules.map(({ isBlocking, criterion }) => [isBlocking, criterion.values]);
    expect(allowed).toContainEqual([true, ["US"]]);
    expect(allowed.some(([blocking, values]) => blocking === true && String(values).includes("316L"))).toBe(
      true,
    );
  });
});

describe("conversion to the other system", () => {
  const PHYSICS = ["volts", "mean_first", "rpm", "overlap", "dwell", "purge_changes", "purge_time", "cycle"];

  test("rewrites the typed numbers, keeps the physics, and comes back to what was typed", async () => {
    const sheet = await openSheet(procedure, "US");
    const typed = new Map((await sheet.form()).cells);
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
    const again = (await sheet.form()).cells;
    for (const [name, cells] of typed) expect([name, again.get(name)]).toEqual([name, cells]);
  });

  test("follows cells that moved when a row was inserted", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.insertRow("wall");
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
