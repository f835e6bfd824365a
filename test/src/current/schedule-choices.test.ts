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
    volts: number("ARC_VOLTS", number("STANDOFF", wall, null, units), null, units),
    // The mean of published values for TIG (Stenbacka, Choquet & Hurtig 2012); see the test of AMPS_MELT's default.
    efficiency: 0.78,
    speed,
    beadWidth: (units === "US" ? 1 / 25.4 : 1) + 2 * wall,
    overlap: number("OVERLAP_SUGGEST", od, wall, null, units),
    dwell: number("START_DWELL", wall, speed, null, material, null, null, units),
    peak: number("AMPS_WALL", wall, material, units),
    background: 0.3,
    allowance: units === "US" ? 0.01 : 0.254,
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
const STEADY = { ...TUBE, style: "steady" } as const;
const steady = rowOf(STEADY);
const means = (row: (label: string) => number): number[] => SECTORS.map((sector) => row(`${sector} mean`));

describe("each choice stands in its row, and what depends on it follows", () => {
  test("volts: the same power at fewer amps, so the heat input stays", () => {
    const row = rowOf({ ...STEADY, volts: 12 });
    expect(row("Arc voltage")).toBe(12);
    means(row).forEach((mean, i) => {
      expectNear(mean * 12, (means(steady)[i] ?? NaN) * steady("Arc voltage"));
    });
    expectNear(row("Heat input, hottest sector"), steady("Heat input, hottest sector"));
    expectNear(row("Standoff"), steady("Standoff"));
  });

  test("volts: walls under the estimate of arc voltage may have their own", () => {
    expect(rowOf({ od: 1, wall: 0.018, volts: 9, style: "steady" })("Arc voltage")).toBe(9);
  });

  test("efficiency: amps and arc energy in inverse proportion to it", () => {
    const row = rowOf({ ...STEADY, efficiency: 0.75 });
    means(row).forEach((mean, i) => {
      expectNear(mean * 0.75, (means(steady)[i] ?? NaN) * 0.78);
    });
    expectNear(row("Heat input, hottest sector") * 0.75, steady("Heat input, hottest sector") * 0.78);
  });

  test("arc spot: a wider one takes more amps to melt through", () => {
    const [narrow, wide] = [0.1, 0.2].map((arcSize) => rowOf({ ...STEADY, arcSize }));
    expect(wide?.("Minimum amps through")).toBeGreaterThan(narrow?.("Minimum amps through") ?? NaN);
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
    const row = rowOf({ ...STEADY, overlap: 90 });
    expect(row("Overlap")).toBe(90);
    expectNear(row("Rotation time with overlap"), 1.25 * row("Full turn"));
    expectNear(row("Arc time"), steady("Arc time") + row("Full turn") * (90 / 360 - steady("Overlap") / 360));
    means(row)
      .slice(0, 4)
      .forEach((mean, i) => {
        // The instants at which the heat is added up span the whole weld, lap included.
        expectNear(mean, means(steady)[i] ?? NaN, 2e-4);
      });
    expect(row("Overlap mean")).toBeLessThan(steady("Overlap mean"));
  });

  test("no overlap: the rotation is the full turn", () => {
    const row = rowOf({ ...TUBE, overlap: 0 });
    expect(row("Overlap")).toBe(0);
    expectNear(row("Rotation time with overlap"), row("Full turn"));
    expect(() => row("Overlap mean")).toThrow("no row Overlap mean");
  });

  test("dwell: its row and the arc time; a longer one leaves less to put in", () => {
    const [short, long] = [rowOf({ ...TUBE, dwell: 0 }), rowOf({ ...TUBE, dwell: 6 })];
    expect([short("Start dwell"), long("Start dwell")]).toEqual([0, 6]);
    expectNear(long("Arc time"), short("Arc time") + 6);
    expect(long("Sector 2 mean")).toBeLessThan(short("Sector 2 mean"));
    expect(long("Sector 2 rise ahead")).toBeGreaterThan(short("Sector 2 rise ahead"));
  });

  test("peak: that of the first sector and of the electrode; the bead stays, the share makes up", () => {
    const row = rowOf({ ...TUBE, peak: 100 });
    expect(row("Sector 1 peak")).toBe(100);
    expect(row("Sector 1 background")).toBeCloseTo(30, 12);
    expectNear(row("Peak share of the pulse"), number("PULSE_SHARE", row("Sector 1 mean"), 100, 30));
    for (const sector of SECTORS) {
      expectNear(row(`${sector} face`), omitted(`${sector} face`));
      // A shorter, higher pulse melts a little more than its mean.
      expect(row(`${sector} mean`)).toBeLessThan(steady(`${sector} mean`));
    }
    expect(row("Electrode diameter")).toBe(number("ELECTRODE_DIAMETER", 100));
    expect(row("Electrode diameter")).toBeGreaterThan(omitted("Electrode diameter"));
  });

  test("allowance: the standoff, the voltage at it and the amps that make the same power", () => {
    // The spot would grow with the gap.
    const spot = { ...STEADY, arcSize: 0.16 };
    const row = rowOf({ ...spot, allowance: 0.02 });
    const usual = rowOf(spot);
    expectNear(row("Standoff"), 0.0325 + 0.02);
    expectNear(row("Arc voltage"), number("ARC_VOLTS", 0.0525));
    means(row).forEach((mean, i) => {
      expectNear(mean * row("Arc voltage"), (means(usual)[i] ?? NaN) * usual("Arc voltage"));
    });
    expectNear(rowOf({ ...TUBE, allowance: 0, volts: 9 })("Standoff"), 0.0325);
  });

  test("allowance as text, as people write sizes", () => {
    expectSameRows({ ...TUBE, allowance: "1/64" }, { ...TUBE, allowance: 0.015625 });
    expectSameRows({ ...TUBE, allowance: "0.25 mm" }, { ...TUBE, allowance: 0.25 / 25.4 });
  });

  test("background: that fraction of each peak; the bead stays, and an evener pulse melts less beyond its mean", () => {
    const row = rowOf({ ...TUBE, background: 0.5 });
    expectNear(row("Peak share of the pulse"), number("PULSE_SHARE", row("Sector 1 mean"), 65, 32.5));
    for (const sector of SECTORS) {
      expectNear(row(`${sector} background`), 0.5 * row(`${sector} peak`));
      expect(row(`${sector} mean`)).toBeGreaterThan(omitted(`${sector} mean`));
      expect(row(`${sector} mean`)).toBeLessThan(steady(`${sector} mean`));
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
        sectors.forEach(({ mean: needed, rise }, i) => {
          const sector = SECTORS[i] ?? "";
          const mean = row(`${sector} mean`);
          if (given.style === "steady") expectNear(mean, needed, 1e-9);
          else expect(mean).toBeLessThan(needed);
          expect(Math.abs(row(`${sector} rise ahead`) - rise)).toBeLessThan(1e-6);
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
          (row("Arc voltage") * Math.max(row("Start dwell current"), ...means(row))) /
            (row("Travel speed") / 60) /
            1000,
        );
      }),
      { numRuns: 40, endOnFailure: true },
    );
    expect(answered).toBeGreaterThan(10);
  });
});

describe("a refusal names the choice that stands in the way", () => {
  test.each<[Arguments, string | RegExp]>([
    [{ volts: 0 }, "#VALUE! volts = 0 V: must be above 0"],
    [{ volts: 1001 }, "#VALUE! volts = 1001 V: must be between 1 V and 1000 V"],
    [{ efficiency: 0 }, "#VALUE! efficiency = 0: must be above 0 and at most 1"],
    [{ efficiency: 1.01 }, "#VALUE! efficiency = 1.01: must be above 0 and at most 1"],
    [{ speed: 0 }, "#VALUE! speed = 0 in/min: must be above 0"],
    [{ beadWidth: 0 }, "#VALUE! beadWidth = 0 in: must be above 0"],
    [{ overlap: -1 }, "#VALUE! overlap = -1°: must be 0 or more"],
    [{ overlap: 1081 }, "#VALUE! overlap = 1081°: must be between 0° and 1080°"],
    [{ dwell: -1 }, "#VALUE! dwell = -1 s: must be 0 or more"],
    [{ dwell: 3601 }, "#VALUE! dwell = 3601 s: must be between 0 s and 3600 s"],
    [{ peak: 0 }, "#VALUE! peak = 0 A: must be above 0"],
    [{ background: -0.01 }, "#VALUE! background = -0.01: must be between 0 and 1"],
    [{ background: 1.01 }, "#VALUE! background = 1.01: must be between 0 and 1"],
    [{ allowance: -0.001 }, "#VALUE! allowance = -0.001 in: must be 0 or more"],
    [
      { allowance: 0.1 },
      "#VALUE! allowance = 0.1 in: makes the standoff 0.1325 in; arc voltage is estimated only for 0.019685 in to 0.11811 in",
    ],
    [{ style: "steady", peak: -1 }, "#VALUE! peak = -1 A: must be above 0"],
    [{ style: "steady", background: 1.01 }, "#VALUE! background = 1.01: must be between 0 and 1"],
  ])("%p cannot be", (choice, sentence) => {
    expect(refusalOf({ od: 1, wall: 0.065, ...choice })).toBe(sentence);
  });

  const PEAK_TOO_LARGE =
    /: the first sector needs a mean of only [\d.]+ A, no more than the background of [\d.]+ A: the peak is too large; lower peak or background, or ask for "steady"$/;
  const PEAK_TOO_SMALL =
    /: the first sector needs a mean of [\d.]+ A, no less than the peak of [\d.]+ A: the peak is too small; raise peak, or ask for "steady"$/;
  test.each<[Arguments, string, RegExp]>([
    [{ volts: 1 }, "volts = 1 V", PEAK_TOO_SMALL],
    [{ efficiency: 0.1 }, "efficiency = 0.1", PEAK_TOO_SMALL],
    [{ peak: 20 }, "peak = 20 A", PEAK_TOO_SMALL],
    [{ peak: 400 }, "peak = 400 A", PEAK_TOO_LARGE],
    [{ background: 1 }, "background = 1", PEAK_TOO_LARGE],
    // Without the background 60 A would do; without the peak 55 A of background would still be too much.
    [{ peak: 60, background: 0.85 }, "background = 0.85", PEAK_TOO_LARGE],
    // Neither alone is to blame.
    [{ peak: 200, background: 0.9 }, "od = 1 in", PEAK_TOO_LARGE],
  ])("%p leaves no pulse", (choice, start, why) => {
    const said = refusalOf({ od: 1, wall: 0.065, ...choice });
    expect(said.startsWith(`#N/A ${start}: `)).toBe(true);
    expect(said).toMatch(why);
  });

  test("a current that no electrode carries", () => {
    expect(refusalOf({ od: 1, wall: 0.065, style: "steady", volts: 0.9 })).toBe(
      "#VALUE! volts = 0.9 V: must be between 1 V and 1000 V",
    );
    expect(refusalOf({ od: 1, wall: 0.065, style: "steady", efficiency: 0.05 })).toMatch(
      /^#N\/A efficiency = 0\.05: calls for [\d.]+ A, which no standard electrode is listed for$/,
    );
    expect(refusalOf({ od: 1, wall: 0.065, peak: 600, background: 0 })).toMatch(
      /^#N\/A peak = 600 A: calls for 6\d\d\.\d+ A, which no standard electrode is listed for$/,
    );
  });

  test("a choice that melts the tube is named, and the tube where no one choice is to blame", () => {
    expect(refusalOf({ od: 1, wall: 0.065, dwell: 3000 })).toMatch(/^#N\/A dwell = 3000 s: /);
    const small = { od: 0.25, wall: 0.12, style: "steady" };
    expect(refusalOf({ ...small, beadWidth: 0.3 })).toMatch(/^#N\/A od = 0\.25 in: is too small /);
    expect(refusalOf({ ...small, volts: 10 })).toMatch(/^#N\/A od = 0\.25 in: is too small /);
  });
});
