/** A list of joints as people paste it: a header, blank lines and numbers as text may stay. */

import { DEFAULT_MATERIAL } from "../../src/metal/material";
import type { Line } from "../../src/planning/takeoff";
import { COUNT, LENGTH, plainNumber, si, unitPair } from "../../src/quantity";
import { Refusal } from "../../src/refusal";
import { rows } from "../argument";
import { MATERIAL, OD, WALL } from "../arguments";
import type { Reader } from "../cells";
import { isBlank, rowsOf } from "../cells";
import { oneTube } from "../sense";

/** Quantity, od and wall; the material is a fourth. */
const NUMBERS = 3;
const COLUMNS = "quantity, od, wall and, if you like, material";
export const MOST_ROWS = si(200_000, COUNT);

/** A line reads itself late, so that one that cannot be read spoils no other; a row without a line has a remark. */
export type Row = (() => Line) | "" | "header";

export const JOINTS = rows(
  `Columns: quantity; od ${unitPair(LENGTH)}; wall ${unitPair(LENGTH)}; material, ${DEFAULT_MATERIAL} if omitted. A header, blank lines and numbers as text may stay`,
  readJoints,
);

function readJoints(reader: Reader, name: string, range: unknown): Row[] {
  const listed = checked(name, withoutTail(rowsOf(range)));
  return listed.map((row) => {
    if (isBlankRow(row)) return "";
    return isHeader(row) ? "header" : () => readLine(reader, row);
  });
}

/** A whole column is mostly blank: what follows the last line of one costs nothing. */
function withoutTail(listed: unknown[][]): unknown[][] {
  if (listed.length <= MOST_ROWS) return listed;
  let end = listed.length;
  while (end > 0 && isBlankRow(listed[end - 1] ?? [])) end -= 1;
  return listed.slice(0, end);
}

function checked(name: string, listed: unknown[][]): unknown[][] {
  if (listed.every(isBlankRow)) throw new Refusal(name, "blank", [`needs rows of ${COLUMNS}`]);
  if (listed.length > MOST_ROWS) {
    throw new Refusal(name, `${String(listed.length)} rows`, [
      `must be at most ${plainNumber(MOST_ROWS)} rows; take the list in parts`,
    ]);
  }
  const width = listed.reduce((most, row) => Math.max(most, row.length), 0);
  if (width === NUMBERS || width === NUMBERS + 1) return listed;
  throw new Refusal(name, `${String(width)} column${width === 1 ? "" : "s"}`, [
    `must be 3 or 4 columns: ${COLUMNS}`,
  ]);
}

function readLine(reader: Reader, [quantity, od, wall, material]: readonly unknown[]): Line {
  const line = {
    quantity: reader.listed("quantity", quantity, COUNT),
    od: OD.read(reader, "od", od),
    wall: WALL.read(reader, "wall", wall),
    material: MATERIAL.read(reader, "material", material === BLANK_IN_A_RANGE ? null : material),
  };
  // A bid would count it unseen: a sheet with one tube has a check of its own.
  oneTube(line.od, line.wall);
  return line;
}

/** Some hosts hand a blank cell of a range over as 0; no line is made of zeros alone, no metal is called 0. */
const BLANK_IN_A_RANGE = 0;

function isBlankRow(row: readonly unknown[]): boolean {
  return row.every((cell) => cell === BLANK_IN_A_RANGE || isBlank(cell));
}

/** Words that head the columns of a list, in any case, alone or with a unit behind a comma or in brackets. */
const HEADER_WORDS =
  /^(?:no|qty|quantity|count|number|joints?|welds?|pcs|pieces|ea|each|od|outside|outer|dia|diameter|size|tube|tubing|pipe|nominal|nps|wall|wt|thickness|thk|gauge|ga|material|matl|metal|alloy|grade|spec|of|the|in|inch|inches|mm|#)$/i;

/**
 * A header has words of a header and nothing that reads as a number or a size; anything else is a line, which is told
 * when it cannot be counted.
 */
function isHeader(row: readonly unknown[]): boolean {
  const titles = row.filter((cell) => cell !== BLANK_IN_A_RANGE && !isBlank(cell));
  return titles.length > 1 && titles.every((cell) => typeof cell === "string" && isTitle(cell));
}

function isTitle(text: string): boolean {
  // O.D., Qty. and mat'l are the words without their marks.
  const words = text
    .replace(/[.'’]/g, "")
    .split(/[\s,;:()[\]/"″]+/)
    .filter((word) => word !== "");
  return words.length > 0 && words.every((word) => HEADER_WORDS.test(word));
}
