import fc from "fast-check";

import {
  arcVolts,
  COMMON_ALLOWANCE,
  electrodeDiameter,
  electrodeLength,
  standoff,
  standoffSpread,
} from "../../../src/gap/electrode";
import { CURRENT, LENGTH, si } from "../../../src/quantity";
import { RUNS } from "../../arbitrary-cells";
import { decadesOf, evenly, plus, times } from "../../arbitrary-quantities";
import { expectNear, number, refusal, table } from "../../bead";
import { BY_HAND, COMMON_PRACTICE, evidence, PUBLISHED } from "../../evidence";

const small = decadesOf(LENGTH, 1e-5, 5e-3);
const amps = evenly(CURRENT, 5, 500);

describe(`laws (${RUNS})`, () => {
  test("the gap grows by half of what the wall grows, and by all of the allowance", () => {
    fc.assert(
      fc.property(small, small, small, (wall, allowance, more) => {
        const gap = standoff(wall, allowance);
        expectNear(standoff(plus(wall, times(2, more)), allowance), gap + more);
        expectNear(standoff(wall, plus(allowance, more)), gap + more);
      }),
    );
  });

  test("the spread lies evenly round the gap, od tolerance and runout apart", () => {
    fc.assert(
      fc.property(small, small, small, (clearance, odTolerance, runout) => {
        const gap = plus(clearance, times(0.5, plus(odTolerance, runout)));
        const [narrowest, widest] = standoffSpread(gap, odTolerance, runout);
        expectNear((narrowest + widest) / 2, gap);
        // The narrowest gap is a difference, so this holds to the digits of the gap.
        expect(Math.abs(widest - narrowest - (odTolerance + runout))).toBeLessThanOrEqual(1e-14 * gap);
      }),
    );
  });

  test("length, half the tube and the gap make up the reach", () => {
    fc.assert(
      fc.property(decadesOf(LENGTH, 0.01, 1), small, decadesOf(LENGTH, 0.001, 1), (od, gap, length) => {
        const reach = plus(times(0.5, od), plus(gap, length));
        expect(Math.abs(electrodeLength(reach, od, gap) - length)).toBeLessThanOrEqual(1e-14 * reach);
      }),
    );
  });

  test("more amps never need a thinner electrode, in either system", () => {
    fc.assert(
      fc.property(amps, amps, fc.constantFrom("US", "SI"), (a, b, units) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(electrodeDiameter(more, units)).toBeGreaterThanOrEqual(electrodeDiameter(less, units));
      }),
    );
  });

  test("the inch size and the metric size of a current are one electrode, within 2 %", () => {
    fc.assert(
      fc.property(amps, (current) => {
        const ratio = electrodeDiameter(current, "US") / electrodeDiameter(current, "SI");
        expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
      }),
    );
  });

  test("a longer arc has more volts, 0.8 V a millimeter", () => {
    fc.assert(
      fc.property(evenly(LENGTH, 0.0005, 0.002), (gap) => {
        const more = arcVolts(plus(gap, si(0.001, LENGTH))) - arcVolts(gap);
        expect(Math.abs(more - 0.8)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe(evidence("STANDOFF", COMMON_PRACTICE, "half the wall and ten thousandths of an inch"), () => {
  test("the common allowance is ten thousandths of an inch, 0.254 mm, in both systems", () => {
    expect(COMMON_ALLOWANCE).toBe(0.000254);
    expectNear(number("STANDOFF", 2, null, "SI"), 1.254);
    expectNear(number("STANDOFF", 0.2), 0.11);
    expectNear(number("STANDOFF", 0.2, 0), 0.1);
  });
});

describe(evidence("STANDOFF_SPREAD", BY_HAND, "0.0425 ∓ 0.005/2 in"), () => {
  test("no runout unless given: 0.040 and 0.045 in", () => {
    const [[min, max] = []] = table("STANDOFF_SPREAD", 0.0425, 0.005);
    expectNear(min as number, 0.04);
    expectNear(max as number, 0.045);
  });
});

describe(evidence("ARC_VOLTS", BY_HAND, "8.5 V and 0.8 V a millimeter, at both ends of the range"), () => {
  test("8.9 V at 0.5 mm, 10.9 V at 3 mm", () => {
    expectNear(number("ARC_VOLTS", 0.5, "", "SI"), 8.9);
    expectNear(number("ARC_VOLTS", 3, "", "SI"), 10.9);
    expectNear(number("ARC_VOLTS", 1 / 25.4), 9.3);
  });
});

describe(
  evidence(
    "ARC_VOLTS",
    PUBLISHED,
    "kraus-1987",
    "slope of three arcs on 1.5 mm 304, their level 9 to 24 % lower",
  ),
  () => {
    /** A and V; the gap was not noted. */
    const ARCS = [
      [38, 7.5],
      [50, 8.0],
      [70, 8.5],
    ] as const;

    test("the slope is that of the straight line through them, by least squares, to its last digit", () => {
      // Means 52.667 A and 8 V: (−14.667·−0.5 + 17.333·0.5)/(14.667² + 2.667² + 17.333²) = 16/522.67 = 0.0306 V/A.
      const slope = number("ARC_VOLTS", 1, 70, "SI") - number("ARC_VOLTS", 1, 69, "SI");
      expect(Math.abs(slope - 16 / 522.67)).toBeLessThan(0.0005);
      expectNear(number("ARC_VOLTS", 1, 100, "SI"), number("ARC_VOLTS", 1, "", "SI"));
    });

    test.each(ARCS)("without amps the estimate lies 9 to 24 %% above %p A, %p V", (_, volts) => {
      // The usual gap of 1.5 mm of wall: 0.75 + 0.254 mm.
      const over = number("ARC_VOLTS", 1.004, "", "SI") / volts - 1;
      expect(over).toBeGreaterThan(0.09);
      expect(over).toBeLessThan(0.25);
    });

    test("amps from 30 to 150", () => {
      expect(refusal("ARC_VOLTS", 1, 29, "SI")).toBe("#VALUE! amps = 29 A: must be between 30 A and 150 A");
      expect(refusal("ARC_VOLTS", 1, 151, "SI")).toBe("#VALUE! amps = 151 A: must be between 30 A and 150 A");
    });
  },
);

describe(evidence("ELECTRODE_LENGTH", BY_HAND, "reach less half the tube and the gap"), () => {
  test("1.5 − 1/2 − 0.0425 = 0.9575 in; 40 − 25/2 − 1.2 = 26.3 mm", () => {
    expectNear(number("ELECTRODE_LENGTH", 1.5, 1, 0.0425), 0.9575);
    expectNear(number("ELECTRODE_LENGTH", 40, 25, 1.2, "SI"), 26.3);
  });
});

test("an electrode of no length is refused, one just longer is not", () => {
  const lengthOf = (reach: number): number =>
    electrodeLength(si(reach, LENGTH), si(1, LENGTH), si(0.5, LENGTH));
  expect(() => lengthOf(1)).toThrow("reach refused");
  expect(() => lengthOf(1 + 2 ** -40)).toThrow("reach refused");
  expect(lengthOf(1 + 2 ** -26)).toBe(2 ** -26);
});
