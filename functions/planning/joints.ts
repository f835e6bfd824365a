/** A list of joints. */

import { DEFAULT_MATERIAL } from "../../src/metal/material";
import type { Line } from "../../src/planning/takeoff";
import type { Units } from "../../src/quantity";
import { COUNT, LENGTH, si, unitPair } from "../../src/quantity";
import { orRefusal, Refusal } from "../../src/refusal";
import { rows } from "../argument";
import type { List, ListShape } from "../list";
import { readList, readTube, rowsOfList } from "../list";

export const MOST_ROWS = si(200_000, COUNT);

const SHAPE: ListShape<Line> = {
  columns: "quantity, od, wall and, if you like, material",
  numbers: 3,
  mostRows: MOST_ROWS,
  line: (reader, [joints, od, wall, material]) => {
    const quantity = reader.listed("quantity", joints, COUNT);
    const tube = readTube(reader, od, wall, material);
    return { quantity, od: tube.od, wall: tube.wall, material: tube.material };
  },
};

export const JOINTS = rows(
  `Columns: quantity; od ${unitPair(LENGTH)} or NPS 1; wall or sch 10S; material, ${DEFAULT_MATERIAL} if omitted. Header, blanks, numbers as text may stay`,
  (reader, name, range) => readList(reader, name, range, SHAPE),
  [COUNT, LENGTH],
);

/** The joints of a list, where a line that cannot be read spoils the answer: it is refused by its number. */
export function linesOf(joints: List<Line>, units: Units, check: (line: Line) => void): Line[] {
  return rowsOfList(joints).flatMap((row, i) => {
    if (typeof row === "string") return [];
    const line = orRefusal(() => {
      const read = row();
      check(read);
      return read;
    });
    if (!(line instanceof Refusal)) return [line];
    throw new Refusal("joints", `row ${String(i + 1)}`, ["is no joint: ", line.sentence(units)]);
  });
}
