/** Sheets converted to the other system and back: as a fresh sheet shows it, cell by cell. */

import type { Units } from "../../src/quantity";
import { TEMPLATES } from "../../taskpane/sheets";
import type { Template } from "../../taskpane/sheets/sheet";
import { cycle } from "../../taskpane/sheets/cycle";
import { procedure } from "../../taskpane/sheets/procedure";
import { computed, sizeless } from "./computed";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

const OTHER = { US: "SI", SI: "US" } as const;
const SHEETS = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as const).map((units) => [template.id, units, template] as const),
);

/** Numbers of two ways to the same differ in their last digits only. */
const ROUNDING = 1e-9;

function expectAlike(one: OpenSheet, other: OpenSheet): void {
  const others = new Map(computed(other).map((cell) => [cell.at, cell]));
  let compared = 0;
  const differing: unknown[] = [];
  for (const { at, value, text } of computed(one)) {
    const there = others.get(at);
    const alike =
      typeof value === "number" && typeof there?.value === "number"
        ? Math.abs(value - there.value) <= ROUNDING * Math.max(1, Math.abs(value))
        : value === there?.value;
    if (!alike || text !== there?.text) differing.push([at, value, text, there?.value, there?.text]);
    if (value !== "") compared += 1;
  }
  expect(differing).toEqual([]);
  expect(compared).toBeGreaterThan(150);
}

/** A new sheet with everything typed that is typed in another one. */
async function freshLike(sheet: OpenSheet, template: Template, units: Units): Promise<OpenSheet> {
  const fresh = await openSheet(template, units);
  const typed = template.plan(units).cells.filter(({ look }) => look === "input" || look === "inputText");
  fresh.typeAllAt(typed.map(({ at }) => [at, String(sheet.at(at))]));
  return fresh;
}

function formats({ model }: OpenSheet): (readonly [string, string | undefined])[] {
  const sheetId = model.getters.getActiveSheetId();
  return model.getters
    .getNamedRanges()
    .filter(({ range }) => range.sheetId === sheetId)
    .map(({ name, range }): readonly [string, string | undefined] => {
      const { left: col, top: row } = range.zone;
      return [name.split("__")[0] ?? name, model.getters.getCell({ sheetId, col, row })?.format];
    });
}

/** The ranges of typed cells: where, between what, and what is said. */
function rules({ model }: OpenSheet): string[] {
  const all = model.getters.getDataValidationRules(model.getters.getActiveSheetId());
  return all
    .flatMap(({ criterion, ranges }) =>
      ranges.map(({ zone }) => JSON.stringify([zone, criterion.type, criterion.values])),
    )
    .sort();
}

describe.each(SHEETS)("%s in %s", (_, units, template) => {
  test("converted: every value, format and range as in a new sheet of that system with the same typed", async () => {
    const sheet = await openSheet(template, units);
    expect(await sheet.convert()).toBe("");
    expect([sheet.value("sheet_units"), sheet.holds()]).toEqual([OTHER[units], true]);
    const fresh = await freshLike(sheet, template, OTHER[units]);
    expect(fresh.holds()).toBe(true);
    expectAlike(sheet, fresh);
    expect(formats(sheet)).toEqual(formats(fresh));
    expect(rules(sheet)).toEqual(rules(fresh));
  });

  test("and back: as a new sheet shows it, what is typed to the last digit", async () => {
    const sheet = await openSheet(template, units);
    expect([await sheet.convert(), await sheet.convert()]).toEqual(["", ""]);
    const fresh = await openSheet(template, units);
    expect(sheet.holds()).toBe(true);
    const typed = template.plan(units).cells.filter(({ look }) => look === "input" || look === "inputText");
    const contentsOf = (one: OpenSheet): (readonly [string, unknown])[] =>
      typed.map(({ at }) => [at, sizeless(one.at(at))] as const);
    expect(contentsOf(sheet)).toEqual(contentsOf(fresh));
    expect(formats(sheet)).toEqual(formats(fresh));
    expect(rules(sheet)).toEqual(rules(fresh));
  });
});

describe("a label that tells whether its value is typed or suggested", () => {
  const TYPED = {
    speed: "speed_typed",
    overlap: "overlap_typed",
    dwell: "dwell_typed",
    volts: "volts_typed",
    bead: "bead_typed",
  };

  test("follows the cell, before and after conversion", async () => {
    const sheet = await openSheet(procedure, "US");
    const labels = (): string[] => Object.keys(TYPED).map((name) => String(sheet.beside(name, -1)));
    const suggested = labels();
    for (const label of suggested) expect(label).not.toMatch(/typed/);
    for (const [name, cell] of Object.entries(TYPED)) {
      sheet.having({ [cell]: String(sheet.value(name)) }, () => {
        const told = labels().filter((label) => label.endsWith(", typed"));
        expect(told).toEqual([`${String(suggested[Object.keys(TYPED).indexOf(name)])}, typed`]);
      });
    }
    sheet.type("speed_typed", "6");
    expect(await sheet.convert()).toBe("");
    // 6 in/min.
    expect([sheet.value("speed_typed"), sheet.beside("speed", -1)]).toEqual([152.4, "Travel speed, typed"]);
    sheet.type("speed_typed", "");
    expect(labels()).toEqual(suggested);
    expect(sheet.holds()).toBe(true);
  });

  test("of the cycle plan, too", async () => {
    const plan = await openSheet(cycle, "SI");
    expect(plan.beside("speed", -1)).toBe("Travel speed, suggested");
    plan.type("speed_typed", "127");
    expect(await plan.convert()).toBe("");
    expect([plan.value("speed_typed"), plan.beside("speed", -1)]).toEqual([5, "Travel speed, typed"]);
    expect(plan.holds()).toBe(true);
  });
});
