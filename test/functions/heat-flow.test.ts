import fc from "fast-check";

import { LENGTH } from "../../src/quantity";
import { bead, kindOfArgument, number, refusal, table } from "../bead";

/** Each formula with arguments it answers, in in, in/min, °F; and the same in mm, mm/min, °C. */
const CALLS = {
  AMPS_MELT: {
    US: [0.065, 5, 0.16, "316L", 9.5, 0.75, 212, 0.16, "US"],
    SI: [1.651, 127, 4.064, "316L", 9.5, 0.75, 100, 4.064, "SI"],
  },
  MELT_WIDTH: {
    US: [0.065, 45, 5, "316L", 9.5, 0.75, 212, 0.16, "US"],
    SI: [1.651, 45, 127, "316L", 9.5, 0.75, 100, 4.064, "SI"],
  },
  MELT_SECTION: {
    US: [0.065, 45, 5, "316L", 9.5, 0.75, 212, 0.16, "US"],
    SI: [1.651, 45, 127, "316L", 9.5, 0.75, 100, 4.064, "SI"],
  },
  AMPS_THROUGH: {
    US: [0.065, 5, 0.08, "316L", 9.5, 0.75, 212, 0.16, "US"],
    SI: [1.651, 127, 2.032, "316L", 9.5, 0.75, 100, 4.064, "SI"],
  },
  AMPS_WINDOW: {
    US: [0.065, 5, 0.04, 0.24, 0.1, 0.73, 0.82, "316L", 9.5, 0.16, "US"],
    SI: [1.651, 127, 1.016, 6.096, 0.1, 0.73, 0.82, "316L", 9.5, 4.064, "SI"],
  },
  RING_BEAD: {
    US: [1, 0.065, 5, 45, 3, 20, "316L", 9.5, 0.75, 0.16, 45, "US"],
    SI: [25.4, 1.651, 127, 45, 3, 20, "316L", 9.5, 0.75, 4.064, 45, "SI"],
  },
  START_DWELL: {
    US: [0.065, 5, 0.16, "316L", 212, 0.16, "US"],
    SI: [1.651, 127, 4.064, "316L", 100, 4.064, "SI"],
  },
  AMPS_SECTORS: {
    US: [1, 0.065, 5, 4, 20, 3, 0.16, "316L", 9.5, 0.75, 212, 0.16, "US"],
    SI: [25.4, 1.651, 127, 4, 20, 3, 4.064, "316L", 9.5, 0.75, 100, 4.064, "SI"],
  },
  DAM_TEMPERATURE: {
    US: [6, 1, 0.065, 46, 9.4, 5, 4, 0.75, "316L", 59, "still air", "US"],
    SI: [152.4, 25.4, 1.651, 46, 9.4, 127, 4, 0.75, "316L", 15, "still air", "SI"],
  },
  DAM_DISTANCE: {
    US: [212, 1, 0.065, 46, 9.4, 5, 4, 0.75, "316L", 59, "still air", "US"],
    SI: [100, 25.4, 1.651, 46, 9.4, 127, 4, 0.75, "316L", 15, "still air", "SI"],
  },
  SCHEDULE: {
    US: [1, 0.065, "316L", "steady", 9.5, 0.75, 5, 0.16, 20, 3, 65, 0.3, 0.01, 0.16, "US"],
    SI: [25.4, 1.651, "316L", "steady", 9.5, 0.75, 127, 4.064, 20, 3, 65, 0.3, 0.254, 4.064, "SI"],
  },
} as const;

type Id = keyof typeof CALLS;
const IDS = Object.keys(CALLS) as Id[];

function numbersOf(id: Id, cells: readonly unknown[]): number[] {
  const result = bead(id, ...cells);
  return [result].flat(2).filter((cell) => typeof cell === "number");
}

/** US numbers of each result over the SI ones. */
const RATIOS: Record<Exclude<Id, "SCHEDULE" | "DAM_TEMPERATURE">, (column: number) => number> = {
  AMPS_MELT: () => 1,
  MELT_WIDTH: () => 1 / 25.4,
  MELT_SECTION: () => 1 / 25.4,
  AMPS_THROUGH: () => 1,
  AMPS_WINDOW: () => 1,
  RING_BEAD: (column) => [1, 1, 1, 1 / 25.4, 1 / 25.4, 1.8][column] ?? NaN,
  START_DWELL: () => 1,
  AMPS_SECTORS: (column) => (column === 4 ? 1.8 : 1),
  DAM_DISTANCE: () => 1 / 25.4,
};

describe("US and SI agree to 1e-11", () => {
  test.each(Object.keys(RATIOS) as (keyof typeof RATIOS)[])("%s", (id) => {
    const [us, si] = [numbersOf(id, CALLS[id].US), numbersOf(id, CALLS[id].SI)];
    expect(us.length).toBe(si.length);
    us.forEach((value, i) => {
      const expected = (si[i] ?? NaN) * RATIOS[id](i % (id === "RING_BEAD" ? 6 : 5));
      expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-11 * Math.max(Math.abs(expected), 1e-3));
    });
  });

  test("DAM_TEMPERATURE", () => {
    const { US, SI } = CALLS.DAM_TEMPERATURE;
    const expected = number("DAM_TEMPERATURE", ...SI) * 1.8 + 32;
    expect(Math.abs(number("DAM_TEMPERATURE", ...US) / expected - 1)).toBeLessThan(1e-12);
  });

  test("SCHEDULE, row by row", () => {
    const factors: Record<string, number> = { in: 25.4, "in/min": 25.4, "kJ/in": 1 / 25.4, "°F": 1 / 1.8 };
    const [us, si] = [table("SCHEDULE", ...CALLS.SCHEDULE.US), table("SCHEDULE", ...CALLS.SCHEDULE.SI)];
    expect(us.map(([label]) => label)).toEqual(si.map(([label]) => label));
    us.forEach(([label, value, unit], i) => {
      // The inch and the metric series of electrodes are sizes of their own.
      if (label === "Electrode diameter" || typeof value !== "number") return;
      const expected = value * (factors[String(unit)] ?? 1);
      const close = 1e-11 * Math.max(Math.abs(expected), 1e-3);
      expect(Math.abs(Number(si[i]?.[1]) - expected)).toBeLessThanOrEqual(close);
    });
  });
});

describe("defaults omitted are the defaults written out", () => {
  test.each([null, undefined, ""])("omitted as %p", (blank) => {
    const volts = number("ARC_VOLTS", number("STANDOFF", 0.065));
    // 4 × (0.5 mm + half of 0.0425 in).
    const spot = 4 * (0.5 / 25.4 + 0.0425 / 2);
    expect(bead("AMPS_MELT", 0.065, 5, blank, blank, blank, blank, blank, blank)).toBeCloseTo(
      number("AMPS_MELT", 0.065, 5, 0.13 + 1 / 25.4, "316L", volts, 0.78, 68, spot, "US"),
      9,
    );
    const dwell = number("START_DWELL", 0.065, 5);
    const plain = table("AMPS_SECTORS", 1, 0.065, 5, blank, blank, blank, blank, blank, blank, blank, blank);
    const full = table(
      "AMPS_SECTORS",
      1,
      0.065,
      5,
      4,
      0,
      dwell,
      0.13 + 1 / 25.4,
      "316L",
      volts,
      0.78,
      68,
      spot,
    );
    plain.flat().forEach((value, i) => {
      expect(value).toBeCloseTo(Number(full.flat()[i]), 8);
    });
    expect(bead("DAM_TEMPERATURE", 6, 1, 0.065, 46, 9.4, 5, blank, blank, blank, blank)).toBeCloseTo(
      number("DAM_TEMPERATURE", 6, 1, 0.065, 46, 9.4, 5, 0, 0.78, "316l ", 68, "None", "us"),
      9,
    );
  });

  test("zero is a number: no dwell is no default dwell", () => {
    const [without] = table("AMPS_SECTORS", 0.5, 0.049, 6, 4, 0, 0) as number[][];
    const [standing] = table("AMPS_SECTORS", 0.5, 0.049, 6, 4, 0) as number[][];
    expect(without?.[2]).toBeGreaterThan(standing?.[2] ?? NaN);
  });
});

describe("cells that are no number", () => {
  /** Where the required numbers stand. */
  const REQUIRED: Record<Id, readonly (readonly [number, string])[]> = {
    AMPS_MELT: [
      [0, "wall"],
      [1, "speed"],
    ],
    MELT_WIDTH: [
      [0, "wall"],
      [1, "amps"],
      [2, "speed"],
    ],
    MELT_SECTION: [
      [0, "wall"],
      [1, "amps"],
      [2, "speed"],
    ],
    AMPS_THROUGH: [
      [0, "wall"],
      [1, "speed"],
    ],
    AMPS_WINDOW: [
      [0, "wall"],
      [1, "speed"],
    ],
    RING_BEAD: [
      [0, "od"],
      [1, "wall"],
      [2, "speed"],
      [3, "amps"],
    ],
    START_DWELL: [
      [0, "wall"],
      [1, "speed"],
    ],
    AMPS_SECTORS: [
      [0, "od"],
      [1, "wall"],
      [2, "speed"],
    ],
    DAM_TEMPERATURE: [
      [0, "distance"],
      [1, "od"],
      [2, "wall"],
      [3, "amps"],
      [4, "volts"],
      [5, "speed"],
    ],
    DAM_DISTANCE: [
      [0, "limit"],
      [1, "od"],
      [2, "wall"],
      [3, "amps"],
      [4, "volts"],
      [5, "speed"],
    ],
    SCHEDULE: [
      [0, "od"],
      [1, "wall"],
    ],
  };

  test.each(IDS.flatMap((id) => REQUIRED[id].map(([place, name]) => [id, name, place] as const)))(
    "%s refuses them as %s",
    (id, name, place) => {
      for (const cell of [undefined, null, "", "  "]) {
        expect(refusal(id, ...CALLS[id].US.map((value, i) => (i === place ? cell : value)))).toMatch(
          new RegExp(`^#VALUE! ${name} = blank: needs a number`),
        );
      }
      // A length is read from text as people write sizes, and nothing else is.
      const text = kindOfArgument(id, name) === LENGTH ? "5 cm" : "5";
      for (const cell of ["abc", text, true, NaN, Infinity, ...(name === "amps" ? [] : [[[1, 2]]])]) {
        expect(refusal(id, ...CALLS[id].US.map((value, i) => (i === place ? cell : value)))).toMatch(
          new RegExp(`^#VALUE! ${name} = `),
        );
      }
    },
  );
});

test.each([
  ["AMPS_MELT", [-0.065, 5], "#VALUE! wall = -0.065 in: must be above 0"],
  ["AMPS_MELT", [0.065, 0], "#VALUE! speed = 0 in/min: must be above 0"],
  ["AMPS_MELT", [0.065, 5, 0], "#VALUE! beadWidth = 0 in: must be above 0"],
  ["AMPS_MELT", [0.065, 5, "", "XYZ"], /^#VALUE! material = "XYZ": must be one of 304L, 316L, /],
  ["AMPS_MELT", [0.065, 5, "", "", 0], "#VALUE! volts = 0 V: must be above 0"],
  ["AMPS_MELT", [0.065, 5, "", "", 0.5], "#VALUE! volts = 0.5 V: must be between 1 V and 1000 V"],
  ["AMPS_MELT", [0.065, 5, "", "", "", 1e-4], "#VALUE! efficiency = 0.0001: must be between 0.001 and 1"],
  ["AMPS_MELT", [0.065, 5, "", "", "", 1.01], "#VALUE! efficiency = 1.01: must be above 0 and at most 1"],
  [
    "AMPS_MELT",
    [0.065, 5, "", "", "", "", 2642],
    "#VALUE! preheat = 2642 °F: must be below the liquidus, 2642 °F",
  ],
  [
    "AMPS_MELT",
    [0.065, 5, "", "", "", "", -500],
    "#VALUE! preheat = -500 °F: must be above absolute zero, -459.67 °F",
  ],
  [
    "AMPS_MELT",
    [1.65, 130, "", "", "", "", -273.15, "", "SI"],
    "#VALUE! preheat = -273.15 °C: must be above absolute zero, -273.15 °C",
  ],
  [
    "AMPS_MELT",
    [0.065, 5, "", "", "", "", "", "", "metric"],
    '#VALUE! units = "metric": must be one of US, SI',
  ],
  [
    "AMPS_MELT",
    [0.25, 5],
    "#VALUE! volts = omitted: give the arc voltage; it is estimated only for walls up to 0.21622 in",
  ],
  [
    "AMPS_MELT",
    [1.65, 1e9, "", "", "", "", "", "", "SI"],
    "#VALUE! speed = 1000000000 mm/min: must be between 0.6 mm/min and 60000 mm/min",
  ],
  ["AMPS_MELT", [1e301, 5], "#VALUE! wall = 1e+301: is out of range (limit 1e300)"],
  ["AMPS_MELT", [0.065, Infinity], "#VALUE! speed = Infinity: must be a finite number (in/min)"],
  ["MELT_WIDTH", [1.65, -1, 130, "", "", "", "", "", "SI"], "#VALUE! amps = -1 A: must be above 0"],
  [
    "MELT_WIDTH",
    [1.65, 2, 130, "", "", "", "", "", "SI"],
    /^#N\/A amps = 2 A: melts nothing; melting starts at [\d.]+ A$/,
  ],
  [
    "MELT_WIDTH",
    [1.65, 1e7, 130, "", "", "", "", "", "SI"],
    /^#N\/A amps = 10000000 A: must be at most [\d.]+ A$/,
  ],
  ["START_DWELL", [0, 5], "#VALUE! wall = 0 in: must be above 0"],
  ["AMPS_SECTORS", [1, 0.5, 5], "#VALUE! wall = 0.5 in: must be less than half of od, 0.5 in"],
  ["AMPS_SECTORS", [0, 0.065, 5], "#VALUE! od = 0 in: must be above 0"],
  ["AMPS_SECTORS", [1, 0.065, 5, 2.5], "#VALUE! sectors = 2.5: must be a whole number from 1 to 360"],
  ["AMPS_SECTORS", [1, 0.065, 5, 0], "#VALUE! sectors = 0: must be a whole number from 1 to 360"],
  ["AMPS_SECTORS", [1, 0.065, 5, 4, -1], "#VALUE! overlap = -1°: must be 0 or more"],
  ["AMPS_SECTORS", [1, 0.065, 5, 4, 1081], "#VALUE! overlap = 1081°: must be between 0° and 1080°"],
  ["AMPS_SECTORS", [1, 0.065, 5, 4, 0, -1], "#VALUE! dwell = -1 s: must be 0 or more"],
  [
    "AMPS_SECTORS",
    [0.125, 0.03, 5, 4, 0, 60],
    "#N/A dwell = 60 s: shorten the dwell; heats the tube so much that the first sector needs no current",
  ],
  [
    "AMPS_SECTORS",
    [0.25, 0.035, 10, 4, 720, 0, 0.3],
    "#N/A od = 0.25 in: is too small for this bead: the whole ring reaches the liquidus; increase travel speed, reduce overlap or target a narrower bead",
  ],
  [
    "AMPS_SECTORS",
    [1, 0.065, 500],
    /^#VALUE! speed = 500 in\/min: must be at most [\d.]+ in\/min with this wall and arc$/,
  ],
  [
    "AMPS_SECTORS",
    [1, 0.12, 5, 4, 0, 3, 0.05],
    /^#N\/A beadWidth = 0.05 in: leaves no root: the wall melts through from [\d.]+ in$/,
  ],
  [
    "AMPS_SECTORS",
    [0.02, 0.004, 0.5, 4, 0, 0],
    /^#N\/A od = 0\.02 in: is too small a ring for this travel; must be at least [\d.]+ in$/,
  ],
  [
    "AMPS_SECTORS",
    [20, 0.004, 420, 4, 0, 0, 0.01, "", 9, "", "", 0.002],
    /^#N\/A od = 20 in: is too large a ring for this travel; must be at most [\d.]+ in$/,
  ],
  ["AMPS_MELT", [0.065, 5, 3], /^#VALUE! beadWidth = 3 in: must be between [\d.]+ in and [\d.]+ in$/],
  ["AMPS_MELT", [0.065, 5, "", "", "", "", "", 0], "#VALUE! arcSize = 0 in: must be above 0"],
  ["AMPS_THROUGH", [0.065, 5, -0.1], /^#VALUE! rootWidth = -0.1 in: must be between 0 in and [\d.]+ in$/],
  ["AMPS_WINDOW", [0.065, 5, "", "", 0.6], "#VALUE! wallTolerance = 0.6: must be between 0 and 0.5"],
  [
    "AMPS_WINDOW",
    [0.065, 5, "", "", "", 0.9, 0.8],
    "#VALUE! efficiencyLow = 0.9: must be at most efficiencyHigh, 0.8",
  ],
  ["RING_BEAD", [1, 0.065, 5, [[]]], "#VALUE! amps = blank: needs a number or a range of them"],
  ["RING_BEAD", [1, 0.065, 5, [[50, 0]]], "#VALUE! amps = 0 A: must be above 0"],
  [
    "RING_BEAD",
    [1, 0.065, 5, [Array(361).fill(50)]],
    "#VALUE! amps = 361: sectors are too many; at most 360",
  ],
  [
    "AMPS_SECTORS",
    [0.06, 0.018, 0.5, 36, 0, 3],
    /^#N\/A speed = 0\.5 in\/min: the tube's own heat melts it ahead of the arc within \d+° of rotation/,
  ],
  [
    "RING_BEAD",
    [0.25, 0.095, 5, 90],
    "#N/A od = 0.25 in: is too small for this bead: the whole ring reaches the liquidus; increase travel speed, reduce overlap or target a narrower bead",
  ],
  [
    "DAM_TEMPERATURE",
    [0, 1, 0.065, 46, 9.4, 5],
    /^#N\/A distance = 0 in: so near, the metal melts; the liquidus is 2642 °F$/,
  ],
  ["DAM_TEMPERATURE", [-1, 1, 0.065, 46, 9.4, 5], "#VALUE! distance = -1 in: must be 0 or more"],
  ["DAM_TEMPERATURE", [6, 1, 0.065, 0, 9.4, 5], "#VALUE! amps = 0 A: must be above 0"],
  ["DAM_TEMPERATURE", [6, 1, 0.065, 46, 9.4, 5, -2], "#VALUE! extraSeconds = -2 s: must be 0 or more"],
  [
    "DAM_TEMPERATURE",
    [6, 1, 0.065, 46, 9.4, 5, 0, "", "", -460],
    "#VALUE! ambient = -460 °F: must be above absolute zero, -459.67 °F",
  ],
  ["DAM_DISTANCE", [68, 1, 0.065, 46, 9.4, 5], "#VALUE! limit = 68 °F: must be above ambient, 68 °F"],
  [
    "DAM_DISTANCE",
    [5000, 1, 0.065, 46, 9.4, 5],
    "#VALUE! limit = 5000 °F: must be below the liquidus, 2642 °F",
  ],
  [
    "DAM_DISTANCE",
    [2600, 1, 0.065, 8, 9.4, 5],
    /^#N\/A limit = 2600 °F: the weld itself only reaches [\d.]+ °F by this calculation$/,
  ],
])("%s %p is refused: %s", (id, cells, sentence) => {
  const said = refusal(id, ...cells);
  if (typeof sentence === "string") expect(said).toBe(sentence);
  else expect(said).toMatch(sentence);
});

/** Two turns of unit leave no gap between equal temperatures through which an endless distance would slip. */
test("a limit equal to ambient in either system is refused", () => {
  expect(refusal("DAM_DISTANCE", 20, 25.4, 1.65, 46, 9.4, 130, "", "", "", "", "", "SI")).toMatch(
    /above ambient, 20 °C$/,
  );
  expect(refusal("DAM_DISTANCE", 59, 1, 0.065, 46, 9.4, 5, "", "", "", 59)).toMatch(/above ambient, 59 °F$/);
});

test("a lap of next to nothing has the amps of its place", () => {
  const rows = table("AMPS_SECTORS", 1, 0.065, 5, 4, 1e-30) as number[][];
  const longer = table("AMPS_SECTORS", 1, 0.065, 5, 4, 1e-6) as number[][];
  expect(rows).toHaveLength(5);
  expect(rows[4]?.[2]).toBeCloseTo(longer[4]?.[2] ?? NaN, 6);
});

test("a dwell of next to nothing is none", () => {
  expect(table("AMPS_SECTORS", 1, 0.065, 5, 4, 0, 5e-324)).toEqual(
    table("AMPS_SECTORS", 1, 0.065, 5, 4, 0, 0),
  );
  expect(table("RING_BEAD", 1, 0.065, 5, 50, 5e-324)).toHaveLength(1);
});

test("just inside the limits there is an answer", () => {
  expect(number("AMPS_MELT", 0.065, 5, "", "", "", "", 2641)).toBeGreaterThan(0);
  expect(table("AMPS_SECTORS", 1, 0.065, 5, 360, 90)).toHaveLength(361);
  expect(number("AMPS_MELT", 5.492, 130, "", "", "", "", "", "", "SI")).toBeGreaterThan(0);
  expect(number("AMPS_MELT", 0.1, 130, "", "", "", "", "", "", "SI")).toBeGreaterThan(0);
});

test("whatever finite numbers come in, an answer or a sentence goes out", () => {
  const any = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.double({ min: 0, max: 500, noNaN: true }),
    fc.constantFrom(5e-324, 1e-300, 1e-12, 0.065, 1, 5, 1e6, 1e300, Number.MAX_VALUE),
  );
  fc.assert(
    fc.property(fc.constantFrom(...IDS), fc.array(any, { minLength: 13, maxLength: 13 }), (id, cells) => {
      const given = CALLS[id].US.map((value, i) => (typeof value === "number" ? cells[i] : value));
      const said = refusal(id, ...given);
      if (said === "answered") return;
      expect(said).toMatch(/^#(VALUE!|N\/A) \w+ = .+: .+/);
      // Every number it is given is finite.
      expect(said).not.toMatch(/failed|NaN|Infinity|undefined/);
    }),
    { numRuns: 3000 },
  );
});
