/**
 * The limits of an argument as they are found by trying: from a value that is answered, up and down to where the formula
 * refuses it by name. What help tells of limits is held against them.
 */

import type { Formula } from "../../functions/formula";
import type { Quantity, Units } from "../../src/quantity";
import { COUNT, fromBase, LENGTH, toBase } from "../../src/quantity";
import { exampleCells } from "../../tools/docs/example-cells";

export interface Limit {
  readonly name: string;
  readonly quantity: Quantity;
  readonly units: Units;
  readonly value: number;
}

/** Says whether a value is refused by the argument's name. */
type Refuses = (value: number) => boolean;

interface Probe {
  readonly name: string;
  readonly quantity: Quantity;
  readonly units: Units;
  readonly from: number | undefined;
  readonly refuses: Refuses;
}

/** Far beyond any limit of a calculation, and far under any. */
const HUGE = 1e20;
const TINY = 1e-12;
/** Where to begin when the example omits the argument. */
const STARTS = [1, 0.5, 10, 100, 0.1, 0.01, 1000];

/** All limits of a formula, one after the other, since each takes some dozens of calls. */
export function* limitsOf(formula: Formula): Generator<Limit> {
  for (const probe of probesOf(formula)) {
    const { name, quantity, units, refuses } = probe;
    const from = [probe.from, ...STARTS].find((value) => value !== undefined && !refuses(value));
    if (from === undefined) throw new Error(`nothing is answered for ${name} of ${formula.id}`);
    const whole = quantity === COUNT && refuses(Math.floor(from) + 0.5);
    for (const value of [upper(from, refuses, whole), lower(from, refuses, whole)]) {
      if (value !== undefined) yield { name, quantity, units, value };
    }
  }
}

function upper(from: number, refuses: Refuses, whole: boolean): number | undefined {
  let [inside, outside] = [from, Math.max(2 * Math.abs(from), 1)];
  while (!refuses(outside)) {
    if (outside > HUGE) return undefined;
    [inside, outside] = [outside, 2 * outside];
  }
  return edge(inside, outside, refuses, whole);
}

function lower(from: number, refuses: Refuses, whole: boolean): number | undefined {
  if (from > 0) {
    let inside = from;
    for (let outside = from / 2; outside > TINY && !whole; outside /= 2) {
      if (refuses(outside)) return edge(inside, outside, refuses, false);
      inside = outside;
    }
    if (whole) return refuses(0) ? edge(from, 0, refuses, true) : 0;
    if (refuses(0) || refuses(-TINY)) return 0;
  }
  let [inside, outside] = [Math.min(from, 0), Math.min(2 * from, -1)];
  while (!refuses(outside)) {
    if (outside < -HUGE) return undefined;
    [inside, outside] = [outside, 2 * outside];
  }
  return edge(inside, outside, refuses, whole);
}

/** The last value that is not refused. */
function edge(answered: number, refused: number, refuses: Refuses, whole: boolean): number {
  let [inside, outside] = [answered, refused];
  const near = whole ? 1 : 1e-10 * Math.max(Math.abs(inside), Math.abs(outside));
  while (Math.abs(outside - inside) > near) {
    const middle = whole ? Math.trunc((inside + outside) / 2) : (inside + outside) / 2;
    if (refuses(middle)) outside = middle;
    else inside = middle;
  }
  return inside;
}

/** Columns of a pasted list, with cells of a line in which each may go to its limits, mm. */
const COLUMNS = [
  { name: "quantity", quantity: COUNT },
  { name: "od", quantity: LENGTH },
  { name: "wall", quantity: LENGTH },
] as const;
/** A large tube for the thickest wall, a small one for the thinnest: neither belongs to the other. */
const LINES = [
  [8, 0.1, 0.001],
  [8, 0.01, 0.001],
] as const;

function* probesOf(formula: Formula): Generator<Probe> {
  for (const units of formula.takesUnits ? (["US", "SI"] as const) : (["US"] as const)) {
    const cells = exampleIn(formula, units);
    for (const [i, [name, { takes, quantity }]] of Object.entries(formula.args).entries()) {
      const own = cells[i];
      if (takes === "cell" && quantity !== undefined) {
        yield {
          name,
          quantity,
          units,
          from: typeof own === "number" ? own : undefined,
          refuses: (value) =>
            said(
              formula,
              cells.map((cell, c) => (c === i ? value : cell)),
            ).startsWith(`${name} = `),
        };
      }
      if (name === "joints") yield* columnProbes(formula, cells, i, units);
    }
  }
}

function* columnProbes(
  formula: Formula,
  cells: readonly unknown[],
  place: number,
  units: Units,
): Generator<Probe> {
  const lines = LINES.map((line) => line.map((base, i) => (i === 0 ? base : fromBase(base, LENGTH, units))));
  const probed = lines.flatMap((line) => COLUMNS.map((column, i) => [line, column, i] as const));
  for (const [line, { name, quantity }, i] of probed) {
    const refuses: Refuses = (value) => {
      const row = line.map((cell, c) => (c === i ? value : cell));
      const call = cells.map((cell, c) => (c === place ? [row] : cell));
      // A list whose every line counts is refused as a whole; else the line has a remark.
      const sentence = said(formula, call);
      if (sentence !== "") return sentence.includes(`: ${name} = `);
      const rows = formula.call(...call);
      const [answered] = Array.isArray(rows) ? rows : [];
      return String(answered?.at(-1)).startsWith(`${name}: `);
    };
    yield { name, quantity, units, from: line[i], refuses };
  }
}

/** The sentence of the refusal, or "". */
function said({ call }: Formula, cells: readonly unknown[]): string {
  try {
    call(...cells);
    return "";
  } catch (problem) {
    return (problem as Error).message;
  }
}

/** The example's cells in a system of units. */
function exampleIn(formula: Formula, units: Units): unknown[] {
  const cells = exampleCells(formula);
  if (!formula.takesUnits) return cells;
  const from: Units = cells.at(-1) === "SI" ? "SI" : "US";
  const kinds = Object.values(formula.args).map(({ quantity }) => quantity);
  return cells.map((cell, i) => {
    if (i === cells.length - 1) return units;
    const kind = kinds[i];
    const number = typeof cell === "number" && kind !== undefined;
    return number && from !== units ? fromBase(toBase(cell, kind, from), kind, units) : cell;
  });
}
