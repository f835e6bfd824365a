import fc from "fast-check";

import type { Cycle } from "../../../src/planning/cycle";
import { COMMON_POSTPURGE, COMMON_PREPURGE, cyclePhases, cycleTime } from "../../../src/planning/cycle";
import { ANGLE, LENGTH, SPEED, TIME } from "../../../src/quantity";
import { RUNS } from "../../arbitrary-cells";
import { decadesOf, evenly } from "../../arbitrary-quantities";
import { expectNear, number, table } from "../../bead";
import { BY_HAND, COMMON_PRACTICE, evidence } from "../../evidence";

const seconds = evenly(TIME, 0, 600);
const anyCycle: fc.Arbitrary<Cycle> = fc.record({
  od: decadesOf(LENGTH, 1e-3, 1),
  speed: decadesOf(SPEED, 1e-4, 0.1),
  prepurge: seconds,
  dwell: seconds,
  overlap: evenly(ANGLE, 0, 720),
  downslope: seconds,
  postpurge: seconds,
  handling: seconds,
});

test(`each phase starts where the one before it ends, and the cycle is their sum (${RUNS})`, () => {
  fc.assert(
    fc.property(anyCycle, (cycle) => {
      const phases = cyclePhases(cycle);
      let clock = 0;
      for (const { starts, lasts } of phases) {
        expectNear(starts, clock);
        clock = starts + lasts;
      }
      expectNear(cycleTime(cycle), clock);
    }),
  );
});

test(`each phase lasts what it was given; the overlap is its fraction of a turn, π·d/v (${RUNS})`, () => {
  fc.assert(
    fc.property(anyCycle, (cycle) => {
      const turn = (Math.PI * cycle.od) / cycle.speed;
      const { prepurge, dwell, overlap, downslope, postpurge, handling } = cycle;
      const expected = [prepurge, dwell, turn, (turn * overlap) / 360, downslope, postpurge, handling];
      cyclePhases(cycle).forEach(({ lasts }, i) => {
        expectNear(lasts, expected[i] ?? NaN);
      });
    }),
  );
});

describe(
  evidence("CYCLE_PHASES", BY_HAND, "an overlap of a thousandth of a degree at a turn of 60·π s"),
  () => {
    test("an overlap of a thousandth of a degree keeps its digits", () => {
      // A turn of 25.4·π mm at 25.4 mm/min takes 60·π s; a thousandth of a degree 60·π/360 000 s.
      const overlap = table("CYCLE_PHASES", 1, 1, null, null, 0.001).find(([label]) => label === "Overlap");
      expectNear(overlap?.[2] as number, (60 * Math.PI) / 360_000);
    });
  },
);

test("the arc burns from the start dwell to the end of the downslope", () => {
  const rows = table("CYCLE_PHASES", 2, 5);
  expect(rows.map(([label, , , arcOn]) => [label, arcOn])).toEqual([
    ["Prepurge", false],
    ["Start dwell", true],
    ["Full turn", true],
    ["Overlap", true],
    ["Downslope", true],
    ["Postpurge", false],
    ["Handling", false],
  ]);
});

describe(evidence("CYCLE_TIME", COMMON_PRACTICE, "30 s of gas before the arc and 15 s after it"), () => {
  test("30 s before and 15 s after the arc unless given; 0 is a number", () => {
    expect([COMMON_PREPURGE, COMMON_POSTPURGE]).toEqual([30, 15]);
    const turn = number("TRAVEL_TIME", 2, 5);
    expectNear(number("CYCLE_TIME", 2, 5), turn + 45);
    expectNear(number("CYCLE_TIME", 2, 5, 0, 0, 0, 0, 0, 0), turn);
  });
});
