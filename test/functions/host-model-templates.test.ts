/** Every template, worked in hosts that hand a blank cell over as 0, as null and as "". */

import { formulaById } from "../../functions/catalogue";
import functionsJson from "../../generated/functions.json";
import type { Units } from "../../src/quantity";
import { registerFormulas } from "../../taskpane/hosts/browser/functions-host";
import { placeOf } from "../../taskpane/sheets/addresses";
import { TEMPLATES } from "../../taskpane/sheets";
import type { Template } from "../../taskpane/sheets/sheet";
import { addressesIn } from "../../taskpane/sheets/watched";
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
  const typed = plan.names.flatMap(({ name, at, input }) => {
    // Of a list's column the first line, below its heading.
    const [alone = at, second = alone] = addressesIn(at);
    const content = plan.cells.find((cell) => cell.at === second)?.content ?? "";
    return input && content !== "" ? [{ name, at: second, content: String(content) }] : [];
  });

  test("a typed cell that is emptied never gives one number here and another there, but where every host tells", async () => {
    const hosts = await inEachHost(async () => {
      const sheet = await openSheet(template, "US");
      let before: [at: string, content: string][] = [];
      return typed.map(({ at, content }) => {
        sheet.typeAllAt([...before, [at, ""]]);
        before = [[at, content]];
        return { all: values(sheet), holds: sheet.holds() };
      });
    });
    const differing: string[] = [];
    typed.forEach(({ name }, i) => {
      // Where no host says that all checks hold, a person is told whatever the numbers are.
      if (hosts.every((cells) => cells[i]?.holds === false)) return;
      const [first = new Map<string, unknown>(), ...others] = hosts.map((cells) => cells[i]?.all);
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
    for (const { at } of typed) expect(placeOf(at).row).toBeGreaterThan(0);
  });
});
