/**
 * The same physical question in US and in SI gets the same physical answer, to 1e-12 relative. Driven by the help:
 * the units that a description names (`in | mm`) say how each argument and each result is converted.
 */

import fc from "fast-check";

import type { FormulaHelp } from "../../functions/help-text";
import { HELP } from "../../functions/help";
import type { Quantity, Units } from "../../src/quantity";
import { fromBase, toBase } from "../../src/quantity";
import { RUNS } from "../arbitrary-cells";
import { bead, exampleCells, expectNear, quantityIn, refusal, TWO_UNITS as ALL_UNITS } from "../bead";

/**
 * Nominal sizes and default leaves are lists of their own in each system, and so is the standard state of a cylinder's
 * gas; their tests stand with them.
 */
const OF_EACH_SYSTEM = ["ELECTRODE_DIAMETER", "FEELER_STACK", "PIPE_OD", "PIPE_WALL", "GAS_CYLINDER"];

const other = (units: Units): Units => (units === "US" ? "SI" : "US");

/** The words on one column of a table, where a text has "Columns: …; …". */
function columnIn(text: string, column: number): string | undefined {
  return /^Columns?: (.*)/.exec(text)?.[1]?.split(";")[column];
}

/** The cells of an argument in the other system, column by column where its description tells them apart. */
function converted(cell: unknown, description: string, from: Units): unknown {
  if (!Array.isArray(cell)) return convertedNumber(cell, quantityIn(description), from);
  return (cell as unknown[][]).map((row) =>
    row.map((one, c) => convertedNumber(one, quantityIn(columnIn(description, c) ?? description), from)),
  );
}

function convertedNumber(cell: unknown, of: Quantity | undefined, from: Units): unknown {
  if (typeof cell !== "number" || of === undefined) return cell;
  return fromBase(toBase(cell, of, from), of, other(from));
}

/** Rows that say their own unit after their value; the electrode's is a nominal size of each system. */
const NOMINAL_ROW = "Electrode diameter";
const ROWS_WITH_UNITS = "Rows of label, value, unit";

function expectSameRow(
  [label, value, unit]: unknown[],
  from: Units,
  [sameLabel, same, sameUnit]: unknown[],
): void {
  expect(label).toBe(sameLabel);
  if (label === NOMINAL_ROW) return;
  const of = ALL_UNITS.find((one) => one[from].unit === unit && one[other(from)].unit === sameUnit);
  if (typeof value !== "number" || typeof same !== "number") expect([value, unit]).toEqual([same, sameUnit]);
  else if (of === undefined) expectNear(value, same);
  else expectNear(toBase(value, of, from), toBase(same, of, other(from)));
  expect(of !== undefined || unit === sameUnit).toBe(true);
}

/** The quantity of a result's column: what "Columns: …; …" of the help says, or the one that the meaning names. */
function quantityOf({ meaning, returns }: FormulaHelp, column: number): Quantity | undefined {
  return quantityIn(columnIn(returns, column) ?? meaning);
}

function expectSame(about: FormulaHelp, result: unknown, from: Units, expected: unknown): void {
  const [rows, expectedRows] = [result, expected].map((one) =>
    Array.isArray(one) ? (one as unknown[][]) : [[one]],
  );
  expect(rows?.map((row) => row.length)).toEqual(expectedRows?.map((row) => row.length));
  rows?.forEach((row, r) => {
    if (about.returns.startsWith(ROWS_WITH_UNITS)) {
      expectSameRow(row, from, expectedRows?.[r] ?? []);
      return;
    }
    row.forEach((value, c) => {
      const same = expectedRows?.[r]?.[c];
      const of = quantityOf(about, c);
      if (typeof value !== "number" || typeof same !== "number") expect(value).toBe(same);
      else if (of === undefined) expectNear(value, same);
      else expectNear(toBase(value, of, from), toBase(same, of, other(from)));
    });
  });
}

const withUnits = HELP.filter(
  ({ id, parameters }) => parameters.some(({ name }) => name === "units") && !OF_EACH_SYSTEM.includes(id),
).map((about) => [about.id, about] as const);

describe(`US and SI agree round the worked example (${RUNS})`, () => {
  test.each(withUnits)("%s", (id, about) => {
    const example = exampleCells(about);
    const last = example.length - 1;
    const from = example[last] === "SI" ? "SI" : "US";
    const quantities = about.parameters.map(({ description }) => quantityIn(description));
    const [inFrom, inOther] = [from, other(from)];
    let answered = 0;
    fc.assert(
      fc.property(
        fc.tuple(...example.map(() => fc.double({ min: 0.9, max: 1.1, noNaN: true }))),
        (factors) => {
          const cells = example.map((cell, i) =>
            typeof cell === "number" && quantities[i] !== undefined ? cell * (factors[i] ?? 1) : cell,
          );
          const same = cells.map((cell, i) => converted(cell, about.parameters[i]?.description ?? "", from));
          cells[last] = inFrom;
          same[last] = inOther;
          const refused = refusal(id, ...cells);
          expect(refusal(id, ...same).slice(0, 12)).toBe(refused.slice(0, 12));
          if (refused !== "answered") return;
          answered += 1;
          expectSame(about, bead(id, ...cells), from, bead(id, ...same));
        },
      ),
    );
    expect(answered).toBeGreaterThan(0);
  });
});

test("a formula names two units where, and only where, it takes units", () => {
  const naming = HELP.filter(
    (about) =>
      quantityOf(about, 0) !== undefined ||
      about.parameters.some(({ description }) => quantityIn(description) !== undefined),
  );
  const taking = HELP.filter(({ parameters }) => parameters.some(({ name }) => name === "units"));
  expect(naming.map(({ id }) => id)).toEqual(taking.map(({ id }) => id));
});
