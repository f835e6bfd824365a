/** The current round the tube: one formula gives sectors, mean and warming; peak, background and heat input follow. */

import type { Layout } from "../layout";
import { address } from "../layout";
import { SPEED_OF_BEAD } from "../starting-values";
import { HEAT_FLOW_TAIL } from "./results";

/** Four quarters of the turn and the overlap. */
const ROWS = 5;
const HEADINGS = [
  "sector from °",
  "to °",
  "mean A",
  "share",
  '="tube warmer ahead, "&IF({sheet_units}="SI","°C","°F")',
  "peak A",
  "back A",
  '=IF({sheet_units}="SI","kJ/mm","kJ/in")',
];
const FORMATS = ["0", "0", "0.0", "0.000", "0", "0.0", "0.0", "0.000"];
const MEAN = 2;
const PEAK = 5;

/** Arguments of AMPS_SECTORS after the number of sectors. */
export function sectorArguments(sectors: number, overlap: string): string {
  return `{od},{wall},${SPEED_OF_BEAD},${String(sectors)},${overlap},{dwell_typed?},{bead},${HEAT_FLOW_TAIL}`;
}

export function sectorTable(form: Layout): void {
  form.across(0, HEADINGS, "columnHead");
  form.nextLine();
  const top = form.nextRow;
  form.name("mean_first", MEAN);
  form.name("sectors", 0);
  form.range("sector_starts", address(0, top), address(0, top + ROWS - 1));
  form.range("means", address(MEAN, top), address(MEAN, top + ROWS - 1));
  form.range("means_of_turn", address(MEAN, top), address(MEAN, top + ROWS - 2));
  for (let row = top; row < top + ROWS; row += 1) {
    const [mean, share, peak] = [address(MEAN, row), address(3, row), address(PEAK, row)];
    const spilled =
      row === top
        ? [`=BEAD.AMPS_SECTORS(${sectorArguments(4, "{overlap}")})`, "", "", "", ""]
        : ["", "", "", "", ""];
    form.across(
      0,
      [
        ...spilled,
        `=IF(ISNUMBER(${mean}),IF({style}="steady",${mean},{peak}*${share}),"")`,
        `=IF(AND(ISNUMBER(${mean}),{style}<>"steady"),{back_share}*${peak},"")`,
        `=IF(ISNUMBER(${mean}),60*{volts}*${mean}/(1000*{speed})*IF({heat_factor}="",1,{heat_factor}),"")`,
      ],
      "result",
      FORMATS,
    );
    form.nextLine();
  }
}
