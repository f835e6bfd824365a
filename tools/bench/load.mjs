/** The formulas as the add-in has them, and the way the browser sheet registers them, bundled for Node. */

import { createRequire } from "node:module";
import path from "node:path";

import webpack from "webpack";

import { generate } from "../generate.mjs";
import { root } from "../project.mjs";
import { typescript } from "../webpack.mjs";

/**
 * @typedef {(id: string) => (...cells: unknown[]) => unknown} FormulaById
 * @typedef {(namespace: string, definitions: unknown[], formulaOf: FormulaById) => void} RegisterFormulas
 */

export const folder = path.join(root, ".cache", "bench");

/** @returns {Promise<{ formulaById: FormulaById, registerFormulas: RegisterFormulas }>} */
export async function loadFormulas() {
  await generate();
  await run({
    mode: "production",
    target: "node",
    context: root,
    entry: {
      formulas: ["./generated/associate.ts", "./functions/catalogue.ts"],
      host: "./taskpane/hosts/browser/functions-host.ts",
    },
    output: { path: folder, filename: "[name].cjs", library: { type: "commonjs2" } },
    // The engine stays outside, so that there is one of it.
    externals: { "@odoo/o-spreadsheet": "commonjs2 @odoo/o-spreadsheet" },
    resolve: { extensions: [".ts", ".js", ".json"] },
    module: {
      rules: [typescript],
    },
  });
  Object.assign(globalThis, {
    CustomFunctions: { Error, ErrorCode: {}, associate: () => undefined },
  });
  const require = createRequire(import.meta.url);
  return {
    formulaById: require(path.join(folder, "formulas.cjs")).formulaById,
    registerFormulas: require(path.join(folder, "host.cjs")).registerFormulas,
  };
}

/** @param {import("webpack").Configuration} configuration @returns {Promise<void>} */
export function run(configuration) {
  const compiler = webpack(configuration);
  return new Promise((resolve, reject) => {
    compiler.run((problem, stats) => {
      if (problem || stats?.hasErrors()) reject(problem ?? new Error(stats?.toString("errors-only")));
      else compiler.close((unclosed) => (unclosed ? reject(unclosed) : resolve()));
    });
  });
}
