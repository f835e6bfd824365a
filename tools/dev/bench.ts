/**
 * `npm run bench`: how long the formulas take, as ratios within one run. `-- --write` keeps the tables in
 * docs/benchmarks.md, `-- --note "shared with other work"` adds what else is to be known of the machine.
 */

import { parseArgs } from "node:util";

import { generate } from "../build/generate";
import { provideCellHost } from "../build/cell-host";
import { fileRows } from "./bench/functions-file";
import { accuracyRows } from "./bench/accuracy";
import { heatFlowRows } from "./bench/heat-flow";
import { machine } from "./bench/machine";
import { print, write } from "./bench/report";
import { sheetRows } from "./bench/sheet";
import { takeoffRows } from "./bench/takeoff";
import { insertRows, saveRows } from "./bench/workbook";

const { values } = parseArgs({
  options: { write: { type: "boolean", default: false }, note: { type: "string", default: "" } },
});

const where = machine(values.note);
console.log(where);
provideCellHost();
await generate();

const tables = [
  {
    title: "A joint list",
    about:
      "`TAKEOFF` of invented lists: 100 000 lines as a hundred lists, ten or one, in turns. *Against linear* is the time a line over that of the lists of 1000: 1 is linear growth, above 1 is worse.",
    rows: takeoffRows(),
  },
  {
    title: "A sheet full of formulas",
    about:
      "20 000 cells `=BEAD.STANDOFF(A1)` in the browser sheet's engine without a page, against 20 000 cells `=A1/2+0.01`: all computed again, in turns.",
    rows: sheetRows(),
  },
  {
    title: "Inserting a sheet",
    about:
      "A procedure sheet more, in the same engine without a page: written and computed, as one step that can be undone. The first also waits for code to be compiled.",
    rows: await insertRows(),
  },
  {
    title: "Saving a workbook",
    about: "A sheet of eight columns as an .xlsx file.",
    rows: await saveRows(),
  },
  {
    title: "functions.js",
    about:
      "What a host loads before the first formula. The load is compiling and running the script in a fresh process, without fetching it.",
    rows: await fileRows(),
  },
  {
    title: "Heat flow",
    about: "One call, against the plain rule `AMPS_WALL`.",
    rows: await heatFlowRows(),
  },
  {
    title: "Heat flow: time and accuracy",
    about:
      "The heat of all ages is added up at points of a Gauss rule. With *ages* times as many, the time grows a little less than in proportion, and the error of the sum falls much faster; *off* is against 16 times as many. The formulas use 1. That is the error of the sum, not of the model: see [How near the amps are](how-near-the-amps-are.md).",
    rows: await accuracyRows(),
  },
];
print(tables);
if (values.write) await write(where, tables);
