import { medians, short } from "./measure.mjs";

const SIZES = [1000, 10_000, 100_000];
const TERMS = [300, 20, 10, 60, 10];
const MATERIALS = ["316L", "304L", 2205, "CS", ""];

/** Invented lists: as people have them, and the two kinds that are hardest. @type {[kind: string, row: (i: number) => unknown[]][]} */
const LISTS = [
  ["mixed walls and materials", (i) => [i % 50, 0.5 + (i % 12) / 4, 0.035 + (i % 9) / 200, MATERIALS[i % 5]]],
  ["numbers stored as text", (i) => [String(i % 50), "1", " 0.065 ", "316l"]],
  ["every wall different", (i) => [1, 2, 0.03 + i * 1e-6, "316L"]],
  ["no line that can be used", () => [1, 1, 0.6, "316L"]],
];

/** @param {import("./load.mjs").FormulaById} formulaById @returns {Promise<import("./measure.mjs").Row[]>} */
export async function takeoffRows(formulaById) {
  const takeoff = formulaById("TAKEOFF");
  const rows = [];
  for (const [kind, row] of LISTS) {
    const lists = SIZES.map((size) => Array.from({ length: size }, (_, i) => row(i)));
    const times = await medians(
      lists.map((list) => [`${list.length} lines, ${kind}`, () => takeoff(list, ...TERMS)]),
      { time: 1000, iterations: 10, warmupTime: 200, warmupIterations: 3 },
    );
    const each = times.map((time, i) => time / (SIZES[i] ?? NaN));
    for (const [i, size] of SIZES.entries()) {
      rows.push({
        list: kind,
        lines: size,
        ms: short(times[i] ?? NaN),
        "µs a line": short((each[i] ?? NaN) * 1000),
        "against linear": short((each[i] ?? NaN) / (each[0] ?? NaN)),
      });
    }
  }
  return rows;
}
