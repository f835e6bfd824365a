import { readFileSync } from "node:fs";
import path from "node:path";

import { Model } from "@odoo/o-spreadsheet";

import { NAMESPACE } from "../../../functions/namespace";
import type { FunctionDefinition } from "../../../taskpane/hosts/browser/functions-host";
import { registerFormulas } from "../../../taskpane/hosts/browser/functions-host";
import { generated } from "../../build/project";
import { formulaOf } from "./formula-of";
import type { Row } from "./measure";
import { mediansInTurns, short } from "./measure";

const CELLS = 20_000;
const ROUNDS = 11;
const SHEET = "sheet";

const COLUMNS: readonly (readonly [label: string, formula: (row: number) => string])[] = [
  ["=A1/2+0.01", (row) => `=A${String(row)}/2+0.01`],
  ["=BEAD.STANDOFF(A1)", (row) => `=${NAMESPACE}.STANDOFF(A${String(row)})`],
];

export function sheetRows(): Row[] {
  // The engine reports every command on the console.
  console.debug = () => undefined;
  const { functions } = JSON.parse(readFileSync(path.join(generated, "functions.json"), "utf8")) as {
    functions: FunctionDefinition[];
  };
  registerFormulas(NAMESPACE, functions, formulaOf);
  const models = COLUMNS.map(([, formula]) => filled(formula));
  expectSameValues(models);

  const medians = mediansInTurns(
    models.map((model) => () => evaluate(model)),
    ROUNDS,
  );
  return COLUMNS.map(([label], i) => {
    const time = medians[i] ?? NaN;
    return {
      formula: label,
      cells: CELLS,
      ms: short(time),
      "µs a cell": short((time / CELLS) * 1000),
      "against native": short(time / (medians[0] ?? NaN)),
    };
  });
}

/** Walls of 0.020 in and up in column A, the formula beside each. */
function filled(formula: (row: number) => string): Model {
  const cells: Record<string, string> = {};
  for (let row = 1; row <= CELLS; row += 1) {
    cells[`A${String(row)}`] = String(0.02 + row / 100_000);
    cells[`B${String(row)}`] = formula(row);
  }
  return new Model({
    version: "19.3.0",
    sheets: [{ id: SHEET, name: "Sheet", colNumber: 2, rowNumber: CELLS, cells }],
  });
}

function evaluate(model: Model): unknown {
  model.dispatch("EVALUATE_CELLS");
  return valueAt(model, CELLS - 1);
}

function valueAt(model: Model, row: number): unknown {
  return model.getters.getEvaluatedCell({ sheetId: SHEET, col: 1, row }).value;
}

/** A comparison of speed is worth nothing if one of the two computes something else. */
function expectSameValues(models: readonly Model[]): void {
  for (let row = 0; row < CELLS; row += 1) {
    const [native, ours] = models.map((model) => valueAt(model, row));
    if (typeof native !== "number" || typeof ours !== "number" || Math.abs(native - ours) > 1e-12) {
      throw new Error(`row ${String(row + 1)}: ${String(native)} against ${String(ours)}`);
    }
  }
}
