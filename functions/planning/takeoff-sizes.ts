/** A list of joints by size and metal: for the chart, the bid's page and the order. */

import { wholeFrom1 } from "../../src/limits";
import { designationOf } from "../../src/metal/material";
import type { SizeSum } from "../../src/planning/by-size";
import { sumsBySize } from "../../src/planning/by-size";
import type { Counted } from "../../src/planning/takeoff";
import { Takeoff } from "../../src/planning/takeoff";
import type { Count, Duration, Length, Time, Volume } from "../../src/quantity";
import { COUNT, DURATION, LENGTH, plainNumber, si, VOLUME } from "../../src/quantity";
import { Refusal } from "../../src/refusal";
import { number, orComputed } from "../argument";
import { formula } from "../formula";
import { columnOrWords, table, wordsColumn } from "../gives";
import type { Line } from "../../src/planning/takeoff";
import type { List } from "../list";
import { rowsOfList } from "../list";
import { MOST_ROWS } from "./joints";
import { LIST_ARGS, PURGE_ARGS } from "./list-args";

interface SizeRow {
  readonly od: Length | string;
  readonly wall: Length | string;
  readonly material: string;
  readonly joints: Count | string;
  readonly time: Duration | string;
  readonly arcGas: Volume | string;
  readonly purgeGas: Volume | string;
  readonly gas: Volume | string;
}

export const TAKEOFF_SIZES = formula({
  id: "TAKEOFF_SIZES",
  meaning: "Joints, hours and gas of a list of joints by size and metal, one row per size",
  args: {
    ...LIST_ARGS,
    most: orComputed(
      number("Rows at most; with more sizes the last row adds up the others", COUNT),
      "a row per size",
    ),
    ...PURGE_ARGS,
  },
  gives: table(
    {
      od: columnOrWords("od", LENGTH),
      wall: columnOrWords("wall", LENGTH),
      material: wordsColumn("metal"),
      joints: columnOrWords("joints", COUNT),
      time: columnOrWords("time", DURATION),
      arcGas: columnOrWords("arc gas", VOLUME),
      purgeGas: columnOrWords("purge gas", VOLUME),
      gas: columnOrWords("gas", VOLUME),
    },
    {
      more: "In the order of the list. Lines that cannot be counted are told in one more row; TAKEOFF gives the reason for each.",
    },
  ),
  tex: [String.raw`J = \sum_{\text{lines of a size}} n,\quad V = \sum_{\text{lines of a size}} V_i`],
  where: {
    J: "joints of a size and metal",
    n: "joints of a line (quantity)",
    V: "time or gas of a size and metal",
    Vᵢ: "time or gas of a line, as TAKEOFF gives it",
  },
  validity: `As TAKEOFF. most a whole number, 1 to ${plainNumber(MOST_ROWS)}.`,
  source: "Sum of TAKEOFF's lines",
  unconfirmed: "Suggested speed, dwell and bead width are estimates, as TAKEOFF says",
  unchecked: "Sums of TAKEOFF's lines: the check is their arithmetic worked out by hand",
  related: ["TAKEOFF", "GAS_CYLINDER", "CREW_OUTPUT"],
  synonyms: ["by size", "size summary", "material summary", "group by", "subtotal", "bid", "estimate"],
  figure: "cycle",
  example: {
    args: [
      [
        ["joints", "od", "wall"],
        [120, 1, 0.065],
        [8, 2, 0.109],
      ],
      300,
    ],
    gives: '1, 0.065, "316L", 120, 13.038, …',
  },
  calc: ({ joints, most, ...terms }) => sizesOf(joints, terms, most),
});

/** Terms as the record's arguments give them. */
type SharedTerms = Omit<ConstructorParameters<typeof Takeoff>[0], "handling"> & {
  readonly handlingSeconds: Time;
};

function sizesOf(
  joints: List<Line>,
  { handlingSeconds: handling, ...terms }: SharedTerms,
  most: Count | undefined,
): SizeRow[] {
  const rows = most === undefined ? undefined : wholeFrom1("most", most, MOST_ROWS);
  const sums = new Takeoff({ handling, ...terms });
  const lines = rowsOfList(joints)
    .filter((row) => typeof row !== "string")
    .map((row) => sums.add(row))
    .filter((line): line is Counted => !(line instanceof Refusal));
  const told = sumsBySize(lines, rows).map(sizeRow);
  if (sums.omitted === 0) return told.length === 0 ? [wordsAlone("no lines to count")] : told;
  return [...told, wordsAlone(`${String(sums.omitted)} line${sums.omitted === 1 ? "" : "s"} not counted`)];
}

function sizeRow({ tube, joints, seconds, arcGas, purgeGas }: SizeSum): SizeRow {
  const size =
    tube === undefined
      ? { od: "", wall: "", material: "other sizes" }
      : { od: tube.od, wall: tube.wall, material: designationOf(tube.material) };
  return { ...size, joints, time: seconds, arcGas, purgeGas, gas: si(arcGas + purgeGas, VOLUME) };
}

function wordsAlone(material: string): SizeRow {
  return { od: "", wall: "", material, joints: "", time: "", arcGas: "", purgeGas: "", gas: "" };
}
