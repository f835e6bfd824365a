/** Where a sheet goes on to another page, in the file as on the browser's paper. */

import { strFromU8, unzipSync } from "fflate";

import type { Units } from "../../src/quantity";
import { printedPages } from "../../taskpane/files/pages";
import { fileOf } from "../../taskpane/hosts/browser/save";
import { snapshotOf } from "../../taskpane/hosts/browser/engine-sheet";
import { placeOf } from "../../taskpane/sheets/addresses";
import { TEMPLATES } from "../../taskpane/sheets";
import { blocksAcross, pagesOf } from "../../taskpane/sheets/pages";
import type { Paper, SheetPlan, Template } from "../../taskpane/sheets/sheet";
import { openSheet } from "./open-sheet";

/** Rows of one height, with blocks that begin at these. */
function laid(rows: number, blocks: readonly number[], paper: Paper = "form"): Parameters<typeof pagesOf>[0] {
  return { widths: [20], heights: Array.from({ length: rows }, () => 20), blocks, paper };
}

describe("pages by hand", () => {
  /*
   * A form has 792 pt of Letter less 72 × (0.47 + 0.6) = 77.04 pt, and 97 % of the rest is 693.5 pt: 34 rows of 20 pt at full
   * size. At 73 %, the smallest, it is 693.5 / 0.73 = 950 pt: 47 rows. 20 characters of 5.25 pt are 105 pt.
   */
  const starts = (...of: Parameters<typeof laid>): readonly number[] => pagesOf(laid(...of)).starts;

  test("all on one page, at full size while it fits; at each side (612 − 105) / 2 / 72 = 3.52 in", () => {
    expect(pagesOf(laid(34, [5, 20]))).toEqual({ scale: 100, side: 3.52, starts: [] });
  });

  test("a row more is made a little smaller instead: 35 × 20 = 700 pt, 693.5 / 700 = 99.1 %", () => {
    expect(pagesOf(laid(35, [5, 20]))).toMatchObject({ scale: 99, starts: [] });
  });

  test("47 rows are the most of one page; the 48th takes the last block to another, at full size again", () => {
    expect(starts(47, [5, 20])).toEqual([]);
    expect(pagesOf(laid(48, [5, 20]))).toMatchObject({ scale: 100, starts: [20] });
  });

  test("a block begins at the headings that lie across the most of the sheet, whatever their order", () => {
    const [left, right] = [
      { row: 4, width: 4 },
      { row: 7, width: 4 },
    ];
    expect(blocksAcross([{ row: 12, width: 8 }, left, { row: 2, width: 8 }, right])).toEqual([2, 12]);
    expect(blocksAcross([right, left])).toEqual([4, 7]);
    expect(blocksAcross([])).toEqual([]);
  });

  test("a block is never parted while a page has room for it", () => {
    // 20 + 30 and 30 + 30 rows are more than 47; 30 + 10 are 800 pt, and 693.5 / 800 = 86.7 %.
    expect(pagesOf(laid(90, [20, 50, 80]))).toMatchObject({ scale: 86, starts: [20, 50] });
  });

  test("a block longer than a page goes on where it is", () => {
    expect(starts(100, [10])).toEqual([]);
  });

  test("a list goes on where it is, since its lines may part anywhere, and lies across", () => {
    // 97 % of 595 pt of A4 less 77.04 pt are 502.4 pt: 25 rows, and 34 at 73 %.
    expect(pagesOf({ ...laid(40, [5, 12], "list"), heading: 14 }).starts).toEqual([]);
    expect(starts(40, [5, 20], "list")).toEqual([20]);
  });

  test("a list below more than seven tenths of a page begins on the next: 25 rows of 34", () => {
    expect(pagesOf({ ...laid(60, [5, 25], "list"), heading: 27 }).starts).toEqual([25]);
  });

  test("what stands above the first block keeps a page of its own whole: 36 rows at 69 %, 502.4 / 720 = 69.8 %", () => {
    expect(pagesOf(laid(60, [36], "wide"))).toMatchObject({ scale: 69, starts: [36] });
    // A row more cannot be kept whole, and is no reason for small letters.
    expect(pagesOf(laid(60, [37], "wide"))).toMatchObject({ scale: 100, starts: [37] });
  });

  test("no wider than the paper: 120 characters, 630 pt, on 612 − 61.92 = 550.08 pt are 87.3 %", () => {
    const page = pagesOf({ ...laid(10, [5]), widths: [100, 20] });
    // (612 − 0.87 × 630) / 2 / 72 = 0.444 in.
    expect(page).toEqual({ scale: 87, side: 0.44, starts: [] });
    // 842 − 61.92 = 780.08 pt over 250 characters, 1312.5 pt, are 59.4 %: wide sheets may be smaller than the smallest.
    expect(pagesOf({ ...laid(10, [5], "list"), widths: [250] }).scale).toBe(59);
  });
});

const CASES = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as Units[]).map((units): [string, Template, Units] => [
    `${template.id} ${units}`,
    template,
    units,
  ]),
);

/** Rows, from 0, with which a block of the plan begins. */
function blocksOf({ cells }: SheetPlan): number[] {
  return cells.filter(({ look }) => look === "section").map(({ at }) => placeOf(at).row);
}

/** Points, common practice: the smallest letters that one reads at arm's length. */
const LEAST_TYPE = 7.5;
const ACROSS: readonly string[] = ["list", "wide"];
/** Letter and A4 as they lie or stand, points. */
const LETTER = { across: 792, upright: 612 } as const;
const A4 = { across: 842, upright: 595 } as const;

describe.each(CASES)("the file of %s", (_, template, units) => {
  let sheet: string;
  let workbook: string;
  let starts: readonly number[];
  const plan = template.plan(units);
  beforeAll(async () => {
    const { model } = await openSheet(template, units);
    const parts = unzipSync(await fileOf(model));
    const part = (path: string): string => strFromU8(parts[path] ?? new Uint8Array());
    [sheet, workbook] = [part("xl/worksheets/sheet1.xml"), part("xl/workbook.xml")];
    starts = printedPages(snapshotOf(model, model.getters.getActiveSheetId()))?.starts ?? [];
  });

  test("breaks between blocks and nowhere else, where the browser's print does", () => {
    // The number of the row above the break, from 1, is that of the row below it, from 0.
    const breaks = [...sheet.matchAll(/<brk id="(\d+)"[^>]* man="1"\/>/g)].map(([, row]) => Number(row));
    expect(breaks).toEqual(starts);
    for (const row of breaks) expect(blocksOf(plan)).toContain(row);
    if (plan.print.paper === "form") expect(breaks.length).toBeLessThanOrEqual(2);
  });

  test("is fitted to a width at which letters of 11 points have 7.5 or more, on A4 and on Letter", () => {
    const left = Number(/<pageMargins left="([\d.]+)" right="\1" top="0.47" bottom="0.6"/.exec(sheet)?.[1]);
    const scale = Number(/<pageSetup [^>]*scale="(\d+)"/.exec(sheet)?.[1]);
    const lies = ACROSS.includes(plan.print.paper) ? "across" : "upright";
    // What is left between the margins of the paper it is made for, over the width of the sheet, is that scale.
    const [, last = ""] = plan.print.area.split(":");
    const printed = plan.widths.slice(0, placeOf(last).column + 1).reduce((sum, one) => sum + one, 0);
    const fitted = (paper: number): number => (paper - 144 * left) / (5.25 * printed);
    expect(Math.abs(100 * fitted(lies === "across" ? A4.across : LETTER.upright) - scale)).toBeLessThan(1);
    for (const paper of [LETTER, A4]) expect(11 * fitted(paper[lies])).toBeGreaterThanOrEqual(LEAST_TYPE);
  });

  test("repeats the heading of a list on every page, and of nothing else", () => {
    const titles = /<definedName name="_xlnm\.Print_Titles" localSheetId="0">([^<]*)</.exec(workbook)?.[1];
    const list = plan.print.paper === "list";
    const heading = list
      ? plan.names.find(({ name }) => name === "list_ods" || name === "log_joint")
      : undefined;
    const row = heading === undefined ? "" : String(placeOf(heading.at.replace(/:.*/, "")).row + 1);
    expect(titles).toBe(heading === undefined ? undefined : `'${plan.title}'!$${row}:$${row}`);
    expect(workbook.match(/Print_Titles/g)?.length ?? 0).toBe(heading === undefined ? 0 : 1);
  });
});
