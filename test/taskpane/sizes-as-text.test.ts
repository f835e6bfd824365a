/** What the sentence about dates advises to type, and sizes as text in every cell of a length: nothing leads astray. */

import { LENGTH } from "../../src/quantity";
import { DATE_HINT } from "../../src/sizes";
import { TEMPLATES } from "../../taskpane/sheets";
import { gas } from "../../taskpane/sheets/gas";
import { procedure } from "../../taskpane/sheets/procedure";
import { filledBy, results } from "./graph";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

/** The three ways to type half an inch that the sentence names. */
const WAYS = DATE_HINT.replace(/^.*type it as /, "").split(/, | or /);

test("the sentence names ways to type a size", () => {
  expect(WAYS.length).toBe(3);
  expect(WAYS).toContain("'1/2");
});

describe("a diameter that the sheet turned into a date, then typed as the check advises", () => {
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(procedure, "US");
  });

  test.each(WAYS)("%s is half an inch, and all checks hold", (way) => {
    sheet.undone(() => {
      sheet.type("od", "46024");
      expect(sheet.value("check_typed")).toContain(DATE_HINT);
      sheet.type("od", way);
      // od less two walls of 0.065 in; reach 1.5 in less half of od and the standoff of 0.0425 in.
      expect(sheet.value("bore")).toBeCloseTo(0.5 - 0.13, 12);
      expect(sheet.value("electrode_length")).toBeCloseTo(1.5 - 0.25 - 0.0425, 12);
      expect(sheet.value("check_vent")).toBe("✓ holds");
      expect(sheet.value("summary")).toMatch(/^✓ All \d+ checks hold/);
    });
    expect(sheet.value("od")).toBe(1);
  });

  test("a vent typed as text is judged as the number it says", () => {
    for (const [text, said] of [
      ["'3/16", /^✓ holds$/],
      ["'7/8", /^▲ the vent is not smaller than the bore$/],
      ["'1/16", /^▲ ventDiameter = /],
    ] as const) {
      sheet.having({ vent: text }, () => {
        expect([text, sheet.value("check_vent")]).toEqual([text, expect.stringMatching(said)]);
      });
    }
  });
});

test.each(WAYS)("in the list of joints %s is half an inch", async (way) => {
  const sheet = await openSheet(gas, "US");
  const hours = sheet.value("hours");
  sheet.typeBeside("takeoff", -3, 1, "46024");
  expect(sheet.beside("takeoff", 8, 1)).toMatch(/^od: /);
  // The first line of the list is of half an inch.
  sheet.typeBeside("takeoff", -3, 1, way);
  expect(sheet.value("hours")).toBe(hours);
  expect(sheet.value("summary")).toMatch(/^✓/);
});

/** The size table has lengths in its list alone, which its own test reads as text. */
const LIST_ALONE = "sizes";
const SHEETS = TEMPLATES.filter(({ id }) => id !== LIST_ALONE).flatMap((template) =>
  (["US", "SI"] as const).map((units) => [template.id, units, template] as const),
);

test.each(SHEETS)(
  "%s in %s: each length typed as text gives what its number gives",
  async (_, units, template) => {
    const plan = template.plan(units);
    const sheet = await openSheet(template, units);
    const all = results(plan, filledBy(sheet, plan)).map(({ at }) => at);
    const shown = (): unknown[] => all.map((at) => sheet.at(at));
    const lengths = plan.ranges.flatMap(({ at }) =>
      plan.names.filter((named) => named.at === at && named.quantity === LENGTH),
    );
    expect(lengths.length).toBeGreaterThan(0);
    const before = shown();
    for (const { name } of lengths) {
      const number = sheet.value(name);
      if (number === "") continue;
      const unit = units === "US" ? "in" : "mm";
      for (const text of [`'${String(number)}`, `${String(number)} ${unit}`]) {
        sheet.having({ [name]: text }, () => {
          expect([name, text, sheet.value(name)]).toEqual([name, text, text.replace("'", "")]);
          expect([name, text, shown()]).toEqual([name, text, before]);
          expect(sheet.value("summary")).toMatch(/^✓/);
        });
      }
    }
  },
);
