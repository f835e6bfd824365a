/** Calls SCHEDULE with arguments by name, and finds the values of its rows. */

import { bead, refusal, table } from "../../bead";

/** The arguments of SCHEDULE in their order; what is not named is omitted. */
const ARGUMENTS = [
  "od",
  "wall",
  "material",
  "style",
  "volts",
  "efficiency",
  "speed",
  "beadWidth",
  "overlap",
  "dwell",
  "peak",
  "background",
  "allowance",
  "arcSize",
  "units",
] as const;
export type Arguments = Partial<Record<(typeof ARGUMENTS)[number], unknown>>;

function cellsOf(given: Arguments): unknown[] {
  return ARGUMENTS.map((name) => given[name] ?? null);
}

export function rowsOf(given: Arguments): (number | string | boolean)[][] {
  return table("SCHEDULE", ...cellsOf(given));
}

export function refusalOf(given: Arguments): string {
  return refusal("SCHEDULE", ...cellsOf(given));
}

/** The value of a row by its label; a row that is not there fails the test. */
export type Row = (label: string) => number;

export function rowOf(given: Arguments): Row {
  const rows = rowsOf(given);
  return (label) => {
    const value = rows.find((row) => row[0] === label)?.[1];
    if (typeof value !== "number") throw new Error(`no row ${label}`);
    return value;
  };
}

export const SECTORS = ["Sector 1", "Sector 2", "Sector 3", "Sector 4", "Overlap"] as const;

/** Mean currents and rises of AMPS_SECTORS for what the rows of a schedule say: sectors, and the overlap last. */
export function sectorsFor(
  { od, wall, material, efficiency, arcSize, units }: Arguments,
  row: Row,
): SectorRow[] {
  const rows = bead(
    "AMPS_SECTORS",
    ...[od, wall, row("Travel speed"), 4, row("Overlap"), row("Start dwell"), row("Bead width")],
    ...[material, row("Arc voltage"), efficiency, null, arcSize, units],
  ) as number[][];
  return rows.map(([, , mean = NaN, , rise = NaN]) => ({ mean, rise }));
}

export interface SectorRow {
  readonly mean: number;
  readonly rise: number;
}
