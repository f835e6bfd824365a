/** Files of all templates, computed without a page. */

import { Model } from "@odoo/o-spreadsheet";

import type { Units } from "../../../src/quantity";
import { BrowserHost } from "./browser-host";
import { command } from "./commands";
import { TEMPLATES } from "../../sheets";
import type { Formula, FunctionDefinition } from "./functions-host";
import { registerFormulas } from "./functions-host";
import { fileOf } from "./save";
import { ENGINE_VERSION } from "./workbook/engine-version";

const SYSTEMS: readonly Units[] = ["US", "SI"];

export interface TemplateFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export async function templateFiles(
  namespace: string,
  definitions: readonly FunctionDefinition[],
  formulaOf: (id: string) => Formula | undefined,
): Promise<TemplateFile[]> {
  registerFormulas(namespace, definitions, formulaOf);
  const files: TemplateFile[] = [];
  for (const template of TEMPLATES) {
    for (const units of SYSTEMS) {
      const model = new Model({ version: ENGINE_VERSION, sheets: [{ id: "scratch", name: "Scratch" }] });
      await new BrowserHost(model).insert(template.plan(units));
      command(model, "DELETE_SHEET", { sheetId: "scratch", sheetName: "Scratch" });
      files.push({ name: `${template.id}-${units}.xlsx`, bytes: await fileOf(model) });
    }
  }
  return files;
}
