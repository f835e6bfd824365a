import { meltSection, readyPlate } from "../../../src/heat-flow/melt";
import { placeSection, readyPass } from "../../../src/heat-flow/ring-bead";
import { plateOf, riseToMelt } from "../../../src/heat-flow/plate";
import { ringOf } from "../../../src/heat-flow/ring-weld";
import { plannedPass } from "../../../src/heat-flow/sectors";
import { DEFAULT_MATERIAL, MATERIALS } from "../../../src/metal/material";
import { LENGTH, si, SPEED } from "../../../src/quantity";
import type { Row } from "./measure";
import { medians, short } from "./measure";

/** Times as many ages as the formulas take; the last stands in for the true sum. */
const FINENESS = [0.5, 1, 2, 4] as const;
const EXACT = 16;

const WELD = {
  wall: si(0.00165, LENGTH),
  speed: si(0.0021, SPEED),
  material: MATERIALS[DEFAULT_MATERIAL],
  arcSize: undefined,
};
const POWER = 350;
const RISE = riseToMelt(WELD.material);
const PLATE = plateOf(WELD);
const RING = ringOf(si(0.0254, LENGTH), WELD);
const PASS = plannedPass({ ...RING, width: 0, rise: RISE, dwell: 3, ends: [1] }, POWER, [POWER]);

/** Face widths, m: what each has to add up anew for one more width. */
const WIDTHS = {
  "width on a plate": (fineness: number) => meltSection(readyPlate(PLATE, fineness), RISE, POWER).face,
  "width on a ring, at half a turn": (fineness: number) =>
    placeSection(readyPass(PASS, fineness), RISE, PASS.circumference / 2).face,
};

export async function accuracyRows(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [what, width] of Object.entries(WIDTHS)) {
    const times = await medians(
      FINENESS.map((fineness) => [`${what} ${String(fineness)}`, () => width(fineness)] as const),
      { time: 300, warmupTime: 100 },
    );
    const exact = width(EXACT);
    FINENESS.forEach((ages, i) => {
      rows.push({
        what,
        ages,
        µs: short(1000 * (times[i] ?? NaN)),
        "against 1": short((times[i] ?? NaN) / (times[FINENESS.indexOf(1)] ?? NaN)),
        off: Math.abs(width(ages) / exact - 1).toExponential(0),
      });
    });
  }
  return rows;
}
