/** `npm run bench`: microseconds per call of the heat-flow formulas and their ratio to the plain rule, in one run. */

import { createRequire } from "node:module";
import path from "node:path";

import { Bench } from "tinybench";
import webpack from "webpack";

import { generate } from "./generate.mjs";
import { root } from "./project.mjs";

const RULE = "AMPS_WALL";
/** @type {[id: string, args: unknown[], of: string][]} */
const CALLS = [
  [RULE, [0.065], ""],
  ["AMPS_MELT", [0.065, 5], ""],
  ["MELT_WIDTH", [0.065, 45, 5], ""],
  ["START_DWELL", [0.065, 5], ""],
  ["AMPS_SECTORS", [0.125, 0.02, 9], "1/8 in"],
  ["AMPS_SECTORS", [0.5, 0.049, 6], "1/2 in"],
  ["AMPS_SECTORS", [1, 0.065, 5], "1 in"],
  ["AMPS_SECTORS", [12, 0.2, 2.5], "12 in"],
  ["AMPS_SECTORS", [1, 0.065, 5, 4, 720], "1 in, overlap of two turns"],
  ["SCHEDULE", [1, 0.065], ""],
  ["DAM_TEMPERATURE", [6, 1, 0.065, 46, 9.4, 5], ""],
  ["DAM_DISTANCE", [212, 1, 0.065, 46, 9.4, 5], ""],
];

const formulaById = await loadFormulas();
const bench = new Bench({ time: 400, warmupTime: 100 });
for (const [id, args, of] of CALLS) {
  const formula = formulaById(id);
  bench.add(`${id} ${of}`.trim(), () => void formula(...args));
}
await bench.run();

const rows = bench.tasks.map(({ name, result }) => {
  if (result.state !== "completed") throw new Error(`${name}: ${result.state}`);
  return { name, microseconds: result.latency.p50 * 1000 };
});
const rule = rows.find(({ name }) => name === RULE)?.microseconds ?? NaN;
console.table(
  rows.map(({ name, microseconds }) => ({
    formula: name,
    "µs a call": Number(microseconds.toPrecision(3)),
    [`× ${RULE}`]: Number((microseconds / rule).toPrecision(3)),
  })),
);

/**
 * The formulas as the add-in has them, bundled for Node.
 * @returns {Promise<(id: string) => (...cells: unknown[]) => unknown>}
 */
async function loadFormulas() {
  await generate();
  const folder = path.join(root, ".cache", "bench");
  const compiler = webpack({
    mode: "production",
    target: "node",
    entry: [path.join(root, "generated", "associate.ts"), path.join(root, "functions", "catalogue.ts")],
    output: { path: folder, filename: "formulas.cjs", library: { type: "commonjs2" } },
    resolve: { extensions: [".ts", ".js", ".json"] },
    module: {
      rules: [
        { test: /\.ts$/, loader: "swc-loader", options: { jsc: { parser: { syntax: "typescript" } } } },
      ],
    },
  });
  await new Promise((resolve, reject) => {
    compiler.run((problem, stats) => {
      if (problem || stats?.hasErrors()) reject(problem ?? new Error(stats?.toString("errors-only")));
      else resolve(undefined);
    });
  });
  Object.assign(globalThis, {
    CustomFunctions: { Error, ErrorCode: {}, associate: () => undefined },
  });
  return createRequire(import.meta.url)(path.join(folder, "formulas.cjs")).formulaById;
}
