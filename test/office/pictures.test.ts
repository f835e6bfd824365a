/**
 * The pictures of the joint in a spreadsheet that has no add-in: read as shapes, kept when it saves, printed with the
 * release. And the names of a chart's points.
 */

import { AS_STORED } from "../../taskpane/files/drawn-pictures";
import { fileOf } from "../../taskpane/hosts/browser/save";
import { coupons } from "../../taskpane/sheets/coupons";
import { procedure } from "../../taskpane/sheets/procedure";
import { openSheet } from "../taskpane/open-sheet";
import type { Opened, Printed } from "./open-file";
import { openFiles, printed } from "./open-file";

const WORDS = ["electrode 1.000 mm", "start, overlap 20°", "oxygen, ppm", "target 50 ppm", "purge time, s"];

let saved: Opened | undefined;
let chart: Opened | undefined;
let paper: Printed | undefined;
beforeAll(async () => {
  const file = new Map([["joint", await fileOf((await openSheet(procedure, "SI")).model)]]);
  const shop = await openSheet(coupons, "US");
  shop.typeBeside("coupon_table", -5, 3, "42");
  const all = openFiles(new Map([...file, ["shop", await fileOf(shop.model)]]));
  [saved, chart] = [all.get("joint"), all.get("shop")];
  paper = printed(file).get("joint");
});

test("three groups, named, with the words in them", () => {
  const drawing = saved?.part("xl/drawings/drawing1.xml") ?? "";
  const named = [...drawing.matchAll(/<xdr:nvGrpSpPr><xdr:cNvPr [^>]*name="([^"]*)"/g)].map(
    ([, name]) => name,
  );
  expect(named).toEqual([
    expect.stringMatching(/^Melts through all around/),
    expect.stringMatching(/^The last quarter needs /),
    expect.stringMatching(/^Down to 50 ppm after /),
  ]);
  const words = [...drawing.matchAll(/<a:t>([^<]*)<\/a:t>/g)].map(([, text]) => text);
  for (const text of [...WORDS, AS_STORED]) expect(words).toContain(text);
});

test("they are printed on the last page, below the release, and on no other", () => {
  expect(paper?.pages).toBe(3);
  if (paper?.words === undefined) {
    console.warn("NOT CHECKED: the words of the pictures in print; this machine has no pdftotext");
    return;
  }
  const [first = "", second = "", last = ""] = paper.words;
  for (const text of WORDS) {
    expect(last.indexOf(text)).toBeGreaterThan(last.indexOf("Signature, date"));
    expect(first + second).not.toContain(text);
  }
  expect(last).toContain(AS_STORED);
});

test("of the coupons' chart each dot has its name out of a cell, and the outlier its mark", () => {
  // It counts on from the charts of the file before.
  const xml = [1, 2, 3, 4].map((n) => chart?.part(`xl/charts/chart${String(n)}.xml`) ?? "").join("");
  expect(xml.match(/type="CELLRANGE"/g)).toHaveLength(6);
  expect(xml).toMatch(/<c15:datalabelsRange><c15:f>(?:&apos;|')?Coupons(?:&apos;|')?!\$D\$\d+:\$D\$\d+</);
  expect(xml.match(/<c:symbol val="diamond"\/>/g)).toHaveLength(1);
});
