/** Every template, worked in hosts that hand a blank cell over as 0, as null and as "". */

import { formulaById } from "../../functions/catalogue";
import functionsJson from "../../generated/functions.json";
import type { Units } from "../../src/quantity";
import { registerFormulas } from "../../taskpane/hosts/browser/functions-host";
import { placeOf } from "../../taskpane/hosts/addresses";
import { TEMPLATES } from "../../taskpane/sheets";
import type { Template } from "../../taskpane/sheets/sheet";
import type { OpenSheet } from "../taskpane/open-sheet";
import { openSheet } from "../taskpane/open-sheet";
import type { BlankAs } from "./host-model";
import { BLANKS } from "./host-model";

let blank: BlankAs = null;

/** What the engine hands over as null is a blank cell; what is omitted it does not hand over. */
function filled(cell: unknown): unknown {
  if (Array.isArray(cell)) return cell.map(filled);
  return cell === null ? blank : (cell ?? null);
}

beforeAll(() => {
  // Before any sheet is opened: what is registered first stays.
  registerFormulas("BEAD", functionsJson.functions, (id) => {
    const formula = formulaById(id);
    return formula === undefined ? undefined : (...cells) => formula(...cells.map(filled));
  });
});

/** What every cell of the sheet being shown holds. */
function values({ model }: OpenSheet): Map<string, unknown> {
  const sheetId = model.getters.getActiveSheetId();
  return new Map(
    model.getters.getEvaluatedCellsPositions(sheetId).map((at) => {
      const { value } = model.getters.getEvaluatedCell(at);
      return [`${String(at.col)},${String(at.row)}`, value ?? ""] as const;
    }),
  );
}

async function inEachHost<Result>(work: () => Promise<Result>): Promise<Result[]> {
  const results: Result[] = [];
  for (blank of BLANKS) results.push(await work());
  return results;
}

const CASES = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as Units[]).map((units): [string, Template, Units] => [
    `${template.id} ${units}`,
    template,
    units,
  ]),
);

test.each(CASES)("%s gives the same values in all three", async (_, template, units) => {
  const [zero, ...others] = await inEachHost(async () => values(await openSheet(template, units)));
  expect(zero?.size).toBeGreaterThan(50);
  for (const other of others) expect([...other]).toEqual([...(zero ?? [])]);
});

describe.each(TEMPLATES.map((template) => [template.id, template] as const))("%s", (_, template) => {
  const plan = template.plan("US");
  const typed = plan.names.filter(({ at, input }) => {
    const content = plan.cells.find((cell) => cell.at === at)?.content;
    return input && content !== "";
  });

  test("a typed cell that is emptied never gives one number here and another there", async () => {
    const hosts = await inEachHost(async () => {
      const sheet = await openSheet(template, "US");
      return typed.map(({ name, at }) => {
        const content = String(plan.cells.find((cell) => cell.at === at)?.content);
        sheet.type(name, "");
        const emptied = values(sheet);
        sheet.type(name, content);
        return [name, emptied] as const;
      });
    });
    const differing: string[] = [];
    typed.forEach(({ name }, i) => {
      const [first = new Map<string, unknown>(), ...others] = hosts.map((all) => all[i]?.[1]);
      for (const [at, value] of first) {
        for (const other of others) {
          const there = other?.get(at);
          if (typeof value === "number" && typeof there === "number" && value !== there) {
            differing.push(`${name} emptied: ${at} is ${String(value)} or ${String(there)}`);
          }
        }
      }
    });
    expect(differing).toEqual([]);
  });

  test("every typed cell is a place in the plan", () => {
    expect(typed.length).toBeGreaterThan(3);
    for (const { at } of typed) expect(placeOf(at.replace(/:.*$/, "")).row).toBeGreaterThan(0);
  });
});
