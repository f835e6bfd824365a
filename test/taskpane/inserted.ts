/**
 * A workbook with a ready sheet inserted, kept in .cache by all that it is made from: inserting takes several times as long
 * as opening what was inserted, and hundreds of tests begin with it.
 */

import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import path from "node:path";

import { Model } from "@odoo/o-spreadsheet";

import type { Units } from "../../src/quantity";
import { BrowserHost } from "../../taskpane/hosts/browser/browser-host";
import { command } from "../../taskpane/hosts/browser/commands";
import type { Template } from "../../taskpane/sheets/sheet";

const KEPT = path.join(".cache", "inserted");
/** What writes a plan into a workbook. */
const WRITTEN_BY = ["taskpane/hosts", "taskpane/hosts/browser", "taskpane/sheets", "taskpane/files"];

let writers: string | undefined;

function writersMark(): string {
  const hash = createHash("sha256").update(readFileSync("package-lock.json"));
  for (const folder of WRITTEN_BY) {
    const files = readdirSync(folder).filter((file) => file.endsWith(".ts"));
    for (const file of files.sort()) hash.update(readFileSync(path.join(folder, file)));
  }
  return hash.digest("hex");
}

/** The engine's formulas and steps must be there already. */
export async function inserted(template: Template, units: Units): Promise<Model> {
  const plan = template.plan(units);
  writers ??= writersMark();
  const mark = createHash("sha256").update(writers).update(JSON.stringify(plan)).digest("hex").slice(0, 20);
  const file = path.join(KEPT, `${template.id}-${units}-${mark}.json`);
  if (!existsSync(file)) {
    const model = new Model({ version: "19.3.0", sheets: [{ id: "scratch", name: "Scratch" }] });
    await new BrowserHost(model).insert(plan);
    mkdirSync(KEPT, { recursive: true });
    // Another worker may be at the same.
    const part = `${file}.${String(process.pid)}`;
    writeFileSync(part, JSON.stringify(model.exportData()));
    renameSync(part, file);
  }
  const model = new Model(JSON.parse(readFileSync(file, "utf8")) as object);
  const { getters } = model;
  const sheetIdTo = getters.getSheetIds().find((id) => getters.getSheetName(id) === plan.title);
  command(model, "ACTIVATE_SHEET", { sheetIdFrom: getters.getActiveSheetId(), sheetIdTo });
  return model;
}
