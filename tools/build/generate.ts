/** Writes what the sources import from generated/, from the records: help.json and functions.json. */

import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { FORMULAS, VERSION } from "../../functions/catalogue";
import type { FullHelp } from "../../functions/help";
import { HELP } from "../../functions/help";
import type { Formula } from "../../functions/formula";
import { NAMESPACE } from "../../functions/namespace";
import { DEVELOPMENT_URL, generated } from "./project";
import type { Told } from "./record-errors";
import { recordErrors } from "./record-errors";
import type { Definition, Twin } from "./twin";
import { readTwins } from "./twin";

export interface Generated {
  readonly help: {
    readonly namespace: string;
    readonly version: string;
    readonly formulas: readonly FullHelp[];
  };
  /** Of the tool's answer only the functions go on: a flag that it always adds crashes Office LTSC 2021. */
  readonly functionsJson: { readonly functions: readonly Definition[] };
}

/** Each record with its help. */
export function tellRecords(): (Told & { readonly formula: Formula })[] {
  return FORMULAS.map((formula, i) => ({ formula, help: helpAt(i) }));
}

/** Throws where anything is wrong with a record. */
export async function generate(url = DEVELOPMENT_URL): Promise<Generated> {
  const errors = recordErrors(tellRecords());
  if (errors.length > 0)
    throw new Error(`The records in functions/ are not right:\n  ${errors.join("\n  ")}`);
  return writeGenerated(url);
}

/**
 * The same for tests, which tell themselves what is wrong with a record. Files that are right are left alone, so that
 * nothing that watches them wakes up.
 */
export async function writeGenerated(url = DEVELOPMENT_URL): Promise<Generated> {
  const twins = tellRecords().map(({ formula, help }): Twin => ({ help, type: formula.gives.type }));
  mkdirSync(generated, { recursive: true });
  const definitions = await readTwins(twins, path.join(generated, "twin.ts"));
  const functions = definitions.map((one) => ({ ...one, helpUrl: `${url}/help.html#${one.id}` }));
  const made = {
    help: { namespace: NAMESPACE, version: VERSION, formulas: HELP },
    functionsJson: { functions },
  };
  writeIfChanged("help.json", made.help);
  writeIfChanged("functions.json", made.functionsJson);
  return made;
}

function helpAt(place: number): FullHelp {
  const help = HELP[place];
  if (help === undefined) throw new Error("a formula without help");
  return help;
}

function writeIfChanged(name: string, content: object): void {
  const [file, text] = [path.join(generated, name), `${JSON.stringify(content, null, 1)}\n`];
  if (existsSync(file) && readFileSync(file, "utf8") === text) return;
  writeFileSync(file, text);
}
