import { formulaOf } from "./formula-of";
import type { Row } from "./measure";
import { mediansInTurns, short } from "./measure";

const SIZES = 500;
const ROUNDS = 5;
const MATERIALS = ["316L", "304L", "2205", ""];
const WALLS = [0.035, 0.049, 0.065, 0.083, 0.109];

/** No two turns ask for the same tubes: the rows of a list are kept, and what is kept is another row of this table. */
let turn = 0;

/** Invented lists. */
const LISTS: readonly (readonly [kind: string, row: (i: number) => unknown[]])[] = [
  ["as a job has them, some 40 tubes", (i) => [1 + (i % 2) + turn * 1e-6, WALLS[i % 5], MATERIALS[i % 4]]],
  ["every size different", (i) => [1 + i / 200 + turn * 1e-6, 0.05 + i * 1e-5, "316L"]],
  [
    "one size changed of the same list",
    (i) => [1 + i / 200, i === 0 ? 0.065 + turn * 1e-6 : 0.05 + i * 1e-5],
  ],
];

export function sizeTableRows(): Row[] {
  const [schedule, sizeTable] = [formulaOf("SCHEDULE"), formulaOf("SIZE_TABLE")];
  const calls = [
    () => schedule(1, 0.065),
    ...LISTS.map(([, row]) => () => {
      turn += 1;
      sizeTable(Array.from({ length: SIZES }, (_, i) => row(i)));
    }),
  ];
  const [one = NaN, ...times] = mediansInTurns(calls, ROUNDS);
  return LISTS.map(([kind], i) => {
    const time = times[i] ?? NaN;
    return {
      list: kind,
      sizes: SIZES,
      ms: short(time),
      "of as many SCHEDULE": short(time / (SIZES * one)),
    };
  });
}
