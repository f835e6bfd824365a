/** What a person may set of a schedule: each choice stands in its row, and what depends on it follows. */

import fc from "fast-check";

import { RUNS } from "../../arbitrary-cells";
import { expectNear, number } from "../../bead";
import { COMMON_PRACTICE, evidence } from "../../evidence";
import type { Arguments } from "../../schedule-rows";
import { refusalOf, rowOf, rowsOf, SECTORS, sectorsFor } from "../../schedule-rows";

const TUBES = [
  { od: 1, wall: 0.065, material: "316L", units: "US" },
  { od: 60.3, wall: 2.77, material: "304L", units: "SI" },
  { od: 6.35, wall: 0.89, material: "TI-2", units: "SI" },
] as const;
type Tube = (typeof TUBES)[number];

/** Each choice as its own formula gives it for a tube. */
function suggestedFor({ od, wall, material, units }: Tube): Arguments {
  const speed = number("TRAVEL_SUGGEST", wall, null, material, units);
  return {
    volts: number("ARC_VOLTS", number("STANDOFF", wall, null, units), units),
    // The mean of published values for TIG (Stenbacka, Choquet & Hurtig 2012); see the test of AMPS_MELT's default.
    efficiency: 0.78,
    speed,
    beadWidth: (units === "US" ? 1 / 25.4 : 1) + 2 * wall,
    overlap: number("OVERLAP_SUGGEST", od, wall, null, units),
    dwell: number("START_DWELL", wall, speed, null, material, null, units),
    peak: number("AMPS_WALL", wall, material, units),
    background: 0.3,
  };
}

function expectSameRows(given: Arguments, expected: Arguments): void {
  const [rows, same] = [rowsOf(given), rowsOf(expected)];
  expect(rows.map(([label, , unit]) => [label, unit])).toEqual(same.map(([label, , unit]) => [label, unit]));
  rows.forEach(([label, value], i) => {
    const other = same[i]?.[1];
    if (typeof value !== "number" || typeof other !== "number") expect(value).toBe(other);
    // A rise is a small difference of two temperatures, told to the digits of the way to the liquidus.
    else if (String(label).endsWith("rise ahead")) expect(Math.abs(value - other)).toBeLessThan(1e-8);
    else expectNear(value, other);
  });
}

describe.each(TUBES)("$od × $wall $material $units", (tube) => {
  const suggested = suggestedFor(tube);

  test.each(Object.entries(suggested))(
    "%s typed as its own formula gives it changes nothing",
    (name, value) => {
      expectSameRows({ ...tube, [name]: value }, tube);
      expectSameRows({ ...tube, style: "steady", [name]: value }, { ...tube, style: "steady" });
    },
  );

  test("nor do all of them together", () => {
    expectSameRows({ ...tube, ...suggested }, tube);
  });
});

const TUBE = TUBES[0];
const omitted = rowOf(TUBE);
const means = (row: (label: string) => number): number[] => SECTORS.map((sector) => row(`${sector} mean`));

describe("each choice stands in its row, and what depends on it follows", () => {
  test("volts: the same power at fewer amps, so the heat input stays", () => {
    const row = rowOf({ ...TUBE, volts: 12 });
    expect(row("Arc voltage")).toBe(12);
    means(row).forEach((mean, i) => {
      expectNear(mean * 12, (means(omitted)[i] ?? NaN) * omitted("Arc voltage"));
    });
    expectNear(row("Heat input, hottest sector"), omitted("Heat input, hottest sector"));
    expectNear(row("Standoff"), omitted("Standoff"));
  });

  test("volts: walls beyond the estimate of arc voltage have a schedule", () => {
    expect(rowOf({ od: 2, wall: 0.3, volts: 12 })("Arc voltage")).toBe(12);
    expect(rowOf({ od: 1, wall: 0.018, volts: 9 })("Arc voltage")).toBe(9);
  });

  test("efficiency: amps and arc energy in inverse proportion to it", () => {
    const row = rowOf({ ...TUBE, efficiency: 0.75 });
    means(row).forEach((mean, i) => {
      expectNear(mean * 0.75, (means(omitted)[i] ?? NaN) * 0.78);
    });
    expectNear(row("Heat input, hottest sector") * 0.75, omitted("Heat input, hottest sector") * 0.78);
  });

  test("speed: rotor, times, dwell, pulse rate and currents are those of that speed", () => {
    const row = rowOf({ ...TUBE, speed: 6 });
    expect(row("Travel speed")).toBeCloseTo(6, 12);
    expectNear(row("Rotor speed"), number("TRAVEL_RPM", 1, 6));
    expectNear(row("Full turn"), number("TRAVEL_TIME", 1, 6));
    expectNear(row("Rotation time with overlap"), number("TRAVEL_TIME", 1, 6, row("Overlap")));
    expectNear(row("Start dwell"), number("START_DWELL", 0.065, 6));
    expectNear(row("Pulse rate"), number("PULSE_RATE", 6, row("Bead width")));
    expectNear(row("Downslope"), (3 * row("Bead width")) / 0.1);
    expect(row("Sector 1 mean")).toBeGreaterThan(omitted("Sector 1 mean"));
  });

  test("bead width: travel, overlap, dwell, pulse rate and downslope follow from it", () => {
    const row = rowOf({ ...TUBE, beadWidth: 0.2 });
    expectNear(row("Bead width"), 0.2);
    expectNear(row("Travel speed"), number("TRAVEL_SUGGEST", 0.065, 0.2));
    expectNear(row("Overlap"), number("OVERLAP_SUGGEST", 1, 0.065, 0.2));
    expectNear(row("Start dwell"), number("START_DWELL", 0.065, row("Travel speed"), 0.2));
    expectNear(row("Pulse rate"), number("PULSE_RATE", row("Travel speed"), 0.2));
    expectNear(row("Downslope"), 0.6 / (row("Travel speed") / 60));
  });

  test("overlap: its row, the rotation time and its own sector; the full turn does not know of it", () => {
    const row = rowOf({ ...TUBE, overlap: 90 });
    expect(row("Overlap")).toBe(90);
    expectNear(row("Rotation time with overlap"), 1.25 * row("Full turn"));
    expectNear(
      row("Arc time"),
      omitted("Arc time") + row("Full turn") * (90 / 360 - omitted("Overlap") / 360),
    );
    means(row)
      .slice(0, 4)
      .forEach((mean, i) => {
        expectNear(mean, means(omitted)[i] ?? NaN);
      });
    expect(row("Overlap mean")).toBeLessThan(omitted("Overlap mean"));
  });

  test("no overlap: the rotation is the full turn", () => {
    const row = rowOf({ ...TUBE, overlap: 0 });
    expect(row("Overlap")).toBe(0);
    expectNear(row("Rotation time with overlap"), row("Full turn"));
    expect(() => row("Overlap mean")).toThrow("no row Overlap mean");
  });

  test("dwell: its row and the arc time; a longer one leaves less to put in", () => {
    const [short, long] = [rowOf({ ...TUBE, dwell: 0 }), rowOf({ ...TUBE, dwell: 10 })];
    expect([short("Start dwell"), long("Start dwell")]).toEqual([0, 10]);
    expectNear(long("Arc time"), short("Arc time") + 10);
    expect(long("Sector 2 mean")).toBeLessThan(short("Sector 2 mean"));
    expect(long("Sector 2 rise ahead")).toBeGreaterThan(short("Sector 2 rise ahead"));
  });

  test("peak: that of the first sector and of the electrode; the means stay, the share makes up", () => {
    const row = rowOf({ ...TUBE, peak: 100 });
    expect(row("Sector 1 peak")).toBe(100);
    expect(row("Sector 1 background")).toBeCloseTo(30, 12);
    expectNear(row("Peak share of the pulse"), number("PULSE_SHARE", omitted("Sector 1 mean"), 100, 30));
    means(row).forEach((mean, i) => {
      expectNear(mean, means(omitted)[i] ?? NaN);
    });
    expect(row("Electrode diameter")).toBe(number("ELECTRODE_DIAMETER", 100));
    expect(row("Electrode diameter")).toBeGreaterThan(omitted("Electrode diameter"));
  });

  test("background: that fraction of each peak; the means stay, the share makes up", () => {
    const row = rowOf({ ...TUBE, background: 0.5 });
    expectNear(row("Peak share of the pulse"), number("PULSE_SHARE", omitted("Sector 1 mean"), 65, 32.5));
    for (const sector of SECTORS) {
      expectNear(row(`${sector} background`), 0.5 * row(`${sector} peak`));
      expectNear(row(`${sector} mean`), omitted(`${sector} mean`));
    }
    expect(rowOf({ ...TUBE, background: 0 })("Sector 3 background")).toBe(0);
  });
});

describe(
  evidence("SCHEDULE", COMMON_PRACTICE, "background 30 % of the peak, spots overlapping by 0.75"),
  () => {
    test("unless another background is given", () => {
      expectNear(omitted("Sector 1 background"), 0.3 * 65);
      expectNear(omitted("Pulse rate"), omitted("Travel speed") / 60 / (0.25 * omitted("Bead width")));
    });
  },
);

describe(`laws, whatever is chosen (${RUNS})`, () => {
  const near = (value: number): fc.Arbitrary<number> =>
    fc.double({ min: 0.8 * value, max: 1.25 * value, noNaN: true });
  const maybe = (value: number): fc.Arbitrary<number | null> => fc.option(near(value));
  const chosen = fc.record({
    od: near(25),
    wall: near(1.65),
    material: fc.constantFrom("316L", "CS", "TI-2", "625"),
    style: fc.constantFrom("pulsed", "steady"),
    volts: maybe(9.5),
    efficiency: maybe(0.76),
    speed: maybe(130),
    beadWidth: maybe(4.3),
    overlap: fc.option(fc.double({ min: 1, max: 90, noNaN: true })),
    dwell: fc.option(fc.double({ min: 0, max: 8, noNaN: true })),
    peak: maybe(90),
    background: maybe(0.3),
    units: fc.constant("SI"),
  });

  test("currents are those of AMPS_SECTORS, times add up, and the pulse gives the mean", () => {
    let answered = 0;
    fc.assert(
      fc.property(chosen, (given) => {
        const refused = refusalOf(given);
        if (refused !== "answered") {
          expect(refused).toMatch(/^#N\/A /);
          return;
        }
        answered += 1;
        const row = rowOf(given);
        for (const [name, label] of [
          ["volts", "Arc voltage"],
          ["speed", "Travel speed"],
          ["beadWidth", "Bead width"],
          ["overlap", "Overlap"],
          ["dwell", "Start dwell"],
        ] as const) {
          if (given[name] !== null) expectNear(row(label), given[name]);
        }
        const sectors = sectorsFor(given, row);
        expect(sectors).toHaveLength(SECTORS.length);
        sectors.forEach(({ mean, rise }, i) => {
          const sector = SECTORS[i] ?? "";
          expectNear(row(`${sector} mean`), mean);
          expect(Math.abs(row(`${sector} rise ahead`) - rise)).toBeLessThan(1e-8);
          if (given.style !== "pulsed") return;
          const [share, peak, back] = [
            row("Peak share of the pulse"),
            row(`${sector} peak`),
            row(`${sector} background`),
          ];
          expectNear(back, (given.background ?? 0.3) * peak);
          expectNear(back + share * (peak - back), mean);
          expectNear(peak * row("Sector 1 mean"), row("Sector 1 peak") * mean);
        });
        if (given.style === "pulsed" && given.peak !== null) expectNear(row("Sector 1 peak"), given.peak);
        expectNear(
          row("Arc time"),
          row("Start dwell") + row("Rotation time with overlap") + row("Downslope"),
        );
        expectNear(row("Rotation time with overlap"), row("Full turn") * (1 + row("Overlap") / 360));
        expectNear(
          row("Heat input, hottest sector"),
          (row("Arc voltage") * Math.max(...means(row))) / (row("Travel speed") / 60) / 1000,
        );
      }),
    );
    expect(answered).toBeGreaterThan(50);
  });
});
