/** The cycle plan: what a crew turns out, where it is held back, and what the lot takes. */

import type { Units } from "../../../src/quantity";
import { call } from "../call";
import { behindThePage, cautions, checks, FROZEN_ROWS, head, mark } from "../frame";
import { address, Layout } from "../layout";
import type { ChartPlan, SheetPlan, Template } from "../sheet";
import { CALENDAR, JOB, JOINT, PAPERS, RATE, SHOP } from "./inputs";
import { CHECKS, CREW, output, SCHEDULE, WELD } from "./results";

const WIDTHS = [32, 11, 11, 11, 32, 11, 11, 11];
const PHASES = 7;
const HEADS = [1, 2, 3, 4, 5, 6];
/** Load times of the two-way table, as shares of the one typed. */
const LOADS = [0.5, 0.75, 1, 1.25, 1.5];

function plan(units: Units): SheetPlan {
  const form = new Layout(units);
  head(form, "Cycle plan: heads, operators, shifts");
  form.section("Job");
  form.blocks(JOB, PAPERS);
  form.section("Joint and shop: typed");
  form.blocks([...JOINT, ...CALENDAR], [...SHOP, ...RATE]);
  form.section("Weld cycle and crew");
  form.blocks(WELD, CREW);

  form.section("Joints a shift of one operator by heads, and the phases of a cycle");
  const top = form.nextRow;
  const outputs = outputTable(form);
  form.backTo(top);
  const phases = phaseTable(form);
  const spaces = form.chartSpace(13, ["left", "right"]);
  form.section("Joints a shift of one operator, steady: load time down, heads across");
  twoWayTable(form);

  const all = checks(form, CHECKS);
  cautions(form);
  mark(form, "cycle", "cycle plan");
  const lastRow = form.lastRow;
  SCHEDULE.place(form);
  behindThePage(form, all);

  return {
    template: "cycle",
    title: "Cycle plan",
    units,
    widths: WIDTHS,
    cells: form.finished(),
    names: form.names,
    lists: form.lists,
    ranges: form.ranges,
    signs: form.signs,
    charts: spaces.flatMap((space, i) => {
      const chart = [outputs, phases][i];
      return chart === undefined ? [] : [{ ...chart, ...space }];
    }),
    frozenRows: FROZEN_ROWS,
    print: { area: `A1:H${String(lastRow)}`, paper: "form" },
  };
}

const PHASES_OF_CYCLE = {
  od: "{od}",
  speed: "{speed}",
  prepurge: "{purge}+{prepurge}",
  dwell: "{dwell}",
  overlap: "{overlap}",
  downslope: "{downslope}",
  postpurge: "{postpurge?}",
  handling: "{load?}",
} as const;

type Drawn = Omit<ChartPlan, "from" | "to">;

/** One to six heads: steady and random side by side, and how busy that keeps the operator. */
function outputTable(form: Layout): Drawn {
  const headings = form.nextRow;
  form.across(0, ["heads of one operator", "steady", "random", "busy"], "columnHead");
  form.nextLine();
  const top = form.nextRow;
  form.name("outputs", 0);
  for (const heads of HEADS) {
    const steady = address(1, form.nextRow);
    const here = address(0, form.nextRow);
    form.across(
      0,
      [
        heads,
        `=${output(here, "{load}", "steady")}`,
        `=${output(here, "{load}", "random")}`,
        `=${steady}*({load}+{walk})/(3600*{net_hours}*{availability})`,
      ],
      "result",
      ["0", "0.0", "0.0", "0%"],
    );
    form.nextLine();
  }
  form.guardBlock("Joints a shift by heads", "outputs_rows", [1, top], [3, form.nextRow - 1]);
  const [first, last] = [headings + 1, headings + HEADS.length];
  return {
    title: "Joints a shift of one operator by the number of heads",
    kind: "line",
    axes: { x: "heads of one operator", y: "joints a shift" },
    labels: `${address(0, first)}:${address(0, last)}`,
    values: [1, 2].map((column) => `${address(column, headings)}:${address(column, last)}`),
  };
}

function phaseTable(form: Layout): Drawn {
  const headings = form.nextRow;
  form.table(
    "right",
    "phases",
    ["Phase", "starts, s", "lasts, s", "arc on"],
    `=${call("CYCLE_PHASES", PHASES_OF_CYCLE)}`,
    ["General", "0.0", "0.0", "General"],
    PHASES,
  );
  form.guardComputed("Phases of a cycle", "phases");
  form.rangeOf("phases_last", 6, headings + 1, 6, headings + PHASES);
  const [first, last] = [headings + 1, headings + PHASES];
  return {
    title: "Phases of a cycle: bore purge in prepurge, load in handling",
    kind: "bar",
    axes: { x: "phase", y: "time, s" },
    labels: `${address(4, first)}:${address(4, last)}`,
    values: [`${address(6, headings)}:${address(6, last)}`],
  };
}

/** Load time × heads in plain cells: what-if tables of a host cannot call these formulas. */
function twoWayTable(form: Layout): void {
  const headings = form.nextRow;
  form.cell(0, "load time, s", "columnHead");
  form.across(
    1,
    HEADS,
    "columnHead",
    HEADS.map((heads) => (heads === 1 ? '0" head"' : '0" heads"')),
  );
  form.nextLine();
  const top = form.nextRow;
  form.name("two_way", 0);
  for (const share of LOADS) {
    const row = form.nextRow;
    const cells = HEADS.map((_, i) => `=${output(address(1 + i, headings), address(0, row), "steady")}`);
    form.across(0, [`={load}*${String(share)}`, ...cells], "result", ["0", ...HEADS.map(() => "0.0")]);
    form.nextLine();
  }
  form.guardBlock("Joints a shift by load time", "two_way_rows", [0, top], [HEADS.length, form.nextRow - 1]);
}

export const cycle: Template = { id: "cycle", title: "Cycle plan", plan };
