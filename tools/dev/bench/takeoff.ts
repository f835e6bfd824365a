import { formulaOf } from "./formula-of";
import type { Row } from "./measure";
import { mediansInTurns, short } from "./measure";

const SIZES = [1000, 10_000, 100_000];
/** Lines counted in one turn, a list as often as that takes: the same work, and long enough to be disturbed alike. */
const LINES = 100_000;
const ROUNDS = 25;
const TERMS = [300, 20, 10, 60, 10];
const MATERIALS = ["316L", "304L", 2205, "CS", ""];

/** Invented lists: as people have them, and the two kinds that are hardest. */
const LISTS: readonly (readonly [kind: string, row: (i: number) => unknown[]])[] = [
  [
    "mixed walls and materials",
    (i) => [1 + (i % 50), 0.5 + (i % 12) / 4, 0.035 + (i % 9) / 200, MATERIALS[i % 5]],
  ],
  ["numbers stored as text", (i) => [String(1 + (i % 50)), "1", " 0.065 ", "316l"]],
  ["every wall different", (i) => [1, 2, 0.03 + i * 1e-6, "316L"]],
  ["no line that can be used", () => [1, 1, 0.6, "316L"]],
];

export function takeoffRows(): Row[] {
  const takeoff = formulaOf("TAKEOFF");
  return LISTS.flatMap(([kind, row]) => {
    const calls = SIZES.map((size) => {
      const list = Array.from({ length: size }, (_, i) => row(i));
      return () => {
        for (let line = 0; line < LINES; line += size) takeoff(list, ...TERMS);
      };
    });
    const times = mediansInTurns(calls, ROUNDS);
    return SIZES.map((size, i) => {
      const time = times[i] ?? NaN;
      return {
        list: kind,
        lines: size,
        ms: short((time * size) / LINES),
        "µs a line": short((time / LINES) * 1000),
        "lines a second": short((LINES / time) * 1000),
        "against linear": short(time / (times[0] ?? NaN)),
      };
    });
  });
}
