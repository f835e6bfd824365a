/** A pipe in a list of tubes, by its nominal size and schedule: `NPS 1-1/2` in place of od, `sch 10S` in place of wall. */

import type { Length } from "../src/quantity";
import { quotedText } from "../src/quoted-text";
import { orRefusal, Refusal } from "../src/refusal";
import { pipeOd, pipeWall } from "../src/tables/pipe";
import { isNominal, isSchedule } from "../src/tables/pipe-size";
import { OD, WALL } from "./arguments";
import type { Reader } from "./cells";

/** Outside diameter and wall of a line; either may be a number where it is no name of the pipe standard. */
export function readOdAndWall(reader: Reader, od: unknown, wall: unknown): { od: Length; wall: Length } {
  const nominal = typeof od === "string" && isNominal(od) ? od : undefined;
  const schedule = typeof wall === "string" && isSchedule(wall) ? wall : undefined;
  if (nominal === undefined && schedule !== undefined) {
    throw new Refusal("wall", quotedText(schedule), [
      "is a schedule of pipe; write the size beside it as NPS 1-1/2, or the wall itself",
    ]);
  }
  return {
    od: nominal === undefined ? OD.read(reader, "od", od) : told("od", () => pipeOd(nominal, reader.units)),
    wall:
      nominal === undefined || schedule === undefined
        ? WALL.read(reader, "wall", wall)
        : told("wall", () => pipeWall(nominal, schedule, reader.units)),
  };
}

/** The tables of pipe refuse in words of their own; a line has od and wall. */
function told(argument: "od" | "wall", body: () => Length): Length {
  const found = orRefusal(body);
  if (!(found instanceof Refusal)) return found;
  throw new Refusal(argument, found.value, found.rule, found.kind);
}
