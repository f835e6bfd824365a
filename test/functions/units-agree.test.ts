/**
 * The same physical question in US and in SI gets the same physical answer, to 1e-12 relative. Driven by the records:
 * the kind of quantity of each argument and of each result says how it is converted.
 */

import fc from "fast-check";

import type { FormulaHelp } from "../../functions/help-text";
import { HELP } from "../../functions/help";
import type { Quantity, Units } from "../../src/quantity";
import {
  COUNT,
  CURRENT,
  differs,
  fromBase,
  HEAT_INPUT,
  LENGTH,
  OXYGEN,
  SPEED,
  TEMPERATURE_RISE,
  toBase,
  unitPair,
  VOLTAGE,
} from "../../src/quantity";
import { RUNS, SETTINGS } from "../arbitrary-cells";
import { ANSWERED, exampleCells, expectNear, kindOfArgument, kindOfResult, recordOf, said } from "../bead";

/**
 * Nominal sizes and default leaves are lists of their own in each system, and so are the limits that a code or a
 * standard prints in both, and the standard state of a cylinder's gas; their tests stand with them.
 */
const OF_EACH_SYSTEM = [
  "ELECTRODE_DIAMETER",
  "FEELER_STACK",
  "PIPE_OD",
  "PIPE_WALL",
  "TUBE_TOLERANCE",
  "COVER_WALL",
  "COVER_OD",
  "GAS_CYLINDER",
  "GAS_LIQUID",
];

const other = (units: Units): Units => (units === "US" ? "SI" : "US");

/** What stands in the columns of a pasted list: quantity, od, wall, material; of sizes without the first; of a weld log. */
const LISTS: Readonly<Record<string, readonly (Quantity | undefined)[]>> = {
  joints: [COUNT, LENGTH, LENGTH, undefined],
  sizes: [LENGTH, LENGTH, undefined],
  coupons: [LENGTH, LENGTH, CURRENT, VOLTAGE, SPEED, LENGTH, LENGTH],
  log: [CURRENT, CURRENT, VOLTAGE, SPEED, OXYGEN, COUNT, LENGTH, LENGTH, LENGTH, undefined],
};

/** The cells of an argument in the other system, column by column where it is a list. */
function converted(cell: unknown, id: string, name: string, from: Units): unknown {
  const kind = kindOfArgument(id, name);
  if (!Array.isArray(cell)) return convertedNumber(cell, kind, from);
  return (cell as unknown[][]).map((row) =>
    row.map((one, c) => convertedNumber(one, LISTS[name]?.[c] ?? kind, from)),
  );
}

function convertedNumber(cell: unknown, of: Quantity | undefined, from: Units): unknown {
  if (typeof cell !== "number" || of === undefined) return cell;
  return fromBase(toBase(cell, of, from), of, other(from));
}

/** Rows that say their own unit after their value; the electrode's is a nominal size of each system. */
const ROWS_WITH_UNITS = "SCHEDULE";
const NOMINAL_ROW = "Electrode diameter";
const NOMINAL_COLUMN = ["SIZE_TABLE", 1] as const;
const KINDS_OF_ROWS = [LENGTH, SPEED, HEAT_INPUT, TEMPERATURE_RISE];

function expectSameRow(
  [label, value, unit]: unknown[],
  from: Units,
  [sameLabel, same, sameUnit]: unknown[],
): void {
  expect(label).toBe(sameLabel);
  if (label === NOMINAL_ROW) return;
  const of = KINDS_OF_ROWS.find((one) => one[from].unit === unit && one[other(from)].unit === sameUnit);
  if (of === undefined) expect(unit).toBe(sameUnit);
  expectSameValue(value, of, from, same);
}

function expectSameValue(value: unknown, of: Quantity | undefined, from: Units, same: unknown): void {
  // The headings of a list name their unit.
  if (typeof value === "string" && value !== "" && of !== undefined) {
    expect(value.replace(of[from].unit, of[other(from)].unit)).toBe(same);
    return;
  }
  if (typeof value !== "number" || typeof same !== "number") expect(value).toBe(same);
  else if (of === undefined) expectNear(value, same);
  else if (of === TEMPERATURE_RISE) {
    // What the tube has warmed up is a small difference of temperatures of a thousand kelvins.
    expect(Math.abs(toBase(value, of, from) - toBase(same, of, other(from)))).toBeLessThan(1e-8);
  } else expectNear(toBase(value, of, from), toBase(same, of, other(from)));
}

/**
 * Beads of a ring: where their search stops may turn on the last digit, which leaves a width some 1e-9 of it off, and a
 * root that only just opens grows as the square root of what is left there.
 */
const BEADS_OF_A_RING = ["PROGRAM_BEAD", "RING_BEAD"];

function expectSameWidth(value: unknown, of: Quantity | undefined, from: Units, same: unknown): void {
  if (typeof value !== "number" || typeof same !== "number" || of !== LENGTH) {
    expectSameValue(value, of, from, same);
    return;
  }
  const [one, two] = [toBase(value, of, from), toBase(same, of, other(from))];
  // m²: of widths of some millimeters 1e-7 of them, and a root under a micrometer is none.
  expect(Math.abs(one * one - two * two)).toBeLessThan(1e-12);
}

function expectSame(id: string, result: unknown, from: Units, expected: unknown): void {
  const [rows = [], expectedRows = []] = [result, expected].map((one) =>
    Array.isArray(one) ? (one as unknown[][]) : [[one]],
  );
  expect(rows.map((row) => row.length)).toEqual(expectedRows.map((row) => row.length));
  rows.forEach((row, r) => {
    const same = expectedRows[r] ?? [];
    if (id === ROWS_WITH_UNITS) expectSameRow(row, from, same);
    else {
      row.forEach((value, c) => {
        const nominal = id === NOMINAL_COLUMN[0] && c === NOMINAL_COLUMN[1] && typeof value === "number";
        if (BEADS_OF_A_RING.includes(id)) expectSameWidth(value, kindOfResult(id, c), from, same[c]);
        else if (!nominal) expectSameValue(value, kindOfResult(id, c), from, same[c]);
      });
    }
  });
}

function takesUnits({ parameters }: FormulaHelp): boolean {
  return parameters.some(({ name }) => name === "units");
}

const withUnits = HELP.filter((about) => takesUnits(about) && !OF_EACH_SYSTEM.includes(about.id)).map(
  (about) => [about.id, about] as const,
);

/** Some milliseconds a call: fewer runs. */
const DEAR = ["AMPS_SECTORS", "DAM_DISTANCE", "PROGRAM_BEAD", "RING_BEAD", "SCHEDULE", "SIZE_TABLE"];
const FEWER = { numRuns: Math.ceil(SETTINGS.numRuns / 5) };

describe(`US and SI agree round the worked example (${RUNS})`, () => {
  test.each(withUnits)("%s", (id, about) => {
    const example = exampleCells(about);
    const last = example.length - 1;
    const from = example[last] === "SI" ? "SI" : "US";
    const names = about.parameters.map(({ name }) => name);
    let answered = 0;
    fc.assert(
      fc.property(
        fc.tuple(...example.map(() => fc.double({ min: 0.9, max: 1.1, noNaN: true }))),
        (factors) => {
          const cells = example.map((cell, i) => {
            const kind = kindOfArgument(id, names[i] ?? "");
            return typeof cell === "number" && kind !== COUNT ? cell * (factors[i] ?? 1) : cell;
          });
          const same = cells.map((cell, i) => converted(cell, id, names[i] ?? "", from));
          cells[last] = from;
          same[last] = other(from);
          const [one, two] = [said(id, ...cells), said(id, ...same)];
          expect(two.refused.slice(0, 12)).toBe(one.refused.slice(0, 12));
          if (one.refused !== ANSWERED) return;
          answered += 1;
          expectSame(id, one.answer, from, two.answer);
        },
      ),
      DEAR.includes(id) ? FEWER : {},
    );
    expect(answered).toBeGreaterThan(0);
  });
});

describe("a formula takes units where, and only where, an argument or a result has two", () => {
  test.each(HELP.map((about) => [about.id, about] as const))("%s", (id, about) => {
    const { args, gives } = recordOf(id);
    const kinds = [
      ...Object.values(args).flatMap(({ quantity, columnKinds = [] }) => [quantity, ...columnKinds]),
      gives.quantity,
      ...gives.columnKinds,
    ];
    expect(takesUnits(about)).toBe(kinds.some((kind) => kind !== undefined && differs(kind)));
  });
});

describe("help names both units of whatever has two", () => {
  test.each(HELP.map((about) => [about.id, about] as const))("%s", (id, about) => {
    for (const { name, description } of about.parameters) {
      const kind = kindOfArgument(id, name);
      for (const list of [kind, ...(LISTS[name] ?? [])]) {
        if (list !== undefined && differs(list)) expect(description).toContain(unitPair(list));
      }
    }
    const { quantity, columnKinds } = recordOf(id).gives;
    if (quantity !== undefined && differs(quantity))
      expect(about.meaning).toContain(`, ${unitPair(quantity)}`);
    for (const kind of columnKinds) {
      if (kind !== undefined && differs(kind)) expect(about.returns).toContain(unitPair(kind));
    }
  });
});
