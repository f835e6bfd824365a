/** Calls SCHEDULE with arguments by name, and finds the values of its rows. */

import type { CellsByName } from "./bead";
import { bead, byName, refusal, table } from "./bead";

export type Arguments = CellsByName<"SCHEDULE">;

export function rowsOf(given: Arguments): (number | string | boolean)[][] {
  return table("SCHEDULE", ...byName("SCHEDULE", given));
}

export function refusalOf(given: Arguments): string {
  return refusal("SCHEDULE", ...byName("SCHEDULE", given));
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
