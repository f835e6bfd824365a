/** Names of a chart's points in a file: out of cells, kept through opening and saving, gone where a chart has none. */

import { Model } from "@odoo/o-spreadsheet";
import { strFromU8, unzipSync } from "fflate";

import { withPointNames } from "../../taskpane/files/point-names";
import { snapshotOf } from "../../taskpane/hosts/browser/engine-sheet";
import { opened } from "../../taskpane/hosts/browser/open-workbook";
import { fileOf } from "../../taskpane/hosts/browser/save";
import { coupons } from "../../taskpane/sheets/coupons";
import { cycle } from "../../taskpane/sheets/cycle";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

const SERIES =
  '<c:ser><c:dLbls><c:showVal val="1"/><c:separator>KEY</c:separator></c:dLbls><c:yVal/></c:ser><c:ser><c:yVal/></c:ser>';
const NAMES = new Map([["KEY", { cells: "'A & B'!$D$2:$D$4", names: ["1", "", "<b>$1"] }]]);

test("the series that asks for names gets them, and no other", () => {
  const [first = "", second = ""] = withPointNames(SERIES, NAMES).split(/(?<=<\/c:ser>)/);
  expect(second).toBe("<c:ser><c:yVal/></c:ser>");
  expect(first).toContain("<c15:f>'A &#38; B'!$D$2:$D$4</c15:f><c15:dlblRangeCache><c:ptCount val=\"3\"/>");
  expect(first).toContain('<c:pt idx="0"><c:v>1</c:v></c:pt><c:pt idx="2"><c:v>&#60;b&#62;$1</c:v></c:pt>');
  // A label of its own for each point that has a name; none shows a value.
  expect([...first.matchAll(/<c:dLbl><c:idx val="(\d)"\/>/g)].map(([, idx]) => idx)).toEqual(["0", "2"]);
  expect(first).not.toContain('<c:showVal val="1"/>');
  expect(first).not.toContain("KEY");
  // The series' extensions are its last part.
  expect(first).toMatch(/<c:yVal\/><c:extLst>.*<\/c:extLst><\/c:ser>$/);
});

test("labels that ask for no names stay as they are", () => {
  expect(withPointNames(SERIES, new Map())).toBe(SERIES);
});

async function chartXml({ model }: OpenSheet): Promise<string> {
  return strFromU8(unzipSync(await fileOf(model))["xl/charts/chart1.xml"] ?? new Uint8Array());
}

test("dots of coupons have the coupons' numbers, and the outlier a diamond", async () => {
  const open = await openSheet(coupons, "US");
  open.typeBeside("coupon_table", -5, 3, "42");
  const xml = await chartXml(open);
  const names = [...xml.matchAll(/<c:pt idx="\d+"><c:v>([^<]*)<\/c:v>/g)].map(([, name]) => name);
  expect(names.sort()).toEqual(["1", "2", "3", "4", "5", "6"]);
  expect(xml.match(/datalabelsRange>/g)).toHaveLength(2);
  const markers = [...xml.matchAll(/<c:marker><c:symbol val="(\w+)"\/>/g)].map(([, symbol]) => symbol);
  expect(markers).toEqual(["circle", "none", "none", "none", "diamond"]);
});

test("read back, the chart is the same", async () => {
  const { model } = await openSheet(coupons, "SI");
  const { data } = await opened(await fileOf(model), "coupons.xlsx");
  const again = new Model(data);
  const chartOf = (one: Model): unknown => {
    const id = one.getters.getSheetIds().find((sheet) => one.getters.getSheetName(sheet) === "Coupons") ?? "";
    return snapshotOf(one, id).charts;
  };
  expect(chartOf(again)).toEqual(chartOf(model));
  expect(chartOf(again)).toMatchObject([{ dots: [0, 4], marked: [4], named: [0] }]);
});

test("a chart whose points have no names has no labels", async () => {
  expect(await chartXml(await openSheet(cycle, "US"))).not.toContain("dLbl");
});
