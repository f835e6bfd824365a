/** The sums of a list, whatever is between its lines, and the work that a line costs. */

import * as dwell from "../../../src/heat-flow/dwell";
import { MATERIALS } from "../../../src/metal/material";
import { ANGLE, COUNT, FLOW, LENGTH, OXYGEN, SHARE, si, TIME } from "../../../src/quantity";
import { amount, Refusal, rule } from "../../../src/refusal";
import type { Counted, Line, Terms } from "../../../src/planning/takeoff";
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
  purgeAtLeast: si(0, TIME),
  purgeWaited: si(0, SHARE),
  damSpacing: undefined,
  ppm: si(50, OXYGEN),
  supplyPpm: si(0, OXYGEN),
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
  const { joints, seconds, arcGas, purgeGas, counted, omitted } = new Takeoff(TERMS);
  expect([joints, seconds, arcGas, purgeGas, counted, omitted]).toEqual([0, 0, 0, 0, 0, 0]);
});

test("a line adds its own seconds and gas", () => {
  const sums = new Takeoff(TERMS);
  const line = sums.add(() => LINE);
  if (line instanceof Refusal) throw line;
  // By definition: 8·(machine + 300) s, 8·0.2 L/s·machine and 8·0.1 L/s·(60 s + machine).
  expectNear(line.seconds, 8 * (line.machine + 300));
  expectNear(line.arcGas, 8 * 2e-4 * line.machine);
  expectNear(line.purgeGas, 8 * 1e-4 * (60 + line.machine));
  sums.add(() => LINE);
  expectNear(sums.seconds, 2 * line.seconds);
  expectNear(sums.arcGas, 2 * line.arcGas);
  expectNear(sums.purgeGas, 2 * line.purgeGas);
  expect(sums.joints).toBe(16);
  expect([sums.counted, sums.omitted]).toEqual([2, 0]);
});

test("a line that cannot be read, and one that cannot be counted, stay out of the sums and are counted as omitted", () => {
  const sums = new Takeoff(TERMS);
  sums.add(() => LINE);
  const { joints, seconds, arcGas, purgeGas } = sums;
  expect(sums.add(unreadable)).toBe(NO_WALL);
  const solid = sums.add(() => ({ ...LINE, wall: si(0.0127, LENGTH) }));
  expect(solid).toEqual(
    new Refusal(
      "wall",
      amount(0.0127, LENGTH),
      rule`must be less than half of od, ${amount(0.0127, LENGTH)}`,
    ),
  );
  expect(sums).toMatchObject({ joints, seconds, arcGas, purgeGas, counted: 1, omitted: 2 });
});

test("a failure that is no refusal is not taken for one", () => {
  const sums = new Takeoff(TERMS);
  const broken = (): never => {
    throw new TypeError("broken");
  };
  expect(() => sums.add(broken)).toThrow("broken");
});

test.each([
  "handling",
  "torchFlow",
  "purgeFlow",
  "purgeSeconds",
  "purgeAtLeast",
  "overlap",
  "supplyPpm",
] as const)("%s below 0 is refused before any line", (term) => {
  expect(() => new Takeoff({ ...TERMS, [term]: -1 })).toThrow(Refusal);
  expect(() => new Takeoff({ ...TERMS, [term]: 0 })).not.toThrow();
});

describe("the purge of a bore", () => {
  /** Sum over one line of 1 in × 0.065 in under these terms. */
  function purged(terms: Partial<Terms>): Counted {
    const line = new Takeoff({ ...TERMS, purgeSeconds: undefined, ...terms }).add(() => LINE);
    if (line instanceof Refusal) throw line;
    return line;
  }

  test("takes as long as it is said to, whatever the dams", () => {
    expect(purged({ purgeSeconds: si(60, TIME), damSpacing: si(6, LENGTH) }).purge).toBe(60);
    expect(purged({ purgeSeconds: si(0, TIME), damSpacing: si(6, LENGTH) }).purge).toBe(0);
  });

  test("takes as long as the sweep between the dams: ln(209 500/50) changes of its volume", () => {
    // Bore 25.4 − 3.302 = 22.098 mm; π/4·22.098²·600 mm = 0.230114 L at 0.1 L/s; ln 4190 = 8.340456.
    const { purge, machine, purgeGas } = purged({ damSpacing: si(0.6, LENGTH) });
    expectNear(purge, (Math.log(4190) * (Math.PI / 4) * 0.022098 ** 2 * 0.6) / 1e-4);
    expectNear(purgeGas, 8 * 1e-4 * (purge + machine));
  });

  test("takes no time without dams, and none where no gas flows", () => {
    expect(purged({}).purge).toBe(0);
    expect(purged({ damSpacing: si(6, LENGTH), purgeFlow: si(0, FLOW) }).purge).toBe(0);
  });

  test("an oxygen level that no sweep reaches is refused before any line, where it counts", () => {
    const none = { ...TERMS, purgeSeconds: undefined, ppm: si(5, OXYGEN), supplyPpm: si(5, OXYGEN) };
    expect(() => new Takeoff(none)).not.toThrow();
    expect(
      () => new Takeoff({ ...none, purgeSeconds: si(60, TIME), damSpacing: si(6, LENGTH) }),
    ).not.toThrow();
    expect(() => new Takeoff({ ...none, damSpacing: si(6, LENGTH) })).toThrow("ppm refused");
    expect(() => new Takeoff({ ...TERMS, damSpacing: si(0, LENGTH) })).toThrow("damSpacing refused");
  });
});

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
