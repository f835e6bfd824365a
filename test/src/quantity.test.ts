import fc from "fast-check";

import type { Quantity, Units } from "../../src/quantity";
import * as quantities from "../../src/quantity";
import { fromBase, plainNumber, toBase, unitOf, written } from "../../src/quantity";
import { decades, RUNS } from "../arbitrary-cells";
import { expectNear } from "../bead";

const QUANTITIES = Object.entries<unknown>(quantities).filter(
  (entry): entry is [string, Quantity] => typeof entry[1] === "object",
);
const SYSTEMS: readonly Units[] = ["US", "SI"];

describe(`written to base and back is where it began (${RUNS})`, () => {
  test.each(QUANTITIES)("%s", (_, of) => {
    const value = fc.tuple(fc.constantFrom(1, -1, 0), decades(1e-9, 1e9)).map(([sign, size]) => sign * size);
    fc.assert(
      fc.property(value, fc.constantFrom(...SYSTEMS), (one, units) => {
        const { offset } = of[units];
        const back = fromBase(toBase(one, of, units), of, units);
        // An offset takes digits off values that are small against it.
        expectNear(back + offset, one + offset, 1e-14);
      }),
    );
  });
});

describe("every quantity has its unit in each system", () => {
  const SAME = ["s", "h", "A", "V", "J", "rpm", "Hz", "°", "ppm", "%", "per hour", ""];
  /** The liter of a liquid container is one in both, that of gas is not. */
  const same = (of: Quantity): boolean => of === quantities.LIQUID_VOLUME || SAME.includes(of.US.unit);

  test.each(QUANTITIES)("%s", (_, of) => {
    const [us, si] = [unitOf(of, "US"), unitOf(of, "SI")];
    if (same(of)) expect(of.SI).toEqual(of.US);
    else expect(us).not.toBe(si);
  });
});

test("turns per minute: 60 rpm is one turn a second", () => {
  expect(toBase(60, quantities.ROTATION, "US")).toBe(1);
  expect(toBase(60, quantities.ROTATION, "SI")).toBe(1);
});

test("air changes: 3600 per hour are one a second; percent and moisture stay as written", () => {
  expect(toBase(3600, quantities.AIR_CHANGES, "US")).toBe(1);
  expect(toBase(19.5, quantities.PERCENT, "SI")).toBe(19.5);
  expect(toBase(19.5, quantities.MOISTURE, "US")).toBe(19.5);
});

test("time, current, voltage, energy, frequency, angle, oxygen and shares are written as they are", () => {
  const { TIME, CURRENT, VOLTAGE, ENERGY, FREQUENCY, ANGLE, OXYGEN, SHARE, ANY_FLOW, COUNT } = quantities;
  for (const same of [TIME, CURRENT, VOLTAGE, ENERGY, FREQUENCY, ANGLE, OXYGEN, SHARE, ANY_FLOW, COUNT]) {
    expect(toBase(1.5, same, "US")).toBe(1.5);
    expect(fromBase(1.5, same, "SI")).toBe(1.5);
  }
});

describe("as people write it", () => {
  const { LENGTH, FLOW, TEMPERATURE, TEMPERATURE_RISE, OXYGEN, SHARE, SPEED, HEAT_INPUT } = quantities;

  test.each([
    [-0.001651, LENGTH, "US", "-0.065 in"],
    [-0.001651, LENGTH, "SI", "-1.651 mm"],
    [0.000254, LENGTH, "US", "0.01 in"],
    [0.028316846592 / 3600, FLOW, "US", "1 ft³/h"],
    [0.001 / 6, FLOW, "SI", "10 L/min"],
    [293.15, TEMPERATURE, "US", "68 °F"],
    [293.15, TEMPERATURE, "SI", "20 °C"],
    [10, TEMPERATURE_RISE, "US", "18 °F"],
    [10, TEMPERATURE_RISE, "SI", "10 °C"],
    [209_500, OXYGEN, "SI", "209500 ppm"],
    [0.75, SHARE, "US", "0.75"],
    [0.0254 / 60, SPEED, "US", "1 in/min"],
    [1e6, HEAT_INPUT, "SI", "1 kJ/mm"],
  ] as const)("%d of %j in %s: %s", (base, of, units, sentence) => {
    expect(written(base, of, units)).toBe(sentence);
  });

  test("six significant digits, without trailing zeros", () => {
    expect(plainNumber(0.0196850393)).toBe("0.019685");
    expect(plainNumber(1 / 3)).toBe("0.333333");
    expect(plainNumber(12.5)).toBe("12.5");
    expect(plainNumber(1_234_567)).toBe("1234570");
    expect(plainNumber(0)).toBe("0");
    expect(plainNumber(-0.1)).toBe("-0.1");
    expect(plainNumber(1 / 3, 12)).toBe("0.333333333333");
  });
});
