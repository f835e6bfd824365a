import fc from "fast-check";

import { commonBeadWidth } from "../../../src/travel/bead";
import { DESIGNATIONS, MATERIALS } from "../../../src/metal/material";
import {
  rotation,
  suggestedOverlap,
  suggestedSpeed,
  travelSpeed,
  travelTime,
} from "../../../src/travel/travel";
import { ANGLE, LENGTH, ROTATION, si, SPEED } from "../../../src/quantity";
import { RUNS } from "../../arbitrary-cells";
import { decadesOf, evenly, times } from "../../arbitrary-quantities";
import { expectNear, number } from "../../bead";
import { BY_HAND, COMMON_PRACTICE, evidence } from "../../evidence";

const od = decadesOf(LENGTH, 3e-3, 1);
const speed = decadesOf(SPEED, 1e-4, 0.1);

describe(`laws (${RUNS})`, () => {
  test("the speed at the rotation of a speed is that speed, and the other way round", () => {
    fc.assert(
      fc.property(od, speed, decadesOf(ROTATION, 1e-4, 10), (d, v, turns) => {
        expectNear(travelSpeed(d, rotation(d, v)), v);
        expectNear(rotation(d, travelSpeed(d, turns)), turns);
      }),
    );
  });

  test("time × speed is the way round and the overlap's share of it", () => {
    fc.assert(
      fc.property(od, speed, evenly(ANGLE, 0, 720), (d, v, degrees) => {
        expectNear(travelTime(d, v, degrees) * v, Math.PI * d * (1 + degrees / 360));
      }),
    );
  });

  test("v·b/(4α) of the suggested speed is 0.4 for every metal, or it is held at 3 or 10 in/min", () => {
    fc.assert(
      fc.property(decadesOf(LENGTH, 1e-4, 0.02), fc.constantFrom(...DESIGNATIONS), (width, designation) => {
        const metal = MATERIALS[designation];
        const v = suggestedSpeed(width, metal);
        const free = (0.4 * 4 * metal.hotDiffusivity.value) / width;
        // 3 and 10 in/min: 76.2 and 254 mm a minute.
        expectNear(v, Math.min(Math.max(free, 0.0762 / 60), 0.254 / 60));
      }),
    );
  });

  test("the suggested overlap is a multiple of 5° that covers the bead and is no step too long", () => {
    const wall = fc.double({ min: 0.01, max: 0.49, noNaN: true });
    fc.assert(
      fc.property(od, wall, fc.double({ min: 0.01, max: 1, noNaN: true }), (d, part, width) => {
        const degrees = suggestedOverlap(d, times(part, d), times(width, d));
        const needed = (360 * width) / Math.PI;
        expect(degrees % 5).toBe(0);
        expect(degrees).toBeGreaterThanOrEqual(needed * (1 - 1e-8));
        expect(degrees - needed).toBeLessThan(5);
      }),
    );
  });
});

describe(
  evidence(
    "OVERLAP_SUGGEST",
    BY_HAND,
    "bead widths of whole steps of 5° round 1 in, and a thousandth of a degree more",
  ),
  () => {
    /** For a bead as wide as so many degrees of a tube of 1 in. */
    const overlapFor = (degrees: number): number =>
      suggestedOverlap(si(0.0254, LENGTH), si(0.001, LENGTH), si((Math.PI * 0.0254 * degrees) / 360, LENGTH));

    test("a bead of exactly some steps is not pushed a step further", () => {
      for (let steps = 1; steps <= 20; steps += 1) expect(overlapFor(5 * steps)).toBe(5 * steps);
    });

    test("a thousandth of a degree over a step needs the next", () => {
      expect(overlapFor(20.001)).toBe(25);
    });
  },
);

describe(
  evidence("TRAVEL_SUGGEST OVERLAP_SUGGEST", COMMON_PRACTICE, "a bead 1 mm and twice the wall wide"),
  () => {
    test("4.302 mm for 1.651 mm unless given", () => {
      expectNear(commonBeadWidth(si(0.001651, LENGTH)), 0.004302);
      const [wall, width] = [1.651, 4.302];
      expectNear(
        number("TRAVEL_SUGGEST", wall, null, null, "SI"),
        number("TRAVEL_SUGGEST", wall, width, "316L", "SI"),
      );
      expect(number("OVERLAP_SUGGEST", 25.4, wall, null, "SI")).toBe(
        number("OVERLAP_SUGGEST", 25.4, wall, width, "SI"),
      );
    });
  },
);

describe(
  evidence("TRAVEL_SPEED TRAVEL_RPM TRAVEL_TIME", BY_HAND, "one turn a minute of 1 in, π in/min"),
  () => {
    test("one turn a minute of 1 in: π in/min, 60 s a turn", () => {
      expectNear(number("TRAVEL_SPEED", 1, 1), Math.PI);
      expectNear(number("TRAVEL_RPM", 1, Math.PI), 1);
      expectNear(number("TRAVEL_TIME", 1, Math.PI), 60);
      expectNear(number("TRAVEL_TIME", 1, Math.PI, 90), 75);
    });
  },
);
