/**
 * Every typed cell of every ready sheet with everything that a person may put there: no result that depends on the cell may
 * stand while the summary says that all checks hold, unless the content means the same as a plain number or a reason
 * below says why. The cells and their ranges come from the plans, so that a new one is tried at once.
 */

import type { Units } from "../../src/quantity";
import { TEMPLATES } from "../../taskpane/sheets";
import type { CellPlan, RangePlan, SheetPlan, Template } from "../../taskpane/sheets/sheet";
import { addressesIn } from "../../taskpane/sheets/watched";
import { filledBy, Graph, results } from "./graph";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";
import { isFurtherWhatIf } from "./further-what-if";
import { REASONS } from "./typed-matrix-reasons";

const OTHER = { US: "SI", SI: "US" } as const;

interface TypedCell {
  readonly name: string;
  readonly cell: CellPlan;
  /** What is usually there, and what it would be in the other system; undefined for words. */
  readonly usual: number | undefined;
  readonly others: number | undefined;
}

/** All cells to type in, of a list its first line. */
function typedCells(template: Template, units: Units): TypedCell[] {
  const [plan, other] = [template.plan(units), template.plan(OTHER[units])];
  const inputs = plan.cells.filter(({ look }) => look === "input" || look === "inputText");
  const names = new Map(plan.names.map(({ name, at }) => [firstTyped(at), name]));
  return inputs.flatMap((cell): TypedCell[] => {
    const name =
      names.get(cell.at) ??
      (plan.lists.some(({ at }) => at.startsWith(`${cell.at}:`)) ? "material" : undefined);
    if (name === undefined || isFurtherWhatIf(name)) return [];
    return [
      {
        name,
        cell,
        usual: usualAt(plan, cell),
        others: usualAt(
          other,
          other.cells.find(({ at, look }) => at === cell.at && look === cell.look),
        ),
      },
    ];
  });
}

/** The cell of a name; of a column of the list the first below its heading. */
function firstTyped(at: string): string {
  const [alone = at, second = alone] = addressesIn(at);
  return second;
}

/** Further lines of a list, which are as its first, and further what-ifs, which are as theirs. */
function furtherLines(plan: SheetPlan): Set<string> {
  const columns = [...plan.names, ...plan.lists].filter(({ at }) => at.includes(":"));
  const whatIfs = plan.names.filter(({ name }) => isFurtherWhatIf(name));
  return new Set([...columns, ...whatIfs].flatMap(({ at }) => addressesIn(at)));
}

function rangeAt(plan: SheetPlan, at: string): RangePlan | undefined {
  return plan.ranges.find((range) => range.at === at);
}

/** The number planned; for a cell that is blank at first the middle of its range, as factors go. */
function usualAt(plan: SheetPlan, cell: CellPlan | undefined): number | undefined {
  if (cell?.look !== "input") return undefined;
  if (cell.content !== "") return sizeIn(String(cell.content));
  const range = rangeAt(plan, cell.at);
  if (range === undefined) return undefined;
  const middle = range.least > 0 ? Math.sqrt(range.least * range.most) : range.most / 10;
  return Number(middle.toPrecision(2));
}

/** 1-1/2 as 1.5. */
function sizeIn(text: string): number {
  const [, whole = "0", above = "0", below = "1"] = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(text) ?? [];
  return text.includes("/") ? Number(whole) + Number(above) / Number(below) : Number(text);
}

/**
 * What is typed, by what it is. Ways of writing, which no formula reads differently in another system, are tried in one of
 * the two for each cell, in turns.
 */
function contents({ usual, others }: TypedCell, isWritten: boolean): [kind: string, content: string][] {
  const number = String(usual ?? 8);
  const comma = number.includes(".") ? number.replace(".", ",") : `${number},0`;
  const written: [string, string][] = [
    ["unit", "8 kJ/in"],
    ["comma", comma],
    ["apostrophe", `'${number}`],
    ["thousands", "1 000"],
    ["clock", "0:30"],
  ];
  return [
    ["blank", ""],
    ["text", "see WPS"],
    ["negative", `-${number}`],
    ["zero", "0"],
    ["huge", "1e9"],
    ...(others === undefined || others === usual
      ? []
      : [["other system", String(others)] as [string, string]]),
    ["date", "46024"],
    ["percent", "5%"],
    ...(isWritten ? written : []),
  ];
}

const CASES = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as const).map((units) => [template.id, units, template] as const),
);

/** The cells that have a reason for a kind of content. */
function exempt(kind: string): string[] {
  return Object.values(REASONS[kind] ?? {}).flat();
}

const used = new Set<string>();

describe.each(CASES)("%s in %s", (id, units, template) => {
  const plan = template.plan(units);
  let sheet: OpenSheet;
  let graph: Graph;
  let taken: CellPlan[];
  beforeAll(async () => {
    sheet = await openSheet(template, units);
    const filled = filledBy(sheet, plan);
    graph = new Graph(plan, filled);
    taken = results(plan, filled);
  });

  test("no typed cell that a result depends on is left out", () => {
    const tried = typedCells(template, units);
    const further = furtherLines(plan);
    const left = plan.cells.filter(({ at, look }) => {
      const typed = look === "input" || look === "inputText" || look === "locked";
      return typed && !tried.some(({ cell }) => cell.at === at) && !further.has(at);
    });
    const read = left.filter(({ at }) => taken.some((result) => graph.from(at).has(result.at)));
    // The system of units is no content to try: it takes only its own word.
    expect(read.map(({ look }) => look)).toEqual(["locked"]);
    expect(new Set(tried.map(({ name }) => name)).size).toBe(tried.length);
  });

  const cells = typedCells(template, units).map((typed, i) => [typed.name, typed, i] as const);
  test.each(cells)("%s", (name, typed, i) => {
    const below = graph.from(typed.cell.at);
    const dependents = taken.filter(({ at }) => below.has(at)).map(({ at }) => at);
    const shown = (): unknown[] => dependents.map((at) => sheet.at(at));
    const standing: string[] = [];
    sheet.typeAt(typed.cell.at, String(typed.usual ?? typed.cell.content));
    const meant = JSON.stringify(shown());
    for (const [kind, content] of contents(typed, (i % 2 === 0) === (units === "US"))) {
      sheet.typeAt(typed.cell.at, content);
      if (!sheet.holds()) continue;
      const values = shown();
      // Where all holds, nothing shows an error.
      expect([kind, values.filter((value) => String(value).startsWith("#"))]).toEqual([kind, []]);
      if (!values.some((value) => value !== "")) continue;
      if (JSON.stringify(values) === meant && kind !== "zero") continue;
      const key = `${id} ${name}`;
      if (exempt(kind).includes(key)) used.add(`${kind}: ${key}`);
      else standing.push(`${kind} ${content} (${String(sheet.at(typed.cell.at))})`);
    }
    sheet.typeAt(typed.cell.at, String(typed.cell.content));
    expect(sheet.holds()).toBe(true);
    expect(standing).toEqual([]);
  });
});

test("every reason is one that is needed", () => {
  const all = Object.keys(REASONS).flatMap((kind) => exempt(kind).map((key) => `${kind}: ${key}`));
  expect([...used].sort()).toEqual(all.sort());
});
