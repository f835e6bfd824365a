/** The procedure sheet: one page from a tube size to a set of starting values, with what to check before the arc. */

import type { Units } from "../../../src/quantity";
import { TIME } from "../../../src/quantity";
import { call } from "../call";
import { behindThePage, cautions, checks, FROZEN_ROWS, head, mark, release } from "../frame";
import { Layout } from "../layout";
import { qualification } from "../qualification";
import type { SheetPlan, Template } from "../sheet";
import { PICTURES_NAME } from "../sheet";
import { CHECKS } from "./checks";
import { ARC, BORE, COUPON, JOB, OXYGEN_TARGET, PAPERS, TUBE } from "./inputs";
import {
  CYCLE,
  DAMS,
  GAP,
  HEAT,
  MEAN,
  PULSE_NOTE,
  PURGE_FLOWS,
  PURGE_TIMES,
  SCHEDULE,
  TRAVEL,
} from "./results";
import { beadTable } from "./bead";
import { programBehind, programTable } from "./program";
import { sectorTable } from "./sectors";
import { workbench, WORKBENCH_WIDTHS } from "./workbench";

const WIDTHS = [32, 11, 9, 9, 32, 11, 9, 9];
const PHASES = 7;
/** As many rows as the pictures of the joint take in a file. */
const PICTURE_ROWS = 20;

function plan(units: Units): SheetPlan {
  const form = new Layout(units);
  head(form, "Procedure sheet: orbital TIG tube weld");

  form.section("Job and joint");
  form.blocks(JOB, PAPERS);
  form.section("Tube, arc and times: typed");
  form.blocks(TUBE, ARC);
  form.section("Bore purge: typed");
  form.blocks(BORE, OXYGEN_TARGET);

  form.section("Electrode, gap and travel");
  form.blocks(GAP, TRAVEL);
  form.section("Current by sector and heat input: the tube warms up as it is welded");
  sectorTable(form);
  form.blocks(HEAT, MEAN);
  form.banner(PULSE_NOTE, "note");
  form.section("Bead by sector, at its end, where it is widest, and the room for current");
  beadTable(form);
  form.section("Your own program: currents that are set, peaks of a pulsed arc; a blank cell is as computed");
  programTable(form);

  form.section("Purge: time and oxygen, flow and pressure. Argon is heavier than air: feed low, vent high");
  form.blocks(PURGE_TIMES, PURGE_FLOWS);
  form.section("Dams and cycle");
  damsAndCycle(form);

  qualification(form, COUPON);
  const all = checks(form, CHECKS);
  cautions(form);
  release(form, ["Prepared", "Reviewed", "Approved"]);
  mark(form, "procedure", "procedure sheet");
  const lastRow = form.lastRow;
  form.name(PICTURES_NAME, 0, undefined, false, PICTURE_ROWS);
  form.downTo(form.nextRow + PICTURE_ROWS);
  SCHEDULE.place(form);
  programBehind(form);
  const below = form.nextRow;
  const charts = workbench(form, FROZEN_ROWS + 1);
  form.backTo(below);
  behindThePage(form, all);

  return {
    template: "procedure",
    title: "Procedure sheet",
    units,
    widths: [...WIDTHS, ...WORKBENCH_WIDTHS],
    cells: form.finished(),
    names: form.names,
    lists: form.lists,
    ranges: form.ranges,
    signs: form.signs,
    charts,
    frozenRows: FROZEN_ROWS,
    print: { area: `A1:H${String(lastRow)}`, paper: "form" },
  };
}

function damsAndCycle(form: Layout): void {
  const top = form.nextRow;
  form.blocks(DAMS, []);
  const underDams = form.nextRow;
  form.backTo(top);
  form.table(
    "right",
    "phases",
    ["Phase", "starts, s", "lasts, s", "arc on"],
    `=${call("CYCLE_PHASES", CYCLE)}`,
    ["General", "0.0", "0.0", "General"],
    PHASES,
  );
  form.guardComputed("Phases of the cycle", "phases");
  const lasts = `G${String(form.nextRow - PHASES)}:G${String(form.nextRow - 1)}`;
  form.blocks(
    [],
    [
      {
        label: "Cycle, start to start",
        name: "cycle",
        content: `=IF(COUNT(${lasts})<${String(PHASES)},"",SUM(${lasts}))`,
        look: "result",
        quantity: TIME,
      },
    ],
  );
  form.downTo(underDams);
}

export const procedure: Template = { id: "procedure", title: "Procedure sheet", plan };
