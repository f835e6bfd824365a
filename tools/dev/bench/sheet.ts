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
const ROUNDS = 45;
const SHEET = "sheet";
/** The column of the formulas, behind those of their numbers. */
const RESULT = 3;

type OfRow = (row: string) => string;
interface Pair {
  readonly label: string;
  readonly ours: OfRow;
  readonly algebra: string;
  readonly native: OfRow;
}

const PAIRS: readonly Pair[] = [
  {
    label: "=BEAD.STANDOFF(A1)",
    ours: (r) => `=${NAMESPACE}.STANDOFF(A${r})`,
    algebra: "=A1/2+0.01",
    native: (r) => `=A${r}/2+0.01`,
  },
  {
    label: "=BEAD.PULSE_SHARE(C1,B1,A1)",
    ours: (r) => `=${NAMESPACE}.PULSE_SHARE(C${r},B${r},A${r})`,
    algebra: "=(C1-A1)/(B1-A1)",
    native: (r) => `=(C${r}-A${r})/(B${r}-A${r})`,
  },
  {
    label: "=BEAD.HEAT_INPUT(A1,B1,C1)",
    ours: (r) => `=${NAMESPACE}.HEAT_INPUT(A${r},B${r},C${r})`,
    algebra: "=60*A1*B1/(1000*C1)",
    native: (r) => `=60*A${r}*B${r}/(1000*C${r})`,
  },
];

export function sheetRows(): Row[] {
  // The engine reports every command on the console.
  console.debug = () => undefined;
  const { functions } = JSON.parse(readFileSync(path.join(generated, "functions.json"), "utf8")) as {
    functions: FunctionDefinition[];
  };
  registerFormulas(NAMESPACE, functions, formulaOf);
  const models = PAIRS.map(({ native, ours }) => [filled(native), filled(ours)] as const);
  models.forEach(expectSameValues);

  const medians = mediansInTurns(
    models.flat().map((model) => () => evaluate(model)),
    ROUNDS,
  );
  return PAIRS.flatMap(({ label, algebra }, i) => {
    const base = medians[2 * i] ?? NaN;
    return [algebra, label].map((formula, side) => {
      const time = medians[2 * i + side] ?? NaN;
      return {
        formula,
        cells: CELLS,
        ms: short(time),
        "µs a cell": short((time / CELLS) * 1000),
        "against native": short(time / base),
      };
    });
  });
}

/** Walls of 0.020 in and up in column A, amps and speeds beside them, then the formula. */
function filled(formula: OfRow): Model {
  const cells: Record<string, string> = {};
  for (let row = 1; row <= CELLS; row += 1) {
    cells[`A${String(row)}`] = String(0.02 + row / 100_000);
    cells[`B${String(row)}`] = String(40 + row / 1000);
    cells[`C${String(row)}`] = String(5 + row / 10_000);
    cells[`D${String(row)}`] = formula(String(row));
  }
  return new Model({
    version: "19.3.0",
    sheets: [{ id: SHEET, name: "Sheet", colNumber: RESULT + 1, rowNumber: CELLS, cells }],
  });
}

function evaluate(model: Model): unknown {
  model.dispatch("EVALUATE_CELLS");
  return valueAt(model, CELLS - 1);
}

function valueAt(model: Model, row: number): unknown {
  return model.getters.getEvaluatedCell({ sheetId: SHEET, col: RESULT, row }).value;
}

/** A comparison of speed is worth nothing if one of the two computes something else. */
function expectSameValues(models: readonly Model[]): void {
  for (let row = 0; row < CELLS; row += 1) {
    const [native, ours] = models.map((model) => valueAt(model, row));
    if (
      typeof native !== "number" ||
      typeof ours !== "number" ||
      Math.abs(native - ours) > 1e-12 * Math.abs(native)
    ) {
      throw new Error(`row ${String(row + 1)}: ${String(native)} against ${String(ours)}`);
    }
  }
}
