import {
  above0,
  atLeast0,
  atMost,
  between,
  isAbove,
  isAt,
  isBelow,
  shareAbove0,
  temperature,
  tube,
  wholeDown,
  wholeFrom1,
  wholeUp,
} from "../../src/limits";
import { AMBIENT, MATERIALS, meltingRise } from "../../src/metal/material";
import { LENGTH, si, TIME } from "../../src/quantity";
import { Refusal } from "../../src/refusal";

/** The sentence in SI with which a limit refuses a value, or the value it lets pass. */
function said(check: () => unknown): unknown {
  try {
    return check();
  } catch (problem) {
    if (problem instanceof Refusal && problem.kind === "impossible") return problem.sentence("SI");
    throw problem;
  }
}

const SLIGHT = 1e-12;
/** Relative: what rounding may leave, and more than that. */
const WITHIN = 0.99e-9;
const BEYOND = 1e-8;

test("above 0", () => {
  expect(above0("wall", Number.MIN_VALUE, LENGTH)).toBe(Number.MIN_VALUE);
  expect(said(() => above0("wall", 0, LENGTH))).toBe("wall = 0 mm: must be above 0");
  expect(said(() => above0("wall", -0, LENGTH))).toBe("wall = 0 mm: must be above 0");
  expect(said(() => above0("wall", -0.001, LENGTH))).toBe("wall = -1 mm: must be above 0");
  expect(said(() => above0("wall", NaN, LENGTH))).toBe("wall = NaN mm: must be above 0");
});

test("not below 0", () => {
  expect(atLeast0("dwell", 0, TIME)).toBe(0);
  expect(said(() => atLeast0("dwell", -SLIGHT, TIME))).toBe("dwell = -1e-12 s: must be 0 or more");
  expect(said(() => atLeast0("dwell", NaN, TIME))).toBe("dwell = NaN s: must be 0 or more");
});

test("at most, the limit allowed", () => {
  expect(atMost("od", 10, LENGTH, 10)).toBe(10);
  expect(said(() => atMost("od", 10.001, LENGTH, 10))).toBe("od = 10001 mm: must be at most 10000 mm");
  expect(said(() => atMost("od", NaN, LENGTH, 10))).toBe("od = NaN mm: must be at most 10000 mm");
});

test("between, both ends allowed", () => {
  const check = (gap: number) => (): unknown => between("gap", gap, LENGTH, 0.001, 0.002);
  expect(said(check(0.001))).toBe(0.001);
  expect(said(check(0.002))).toBe(0.002);
  expect(said(check(0.0009))).toBe("gap = 0.9 mm: must be between 1 mm and 2 mm");
  expect(said(check(0.001 * (1 - BEYOND)))).toBe("gap = 0.99999999 mm: must be between 1 mm and 2 mm");
  expect(said(check(0.002 * (1 + BEYOND)))).toBe("gap = 2.00000002 mm: must be between 1 mm and 2 mm");
  expect(said(check(NaN))).toBe("gap = NaN mm: must be between 1 mm and 2 mm");
});

test("a temperature is above absolute zero, however little", () => {
  expect(temperature("preheat", Number.MIN_VALUE)).toBe(Number.MIN_VALUE);
  expect(said(() => temperature("preheat", 0))).toBe(
    "preheat = -273.15 °C: must be above absolute zero, -273.15 °C",
  );
});

test("a share above 0 and at most 1", () => {
  expect(shareAbove0("efficiency", Number.MIN_VALUE)).toBe(Number.MIN_VALUE);
  expect(shareAbove0("efficiency", 1)).toBe(1);
  for (const share of [0, -0.1, 1.01, NaN]) {
    expect(said(() => shareAbove0("efficiency", share))).toBe(
      `efficiency = ${String(share)}: must be above 0 and at most 1`,
    );
  }
});

test("a whole number from 1", () => {
  expect(wholeFrom1("cells", 1, 10)).toBe(1);
  expect(wholeFrom1("cells", 10, 10)).toBe(10);
  for (const count of [0, -1, 1.5, 11, NaN, Infinity]) {
    expect(said(() => wholeFrom1("cells", count, 10))).toBe(
      `cells = ${String(count)}: must be a whole number from 1 to 10`,
    );
  }
});

test("a tube has a bore: wall less than half of od", () => {
  const check = (od: number, wall: number) => (): void => {
    tube(si(od, LENGTH), si(wall, LENGTH));
  };
  expect(said(check(0.0254, 0.0127 * (1 - BEYOND)))).toBeUndefined();
  expect(said(check(0.0254, 0.0127))).toBe("wall = 12.7 mm: must be less than half of od, 12.7 mm");
  expect(said(check(0.0254, 0.0127 + SLIGHT))).toBe(
    "wall = 12.700000001 mm: must be less than half of od, 12.7 mm",
  );
  expect(said(check(0, 0.001))).toBe("od = 0 mm: must be above 0");
  expect(said(check(0.0254, 0))).toBe("wall = 0 mm: must be above 0");
});

describe("rounding may leave a value a hair off a limit", () => {
  const [under, over] = [1 - WITHIN, 1 + WITHIN];

  test("it then is that limit, not beyond it", () => {
    expect(atMost("od", 10 * over, LENGTH, 10)).toBe(10);
    expect(between("gap", 0.002 * over, LENGTH, 0.001, 0.002)).toBe(0.002);
    expect(between("gap", 0.001 * under, LENGTH, 0.001, 0.002)).toBe(0.001);
    expect(shareAbove0("efficiency", over)).toBe(1);
    expect(wholeFrom1("cells", 10 * over, 10)).toBe(10);
    // In floating point 0.3/0.1 is a hair under 3.
    expect(0.3 / 0.1).toBeLessThan(3);
    expect(wholeFrom1("cells", 0.3 / 0.1, 10)).toBe(3);
  });

  test("inside the limits it stays what it is", () => {
    expect(atMost("od", 10 * under, LENGTH, 10)).toBe(10 * under);
    expect(between("gap", 0.001 * over, LENGTH, 0.001, 0.002)).toBe(0.001 * over);
    expect(shareAbove0("efficiency", under)).toBe(under);
  });

  test("beyond that it is refused", () => {
    expect(said(() => atMost("od", 10 * (1 + BEYOND), LENGTH, 10))).toMatch(/^od = 10000\.0001 mm: /);
    expect(said(() => shareAbove0("efficiency", 1 + BEYOND))).toMatch(/^efficiency = 1\.00000001: /);
    expect(said(() => wholeFrom1("cells", 3 * (1 + BEYOND), 10))).toMatch(/^cells = 3\.00000003: /);
  });

  test("0 has no hair", () => {
    expect(said(() => between("overlap", -Number.MIN_VALUE, LENGTH, 0, 1))).toMatch(/^overlap = /);
    expect(isAt(0, 0)).toBe(true);
    expect(isAt(Number.MIN_VALUE, 0)).toBe(false);
  });

  test("what must lie above or below a limit is refused at it, in whichever units it came", () => {
    for (const factor of [under, 1, over]) {
      expect([isAbove(3 * factor, 3), isBelow(3 * factor, 3)]).toEqual([false, false]);
    }
    expect([isAbove(3 * (1 + BEYOND), 3), isBelow(3 * (1 - BEYOND), 3)]).toEqual([true, true]);
    expect(
      said(() => {
        tube(si(0.0254, LENGTH), si(0.0127 * under, LENGTH));
      }),
    ).toMatch(/^wall = /);
  });

  test("whole numbers are not lost to it, nor won by more", () => {
    // In floating point (0.1 + 0.7)/0.1 is a hair under 8.
    expect(wholeDown((0.1 + 0.7) / 0.1)).toBe(8);
    expect([wholeDown(8 * (1 - BEYOND)), wholeUp(8 * (1 + BEYOND))]).toEqual([7, 9]);
    expect([wholeUp(8 * over), wholeUp(8), wholeUp(7.5), wholeDown(7.5)]).toEqual([8, 8, 8, 7]);
  });
});

test("metal melts from below its liquidus only", () => {
  const metal = MATERIALS["316L"];
  // 1450 − 20 °C.
  expect(meltingRise(metal, AMBIENT)).toBeCloseTo(1430, 9);
  expect(meltingRise(metal, 1723.15 - 1)).toBeCloseTo(1, 9);
  expect(said(() => meltingRise(metal, 1723.15))).toBe(
    "preheat = 1450 °C: must be below the liquidus, 1450 °C",
  );
  expect(said(() => meltingRise(metal, 1823.15))).toBe(
    "preheat = 1550 °C: must be below the liquidus, 1450 °C",
  );
});
