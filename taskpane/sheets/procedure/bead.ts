/** The bead that the schedule melts, face and root of each sector, and how much the current may be off. */

import { CURRENT, LENGTH, SHARE } from "../../../src/quantity";
import { call } from "../call";
import { formatOf } from "../formats";
import type { Layout, Row } from "../layout";
import { scheduled } from "../schedule-table";
import { SECTORS } from "./sectors";

const WINDOW = call("AMPS_WINDOW", {
  wall: "{wall}",
  speed: "{speed}",
  material: "{material?}",
  volts: "{volts}",
});

const ROOM: Row[] = [
  {
    label: "Melts through from",
    name: "amps_through",
    content: `=${scheduled("Minimum amps through")}`,
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Steady arc, cold plate: window from",
    name: "window_least",
    content: `=IF(ISNUMBER({amps_through}),INDEX(${WINDOW},1,1),"")`,
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Steady arc, cold plate: window to",
    name: "window_most",
    content: `=IF(ISNUMBER({window_least}),INDEX(${WINDOW},1,3),"")`,
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Room in the window",
    name: "window_room",
    content: `=IF(ISNUMBER({window_least}),INDEX(${WINDOW},1,4),"")`,
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
  const [first, last] = [form.nextRow, form.nextRow + SECTORS.length - 1];
  form.rangeOf("faces", 1, first, 1, last);
  form.rangeOf("roots", 2, first, 2, last);
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
