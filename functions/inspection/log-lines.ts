/** The measured columns of a weld log as they stand on a sheet: a header and blank lines may stay. */

import type { Measured, Result } from "../../src/inspection/log";
import { MEASURED, RESULTS } from "../../src/inspection/log";
import type { Quantity } from "../../src/quantity";
import {
  COUNT,
  CURRENT,
  LENGTH,
  OXYGEN,
  plainNumber,
  si,
  SPEED,
  unitPair,
  VOLTAGE,
} from "../../src/quantity";
import { orRefusal, Refusal } from "../../src/refusal";
import { rows } from "../argument";
import type { Reader } from "../cells";
import { isBlank, rowsOf, wordsOf } from "../cells";

export const MOST_LINES = si(5000, COUNT);
const NAMES = [...MEASURED, "result"] as const;
export const COLUMNS = NAMES.join(", ");
const RESULT_WORDS = wordsOf(RESULTS);

/** Some hosts hand a blank cell of a range over as 0, which none of these can be. */
const ABOVE_0: readonly string[] = ["setAmps", "amps", "volts", "travel", "color", "result"];
const BLANK_IN_A_RANGE = 0;

/** A line with the cells that could not be read. */
export interface LogLine {
  readonly measured: Measured;
  readonly result: Result | undefined;
  readonly unread: readonly Refusal[];
  readonly blank: readonly string[];
}

export const LOG = rows(
  `Columns: setAmps; amps; volts; travel ${unitPair(SPEED)}; ppm; color; concavity; convexity; misalignment ${unitPair(LENGTH)}; result`,
  readLog,
  [SPEED, LENGTH],
);

function readLog(reader: Reader, name: string, range: unknown): (LogLine | "" | "header")[] {
  const listed = rowsOf(range);
  if (listed.length > MOST_LINES) {
    throw new Refusal(name, `${String(listed.length)} rows`, [
      `must be at most ${plainNumber(MOST_LINES)} rows; take the log in parts`,
    ]);
  }
  const width = listed.reduce((most, row) => Math.max(most, row.length), 0);
  if (width !== NAMES.length) {
    throw new Refusal(name, `${String(width)} column${width === 1 ? "" : "s"}`, [
      `must be ${String(NAMES.length)} columns: ${COLUMNS}`,
    ]);
  }
  return listed.map((row, i) => {
    if (row.every((cell) => cell === BLANK_IN_A_RANGE || isBlank(cell))) return "";
    return i === 0 && isHeader(row) ? "header" : readLine(reader, row);
  });
}

/** Words over every column and no digit in any of them. */
function isHeader(row: readonly unknown[]): boolean {
  return row.every((cell) => typeof cell === "string" && /^[^\d]*\p{L}[^\d]*$/u.test(cell));
}

function readLine(reader: Reader, row: readonly unknown[]): LogLine {
  const unread: Refusal[] = [];
  const read = <Value>(body: () => Value): Value | undefined => {
    const found = orRefusal(body);
    if (!(found instanceof Refusal)) return found;
    unread.push(found);
    return undefined;
  };
  const place = (name: keyof Measured | "result"): unknown => {
    const cell = row[NAMES.indexOf(name)];
    return cell === BLANK_IN_A_RANGE && ABOVE_0.includes(name) ? "" : cell;
  };
  const number = <Kind extends string>(
    name: keyof Measured,
    of: Quantity<Kind>,
  ): ReturnType<typeof reader.listed<Kind>> | undefined =>
    isBlank(place(name)) ? undefined : read(() => reader.listed(name, place(name), of));
  return {
    measured: {
      setAmps: number("setAmps", CURRENT),
      amps: number("amps", CURRENT),
      volts: number("volts", VOLTAGE),
      travel: number("travel", SPEED),
      ppm: number("ppm", OXYGEN),
      color: number("color", COUNT),
      concavity: number("concavity", LENGTH),
      convexity: number("convexity", LENGTH),
      misalignment: number("misalignment", LENGTH),
    },
    result: read(() => reader.wordOr("result", place("result"), RESULT_WORDS, undefined)),
    unread,
    blank: MEASURED.filter((name) => isBlank(place(name))),
  };
}
