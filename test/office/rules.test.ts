/** Colors of signs and ranges of typed numbers in a spreadsheet that has no add-in: they survive opening and saving. */

import { writeFile } from "../../taskpane/files/write";
import { snapshotOf } from "../../taskpane/hosts/browser/engine-sheet";
import { openSmall } from "../taskpane/small-form";
import type { Opened } from "./open-file";
import { openFiles } from "./open-file";

let opened: Opened | undefined;
beforeAll(async () => {
  const { model, type } = await openSmall();
  type("B10", "1/2");
  const bytes = await writeFile([snapshotOf(model, model.getters.getActiveSheetId())], () => false);
  opened = openFiles(new Map([["small", bytes]])).get("small");
});

function sheet(): string {
  return opened?.part("xl/worksheets/sheet1.xml") ?? "";
}

test("both signs are still colored by their formulas", () => {
  const [, rules = ""] =
    /<conditionalFormatting sqref="D4:D5">(.*?)<\/conditionalFormatting>/s.exec(sheet()) ?? [];
  const styles = [
    ...(/<dxfs .*?<\/dxfs>/s.exec(opened?.part("xl/styles.xml") ?? "")?.[0].matchAll(/<dxf>.*?<\/dxf>/gs) ??
      []),
  ];
  const looks = new Map(
    [...rules.matchAll(/<cfRule [^>]*dxfId="(\d+)"[^>]*>.*?<formula>(.*?)<\/formula>/gs)].map(
      ([, id, formula = ""]) => [formula.replaceAll("&quot;", '"'), styles[Number(id)]?.[0] ?? ""],
    ),
  );
  expect(looks.get('LEFT(D4,2)="✓ "')).toMatch(/rgb="FF1B5E2B"/);
  expect(looks.get('LEFT(D4,2)="▲ "')).toMatch(/rgb="FF8A2A0B".*rgb="FFFDF0E1"/s);
});

test("a range is still a warning with its words", () => {
  const all = [...sheet().matchAll(/<dataValidation ([^>]*)>(.*?)<\/dataValidation>/gs)];
  const wall = all.find(([, told]) => told?.includes('sqref="B5"'));
  expect(wall?.[1]).toMatch(/errorStyle="warning"/);
  expect(wall?.[1]).toMatch(/type="decimal"/);
  expect(wall?.[1]).toContain('error="Wall outside of 0.02 to 0.5 in"');
  expect(wall?.[2]).toBe("<formula1>0.02</formula1><formula2>0.5</formula2>");
  const list = all.find(([, told]) => told?.includes('sqref="B10:B12"'));
  expect(list?.[1]).toMatch(/type="custom"/);
});

test("a cell kept as text shows and holds what was typed", () => {
  expect([opened?.shown("B10"), opened?.held("B10")?.t, opened?.held("B10")?.v]).toEqual(["1/2", "s", "1/2"]);
});
