/** The rows of SCHEDULE are what the single formulas give, and hang together. */

import { number, refusal, table } from "../../bead";

const TUBES = [
  [1, 0.065, "316L", "US"],
  [0.5, 0.049, "316L", "US"],
  [60.3, 2.77, "304L", "SI"],
  [6.35, 0.89, "TI-2", "SI"],
  [12.7, 1.24, "C70600", "SI"],
] as const;

test("the pulse rate is told in hertz", () => {
  const rate = table("SCHEDULE", 1, 0.065).find(([label]) => label === "Pulse rate");
  expect(rate?.[2]).toBe("Hz");
});

function reader(rows: (number | string | boolean)[][]): (label: string) => number {
  return (label) => {
    const value = rows.find((row) => row[0] === label)?.[1];
    if (typeof value !== "number") throw new Error(`no row ${label}`);
    return value;
  };
}

function expectSame(value: number, expected: number): void {
  expect(Math.abs(value / expected - 1)).toBeLessThan(1e-12);
}

describe.each(TUBES)("%p × %p %s %s", (od, wall, material, units) => {
  const pulsed = table("SCHEDULE", od, wall, material, "pulsed", units);
  const steady = table("SCHEDULE", od, wall, material, "Steady ", units);
  const sectors = table(
    "AMPS_SECTORS",
    od,
    wall,
    number("TRAVEL_SUGGEST", wall, "", material, units),
    ...["", "", "", "", material, "", "", "", units],
  ) as number[][];

  test.each([pulsed, steady])("single values are those of their formulas", (...rows) => {
    const row = reader(rows);
    const speed = number("TRAVEL_SUGGEST", wall, "", material, units);
    expectSame(row("Standoff"), number("STANDOFF", wall, "", units));
    expectSame(row("Arc voltage"), number("ARC_VOLTS", row("Standoff"), units));
    expectSame(row("Bead width"), (units === "US" ? 1 / 25.4 : 1) + 2 * wall);
    expectSame(row("Travel speed"), speed);
    expectSame(row("Rotor speed"), number("TRAVEL_RPM", od, speed, units));
    expectSame(row("Start dwell"), number("START_DWELL", wall, speed, "", material, "", units));
    expectSame(row("Overlap"), number("OVERLAP_SUGGEST", od, wall, "", units));
    expectSame(row("Rotation time with overlap"), number("TRAVEL_TIME", od, speed, row("Overlap"), units));
    expectSame(row("Downslope"), (3 * row("Bead width")) / (speed / 60));
    expectSame(row("Arc time"), row("Start dwell") + row("Rotation time with overlap") + row("Downslope"));
    expect(row("Prepurge")).toBe(30);
    expect(row("Postpurge")).toBe(15);
    const arcOn = number(
      "CYCLE_TIME",
      od,
      speed,
      0,
      row("Start dwell"),
      row("Overlap"),
      row("Downslope"),
      0,
      0,
      units,
    );
    expectSame(row("Arc time"), arcOn);
  });

  test("steady: mean amps of AMPS_SECTORS, electrode and heat input of the greatest", () => {
    const row = reader(steady);
    const means = [1, 2, 3, 4].map((sector) => row(`Sector ${String(sector)} amps`));
    means.forEach((mean, i) => {
      expectSame(mean, sectors[i]?.[2] ?? NaN);
    });
    const hottest = Math.max(...means);
    expectSame(row("Electrode diameter"), number("ELECTRODE_DIAMETER", hottest, units));
    expectSame(
      row("Heat input, hottest sector"),
      number("HEAT_INPUT", row("Arc voltage"), hottest, row("Travel speed"), "", units),
    );
  });

  test("pulsed: peak by the rule, background 30 % of it, the mean that of AMPS_SECTORS in every sector", () => {
    const row = reader(pulsed);
    const share = row("Peak share of the pulse");
    expectSame(row("Sector 1 peak"), number("AMPS_WALL", wall, material, units));
    expectSame(row("Electrode diameter"), number("ELECTRODE_DIAMETER", row("Sector 1 peak"), units));
    expectSame(row("Pulse rate"), number("PULSE_RATE", row("Travel speed"), row("Bead width"), 0.75, units));
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThan(1);
    [1, 2, 3, 4].forEach((sector, i) => {
      const peak = row(`Sector ${String(sector)} peak`);
      const back = row(`Sector ${String(sector)} background`);
      expectSame(back, 0.3 * peak);
      expectSame(number("AMPS_MEAN", peak, share, back, 1 - share), sectors[i]?.[2] ?? NaN);
      expectSame(number("PULSE_SHARE", sectors[i]?.[2], peak, back), share);
    });
    const volts = row("Arc voltage");
    const [peak, back] = [row("Sector 1 peak"), row("Sector 1 background")];
    expectSame(
      row("Heat input, hottest sector"),
      number("HEAT_PULSED", volts, peak, share, volts, back, 1 - share, row("Travel speed"), "", units),
    );
  });

  test("rows are label, value, unit; the last one is the warning", () => {
    for (const rows of [pulsed, steady]) {
      expect(rows.every((row) => row.length === 3)).toBe(true);
      expect(rows.at(-1)?.[0]).toBe(
        "Starting values. Prove on a test coupon; the qualified procedure governs.",
      );
      expect(rows.find(([label]) => label === "Travel speed")?.[2]).toBe(
        units === "US" ? "in/min" : "mm/min",
      );
    }
    expect(pulsed).toHaveLength(25);
    expect(steady).toHaveLength(19);
  });
});

test("what it cannot answer it refuses by an argument that the user gave", () => {
  expect(refusal("SCHEDULE", 1, 0.3)).toBe(
    "#VALUE! wall = 0.3 in: arc voltage is estimated only for a wall of 0.0193701 in to 0.21622 in",
  );
  // AMPS_WALL of copper: 1.65/0.0254 · (339·1063)/(28.387·1430) A.
  expect(refusal("SCHEDULE", 25.4, 1.65, "C12200", "", "SI")).toBe(
    "#N/A wall = 1.65 mm: calls for 576.67 A, which no standard electrode is listed for",
  );
  expect(refusal("SCHEDULE", 1, 0.065, "", "fast")).toBe(
    '#VALUE! style = "fast": must be one of pulsed, steady',
  );
  expect(refusal("SCHEDULE", 1, 0.5)).toBe("#VALUE! wall = 0.5 in: must be under half of od, 0.5 in");
  // Nobody typed a dwell or a speed: a thick little ring, and one too large to reckon with, are refused by their size.
  expect(refusal("SCHEDULE", 1.11, 0.516, "C12200", "steady", "SI")).toMatch(
    /^#N\/A od = 1\.11 mm: has no suggested schedule with this wall; at [\d.]+ mm\/min after a dwell of [\d.]+ s /,
  );
  expect(refusal("SCHEDULE", 3.45, 1.696, "304L", "steady", "SI")).toMatch(/^#N\/A od = 3\.45 mm: has no /);
  expect(refusal("SCHEDULE", 200_000, 2, "C12200", "steady", "SI")).toMatch(/^#N\/A od = 200000 mm: has no /);
  // A ring that takes less than the background of its pulse is welded steady.
  expect(refusal("SCHEDULE", 4.64, 2.31, "", "pulsed", "SI")).toMatch(
    /^#N\/A od = 4\.64 mm: the first sector needs a mean of [\d.]+ A, which no pulse between [\d.]+ A and [\d.]+ A gives; ask for "steady"$/,
  );
});
