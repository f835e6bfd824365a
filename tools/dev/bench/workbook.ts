import { Model } from "@odoo/o-spreadsheet";

import { BrowserHost } from "../../../taskpane/hosts/browser/browser-host";
import { fileOf } from "../../../taskpane/hosts/browser/save";
import { emptyWorkbook } from "../../../taskpane/hosts/browser/fresh";
import { ENGINE_VERSION } from "../../../taskpane/hosts/browser/workbook/engine-version";
import { TEMPLATES } from "../../../taskpane/sheets";
import { procedure } from "../../../taskpane/sheets/procedure";
import type { Row } from "./measure";
import { median, short } from "./measure";

/** Sheets in the workbook when one more is inserted. */
const SHEETS = [1, 2, 4, 8, 16] as const;
const ROUNDS = 3;
/** Rows of eight filled cells. */
const LENGTHS = [500, 1000, 2000, 4000, 8000] as const;

export async function insertRows(): Promise<Row[]> {
  const times = SHEETS.map((): number[] => []);
  for (let round = 0; round < ROUNDS; round += 1) {
    const host = new BrowserHost(emptyWorkbook());
    for (let sheets = 1; sheets <= Math.max(...SHEETS); sheets += 1) {
      const start = performance.now();
      await host.insert(procedure.plan("US"));
      times[SHEETS.findIndex((one) => one === sheets)]?.push(performance.now() - start);
    }
  }
  const all = times.map(median);
  return SHEETS.map((sheets, i) => ({
    "procedure sheets, with this one": sheets,
    ms: short(all[i] ?? NaN),
    "against the second": short((all[i] ?? NaN) / (all[1] ?? NaN)),
  }));
}

/** Each ready sheet into an empty workbook, when its code has been compiled. */
export async function insertEachRows(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const template of TEMPLATES) {
    const plan = template.plan("US");
    const times: number[] = [];
    for (let round = 0; round <= ROUNDS; round += 1) {
      const host = new BrowserHost(emptyWorkbook());
      const start = performance.now();
      await host.insert(plan);
      if (round > 0) times.push(performance.now() - start);
    }
    rows.push({ sheet: template.title, cells: plan.cells.length, ms: short(median(times)) });
  }
  return rows;
}

export async function saveRows(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const length of LENGTHS) {
    const model = longSheet(length);
    const times: number[] = [];
    for (let round = 0; round <= ROUNDS; round += 1) {
      const start = performance.now();
      await fileOf(model);
      if (round > 0) times.push(performance.now() - start);
    }
    const ms = median(times);
    rows.push({ rows: length, ms: short(ms), "µs a row": short((1000 * ms) / length) });
  }
  return rows;
}

function longSheet(length: number): Model {
  const cells = Array.from({ length }, (_, row) =>
    Array.from({ length: 8 }, (_cell, column): [string, string] => [
      `${String.fromCharCode(65 + column)}${String(row + 1)}`,
      column === 7 ? `=A${String(row + 1)}+1` : String(row * column),
    ]),
  ).flat();
  return new Model({
    version: ENGINE_VERSION,
    sheets: [
      { id: "long", name: "Long", colNumber: 12, rowNumber: length, cells: Object.fromEntries(cells) },
    ],
  });
}
