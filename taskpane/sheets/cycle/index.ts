/** The cycle plan: what a crew turns out as it is and in three what-ifs, what holds it back, and when the lot is done. */

import type { Units } from "../../../src/quantity";
import { behindThePage, cautions, checks, FROZEN_ROWS, head, mark } from "../frame";
import { closeTogether, Layout } from "../layout";
import type { SheetPlan, Template } from "../sheet";
import { BESIDE_WIDTHS, cycleSpace, jointList, timeBar, weldCycle } from "./beside";
import { weekdays } from "./calendar";
import { CHECKS, problemCells } from "./checks";
import { gainTable, LEVER_ROWS } from "./crew";
import { finishShifts, finishTable } from "./finish";
import { JOB, PAPERS } from "./inputs";
import { chartSpace, COURSE_NOTE, courseLines, courseTitle, outputBars } from "./pictures";
import { DETAILS, LOT, OUTPUT, scheduleOf } from "./results";
import type { Result } from "./scenarios";
import { GRID, LEFT, resultRow, RIGHT, SCENARIOS, scenarioHeads, typedBlock, usedTable } from "./scenarios";

const WIDTHS = [27, 10, 10, 10, 10, 7, 33, 10, 9, 9, 9, 7, 9, 9, 9];
const LAST_COLUMN = "O";
const BARS = 10;
const COURSE = 12;
/** Columns of one schedule behind the page, and one apart from the next. */
const SCHEDULE_COLUMNS = 4;

function plan(units: Units): SheetPlan {
  const form = new Layout(units, GRID);
  head(form, "Cycle plan: heads, operators, shifts");
  form.blocks(JOB, PAPERS);
  form.banner(KEY, "title");
  const top = form.nextRow;

  block(form, "What it comes to", OUTPUT);
  const bars = chartSpace(form, "left", BARS);
  for (const row of LOT) resultRow(form, row);
  heading(form, "What holds it back: gained a shift by each lever, ranked");
  for (const row of LEVER_ROWS) resultRow(form, row);
  const left = form.nextRow;
  form.backTo(top);
  typedBlock(form);
  form.downTo(left);
  // All that is compared stands on the first page, what stands behind it on the next.
  const next = form.nextRow;
  finishTable(form);
  const below = form.nextRow;
  heading(form, "What that is made from");
  for (const row of DETAILS) resultRow(form, row);
  const made = form.nextRow;
  form.backTo(below);
  form.cell(RIGHT, courseTitle(), "section", { columns: 9 });
  form.nextLine();
  form.cell(RIGHT, COURSE_NOTE, "note", { columns: 9 });
  form.nextLine();
  const course = chartSpace(form, "right", COURSE);
  form.downTo(made);
  const end = form.nextRow;

  form.backTo(top);
  jointList(form);
  form.nextLine();
  const phases = weldCycle(form);
  const cycleBar = cycleSpace(form);

  form.backTo(end);
  cautions(form);
  mark(form, "cycle", "cycle plan");
  const lastRow = form.lastRow;
  // In full below the page: the line under the title counts and names them.
  const all = checks(form, CHECKS);
  form.downTo(Number(/\d+/.exec(cycleBar.to)?.[0]) + 1);
  behind(form);
  const drawn = [outputBars(form), courseLines(form), timeBar(form, phases)] as const;
  behindThePage(form, all);

  return {
    template: "cycle",
    title: "Cycle plan",
    units,
    widths: [...WIDTHS, ...BESIDE_WIDTHS],
    cells: form.finished().map((cell) => closeTogether(cell, "G", [top, next])),
    names: form.names,
    lists: form.lists,
    ranges: form.ranges,
    signs: form.signs,
    charts: [
      { ...drawn[0], ...bars },
      { ...drawn[1], ...course },
      { ...drawn[2], ...cycleBar },
    ],
    frozenRows: FROZEN_ROWS,
    print: { area: `A1:${LAST_COLUMN}${String(lastRow)}`, paper: "wide" },
  };
}

/** What a planner came for, in one line. */
const KEY =
  '=IF(ISNUMBER({shift_steady}),"As it is "&TEXT({shift_random},"0")&" to "&TEXT({shift_steady},"0")&" joints a shift; the lot in "&{shifts}&IF({shifts}={shifts_random},""," to "&{shifts_random})&IF({shifts_random}=1," shift"," shifts"),"No plan yet: see Checks")';

function heading(form: Layout, title: string): void {
  form.cell(LEFT, title, "section", { columns: RIGHT });
  form.nextLine();
}

function block(form: Layout, title: string, rows: readonly Result[]): void {
  heading(form, title);
  scenarioHeads(form);
  for (const row of rows) resultRow(form, row);
}

/** Behind the page: what the results are made from. */
function behind(form: Layout): void {
  usedTable(form);
  weekdays(form);
  gainTable(form);
  finishShifts(form);
  problemCells(form);
  const top = form.nextRow;
  for (const scenario of SCENARIOS) {
    form.backTo(top);
    scheduleOf(scenario).place(form, SCHEDULE_COLUMNS * scenario.place);
  }
}

export const cycle: Template = { id: "cycle", title: "Cycle plan", plan };
