/** Starting values of many sizes, a row each. */

import { STYLES } from "../../src/current/choices";
import type { SizeRow } from "../../src/current/size-row";
import { sizeRow } from "../../src/current/size-row";
import { wattsPerAmp } from "../../src/heat-flow/arc";
import { DEFAULT_MATERIAL } from "../../src/metal/material";
import { itemAt } from "../../src/numerics/item";
import type { Of, Quantity, Units } from "../../src/quantity";
import {
  ANGLE,
  COUNT,
  CURRENT,
  FREQUENCY,
  fromBase,
  HEAT_INPUT,
  LENGTH,
  plainNumber,
  ROTATION,
  SHARE,
  si,
  SPEED,
  TIME,
  unitOf,
  unitPair,
  VOLTAGE,
} from "../../src/quantity";
import { orRefusal, Refusal, toldRule } from "../../src/refusal";
import { rows, word } from "../argument";
import { EFFICIENCY } from "../arguments";
import { formula } from "../formula";
import type { Column, Gives } from "../gives";
import { asPrinted, table, wordsColumn } from "../gives";
import type { ListShape, Tube } from "../list";
import { readList, readTube, rowsOfList } from "../list";

export const MOST_SIZES = si(2000, COUNT);

const SHAPE: ListShape<Tube> = {
  columns: "od, wall and, if you like, material",
  numbers: 2,
  mostRows: MOST_SIZES,
  line: (reader, [od, wall, material]) => readTube(reader, od, wall, material),
};

type Line = SizeRow | Refusal | "" | "header";

/** A column of the table: in a row its number, "" where a steady arc has none; its heading beside a header. */
function of<Kind extends string>(
  heading: string,
  quantity: Quantity<Kind>,
  valueOf: (row: SizeRow) => Of<Kind> | "",
): Column<Line> {
  return {
    heading,
    quantity,
    write: (line, units) => {
      if (line === "header") return withUnit(heading, quantity, units);
      if (line === "" || line instanceof Refusal) return "";
      const value = valueOf(line);
      return value === "" ? "" : asPrinted(fromBase(value, quantity, units));
    },
  };
}

function withUnit(heading: string, quantity: Quantity, units: Units): string {
  const unit = unitOf(quantity, units);
  return unit === "" ? heading : `${heading}, ${unit}`;
}

function meanOf(sector: number): Column<Line> {
  return of(`mean ${String(sector)}`, CURRENT, ({ set }) => itemAt(set.means, sector - 1));
}

const COLUMNS = {
  standoff: of("standoff", LENGTH, ({ set }) => set.standoff),
  electrode: of("electrode", LENGTH, ({ set }) => set.electrode),
  volts: of("volts", VOLTAGE, ({ set }) => set.volts),
  bead: of("bead", LENGTH, ({ set }) => set.beadWidth),
  speed: of("travel", SPEED, ({ set }) => set.speed),
  rotor: of("rotor", ROTATION, ({ set }) => set.rotor),
  dwell: of("dwell", TIME, ({ set }) => set.dwell),
  mean1: meanOf(1),
  mean2: meanOf(2),
  mean3: meanOf(3),
  mean4: meanOf(4),
  peak: of("peak 1", CURRENT, ({ set }) => set.pulse?.peaks[0] ?? ""),
  back: of("back 1", CURRENT, ({ set }) => set.pulse?.backs[0] ?? ""),
  rate: of("pulse rate", FREQUENCY, ({ set }) => set.pulse?.rate ?? ""),
  share: of("peak share", SHARE, ({ set }) => set.pulse?.share ?? ""),
  overlap: of("overlap", ANGLE, ({ set }) => set.overlap),
  heatInput: of("heat input", HEAT_INPUT, ({ set }) => set.heatInput),
  arcTime: of("arc time", TIME, ({ set }) => set.arcTime),
  minimum: of("minimum 1", CURRENT, ({ minimum }) => minimum),
  maximum: of("maximum 1", CURRENT, ({ maximum }) => maximum),
  remark: { ...wordsColumn("remark"), write: remarkOf },
};

function remarkOf(line: Line, units: Units): string {
  if (line === "") return "";
  if (line === "header") return "remark";
  if (line instanceof Refusal) return line.remark(units);
  return line.remarks.map((remark) => toldRule(remark, units)).join(" ");
}

/** As a table of these columns, each of which is given the whole line. */
const GIVEN: Gives<readonly Line[]> = {
  ...table(COLUMNS, {
    more: "Mean currents by sector; peak, background, minimum and maximum (the window of AMPS_WINDOW) of sector 1. As many rows as sizes has (of whole columns, down to the last that is filled). A size that has no schedule gives the reason in its remark and has no numbers; beside a header stand the headings, beside a blank line nothing. Steady: no peak, background, rate, share.",
  }),
  write: (lines, units) =>
    lines.map((line) => Object.values<Column<Line>>(COLUMNS).map(({ write }) => write(line, units))),
};

export const SIZE_TABLE = formula({
  id: "SIZE_TABLE",
  meaning: "Starting values of many sizes, a row each. Prove each on a test coupon",
  args: {
    sizes: rows(
      `Columns: od ${unitPair(LENGTH)} or NPS 1; wall or sch 10S; material, ${DEFAULT_MATERIAL} if omitted. Header, blanks, numbers as text may stay`,
      (reader, name, range) => readList(reader, name, range, SHAPE),
      [LENGTH],
    ),
    style: word('"pulsed" (default) or "steady"', STYLES, "pulsed"),
    efficiency: EFFICIENCY,
  },
  gives: GIVEN,
  equation:
    "Each row as SCHEDULE of its od, wall and material; minimum and maximum as AMPS_WINDOW, in the proportion of the current of sector 1 to that of the bead on a flat plate",
  tex: [
    String.raw`\text{minimum} = I\,\frac{I_{\text{min}}}{I_p},\quad \text{maximum} = I\,\frac{I_{\text{max}}}{I_p}`,
  ],
  where: {
    I: "mean current of sector 1, of SCHEDULE",
    Iₘᵢₙ: "minimum of AMPS_WINDOW at that speed, its efficiencies 0.73/0.78 and 0.82/0.78 of efficiency, the latter at most 1",
    Iₘₐₓ: "its maximum",
    Iₚ: "AMPS_MELT of the bead at that speed",
  },
  validity: `As SCHEDULE and AMPS_WINDOW, up to ${plainNumber(MOST_SIZES)} rows. Pipe is NPS 1-1/2 for od and sch 10S for wall, by ASME B36.19M and B36.10M. A row is a header if its words are words of a header and none of its cells reads as a number or a size.`,
  assumptions:
    "Those of SCHEDULE. The window is that of sector 1: later sectors take less because the tube is warm.",
  source: "The formulas it calls",
  unconfirmed: "What SCHEDULE and AMPS_WINDOW say: nothing is compared with a measured weld",
  unchecked: "Rows of SCHEDULE and AMPS_WINDOW: the check is that they are equal",
  related: ["SCHEDULE", "AMPS_WINDOW", "TAKEOFF", "COUPON_EFFICIENCY"],
  synonyms: [
    "size list",
    "weld schedule table",
    "list of sizes",
    "program list",
    "parameter table",
    "all sizes",
    "many tubes",
    "setup table",
  ],
  figure: "cycle",
  example: {
    args: [
      [
        ["od", "wall"],
        [1, 0.065],
        [2, 0.109],
      ],
    ],
    gives: '"standoff, in", "electrode, in", …',
  },
  calc: ({ sizes, ...terms }, units) => {
    // Refused once, not in every row.
    wattsPerAmp(si(1, VOLTAGE), terms.efficiency);
    return rowsOfList(sizes).map((size): Line => {
      if (size === "" || size === "header") return size;
      const tube = orRefusal(size);
      return tube instanceof Refusal ? tube : sizeRow(tube, terms, units);
    });
  },
});
