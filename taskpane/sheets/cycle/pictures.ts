/** Pictures of the plan: joints a shift as bars, and the first hour of the crew as it is, head by head. */

import { call } from "../call";
import type { Layout } from "../layout";
import { address } from "../layout";
import type { ChartPlan } from "../sheet";
import { crewOf, headsOfOne, isFixed } from "./crew";
import { workOf } from "./results";
import { AS_IT_IS, LEFT, of, RIGHT, SCENARIOS, used } from "./scenarios";

export type Drawn = Omit<ChartPlan, "from" | "to">;

/** Room for a chart in one of the blocks. */
export function chartSpace(
  form: Layout,
  side: "left" | "right",
  rows: number,
): Pick<ChartPlan, "from" | "to"> {
  const [column, columns] = side === "left" ? [LEFT, 6] : [RIGHT, 9];
  const row = form.nextRow;
  form.cell(column, "", "note", { columns, rows });
  form.backTo(row + rows);
  return { from: address(column, row), to: address(column + columns - 1, row + rows - 1) };
}

/** Behind the page: a bar a scenario, its difference to the first in the words below it. */
export function outputBars(form: Layout): Drawn {
  const headings = form.nextRow;
  form.across(0, ["Bars of the picture", "steady", "random"], "columnHead");
  form.nextLine();
  for (const scenario of SCENARIOS) {
    const { end } = scenario;
    const [joints, more] = [of(scenario, "shift_steady"), `{more_steady${end}}`];
    const name = end === "" ? `{head}` : `{head${end}}&" ("&TEXT(${more},"+0.0;-0.0;0.0")&")"`;
    form.across(
      0,
      [`=IF(ISNUMBER(${joints}),${name},"")`, `=${joints}`, `=${of(scenario, "shift_random")}`],
      "note",
    );
    form.nextLine();
  }
  const last = form.nextRow - 1;
  return {
    title: "Joints a shift, steady and random; in brackets the steady difference to the first",
    kind: "bar",
    axes: { x: "", y: "joints a shift" },
    labels: `${address(0, headings + 1)}:${address(0, last)}`,
    values: [1, 2].map((column) => `${address(column, headings)}:${address(column, last)}`),
  };
}

/** A crew of more lines than there is room for is not drawn: one head stands in for it, and no line shows it. */
function drawn(count: string): string {
  return `IF({course_lines}>${String(LINES)},1,${count})`;
}

const MINUTES = 60;
/** Lines of the picture: one for each operator, then one for each head. */
const LINES = 8;
/** Steps of a line up from waiting: a third of the way to the next line each. */
const STEP = 0.35;

/** The crew of the picture: all who share the heads, or one operator with their own. */
function pictured(): { readonly heads: string; readonly operators: string } {
  return {
    heads: headsOfOne(AS_IT_IS, crewOf(AS_IT_IS)),
    operators: `IF(${isFixed(AS_IT_IS)},1,${used(AS_IT_IS, "operators")})`,
  };
}

/** What stands above the picture. */
export function courseTitle(): string {
  return (
    `=IF(ISNUMBER({course_lines}),IF({course_lines}>${String(LINES)},` +
    `"First hour: no picture of more than ${String(LINES)} operators and heads together",` +
    `"First hour, as it is: "&{course_operators}&IF({course_operators}=1," operator and "," operators and ")&{course_heads}&IF({course_heads}=1," head"," heads")),"First hour: no cycle to draw")`
  );
}

export const COURSE_NOTE =
  "Operators on top, heads below. High: at a head, or the machine runs; middle: on the way, or being loaded; low: waits.";

/** Behind the page: the course minute by minute, and its lines above each other. */
export function courseLines(form: Layout): Drawn {
  const { heads, operators } = pictured();
  form.across(0, ["The first hour: heads, operators, lines"], "label");
  const row = form.nextRow;
  const cells = [heads, operators, "{course_heads}+{course_operators}"];
  cells.forEach((content, i) => {
    form.cell(1 + i, `=IF(ISNUMBER({shift_steady}),${content},"")`, "note");
  });
  ["course_heads", "course_operators", "course_lines"].forEach((name, i) => {
    form.rangeOf(name, 1 + i, row, 1 + i, row);
  });
  form.nextLine();
  const headings = form.nextRow;
  form.across(LINES + 2, ["minute", ...lineNames()], "columnHead");
  form.nextLine();
  const top = form.nextRow;
  const course = call("CREW_COURSE", {
    ...workOf(AS_IT_IS),
    heads: drawn("{course_heads}"),
    hours: 1,
    stepSeconds: 60,
    operators: drawn("{course_operators}"),
  });
  form.cell(0, `=${course}`, "note");
  form.name("course", 0);
  form.guardComputed("Course of the first hour", "course");
  for (let minute = 0; minute <= MINUTES; minute += 1) {
    const lines = Array.from({ length: LINES }, (_, i) => `=${lineAt(i + 1, address(2 + i, form.nextRow))}`);
    form.across(LINES + 2, [minute, ...lines], "note");
    form.nextLine();
  }
  const last = form.nextRow - 1;
  form.guardBlock("Lines of the first hour", "line_cells", [LINES + 3, top], [2 * LINES + 2, last]);
  return {
    title: "Who waits for whom: high works, middle is loaded or walks, low waits",
    kind: "curve",
    axes: { x: "minutes", y: "" },
    labels: `${address(LINES + 2, top)}:${address(LINES + 2, last)}`,
    values: Array.from({ length: LINES }, (_, i) => {
      const column = LINES + 3 + i;
      return `${address(column, headings)}:${address(column, last)}`;
    }),
  };
}

/** Names follow how many operators there are. */
function lineNames(): string[] {
  return Array.from({ length: LINES }, (_, i) => {
    const line = String(i + 1);
    return `=IF(ISNUMBER({course_lines}),IF(${line}>MIN({course_lines},${String(LINES)}),"",IF(${line}<={course_operators},"operator "&${line},"head "&(${line}-{course_operators}))),"")`;
  });
}

/** One point of a line: its place from the top, and a step up for being loaded or on the way, two for work. */
function lineAt(line: number, state: string): string {
  const isOperator = `${String(line)}<={course_operators}`;
  const steps = `IF(${isOperator},IF(${state}>0,2,IF(${state}<0,1,0)),${state})`;
  return `IF(AND(ISNUMBER(${state}),{course_lines}<=${String(LINES)}),{course_lines}-${String(line)}+${String(STEP)}*${steps},0)`;
}
