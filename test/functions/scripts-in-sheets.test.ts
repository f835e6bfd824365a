/**
 * The formulas that the ready sheets write, computed by the scripts for other spreadsheets: each call that a sheet makes, with
 * the values of its cells, and each cell that is one call of ours, compared with what the browser sheet shows there.
 */

import { formulaById } from "../../functions/catalogue";
import functionsJson from "../../generated/functions.json";
import type { Units } from "../../src/quantity";
import { placeOf } from "../../taskpane/sheets/addresses";
import { registerFormulas } from "../../taskpane/hosts/browser/functions-host";
import type { Argument } from "../../taskpane/hosts/excel/call";
import { parseCall } from "../../taskpane/hosts/excel/call";
import { TEMPLATES } from "../../taskpane/sheets";
import type { Template } from "../../taskpane/sheets/sheet";
import { formulasOf } from "../taskpane/graph";
import type { OpenSheet } from "../taskpane/open-sheet";
import { openSheet } from "../taskpane/open-sheet";
import { builtScripts } from "../tools/built-scripts";
import type { Given, ScriptHost, Shown } from "../tools/script-hosts";
import { BLANK, googleSheets, javascriptMacros } from "../tools/script-hosts";

const built = builtScripts();
const HOSTS: readonly ScriptHost[] = [
  googleSheets(built["google-sheets.js"]),
  javascriptMacros(built["javascript-macros.js"]),
];
const USUAL = { omitted: undefined, blank: "" } as const;

interface Made {
  readonly id: string;
  readonly cells: readonly unknown[];
  readonly outcome: Outcome;
}
type Outcome = { readonly answer: unknown } | { readonly refusal: string };

/** What the engine called since it was emptied, each call once. */
const made = new Map<string, Made>();

function recorded(id: string): ((...cells: unknown[]) => unknown) | undefined {
  const formula = formulaById(id);
  if (formula === undefined) return undefined;
  return (...cells) => {
    try {
      const answer = formula(...cells);
      made.set(JSON.stringify([id, cells]), { id, cells, outcome: { answer } });
      return answer;
    } catch (problem) {
      made.set(JSON.stringify([id, cells]), { id, cells, outcome: { refusal: (problem as Error).message } });
      throw problem;
    }
  };
}

beforeAll(() => {
  // Before any sheet is opened: what is registered first stays.
  registerFormulas("BEAD", functionsJson.functions, recorded);
});

/** The cells of a call as they stand in a formula of the script: those that repeat one by one. */
function asGiven({ id, cells }: Made): Given[] {
  const repeats = functionsJson.functions
    .find((one) => one.id === id)
    ?.parameters.findIndex((one) => "repeating" in one && one.repeating);
  const all =
    repeats === undefined || repeats < 0
      ? cells
      : [...cells.slice(0, repeats), ...(cells[repeats] as unknown[])];
  return all.map((cell) => given(cell));
}

function given(cell: unknown): Given {
  if (Array.isArray(cell))
    return (cell as unknown[][]).map((row) => row.map((one) => (one ?? BLANK) as string));
  return cell === null ? BLANK : cell;
}

function expectOutcome(shown: Shown, outcome: Outcome): void {
  if ("refusal" in outcome) expect("error" in shown && shown.message).toBe(outcome.refusal);
  else if ("error" in shown) throw new Error(`refused: ${shown.message}`);
  else expectNear(shown.value, outcome.answer);
}

/** Texts alike, numbers to 1e-12. */
function expectNear(shown: unknown, expected: unknown): void {
  if (Array.isArray(expected)) {
    expect(Array.isArray(shown) && shown.length).toBe(expected.length);
    expected.forEach((one: unknown, i) => {
      expectNear((shown as unknown[])[i], one);
    });
  } else if (typeof expected === "number" && typeof shown === "number") {
    expect(Math.abs(shown - expected)).toBeLessThanOrEqual(1e-12 * Math.abs(expected));
  } else expect(shown).toBe(expected);
}

/** What an argument of a call in a cell is, by the values that the sheet shows. */
function valueOf({ model }: OpenSheet, argument: Argument): Given {
  if (argument.kind === "constant") return argument.value ?? undefined;
  if (argument.kind === "array") return argument.rows.map((row) => row.map((cell) => cell ?? BLANK));
  const [first = "", last = first] = argument.address.split(":");
  const [from, to] = [placeOf(first), placeOf(last)];
  const sheetId = model.getters.getActiveSheetId();
  const rows = Array.from({ length: to.row - from.row + 1 }, (_, r) =>
    Array.from({ length: to.column - from.column + 1 }, (__, c) => {
      const { value } = model.getters.getEvaluatedCell({ sheetId, col: from.column + c, row: from.row + r });
      return value === null || value === "" ? BLANK : value;
    }),
  );
  return argument.address.includes(":") ? rows : rows[0]?.[0];
}

/** What the cell of a formula shows, and those that its answer fills. */
function shownAt({ model }: OpenSheet, at: string): unknown {
  const sheetId = model.getters.getActiveSheetId();
  const { column, row } = placeOf(at);
  const zone = model.getters.getSpreadZone({ sheetId, col: column, row });
  const valueAt = (col: number, line: number): unknown =>
    model.getters.getEvaluatedCell({ sheetId, col, row: line }).value ?? "";
  if (zone === undefined) return valueAt(column, row);
  return Array.from({ length: zone.bottom - zone.top + 1 }, (_, r) =>
    Array.from({ length: zone.right - zone.left + 1 }, (__, c) => valueAt(zone.left + c, zone.top + r)),
  );
}

const CASES = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as Units[]).map((units): [string, Template, Units] => [
    `${template.id} ${units}`,
    template,
    units,
  ]),
);

test.each(CASES)(
  "%s: every call of the sheet has the same outcome in both scripts",
  async (_, template, units) => {
    made.clear();
    const sheet = await openSheet(template, units);
    expect(made.size).toBeGreaterThan(0);
    for (const call of made.values()) {
      for (const host of HOSTS)
        expectOutcome(host.call(`BEAD_${call.id}`, asGiven(call), USUAL), call.outcome);
    }
    const single = [...formulasOf(template.plan(units))].flatMap(([at, formula]) => {
      const call = parseCall(formula);
      return call === undefined ? [] : [{ at, call }];
    });
    expect(single.length).toBeGreaterThan(0);
    for (const { at, call } of single) {
      const cells = call.args.map((argument) => valueOf(sheet, argument));
      for (const host of HOSTS) {
        const shown = host.call(`BEAD_${call.id}`, cells, USUAL);
        const there = shownAt(sheet, at);
        if ("error" in shown) expect([at, there]).toEqual([at, expect.stringMatching(/^#(VALUE!|N\/A)$/)]);
        else expectNear(shown.value, Array.isArray(shown.value) && !Array.isArray(there) ? [[there]] : there);
      }
    }
  },
);
