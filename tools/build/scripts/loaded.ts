/** The functions of a built script, loaded as its host loads it: in a context that has the language and nothing else. */

import vm from "node:vm";

import type { CellFunction } from "../cell-host";
import { scriptName } from "./inside";

/** The functions at the top of a script for Google Sheets, by the ids of their formulas. */
export function googleSheetsFunctions(script: string): ReadonlyMap<string, CellFunction> {
  const context = vm.createContext({});
  vm.runInContext(script, context);
  return byId(Object.entries(context));
}

/** What a script of macros hands to the host, by the ids of their formulas. */
export function javascriptMacrosFunctions(script: string): ReadonlyMap<string, CellFunction> {
  const added: [string, unknown][] = [];
  const AddCustomFunction = (one: CellFunction): void => {
    added.push([one.name, one]);
  };
  vm.runInContext(script, vm.createContext({ Api: { AddCustomFunction } }));
  return byId(added);
}

function byId(named: readonly (readonly [string, unknown])[]): ReadonlyMap<string, CellFunction> {
  const prefix = scriptName("");
  return new Map(
    named
      .filter(([name]) => name.startsWith(prefix))
      .map(([name, one]) => [name.slice(prefix.length), one as CellFunction]),
  );
}
