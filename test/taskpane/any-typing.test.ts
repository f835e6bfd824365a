/**
 * Anything typed into some cells of a ready sheet, one after the other: no error and no number without end stands while the
 * summary says that all holds; the sheet shows what one shows into which all was typed at once; converted there and back,
 * and with everything put back, it is as it was.
 */

import fc from "fast-check";

import type { Units } from "../../src/quantity";
import { TEMPLATES } from "../../taskpane/sheets";
import type { CellPlan, Template } from "../../taskpane/sheets/sheet";
import { decades, SETTINGS } from "../arbitrary-cells";
import type { Computed } from "./computed";
import { computed, sizeless } from "./computed";
import { filledBy, results } from "./graph";
import { openSheet } from "./open-sheet";

/** Numbers of two ways to the same differ in their last digits only. */
const ROUNDING = 1e-9;
/** A sheet takes some thousand times as long as a formula. */
const numRuns = Math.ceil(SETTINGS.numRuns / 100);
const RUNS = `${String(numRuns)} runs, seed ${String(SETTINGS.seed)}`;

const STRANGE = [
  "",
  " ",
  "see WPS",
  "8 kJ/in",
  "1-1/2",
  "1/16",
  "38.1 mm",
  '0.5"',
  "-1",
  "0",
  "1e9",
  "1e-9",
  "1e308",
  "46024",
  "5%",
  "0,065",
  "1 000",
  "0:30",
  "TRUE",
  "=1/0",
  "=NA()",
  '="text"',
  "=1/3",
  "constructor",
  "__proto__",
  "#N/A",
  "x".repeat(300),
  "steady",
  "SI",
  "accepted",
  "NPS 2",
];

/** Mostly what a person could mean there; now and then anything. */
function contentOf({ content }: CellPlan): fc.Arbitrary<string> {
  const usual = Number(content);
  const near =
    Number.isFinite(usual) && content !== ""
      ? fc
          .double({ min: 0.8, max: 1.25, noNaN: true })
          .map((factor) => String(Number((usual * factor).toPrecision(4))))
      : fc.constant(String(content));
  return fc.oneof(
    { weight: 6, arbitrary: near },
    { weight: 1, arbitrary: decades(1e-6, 1e6).map((number) => String(Number(number.toPrecision(4)))) },
    { weight: 2, arbitrary: fc.constantFrom(...STRANGE) },
  );
}

function typings(template: Template, units: Units): fc.Arbitrary<[at: string, content: string][]> {
  const cells = template
    .plan(units)
    .cells.filter(({ look }) => look === "input" || look === "inputText")
    .map((cell) => contentOf(cell).map((content): [string, string] => [cell.at, content]));
  return fc.array(fc.oneof(...cells), { minLength: 1, maxLength: 5 });
}

/** A number, or the size that a cell of text says. */
function numberIn(value: Computed["value"] | undefined): number {
  return typeof value === "number" ? value : Number(sizeless(value) === "" ? NaN : sizeless(value));
}

function differing(one: readonly Computed[], other: readonly Computed[]): unknown[] {
  return one.flatMap(({ at, value, text }, i) => {
    const there = other[i];
    const [number, numberThere] = [numberIn(value), numberIn(there?.value)];
    const alike = Number.isNaN(number)
      ? value === there?.value && text === there.text
      : Math.abs(number - numberThere) <= ROUNDING * Math.max(1, Math.abs(number));
    return alike ? [] : [[at, value, there?.value]];
  });
}

const CASES = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as const).map((units) => [template.id, units, template] as const),
);

test.each(CASES)(`%s in %s, ${RUNS}`, async (_, units, template) => {
  const [sheet, other] = [await openSheet(template, units), await openSheet(template, units)];
  const planned = new Map(template.plan(units).cells.map(({ at, content }) => [at, String(content)]));
  const shown = results(template.plan(units), filledBy(sheet, template.plan(units))).map(({ at }) => at);
  const fresh = computed(sheet);
  await fc.assert(
    fc.asyncProperty(typings(template, units), async (typed) => {
      let conversions = 0;
      try {
        for (const [at, content] of typed) sheet.typeAt(at, content);
        const there = computed(sheet);
        const holds = sheet.holds();
        const values = holds ? shown.map((at) => [at, sheet.at(at)] as const) : [];
        expect(values.filter(([, value]) => /^#|NaN|Infinity/.test(String(value)))).toEqual([]);
        other.typeAllAt([...new Map(typed)]);
        expect(differing(there, computed(other))).toEqual([]);
        while (holds && conversions < 2) {
          expect(await sheet.convert()).toBe("");
          conversions += 1;
        }
        expect(differing(there, computed(sheet))).toEqual([]);
      } finally {
        for (; conversions > 0; conversions -= 1) sheet.undo();
        for (const one of [sheet, other]) {
          one.typeAllAt(typed.map(([at]) => [at, planned.get(at) ?? ""]));
          expect(differing(fresh, computed(one))).toEqual([]);
        }
      }
    }),
    { numRuns },
  );
});
