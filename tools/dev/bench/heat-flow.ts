import { formulaOf } from "./formula-of";
import type { Row } from "./measure";
import { medians, short } from "./measure";

const RULE = "AMPS_WALL";
const CALLS: readonly (readonly [id: string, args: readonly unknown[], of: string])[] = [
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

export async function heatFlowRows(): Promise<Row[]> {
  const times = await medians(
    CALLS.map(([id, args, of]) => {
      const formula = formulaOf(id);
      return [`${id} ${of}`.trim(), () => formula(...args)] as const;
    }),
    { time: 400, warmupTime: 100 },
  );
  const [rule = NaN] = times;
  return CALLS.map(([id, , of], i) => {
    const time = times[i] ?? NaN;
    return {
      formula: `${id} ${of}`.trim(),
      "µs a call": short(time * 1000),
      [`× ${RULE}`]: short(time / rule),
    };
  });
}
