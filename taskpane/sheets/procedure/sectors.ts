/** The current around the tube, sector by sector, as the schedule has it, with the heat input of each. */

import { call } from "../call";
import type { Layout } from "../layout";
import { address } from "../layout";
import { scheduled } from "../schedule-table";

/** Four quarters of the full turn and the overlap: where each begins and ends, °. */
export const SECTORS = [
  ["Sector 1", "0", "90"],
  ["Sector 2", "90", "180"],
  ["Sector 3", "180", "270"],
  ["Sector 4", "270", "360"],
  ["Overlap", "360", '=IF(ISNUMBER({overlap}),360+{overlap},"")'],
] as const;
const HEADINGS = [
  "sector",
  "from °",
  "to °",
  "mean A",
  '="rise ahead of the arc, "&IF({sheet_units}="SI","°C","°F")',
  "peak A",
  "back A",
  '=IF({sheet_units}="SI","kJ/mm","kJ/in")',
];
const FORMATS = ["0", "0", "0.0", "0", "0.0", "0.0", "0.000"];
const COLUMNS = { mean: 3, rise: 4, peak: 5, back: 6, heat: 7 } as const;

export function sectorTable(form: Layout): void {
  form.across(0, HEADINGS.slice(0, 1), "heading");
  form.across(1, HEADINGS.slice(1), "columnHead");
  form.nextLine();
  const top = form.nextRow;
  const last = top + SECTORS.length - 1;
  form.name("sectors", 0);
  form.name("mean_first", COLUMNS.mean);
  form.rangeOf("sector_starts", 1, top, 1, last);
  // Names of the sheet too: a bench card reads the sectors by them.
  form.name("means", COLUMNS.mean, undefined, false, SECTORS.length);
  form.rangeOf("means_of_turn", COLUMNS.mean, top, COLUMNS.mean, last - 1);
  form.name("peaks", COLUMNS.peak, undefined, false, SECTORS.length);
  form.name("backs", COLUMNS.back, undefined, false, SECTORS.length);
  form.rangeOf("heats", COLUMNS.heat, top, COLUMNS.heat, last);
  SECTORS.forEach(([sector, from, to], i) => {
    const mean = address(COLUMNS.mean, form.nextRow);
    const cells = [
      Number(from),
      to.startsWith("=") ? to : Number(to),
      `=${scheduled(`${sector} mean`)}`,
      `=${scheduled(`${sector} rise ahead`)}`,
      `=${scheduled(`${sector} peak`)}`,
      `=${scheduled(`${sector} background`)}`,
      `=${call("HEAT_INPUT", { volts: "{volts}", amps: mean, speed: "{speed}", efficiency: "{heat_factor?}" })}`,
    ];
    form.cell(0, sector, "text");
    form.across(1, cells, "result", FORMATS);
    for (const [what, column] of Object.entries(COLUMNS)) {
      const name = `sector_${String(i + 1)}_${what}`;
      const at = address(column, form.nextRow);
      form.range(name, at, at);
      form.guardComputed(`${sector}, ${what}`, name);
    }
    form.nextLine();
  });
}
