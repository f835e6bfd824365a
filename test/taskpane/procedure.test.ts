import { procedure } from "../../taskpane/sheets/procedure";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

/** Columns of the table of sectors, from its label on. */
const SECTOR = { from: 1, to: 2, mean: 3, rise: 4, peak: 5, back: 6, heat: 7 } as const;

/** A column of the cycle table, which the formula named `phases` spills. */
function phaseColumn(sheet: OpenSheet, column: number): unknown[] {
  return Array.from({ length: 7 }, (_, row) => sheet.beside("phases", column, row));
}

function sector(sheet: OpenSheet, column: keyof typeof SECTOR, row: number): number {
  return Number(sheet.beside("sectors", SECTOR[column], row));
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
    // A round sharp-edged orifice: Q = 0.61·A·√(2Δp/ρ); 1 inH₂O = 249.08891 Pa.
    const hole = (pascal: number): number =>
      Math.sqrt((4 * flow) / (Math.PI * 0.61 * Math.sqrt((2 * pascal) / density))) / 0.0254;
    expect(sheet.value("vent_wanted")).toBeCloseTo(hole(0.3 * 249.08891), 9);
    expect(hole(Number(sheet.value("pressure")) * 249.08891)).toBeCloseTo(0.1875, 9);
    // 2σ/w with σ 1.593 N/m (Pichler et al. 2022) and the bead width.
    expect(sheet.value("ceiling")).toBeCloseTo((2 * 1.593) / 0.004_302 / 249.08891, 9);
    expect(sheet.value("tint")).toBe(3);
  });

  test("the chart's oxygen stands where the purge time leaves it, and the target's time lies between its neighbors", () => {
    const target = Number(sheet.value("purge_time"));
    const levels = [0, 1, 2].map((column) =>
      Array.from({ length: 14 }, (_, r) => Number(sheet.beside("levels", column, r))),
    );
    const [seconds = [], ppm = [], line = []] = levels;
    expect([ppm[0], ppm[13]]).toEqual([200_000, 10]);
    ppm.forEach((level, r) => {
      // One well-mixed volume: c = c₀·e^(−n), n changes (mass balance), from air at 209 500 ppm.
      const change = target / Math.log(209_500 / 50);
      expect(seconds[r]).toBeCloseTo(Math.log(209_500 / level) * change, 6);
      expect(level <= 50).toBe((seconds[r] ?? NaN) >= target * (1 - 1e-12));
      expect(line[r]).toBe(50);
    });
  });

  test("the table of sectors hangs together: peak, background and heat input follow the mean", () => {
    const first = Number(sheet.value("mean_first"));
    const bounds = [0, 90, 180, 270, 360, 380];
    const heats: number[] = [];
    for (let row = 0; row < 5; row += 1) {
      expect(sheet.beside("sectors", 0, row)).toBe(row < 4 ? `Sector ${String(row + 1)}` : "Overlap");
      expect([sector(sheet, "from", row), sector(sheet, "to", row)]).toEqual([bounds[row], bounds[row + 1]]);
      const mean = sector(sheet, "mean", row);
      // One ampere per thousandth of an inch of wall, in the proportion of the means; background 30 %.
      expect(sector(sheet, "peak", row)).toBeCloseTo((65 * mean) / first, 9);
      expect(sector(sheet, "back", row)).toBeCloseTo((0.3 * 65 * mean) / first, 9);
      expect(sector(sheet, "heat", row)).toBeCloseTo((60 * volts * mean) / (1000 * speed), 9);
      heats.push(sector(sheet, "heat", row));
      // The arc starts on a cold tube and runs into its own heat: from the second quarter on less is needed.
      if (row > 1) expect(mean).toBeLessThan(sector(sheet, "mean", row - 1));
      if (row > 0) expect(sector(sheet, "rise", row)).toBeGreaterThan(0);
    }
    const dwellHeat = (60 * volts * Number(sheet.value("dwell_amps"))) / (1000 * speed);
    expect(sheet.value("heat")).toBeCloseTo(Math.max(...heats, dwellHeat), 9);
    const turn = [0, 1, 2, 3].map((row) => sector(sheet, "mean", row));
    expect(sheet.value("mean_of_turn")).toBeCloseTo(turn.reduce((sum, amps) => sum + amps, 0) / 4, 9);
    // Peak share: (mean − background)/(peak − background).
    expect(sheet.value("pulse_share")).toBeCloseTo((first - 19.5) / (65 - 19.5), 9);
  });

  test("the dam stands at the larger of what the heat asks and six inches", () => {
    expect(Number(sheet.value("dam_heat"))).toBeGreaterThan(1);
    expect(sheet.value("dam_distance")).toBe(Math.max(6, Number(sheet.value("dam_heat"))));
  });

  test("what if: no change gives the bead of the table; more current, a wider bead and more heat", () => {
    const row = (r: number, column: number): number => Number(sheet.beside("whatif_step", column, r + 2));
    const [faces, roots] = [1, 2].map((column) => [0, 1, 2, 3, 4].map((r) => row(r, column)));
    expect(faces?.[2]).toBeCloseTo(Number(sheet.beside("bead_table", 1)), 9);
    expect(roots?.[2]).toBeCloseTo(Number(sheet.beside("bead_table", 2)), 9);
    for (const widths of [faces, roots]) expect(widths).toEqual([...(widths ?? [])].sort((a, b) => a - b));
    const first = Number(sheet.value("mean_first"));
    [-0.1, -0.05, 0, 0.05, 0.1].forEach((change, r) => {
      expect(row(r, 0)).toBeCloseTo(first * (1 + change), 9);
      expect(row(r, 4)).toBeCloseTo(Number(sheet.value("heat")) * (1 + change), 9);
      expect(sheet.beside("whatif_step", 3, r + 2)).toBe("within the maximum");
    });
  });

  test("the chart's two courses: what the tube needs and what four sectors set", () => {
    const pulsed = Number(sheet.value("mean_first")) / Number(sheet.value("steady_first"));
    expect(pulsed).toBeGreaterThan(0.95);
    expect(pulsed).toBeLessThan(1);
    const steps = (column: number): number[] =>
      Array.from({ length: 48 }, (_, r) => Number(sheet.beside("steps", column, r)));
    const [rotation, needed, set] = [steps(0), steps(1), steps(2)];
    // Each fine sector from its start to its end, so that a current is a level line and a change a step.
    rotation.forEach((degrees, r) => {
      expect(degrees).toBeCloseTo(15 * Math.ceil(r / 2), 9);
      expect(needed[r]).toBe(sheet.beside("course", 2, Math.floor(r / 2)));
      expect((set[r] ?? NaN) * pulsed).toBeCloseTo(sector(sheet, "mean", Math.floor(r / 12)), 9);
    });
    for (const quarter of [0, 1, 2, 3]) {
      const of = needed.slice(12 * quarter, 12 * quarter + 12);
      const mean = of.reduce((sum, amps) => sum + amps, 0) / 12;
      // Six fine sectors in place of the quarter they fill; the checks of the course lie elsewhere.
      expect(Math.abs(mean / (set[12 * quarter] ?? NaN) - 1)).toBeLessThan(0.01);
    }
  });

  test("maximum gap and feeler leaves", () => {
    expect(sheet.beside("gap_least", 1)).toBeCloseTo(0.0425 + 0.0025 + 0.002, 12);
    expect(sheet.value("feeler")).toBe("0.035 + 0.008 in");
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

  test("every check holds, the summary counts them, and no cell holds an error", async () => {
    const { cells } = await sheet.form();
    const checks = [...cells.keys()].filter((name) => name.startsWith("check_"));
    for (const name of checks) expect([name, sheet.value(name)]).toEqual([name, "✓ holds"]);
    expect(sheet.value("summary")).toBe(
      `✓ All ${String(checks.length)} checks hold. Starting values: prove on a test coupon. The qualified procedure governs.`,
    );
    for (const name of cells.keys()) {
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
    expect(sector(sheet, "peak", 0)).toBeCloseTo(amps, 9);
    expect(sheet.value("speed")).toBeCloseTo(speed, 9);
    // The dwell takes the most: its tube is cold.
    const most = Number(sheet.value("dwell_amps"));
    expect(most).toBeGreaterThan(Number(sheet.value("mean_first")));
    expect(sheet.value("heat")).toBeCloseTo((60 * volts * most) / (1000 * speed), 9);
    expect(Number(sheet.value("dam_distance"))).toBeGreaterThanOrEqual(150);
    expect(sheet.value("purge_volume")).toBeCloseTo(liters, 12);
    expect(sheet.value("purge_time")).toBeCloseTo(((Math.log(209_500 / 50) * liters) / 7) * 60, 9);
    expect(sheet.value("feeler")).toBe("1 + 0.1 mm");
    expect(sheet.holds()).toBe(true);
    expect(sheet.beside("wall", 1)).toBe("mm");
    expect(sheet.beside("purge_flow", 1)).toBe("L/min");
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
    expect(sheet.holds()).toBe(true);

    expect(await sheet.convert()).toBe("");
    const again = (await sheet.form()).cells;
    for (const [name, cells] of typed) expect([name, again.get(name)]).toEqual([name, cells]);
    expect(sheet.holds()).toBe(true);
  });

  test("follows cells that moved when a row was inserted", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.insertRow("wall");
    expect(await sheet.convert()).toBe("");
    expect(sheet.value("wall")).toBeCloseTo(1.651, 12);
    expect(sheet.value("bore")).toBeCloseTo(22.098, 10);
    expect(sheet.holds()).toBe(true);
  });

  test("takes a size that is written as people write it", async () => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("od", "1-1/2");
    sheet.type("vent", '3/16"');
    expect(sheet.holds()).toBe(true);
    expect(await sheet.convert()).toBe("");
    // 1 in = 25.4 mm exactly (NIST SP 811).
    expect([sheet.value("od"), sheet.value("vent")]).toEqual([38.1, 4.7625]);
    expect(sheet.holds()).toBe(true);
  });

  test("changes nothing when a typed cell holds a formula of the person's own or text", async () => {
    const sheet = await openSheet(procedure, "US");
    const at = (await sheet.form()).cells.get("wall")?.[0]?.at ?? "";
    sheet.type("wall", "=0.13/2");
    expect(await sheet.convert()).toMatch(/^Nothing was changed\. /);
    expect(await sheet.convert()).toContain(`${at} (wall)`);
    expect(sheet.value("sheet_units")).toBe("US");
    expect(sheet.value("od")).toBe(1);
    sheet.type("wall", "thin");
    expect(await sheet.convert()).toMatch(/^Nothing was changed\./);
  });
});
