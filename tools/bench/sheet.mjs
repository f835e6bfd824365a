import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";

import { generated, NAMESPACE } from "../project.mjs";
import { mediansInTurns, short } from "./measure.mjs";

const CELLS = 20_000;
const ROUNDS = 11;
const SHEET = "sheet";

/** @type {[label: string, formula: (row: number) => string][]} */
const COLUMNS = [
  ["=A1/2+0.01", (row) => `=A${row}/2+0.01`],
  ["=BEAD.STANDOFF(A1)", (row) => `=${NAMESPACE}.STANDOFF(A${row})`],
];

/**
 * @param {import("./load.mjs").FormulaById} formulaById
 * @param {import("./load.mjs").RegisterFormulas} registerFormulas
 * @returns {import("./measure.mjs").Row[]}
 */
export function sheetRows(formulaById, registerFormulas) {
  // The engine reports every command on the console.
  console.debug = () => undefined;
  const { functions } = JSON.parse(readFileSync(path.join(generated, "functions.json"), "utf8"));
  registerFormulas(NAMESPACE, functions, formulaById);
  const { Model } = createRequire(import.meta.url)("@odoo/o-spreadsheet");
  const models = COLUMNS.map(([, formula]) => filled(Model, formula));
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

/** Walls of 0.020 in and up in column A, the formula beside each. @param {any} Model @param {(row: number) => string} formula */
function filled(Model, formula) {
  /** @type {Record<string, string>} */
  const cells = {};
  for (let row = 1; row <= CELLS; row += 1) {
    cells[`A${row}`] = String(0.02 + row / 100_000);
    cells[`B${row}`] = formula(row);
  }
  return new Model({
    version: "19.3.0",
    sheets: [{ id: SHEET, name: "Sheet", colNumber: 2, rowNumber: CELLS, cells }],
  });
}

/** @param {any} model */
function evaluate(model) {
  model.dispatch("EVALUATE_CELLS");
  return valueAt(model, CELLS - 1);
}

/** @param {any} model @param {number} row @returns {unknown} */
function valueAt(model, row) {
  return model.getters.getEvaluatedCell({ sheetId: SHEET, col: 1, row }).value;
}

/** A comparison of speed is worth nothing if one of the two computes something else. @param {any[]} models */
function expectSameValues(models) {
  for (let row = 0; row < CELLS; row += 1) {
    const [native, ours] = models.map((model) => valueAt(model, row));
    if (typeof native !== "number" || typeof ours !== "number" || Math.abs(native - ours) > 1e-12) {
      throw new Error(`row ${row + 1}: ${String(native)} against ${String(ours)}`);
    }
  }
}
