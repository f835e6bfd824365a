/** The bead that the schedule melts, face and root of each sector, and how much the current may be off. */

import { ARC_EFFICIENCY, EFFICIENCIES, FACE_MOST } from "../../../src/heat-flow/arc";
import { CURRENT, LENGTH, SHARE } from "../../../src/quantity";
import { call } from "../call";
import { formatOf } from "../formats";
import type { Layout, Row } from "../layout";
import { scheduled } from "../schedule-table";
import { SECTORS } from "./sectors";

/** The arc of the sheet, as the schedule has it. */
export const ARC_OF_SHEET = {
  material: "{material?}",
  volts: "{volts}",
  arcSize: "{arc_spot}",
} as const;

/** The window's weakest and strongest arc, in proportion to the efficiency of the sheet. */
const SPREAD = { low: EFFICIENCIES[0] / ARC_EFFICIENCY, high: EFFICIENCIES[1] / ARC_EFFICIENCY } as const;

function spread(part: number): string {
  return `IF(ISNUMBER({efficiency}),{efficiency}*${String(part)},{efficiency?})`;
}

/** The arguments of the window, for its refusal too. */
export const WINDOW = {
  wall: "{wall}",
  speed: "{speed}",
  faceMost: `IF(ISNUMBER({bead}),${String(FACE_MOST)}*{bead},"")`,
  efficiencyLow: spread(SPREAD.low),
  efficiencyHigh: spread(SPREAD.high),
  ...ARC_OF_SHEET,
} as const;

/** The bead aimed at, on a cold flat plate under a steady arc: what the window is in proportion to. */
const PLATE = {
  wall: "{wall}",
  speed: "{speed}",
  beadWidth: "{bead}",
  efficiency: "{efficiency?}",
  ...ARC_OF_SHEET,
} as const;

/**
 * An end of the window as a mean current of the first sector, which melts the same bead with its tube and pulse: all heat
 * is in proportion to the current.
 */
function ofFirstSector(column: number): string {
  return `=IFERROR({mean_first}*INDEX(${call("AMPS_WINDOW", WINDOW)},1,${String(column)})/{plate_amps},"")`;
}

const ROOM: Row[] = [
  {
    label: "Melts through from",
    name: "amps_through",
    content: `=${scheduled("Minimum amps through")}`,
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Same bead, flat plate, steady",
    name: "plate_amps",
    content: `=${call("AMPS_MELT", PLATE)}`,
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Window of sector 1, minimum",
    name: "window_least",
    content: ofFirstSector(1),
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Window of sector 1, maximum",
    name: "window_most",
    content: ofFirstSector(3),
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Room in the window",
    name: "window_room",
    content: `=IFERROR(INDEX(${call("AMPS_WINDOW", WINDOW)},1,4),"")`,
    look: "result",
    quantity: SHARE,
    format: "0%",
  },
];

/** Face and root beside each other at the left, the room for current at the right. */
export function beadTable(form: Layout): void {
  const top = form.nextRow;
  form.cell(0, "sector", "heading");
  form.across(1, ["face", "root"], "columnHead");
  form.nextLine();
  // Names of the sheet, so that conversion finds the cells and gives them the other system's decimals.
  form.name("faces", 1, LENGTH, false, SECTORS.length);
  form.name("roots", 2, LENGTH, false, SECTORS.length);
  const format = formatOf(LENGTH, form.units);
  form.name("bead_table", 0);
  SECTORS.forEach(([sector], i) => {
    form.cell(0, sector, "label");
    form.across(1, [`=${scheduled(`${sector} face`)}`, `=${scheduled(`${sector} root`)}`], "result", [
      format,
      format,
    ]);
    form.cell(3, '=IF({sheet_units}="SI","mm","in")', "unit");
    ["face", "root"].forEach((what, column) => {
      const name = `sector_${String(i + 1)}_${what}`;
      form.rangeOf(name, 1 + column, form.nextRow, 1 + column, form.nextRow);
      form.guardComputed(`${sector}, ${what}`, name);
    });
    form.nextLine();
  });
  const bottom = form.nextRow;
  form.backTo(top);
  form.blocks([], ROOM);
  form.downTo(bottom);
}
