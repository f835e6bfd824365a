/**
 * Small models of the two hosts that the scripts are pasted into: what each hands a function for what stands in a formula,
 * and what it makes of the answer. They keep what the hosts' guides say; where a guide leaves something open, such as what an
 * argument between two commas arrives as, a test tries every way. Neither is the host itself.
 */

import vm from "node:vm";

/** A cell with nothing in it. */
export const BLANK: unique symbol = Symbol("blank cell");

type Cell = string | number | boolean | Date | null | object | typeof BLANK;
/** One argument as it stands in a formula: a cell or a typed value, a range, undefined where nothing stands. */
export type Given = Cell | readonly (readonly Cell[])[] | undefined;

/** What a guide leaves open. */
export interface Open {
  /** An argument omitted between two commas. */
  readonly omitted: undefined | null | "";
  /** A blank cell. */
  readonly blank: undefined | null | "";
  /** A range of one cell arrives as rows; else as the cell. */
  readonly oneCellAsRows?: boolean;
}

/** What the cell shows, with the words that the host shows beside an error. */
export type Shown = { readonly value: unknown } | { readonly error: string; readonly message: string };

export interface ScriptHost {
  /** Names of the formulas that the host offers. */
  readonly names: readonly string[];
  readonly call: (name: string, given: readonly Given[], open: Open) => Shown;
}

/** What neither host has, or what a script that is to run in both may not rely on. */
const MISSING = [
  ...[
    "window",
    "self",
    "document",
    "navigator",
    "localStorage",
    "location",
    "performance",
    "console",
    "crypto",
  ],
  ...["process", "require", "module", "exports", "fetch", "setTimeout", "setInterval", "queueMicrotask"],
  ...["CustomFunctions", "Office", "OfficeRuntime", "Intl", "WebAssembly", "XMLHttpRequest"],
];

type Called = (this: unknown, ...cells: unknown[]) => unknown;

/** Looked up in a context of its own, a name of the language takes several times as long as what it does. */
const QUICK = "const {Array,Error,Map,Math,Number,Object,Set,String}=globalThis;";

/** Runs a script where a look at anything that is not of the language ends it. */
function run(script: string, globals: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const context = vm.createContext({ ...globals });
  for (const name of MISSING) {
    Object.defineProperty(context, name, {
      get: () => {
        throw new Error(`the script looks for ${name}`);
      },
    });
  }
  vm.runInContext(`${QUICK}${script}`, context);
  return context;
}

/** Google Sheets: the functions at the top of the file with `@customfunction`, and none whose name ends in "_". */
export function googleSheets(script: string): ScriptHost {
  const context = run(script, {});
  const tagged = [...script.matchAll(/\/\*\*(.*?)\*\/\s*function (\w+)\(/gs)]
    .filter(([, comment = "", name = ""]) => comment.includes("@customfunction") && !name.endsWith("_"))
    .map(([, , name = ""]) => name);
  const functions = new Map(tagged.map((name) => [name, context[name] as Called]));
  return {
    names: tagged,
    call: (name, given, open) => {
      let end = given.length;
      while (end > 0 && given[end - 1] === undefined) end -= 1;
      const cells = given.slice(0, end).map((one) => {
        const rows = rowsOf(one, open);
        return rows === undefined ? open.omitted : handed(rows, one, open);
      });
      return shown("#ERROR!", () => functions.get(name)?.(...cells));
    },
  };
}

interface Registered {
  readonly called: Called;
  readonly types: readonly string[];
}

const TYPES = ["number", "string", "boolean", "any"].flatMap((type) => [type, `${type}[][]`]);

/**
 * An office suite whose macros are JavaScript: what a script adds, each with the comment right before it. A function without
 * one, with an argument of a type that is none of the host's or that the comment does not tell, and one without `@returns`
 * is not registered.
 */
export function javascriptMacros(script: string): ScriptHost {
  const functions = new Map<string, Registered>();
  const told = [
    ...script.matchAll(/\/\*\*((?:(?!\*\/).)*)\*\/\s*Api\.AddCustomFunction\(function (\w+)\(([^)]*)\)/gs),
  ];
  let added = 0;
  const AddCustomFunction = (called: Called): void => {
    const [, comment = "", name, parameters = ""] = told[added] ?? [];
    added += 1;
    if (name !== called.name || !/@customfunction$/m.test(comment)) return;
    const types = [...comment.matchAll(/@param \{([^}]*)\} (?:\[(\w+)\]|(\w+)) \S/g)];
    const returns = /@returns \{([^}]*)\}/.exec(comment)?.[1] ?? "";
    const named = types.map(([, , optional, required]) => optional ?? required).join(", ");
    if (
      named !== parameters ||
      ![...types.map(([, type = ""]) => type), returns].every((type) => TYPES.includes(type))
    )
      return;
    functions.set(called.name, { called, types: types.map(([, type = ""]) => type) });
  };
  run(script, { Api: { AddCustomFunction } });
  return {
    names: [...functions.keys()],
    call: (name, given, open) => {
      const { called, types = [] } = functions.get(name) ?? {};
      const cells = types.map((type, i) => {
        const rows = rowsOf(given[i], open);
        if (rows === undefined) return i < given.length ? open.omitted : undefined;
        return type.endsWith("[][]") ? rows : handed(rows, given[i], open);
      });
      if (given.length > types.length) return { error: "#VALUE!", message: "too many arguments" };
      // In the host `this` tells where the call stands.
      return shown("#VALUE!", () => called?.call({ address: "A1", args: [] }, ...cells));
    },
  };
}

/** A cell for itself, and a range of one too unless that stays one. */
function handed(rows: unknown[][], given: Given, { oneCellAsRows = false }: Open): unknown {
  const isOne = rows.length === 1 && rows[0]?.length === 1;
  return isOne && !(oneCellAsRows && Array.isArray(given)) ? rows[0]?.[0] : rows;
}

function rowsOf(given: Given, { blank }: Open): unknown[][] | undefined {
  if (given === undefined) return undefined;
  const rows = Array.isArray(given) ? (given as readonly (readonly Cell[])[]) : [[given]];
  return rows.map((row) => row.map((cell) => (cell === BLANK ? blank : cell)));
}

/** An answer of another context, cell by cell; one that a host would show otherwise than it is breaks the test. */
function shown(error: string, work: () => unknown): Shown {
  let value: unknown;
  try {
    value = work();
  } catch (problem) {
    return { error, message: (problem as Error).message };
  }
  if (!Array.isArray(value)) return { value: cellShown(value) };
  const rows = Array.from(value as unknown[][], (row) => Array.from(row, cellShown));
  if (new Set(rows.map(({ length }) => length)).size !== 1) throw new Error("the rows are not of one length");
  return { value: rows };
}

function cellShown(value: unknown): unknown {
  const isPlain = typeof value === "string" || typeof value === "boolean" || Number.isFinite(value);
  if (!isPlain) throw new Error(`no cell can show ${String(value)}`);
  return value;
}
