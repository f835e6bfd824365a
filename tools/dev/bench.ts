/**
 * `npm run bench`: how long the formulas take, as ratios within one run. `-- --write` keeps the tables in
 * docs/benchmarks.md, `-- --note "shared with other work"` adds what else is to be known of the machine.
 */

import { parseArgs } from "node:util";

import { generate } from "../build/generate";
import { bundleFormulas } from "./bench/formula-of";
import { fileRows } from "./bench/functions-file";
import { accuracyRows } from "./bench/accuracy";
import { heatFlowRows } from "./bench/heat-flow";
import { pageRows } from "./bench/page-load";
import { machine } from "./bench/machine";
import { print, write } from "./bench/report";
import { sheetRows } from "./bench/sheet";
import { sizeTableRows } from "./bench/size-table";
import { takeoffRows } from "./bench/takeoff";
import { insertEachRows, insertRows, saveRows } from "./bench/workbook";

const { values } = parseArgs({
  options: { write: { type: "boolean", default: false }, note: { type: "string", default: "" } },
});

const where = machine(values.note);
console.log(where);
await generate();
await bundleFormulas();

const tables = [
  {
    title: "A joint list",
    about:
      "`TAKEOFF` of invented lists, each computed again until 100 000 lines are counted, 25 times in turns, in time of the processor. *Against linear* is the time a line over that of the lists of 1000: 1 is linear growth, above 1 is worse.",
    rows: takeoffRows(),
  },
  {
    title: "A size table",
    about:
      "`SIZE_TABLE` of invented lists against as many calls of `SCHEDULE`. A tube that has come before costs nothing: equal rows are worked out once and kept.",
    rows: sizeTableRows(),
  },
  {
    title: "A sheet full of formulas",
    about:
      "20 000 cells of one formula in the browser sheet's engine without a page, against 20 000 cells of the same algebra in the engine's own operators: all computed again, 45 times in turns, in time of the processor. At most 1.0 with one argument and 1.15 with three.",
    rows: sheetRows(),
  },
  {
    title: "Inserting a sheet",
    about:
      "A procedure sheet more, in the same engine without a page: written and computed, as one step that can be undone. The first also waits for code to be compiled.",
    rows: await insertRows(),
  },
  {
    title: "Inserting each ready sheet",
    about: "Each alone into an empty workbook, the fourth time; the weld log has a list of 500 lines.",
    rows: await insertEachRows(),
  },
  {
    title: "Saving a workbook",
    about: "A sheet of eight columns as an .xlsx file.",
    rows: await saveRows(),
  },
  {
    title: "functions.js",
    about:
      "What a host loads before the first formula. The load is compiling and running the script in a fresh process, without fetching it. What ABOUT tells is in it, since a formula answers without a network; what only the help tells is not. The budget was meant for all of it. The words of 84 formulas alone take 18 KB, 15 by the best coder tried, which would need a second to read them; the code alone takes the budget. So words or budget had to give, and the words stay.",
    rows: fileRows(),
  },
  {
    title: "The browser sheet's first number",
    about:
      "From the start of the navigation to the computed sheet, in Chromium with nothing in its cache, from a server on the same machine; nine times. The engine's scripts have been read and run by *scripts run*.",
    rows: await pageRows(),
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
