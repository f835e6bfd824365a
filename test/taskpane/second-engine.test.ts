/**
 * Every ready sheet in both systems, cell by cell: the browser sheet's engine and a second one give the same, as the sheets come
 * and with something typed. No cell is left out.
 */

import type { Units } from "../../src/quantity";
import { TEMPLATES } from "../../taskpane/sheets";
import type { SheetPlan, Template } from "../../taskpane/sheets/sheet";
import { filledBy, formulasOf } from "./graph";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";
import type { Value } from "./second-engine";
import { computedAgain } from "./second-engine";

const CASES = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as Units[]).map((units): [string, Template, Units] => [
    `${template.id} ${units}`,
    template,
    units,
  ]),
);

/** Of numbers: two engines need not add a long column in the same order. */
const NEAR = 1e-9;

function isSame(one: Value, other: Value | undefined): boolean {
  if (typeof one !== "number" || typeof other !== "number") return one === other;
  return Math.abs(one - other) <= NEAR * Math.abs(one);
}

/** Every computed cell in which the second engine's `again` is not what the browser sheet shows. */
function differing(plan: SheetPlan, sheet: OpenSheet, again: ReadonlyMap<string, Value>): string[] {
  return [...formulasOf(plan).keys(), ...filledBy(sheet, plan).keys()].flatMap((at) => {
    const [here, there] = [sheet.at(at), again.get(at)];
    return isSame(here, there) ? [] : [`${at}: ${String(here)} | ${String(there)}`];
  });
}

test.each(CASES)("%s as it comes", async (_, template, units) => {
  const plan = template.plan(units);
  const sheet = await openSheet(template, units);
  const again = computedAgain(plan, sheet);
  expect(differing(plan, sheet, again)).toEqual([]);
  expect(again.size).toBeGreaterThan(30);
  expect([...again.values()].filter((value) => typeof value === "number").length).toBeGreaterThan(10);
});

/** The typed cells that hold something of a size, a number or one kept as text, and what each holds. */
function typedNumbers(plan: SheetPlan): [at: string, typed: string][] {
  return plan.cells.flatMap(({ at, look, content }) =>
    look === "input" && content !== "" ? [[at, String(content)]] : [],
  );
}

/** A tenth more, where it says a plain number. */
function more(typed: string): string {
  return Number.isFinite(Number(typed)) ? String(Number(typed) * 1.1) : typed;
}

describe.each(TEMPLATES.map((template) => [template.id, template] as const))("%s", (_, template) => {
  const plan = template.plan("US");
  const numbers = typedNumbers(plan);

  test.each<readonly [string, readonly (readonly [at: string, typed: string])[]]>([
    ["the first number emptied", numbers.slice(0, 1).map(([at]) => [at, ""])],
    ["words in place of the second number", numbers.slice(1, 2).map(([at]) => [at, "thin"])],
    ["some numbers a tenth more", numbers.slice(0, 12).map(([at, typed]) => [at, more(typed)])],
  ])("%s", async (__, typed) => {
    const sheet = await openSheet(template, "US");
    const before = new Map([...formulasOf(plan).keys()].map((at) => [at, sheet.at(at)]));
    expect(typed.length).toBeGreaterThan(0);
    for (const [at, content] of typed) sheet.typeAt(at, content);
    expect(differing(plan, sheet, before)).not.toEqual([]);
    expect(differing(plan, sheet, computedAgain(plan, sheet))).toEqual([]);
  });
});
