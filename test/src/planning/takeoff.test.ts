/** The sums of a list, whatever is between its lines, and the work that a line costs. */

import * as dwell from "../../../src/heat-flow/dwell";
import { MATERIALS } from "../../../src/metal/material";
import { ANGLE, COUNT, FLOW, LENGTH, si, TIME } from "../../../src/quantity";
import { amount, Refusal, rule } from "../../../src/refusal";
import type { Line, Terms } from "../../../src/planning/takeoff";
import { Takeoff } from "../../../src/planning/takeoff";
import { expectNear } from "../../bead";

jest.mock("../../../src/heat-flow/dwell", () => {
  const actual: typeof dwell = jest.requireActual("../../../src/heat-flow/dwell");
  return { ...actual, dwellOf: jest.fn(actual.dwellOf) };
});

const TERMS: Terms = {
  handling: si(300, TIME),
  torchFlow: si(2e-4, FLOW),
  purgeFlow: si(1e-4, FLOW),
  purgeSeconds: si(60, TIME),
  overlap: si(36, ANGLE),
};
/** Invented: so many joints of 1 in × 0.065 in. */
const LINE: Line = {
  quantity: si(8, COUNT),
  od: si(0.0254, LENGTH),
  wall: si(0.001651, LENGTH),
  material: MATERIALS["316L"],
};
const NO_WALL = new Refusal("wall", "blank", ["needs a number"]);

function unreadable(): never {
  throw NO_WALL;
}

test("starts with nothing", () => {
  const { seconds, gas, counted, omitted } = new Takeoff(TERMS);
  expect([seconds, gas, counted, omitted]).toEqual([0, 0, 0, 0]);
});

test("a line adds its own seconds and gas", () => {
  const sums = new Takeoff(TERMS);
  const line = sums.add(() => LINE);
  if (line instanceof Refusal) throw line;
  // By definition: 8·(machine + 300) s, 8·(0.2 L/s·machine + 0.1 L/s·(60 s + machine)).
  expectNear(line.seconds, 8 * (line.machine + 300));
  expectNear(line.gas, 8 * (2e-4 * line.machine + 1e-4 * (60 + line.machine)));
  sums.add(() => LINE);
  expectNear(sums.seconds, 2 * line.seconds);
  expectNear(sums.gas, 2 * line.gas);
  expect([sums.counted, sums.omitted]).toEqual([2, 0]);
});

test("a line that cannot be read, and one that cannot be counted, stay out of the sums and are counted as omitted", () => {
  const sums = new Takeoff(TERMS);
  sums.add(() => LINE);
  const { seconds, gas } = sums;
  expect(sums.add(unreadable)).toBe(NO_WALL);
  const solid = sums.add(() => ({ ...LINE, wall: si(0.0127, LENGTH) }));
  expect(solid).toEqual(
    new Refusal(
      "wall",
      amount(0.0127, LENGTH),
      rule`must be less than half of od, ${amount(0.0127, LENGTH)}`,
    ),
  );
  expect(sums).toMatchObject({ seconds, gas, counted: 1, omitted: 2 });
});

test("a failure that is no refusal is not taken for one", () => {
  const sums = new Takeoff(TERMS);
  const broken = (): never => {
    throw new TypeError("broken");
  };
  expect(() => sums.add(broken)).toThrow("broken");
});

test.each(["handling", "torchFlow", "purgeFlow", "purgeSeconds", "overlap"] as const)(
  "%s below 0 is refused before any line",
  (term) => {
    expect(() => new Takeoff({ ...TERMS, [term]: -1 })).toThrow(Refusal);
    expect(() => new Takeoff({ ...TERMS, [term]: 0 })).not.toThrow();
  },
);

test("the slow part is done once a metal: ten thousand walls ask for no more dwells than one", () => {
  const asked = jest.mocked(dwell.dwellOf);
  const times = (lines: number): number => {
    asked.mockClear();
    const sums = new Takeoff(TERMS);
    for (let i = 0; i < lines; i += 1) {
      sums.add(() => ({ ...LINE, material: MATERIALS.CS, wall: si(0.001 + i * 1e-7, LENGTH) }));
    }
    expect(sums.counted).toBe(lines);
    return asked.mock.calls.length;
  };
  const first = times(1);
  expect(first).toBeGreaterThan(0);
  expect(times(10_000)).toBe(0);
});
