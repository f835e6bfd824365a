import fc from "fast-check";

import {
  arcVolts,
  COMMON_ALLOWANCE,
  electrodeDiameter,
  electrodeLength,
  standoff,
  standoffSpread,
} from "../../../src/gap/electrode";
import { decades, RUNS } from "../../arbitrary-cells";
import { expectNear, number, table } from "../../bead";
import { BY_HAND, COMMON_PRACTICE, evidence } from "../../evidence";
import { CURRENT, LENGTH, si } from "../../../src/quantity";

const small = decades(1e-5, 5e-3);

describe(`laws (${RUNS})`, () => {
  test("the gap grows by half of what the wall grows, and by all of the allowance", () => {
    fc.assert(
      fc.property(small, small, small, (wall, allowance, more) => {
        const gap = standoff(si(wall, LENGTH), si(allowance, LENGTH));
        expectNear(standoff(si(wall + 2 * more, LENGTH), si(allowance, LENGTH)), gap + more);
        expectNear(standoff(si(wall, LENGTH), si(allowance + more, LENGTH)), gap + more);
      }),
    );
  });

  test("the spread lies evenly round the gap, od tolerance and runout apart", () => {
    fc.assert(
      fc.property(small, small, small, (clearance, odTolerance, runout) => {
        const gap = clearance + (odTolerance + runout) / 2;
        const [least, greatest] = standoffSpread(
          si(gap, LENGTH),
          si(odTolerance, LENGTH),
          si(runout, LENGTH),
        );
        expectNear((least + greatest) / 2, gap);
        // The least gap is a difference, so this holds to the digits of the gap.
        expect(Math.abs(greatest - least - (odTolerance + runout))).toBeLessThanOrEqual(1e-14 * gap);
      }),
    );
  });

  test("length, half the tube and the gap make up the reach", () => {
    fc.assert(
      fc.property(decades(0.01, 1), small, decades(0.001, 1), (od, gap, length) => {
        const reach = od / 2 + gap + length;
        expect(
          Math.abs(electrodeLength(si(reach, LENGTH), si(od, LENGTH), si(gap, LENGTH)) - length),
        ).toBeLessThanOrEqual(1e-14 * reach);
      }),
    );
  });

  test("more amps never need a thinner electrode, in either system", () => {
    const amps = fc.double({ min: 5, max: 500, noNaN: true });
    fc.assert(
      fc.property(amps, amps, fc.constantFrom("US", "SI"), (a, b, units) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(electrodeDiameter(si(more, CURRENT), units)).toBeGreaterThanOrEqual(
          electrodeDiameter(si(less, CURRENT), units),
        );
      }),
    );
  });

  test("the inch size and the metric size of a current are one electrode, within 2 %", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 500, noNaN: true }), (amps) => {
        expect(
          Math.abs(
            electrodeDiameter(si(amps, CURRENT), "US") / electrodeDiameter(si(amps, CURRENT), "SI") - 1,
          ),
        ).toBeLessThan(0.02);
      }),
    );
  });

  test("a longer arc has more volts, 0.8 V a millimetre", () => {
    const gap = fc.double({ min: 0.0005, max: 0.002, noNaN: true });
    fc.assert(
      fc.property(gap, (g) => {
        expect(Math.abs(arcVolts(si(g + 0.001, LENGTH)) - arcVolts(si(g, LENGTH)) - 0.8)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe(evidence("STANDOFF", COMMON_PRACTICE, "half the wall and ten thousandths of an inch"), () => {
  test("the common allowance is ten thousandths of an inch, 0.254 mm, in both systems", () => {
    expect(COMMON_ALLOWANCE).toBe(0.000254);
    expectNear(number("STANDOFF", 2, null, "SI"), 1.254);
    expectNear(number("STANDOFF", 2), 1.01);
    expectNear(number("STANDOFF", 2, 0), 1);
  });
});

describe(evidence("STANDOFF_SPREAD", BY_HAND, "0.0425 ∓ 0.005/2 in"), () => {
  test("no runout unless given: 0.040 and 0.045 in", () => {
    const [[least, greatest] = []] = table("STANDOFF_SPREAD", 0.0425, 0.005);
    expectNear(least as number, 0.04);
    expectNear(greatest as number, 0.045);
  });
});

describe(evidence("ARC_VOLTS", BY_HAND, "8.5 V and 0.8 V a millimetre, at both ends of the range"), () => {
  test("8.9 V at 0.5 mm, 10.9 V at 3 mm", () => {
    expectNear(number("ARC_VOLTS", 0.5, "SI"), 8.9);
    expectNear(number("ARC_VOLTS", 3, "SI"), 10.9);
    expectNear(number("ARC_VOLTS", 1 / 25.4), 9.3);
  });
});

describe(evidence("ELECTRODE_LENGTH", BY_HAND, "reach less half the tube and the gap"), () => {
  test("1.5 − 1/2 − 0.0425 = 0.9575 in; 40 − 25/2 − 1.2 = 26.3 mm", () => {
    expectNear(number("ELECTRODE_LENGTH", 1.5, 1, 0.0425), 0.9575);
    expectNear(number("ELECTRODE_LENGTH", 40, 25, 1.2, "SI"), 26.3);
  });
});

test("an electrode of no length is refused, one just longer is not", () => {
  expect(() => electrodeLength(si(1, LENGTH), si(1, LENGTH), si(0.5, LENGTH))).toThrow("reach refused");
  expect(electrodeLength(si(1 + 2 ** -40, LENGTH), si(1, LENGTH), si(0.5, LENGTH))).toBe(2 ** -40);
});
