/**
 * The one border between a host and the calculations: the units are read, the body runs, a refusal becomes the
 * host's own error with its sentence, and nothing but finite numbers, text and truth values in a full rectangle
 * goes back. A host turns NaN or null inside a table into 0 without a word, so neither may leave here.
 */

import type { Units } from "../src/quantity";
import { Refusal } from "../src/refusal";
import { Reader, readUnits } from "./cells";

export type Value = number | string | boolean;
export type Answer = Value | Value[][];

/** The longest text a cell can hold. */
const LONGEST_TEXT = 32_767;

/** A reader knows nothing but its units: one of each does for all calls. */
const READERS: Readonly<Record<Units, Reader>> = { US: new Reader("US"), SI: new Reader("SI") };

/** What reads the cells of one call and gives its result. */
export type Body<Result extends Answer> = (reader: Reader, cells: readonly unknown[]) => Result;

/** For a formula whose last argument is `units`. The body is made once, when its record is loaded. */
export function answer<Result extends Answer>(
  units: unknown,
  body: Body<Result>,
  cells: readonly unknown[] = [],
): Result {
  let system: Units = "US";
  try {
    system = readUnits(units);
    return sanitized(body(READERS[system], cells));
  } catch (problem) {
    throw hostError(problem, system);
  }
}

/** For a formula that reads the same in both systems. */
export function answerAlike<Result extends Answer>(
  body: Body<Result>,
  cells: readonly unknown[] = [],
): Result {
  return answer("US", body, cells);
}

function hostError(problem: unknown, system: Units): CustomFunctions.Error {
  if (problem instanceof Refusal) {
    const code =
      problem.kind === "unanswerable"
        ? CustomFunctions.ErrorCode.notAvailable
        : CustomFunctions.ErrorCode.invalidValue;
    return new CustomFunctions.Error(code, problem.sentence(system));
  }
  const what = problem instanceof Error ? problem.message : String(problem);
  return new CustomFunctions.Error(
    CustomFunctions.ErrorCode.invalidValue,
    `Ringbead failed on these arguments (${what}): please report them`,
  );
}

function sanitized<Result extends Answer>(result: Result): Result {
  if (!Array.isArray(result)) return clean(result) as Result;
  const width = result[0]?.length ?? 0;
  if (width === 0 || result.some((row) => row.length !== width)) throw new Error("ragged table");
  // A row that is clean goes out as it is: copies of a long table cost more than making it.
  return result.map((row) => (row.every(isClean) ? row : row.map(clean))) as Result;
}

function isClean(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value) && !Object.is(value, -0);
  return typeof value === "boolean" || (typeof value === "string" && value.length <= LONGEST_TEXT);
}

function clean(value: unknown): Value {
  if (typeof value === "number") {
    if (Number.isFinite(value)) return value === 0 ? 0 : value;
    throw new Refusal("result", "beyond what a cell can hold", [
      "some argument is far too large or too small",
    ]);
  }
  if (typeof value === "string") {
    return value.length <= LONGEST_TEXT ? value : `${value.slice(0, LONGEST_TEXT - 1)}…`;
  }
  if (typeof value === "boolean") return value;
  throw new Error("an empty result");
}
