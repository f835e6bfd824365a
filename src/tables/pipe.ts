/**
 * Pipe by nominal size: [asme-b36.19m] (schedules with an S) and [asme-b36.10m] (without), NPS 1/8 to 12. Both
 * standards print an inch and a millimeter column; the inch one is the origin, the millimeters are rounded from it.
 */

import type { Length, Units } from "../quantity";
import { quotedText } from "../quoted-text";
import { Refusal } from "../refusal";
import { nominalSize, scheduleName } from "./pipe-size";
import { LENGTH, si } from "../quantity";

const SCHEDULES = ["5S", "10S", "40S", "80S", "5", "10", "40", "80"] as const;
export type PipeSchedule = (typeof SCHEDULES)[number];

/**
 * Outside diameter, then the walls 5S, 10S, 40S, 80S, and at the end 40 and 80 where B36.10M has its own. Below
 * NPS 10 a number with and without S is the same wall; 5 and 10 are the same as 5S and 10S throughout.
 */
type Column = readonly [
  od: number,
  five: number | undefined,
  ten: number,
  fortyS: number,
  eightyS: number,
  forty?: number,
  eighty?: number,
];

interface Pipe {
  readonly nps: string;
  readonly size: number;
  readonly US: Column;
  readonly SI: Column;
}

function pipe(nps: string, inches: Column, millimeters: Column): Pipe {
  return { nps, size: nominalSize(nps), US: inches, SI: millimeters };
}

/**
 * Millimeters compared with the piping tables of a general open reference library (fluids 1.3.1); inches from memory,
 * each of which rounds to its millimeters. NPS 10 and 12 are 273.1 and 323.9 mm as in B36.19M; B36.10M prints
 * 273.0 and 323.8 for the same inches.
 */
const PIPES: readonly Pipe[] = [
  pipe("1/8", [0.405, undefined, 0.049, 0.068, 0.095], [10.3, undefined, 1.24, 1.73, 2.41]),
  pipe("1/4", [0.54, undefined, 0.065, 0.088, 0.119], [13.7, undefined, 1.65, 2.24, 3.02]),
  pipe("3/8", [0.675, undefined, 0.065, 0.091, 0.126], [17.1, undefined, 1.65, 2.31, 3.2]),
  pipe("1/2", [0.84, 0.065, 0.083, 0.109, 0.147], [21.3, 1.65, 2.11, 2.77, 3.73]),
  pipe("3/4", [1.05, 0.065, 0.083, 0.113, 0.154], [26.7, 1.65, 2.11, 2.87, 3.91]),
  pipe("1", [1.315, 0.065, 0.109, 0.133, 0.179], [33.4, 1.65, 2.77, 3.38, 4.55]),
  pipe("1-1/4", [1.66, 0.065, 0.109, 0.14, 0.191], [42.2, 1.65, 2.77, 3.56, 4.85]),
  pipe("1-1/2", [1.9, 0.065, 0.109, 0.145, 0.2], [48.3, 1.65, 2.77, 3.68, 5.08]),
  pipe("2", [2.375, 0.065, 0.109, 0.154, 0.218], [60.3, 1.65, 2.77, 3.91, 5.54]),
  pipe("2-1/2", [2.875, 0.083, 0.12, 0.203, 0.276], [73, 2.11, 3.05, 5.16, 7.01]),
  pipe("3", [3.5, 0.083, 0.12, 0.216, 0.3], [88.9, 2.11, 3.05, 5.49, 7.62]),
  pipe("3-1/2", [4, 0.083, 0.12, 0.226, 0.318], [101.6, 2.11, 3.05, 5.74, 8.08]),
  pipe("4", [4.5, 0.083, 0.12, 0.237, 0.337], [114.3, 2.11, 3.05, 6.02, 8.56]),
  pipe("5", [5.563, 0.109, 0.134, 0.258, 0.375], [141.3, 2.77, 3.4, 6.55, 9.53]),
  pipe("6", [6.625, 0.109, 0.134, 0.28, 0.432], [168.3, 2.77, 3.4, 7.11, 10.97]),
  pipe("8", [8.625, 0.109, 0.148, 0.322, 0.5], [219.1, 2.77, 3.76, 8.18, 12.7]),
  pipe("10", [10.75, 0.134, 0.165, 0.365, 0.5, 0.365, 0.594], [273.1, 3.4, 4.19, 9.27, 12.7, 9.27, 15.09]),
  pipe("12", [12.75, 0.156, 0.18, 0.375, 0.5, 0.406, 0.688], [323.9, 3.96, 4.57, 9.53, 12.7, 10.31, 17.48]),
];

/** The sizes of the table as they are written, smallest first. */
export const NOMINAL_SIZES = PIPES.map(({ nps }) => nps);

/** Outside diameter of a nominal size, m, by the column that the system of units reads. */
export function pipeOd(nps: string, units: Units): Length {
  return si(inMeters(pipeOf(nps)[units][0], units), LENGTH);
}

/** Wall of a nominal size and schedule, m, by the column that the system of units reads. */
export function pipeWall(nps: string, schedule: string, units: Units): Length {
  const found = pipeOf(nps);
  const name = scheduleName(schedule);
  const known = SCHEDULES.find((listed) => listed === name);
  if (known === undefined) {
    throw new Refusal(
      "schedule",
      quotedText(schedule),
      [`is not in this table; it has ${SCHEDULES.join(", ")}`],
      "unanswerable",
    );
  }
  const wall = wallIn(found[units], known);
  if (wall !== undefined) return si(inMeters(wall, units), LENGTH);
  const listed = SCHEDULES.filter((one) => wallIn(found[units], one) !== undefined);
  throw new Refusal(
    "schedule",
    quotedText(schedule),
    [`the standard has no such wall for NPS ${found.nps}; this table has ${listed.join(", ")}`],
    "unanswerable",
  );
}

function pipeOf(typed: string): Pipe {
  const wanted = nominalSize(typed);
  const found = PIPES.find(({ size }) => size === wanted);
  if (found !== undefined) return found;
  throw new Refusal(
    "nps",
    quotedText(typed),
    [`is not in this table; it has ${NOMINAL_SIZES.join(", ")}`],
    "unanswerable",
  );
}

function wallIn(column: Column, schedule: PipeSchedule): number | undefined {
  const [, five, ten, fortyS, eightyS, forty = fortyS, eighty = eightyS] = column;
  const walls = {
    "5S": five,
    "10S": ten,
    "40S": fortyS,
    "80S": eightyS,
    "5": five,
    "10": ten,
    "40": forty,
    "80": eighty,
  };
  return walls[schedule];
}

function inMeters(printed: number, units: Units): number {
  return units === "US" ? printed * 0.0254 : printed / 1000;
}
