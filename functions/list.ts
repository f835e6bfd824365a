/** A list of tubes as people paste it: a header, blank lines and numbers as text may stay. */

import type { Material } from "../src/metal/material";
import type { Length } from "../src/quantity";
import { plainNumber } from "../src/quantity";
import { Refusal } from "../src/refusal";
import { MATERIAL } from "./arguments";
import type { Reader } from "./cells";
import { isBlank, rowsOf } from "./cells";
import { readOdAndWall } from "./list-pipe";
import { oneTube } from "./sense";

/** The rows of a list as they stand in its cells. */
export interface List<Line> {
  readonly rows: readonly Cells[];
  readonly kindOf: (row: Cells) => "line" | "" | "header";
  /** Reads a row that is a line, or refuses it. */
  readonly lineOf: (row: Cells) => Line;
}

type Cells = readonly unknown[];

/** A line reads itself late, so that one that cannot be read spoils no other; a row without a line has a remark. */
export type ListRow<Line> = (() => Line) | "" | "header";

/** The rows of a list, each to be read by itself; a long list is read row by row instead, and keeps none of them. */
export function rowsOfList<Line>({ rows, kindOf, lineOf }: List<Line>): ListRow<Line>[] {
  return rows.map((row) => {
    const kind = kindOf(row);
    return kind === "line" ? () => lineOf(row) : kind;
  });
}

export interface ListShape<Line> {
  /** As a sentence names them. */
  readonly columns: string;
  /** How many of them are needed; one more may follow. */
  readonly numbers: number;
  readonly mostRows: number;
  readonly line: (reader: Reader, cells: readonly unknown[]) => Line;
}

export function readList<Line>(
  reader: Reader,
  name: string,
  range: unknown,
  shape: ListShape<Line>,
): List<Line> {
  return {
    rows: checked(name, withoutTail(rowsOf(range), shape.mostRows), shape),
    kindOf: (row) => {
      if (isBlankRow(row)) return "";
      return isHeader(row) ? "header" : "line";
    },
    lineOf: (row) => shape.line(reader, row),
  };
}

export interface Tube {
  readonly od: Length;
  readonly wall: Length;
  readonly material: Material;
}

/** Od, wall and material of a line. Nobody looks at each of them, so both are compared: a sheet with one tube has a check. */
export function readTube(reader: Reader, od: unknown, wall: unknown, material: unknown): Tube {
  const size = readOdAndWall(reader, od, wall);
  const metal = MATERIAL.read(reader, "material", material === BLANK_IN_A_RANGE ? null : material);
  oneTube(size.od, size.wall);
  return { od: size.od, wall: size.wall, material: metal };
}

/** A whole column is mostly blank: what follows the last line of one costs nothing. */
function withoutTail(listed: unknown[][], most: number): unknown[][] {
  if (listed.length <= most) return listed;
  let end = listed.length;
  while (end > 0 && isBlankRow(listed[end - 1] ?? [])) end -= 1;
  return listed.slice(0, end);
}

function checked<Line>(
  name: string,
  listed: unknown[][],
  { columns, numbers, mostRows }: ListShape<Line>,
): unknown[][] {
  if (listed.every(isBlankRow)) throw new Refusal(name, "blank", [`needs rows of ${columns}`]);
  if (listed.length > mostRows) {
    throw new Refusal(name, `${String(listed.length)} rows`, [
      `must be at most ${plainNumber(mostRows)} rows; take the list in parts`,
    ]);
  }
  const width = listed.reduce((most, row) => Math.max(most, row.length), 0);
  if (width === numbers || width === numbers + 1) return listed;
  throw new Refusal(name, `${String(width)} column${width === 1 ? "" : "s"}`, [
    `must be ${String(numbers)} or ${String(numbers + 1)} columns: ${columns}`,
  ]);
}

/** Some hosts hand a blank cell of a range over as 0; no line is made of zeros alone, no metal is called 0. */
const BLANK_IN_A_RANGE = 0;

function isNothing(cell: unknown): boolean {
  return cell === BLANK_IN_A_RANGE || isBlank(cell);
}

function isNumber(cell: unknown): boolean {
  return typeof cell === "number" && cell !== BLANK_IN_A_RANGE;
}

function isBlankRow(row: readonly unknown[]): boolean {
  return row.every(isNothing);
}

/** Words that head the columns of a list, in any case, alone or with a unit behind a comma or in brackets. */
const HEADER_WORDS =
  /^(?:no|qty|quantity|count|number|joints?|welds?|pcs|pieces|ea|each|od|outside|outer|dia|diameter|size|tube|tubing|pipe|nominal|nps|wall|wt|thickness|thk|gauge|ga|material|matl|metal|alloy|grade|spec|of|the|in|inch|inches|mm|min|amps|current|volts|voltage|travel|speed|face|root|width|measured|predicted|efficiency|#)$/i;

/**
 * A header has words of a header and nothing that reads as a number or a size; anything else is a line, which is told
 * when it cannot be counted.
 */
function isHeader(row: readonly unknown[]): boolean {
  // Nearly every line has a number, and is told by it.
  if (row.some(isNumber)) return false;
  const titles = row.filter((cell) => !isNothing(cell));
  return titles.length > 1 && titles.every((cell) => typeof cell === "string" && isTitle(cell));
}

export function isTitle(text: string): boolean {
  // O.D., Qty. and mat'l are the words without their marks.
  const words = text
    .replace(/[.'’]/g, "")
    .split(/[\s,;:()[\]/"″]+/)
    .filter((word) => word !== "");
  return words.length > 0 && words.every((word) => HEADER_WORDS.test(word));
}
