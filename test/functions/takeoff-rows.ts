/** Calls TAKEOFF with a list and terms by name, and tells its lines and its sums. */

import type { CellsByName } from "../bead";
import { byName, refusal, table } from "../bead";

export type Row = (number | string | boolean)[];

export const NOTHING: Row = ["", "", "", "", "", "", "", "", ""];
export const HEADINGS: Row = [
  "joints",
  "travel, in/min",
  "cycle, s",
  "purge, s",
  "time, h",
  "arc gas, ft³",
  "purge gas, ft³",
  "gas, ft³",
  "remark",
];
/** Columns of the answer. */
export const [JOINTS, SPEED, MACHINE, PURGE, TIME, ARC_GAS, PURGE_GAS, GAS, REMARK] = [
  0, 1, 2, 3, 4, 5, 6, 7, 8,
];
export const SUMMED = [JOINTS, TIME, ARC_GAS, PURGE_GAS, GAS];
/** 8 joints of 1 in × 0.065 in. */
export const GOOD = [8, 1, 0.065];
export const ERROR_CELL = { type: "Error", basicValue: "#N/A", errorType: "NotAvailable" };

export type Terms = Omit<CellsByName<"TAKEOFF">, "joints">;

/** The rows of the list, and the last row with the sums. */
export function takeoff(joints: unknown, terms: Terms = {}): { lines: Row[]; sums: Row } {
  const rows = table("TAKEOFF", ...byName("TAKEOFF", { ...terms, joints }));
  return { lines: rows.slice(0, -1), sums: rows.at(-1) ?? [] };
}

export function refusedBy(joints: unknown, terms: Terms = {}): string {
  return refusal("TAKEOFF", ...byName("TAKEOFF", { ...terms, joints }));
}

/** The remark beside a line that follows a good one and is not counted. */
export function remark(line: unknown[], units?: string): unknown {
  const { lines, sums } = takeoff(
    [GOOD.map((cell, i) => (units === "SI" && i > 0 ? cell * 25.4 : cell)), line],
    {
      units,
    },
  );
  expect(lines[1]?.slice(0, REMARK)).toEqual(NOTHING.slice(0, REMARK));
  expect(sums[REMARK]).toBe("1 of 2 lines counted");
  return lines[1]?.[REMARK];
}
