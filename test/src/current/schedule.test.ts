/** The rows of SCHEDULE are what the single formulas give, and hang together. */

import { expectNear, number } from "../../bead";
import { rowOf, rowsOf, SECTORS, sectorsFor } from "../../schedule-rows";

const TUBES = [
  [1, 0.065, "316L", "US"],
  [0.5, 0.049, "316L", "US"],
  [60.3, 2.77, "304L", "SI"],
  [6.35, 0.89, "TI-2", "SI"],
  [12.7, 1.24, "C70600", "SI"],
] as const;

describe.each(TUBES)("%p × %p %s %s", (od, wall, material, units) => {
  const tube = { od, wall, material, units };
  const pulsed = { ...tube, style: "pulsed" };
  const steady = { ...tube, style: "Steady " };

  test.each([pulsed, steady])("single values are those of their formulas: $style", (given) => {
    const row = rowOf(given);
    const speed = number("TRAVEL_SUGGEST", wall, "", material, units);
    expectNear(row("Standoff"), number("STANDOFF", wall, "", units));
    expectNear(row("Arc voltage"), number("ARC_VOLTS", row("Standoff"), units));
    expectNear(row("Bead width"), (units === "US" ? 1 / 25.4 : 1) + 2 * wall);
    expectNear(row("Travel speed"), speed);
    expectNear(row("Rotor speed"), number("TRAVEL_RPM", od, speed, units));
    expectNear(row("Start dwell"), number("START_DWELL", wall, speed, "", material, "", units));
    expectNear(row("Overlap"), number("OVERLAP_SUGGEST", od, wall, "", units));
    expectNear(row("Full turn"), number("TRAVEL_TIME", od, speed, 0, units));
    expectNear(row("Rotation time with overlap"), number("TRAVEL_TIME", od, speed, row("Overlap"), units));
    expectNear(row("Downslope"), (3 * row("Bead width")) / (speed / 60));
    expectNear(row("Bore"), od - 2 * wall);
    expect(row("Prepurge")).toBe(30);
    expect(row("Postpurge")).toBe(15);
    const phases = [0, row("Start dwell"), row("Overlap"), row("Downslope"), 0, 0];
    expectNear(row("Arc time"), number("CYCLE_TIME", od, speed, ...phases, units));
  });

  test.each([pulsed, steady])(
    "means and rises are those of AMPS_SECTORS, overlap and all: $style",
    (given) => {
      const row = rowOf(given);
      const sectors = sectorsFor(given, row);
      expect(sectors).toHaveLength(5);
      SECTORS.forEach((sector, i) => {
        expectNear(row(`${sector} mean`), sectors[i]?.mean ?? NaN);
        // A rise is a small difference of two temperatures, told to the digits of the way to the liquidus.
        expect(Math.abs(row(`${sector} rise ahead`) - (sectors[i]?.rise ?? NaN))).toBeLessThan(1e-8);
      });
    },
  );

  test("steady: electrode and heat input are those of the hottest sector", () => {
    const row = rowOf(steady);
    const hottest = Math.max(...SECTORS.map((sector) => row(`${sector} mean`)));
    expect(row("Electrode diameter")).toBe(number("ELECTRODE_DIAMETER", hottest, units));
    expectNear(
      row("Heat input, hottest sector"),
      number("HEAT_INPUT", row("Arc voltage"), hottest, row("Travel speed"), "", units),
    );
  });

  test("pulsed: peak by the rule, background 30 % of it, and one peak share that gives every mean", () => {
    const row = rowOf(pulsed);
    const share = row("Peak share of the pulse");
    expectNear(row("Sector 1 peak"), number("AMPS_WALL", wall, material, units));
    expect(row("Electrode diameter")).toBe(number("ELECTRODE_DIAMETER", row("Sector 1 peak"), units));
    expectNear(row("Pulse rate"), number("PULSE_RATE", row("Travel speed"), row("Bead width"), 0.75, units));
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThan(1);
    for (const sector of SECTORS) {
      const [mean, peak, back] = ["mean", "peak", "background"].map((what) => row(`${sector} ${what}`));
      expectNear(back ?? NaN, 0.3 * (peak ?? NaN));
      expectNear(number("AMPS_MEAN", peak, share, back, 1 - share), mean ?? NaN);
      expectNear(number("PULSE_SHARE", mean, peak, back), share);
    }
    const volts = row("Arc voltage");
    const [peak, back] = [row("Sector 1 peak"), row("Sector 1 background")];
    expectNear(
      row("Heat input, hottest sector"),
      number("HEAT_PULSED", volts, peak, share, volts, back, 1 - share, row("Travel speed"), "", units),
    );
  });
});

const HEAD = [
  ["Standoff", "in", "mm"],
  ["Electrode diameter", "in", "mm"],
  ["Arc voltage", "V", "V"],
  ["Bead width", "in", "mm"],
  ["Travel speed", "in/min", "mm/min"],
  ["Rotor speed", "rpm", "rpm"],
  ["Prepurge", "s", "s"],
  ["Start dwell", "s", "s"],
] as const;
const PULSE = [
  ["Pulse rate", "Hz", "Hz"],
  ["Peak share of the pulse", "", ""],
] as const;
const FOOT = [
  ["Full turn", "s", "s"],
  ["Rotation time with overlap", "s", "s"],
  ["Overlap", "°", "°"],
  ["Downslope", "s", "s"],
  ["Postpurge", "s", "s"],
  ["Heat input, hottest sector", "kJ/in", "kJ/mm"],
  ["Arc time", "s", "s"],
  ["Bore", "in", "mm"],
  ["Starting values. Prove on a test coupon; the qualified procedure governs.", "", ""],
] as const;

describe.each(["pulsed", "steady"])("the rows of a %s schedule: label, value, unit", (style) => {
  const levels = style === "pulsed" ? ["mean", "peak", "background"] : ["mean"];
  const sectorRows = (sector: string): (readonly [string, string, string])[] => [
    ...levels.map((level) => [`${sector} ${level}`, "A", "A"] as const),
    [`${sector} rise ahead`, "°F", "°C"],
  ];
  const expected = (sectors: readonly string[]): (readonly [string, string, string])[] => [
    ...HEAD,
    ...sectors.flatMap(sectorRows),
    ...(style === "pulsed" ? PULSE : []),
    ...FOOT,
  ];

  test.each([
    ["US", { od: 1, wall: 0.065 }],
    ["SI", { od: 25.4, wall: 1.65 }],
  ] as const)("in %s", (units, tube) => {
    const labels = (overlap: unknown): unknown[] =>
      rowsOf({ ...tube, style, overlap, units }).map(([label, , unit]) => [label, unit]);
    const inUnits = (rows: readonly (readonly [string, string, string])[]): unknown[] =>
      rows.map(([label, us, si]) => [label, units === "US" ? us : si]);
    expect(labels(null)).toEqual(inUnits(expected(SECTORS)));
    // Without an overlap there is no sector of it.
    expect(labels(0)).toEqual(inUnits(expected(SECTORS.slice(0, 4))));
  });

  test("all but the warning hold a number", () => {
    const values = rowsOf({ od: 1, wall: 0.065, style }).map(([, value]) => typeof value);
    expect(values.slice(0, -1).every((type) => type === "number")).toBe(true);
    expect(rowsOf({ od: 1, wall: 0.065, style }).at(-1)?.[1]).toBe("");
  });
});
