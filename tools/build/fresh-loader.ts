/** A webpack loader for taskpane/hosts/browser/fresh-data.ts alone: the workbook that a newcomer starts with, made once. */

import { readFileSync } from "node:fs";
import path from "node:path";

import type { LoaderContext } from "webpack";

import { formulaById } from "../../functions/catalogue";
import { NAMESPACE } from "../../functions/namespace";
import type { FunctionDefinition } from "../../taskpane/hosts/browser/functions-host";
import { provideCellHost } from "./cell-host";
import { generated } from "./project";
import { quietly } from "./quietly";

export default async function loader(this: LoaderContext<unknown>): Promise<string> {
  // It depends on the sheet and on all that writes it, which are other files.
  this.cacheable(false);
  provideCellHost();
  const { functions } = JSON.parse(readFileSync(path.join(generated, "functions.json"), "utf8")) as {
    functions: FunctionDefinition[];
  };
  // The engine takes a second to load, which no other bundle should wait for.
  const { registerFormulas } = await import("../../taskpane/hosts/browser/functions-host");
  const { writtenWorkbook } = await import("../../taskpane/hosts/browser/fresh");
  registerFormulas(NAMESPACE, functions, formulaById);
  const data = withoutChance(JSON.stringify(await quietly(writtenWorkbook)));
  return `export const FRESH = ${JSON.stringify(data)};\n`;
}

/** Ids that the engine makes up, and the time in those of the sheets. */
const MADE_UP = /[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}|\bringbead-\d+-\d{13}\b/g;

/** The same with ids that are the same in every build: a version is one set of files. */
export function withoutChance(text: string): string {
  const ids = new Map<string, string>();
  return text.replace(MADE_UP, (id) => {
    const one = ids.get(id) ?? `fresh-${String(ids.size + 1)}`;
    ids.set(id, one);
    return one;
  });
}
