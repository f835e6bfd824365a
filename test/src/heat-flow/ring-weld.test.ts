/** What a weld around a ring tells beside its powers: where the sectors are, and the tubes it answers for. */

import { ringBead } from "../../../src/heat-flow/ring-forward";
import { plateOf } from "../../../src/heat-flow/plate";
import { ringOf, weldRing } from "../../../src/heat-flow/ring-weld";
import { AMBIENT, MATERIALS } from "../../../src/metal/material";
import { ANGLE, COUNT, CURRENT, LENGTH, si, SPEED, TIME } from "../../../src/quantity";
import type { Amount } from "../../../src/refusal";
import { orRefusal, Refusal } from "../../../src/refusal";

const TUBE = {
  od: si(0.0254, LENGTH),
  wall: si(0.00165, LENGTH),
  speed: si(0.0022, SPEED),
  material: MATERIALS["316L"],
  arcSize: undefined,
  preheat: AMBIENT,
  dwell: si(4, TIME),
};
const WELD = { ...TUBE, beadWidth: si(0.0043, LENGTH) };

describe("sectors from and to, degrees: the turn in equal parts, then the overlap", () => {
  test.each([
    [4, 36, [0, 90, 180, 270, 360, 396]],
    [3, 0, [0, 120, 240, 360]],
    [1, 400, [0, 360, 760]],
    // Under a degree a bead is that of the first degree; the sector is told as it was asked for.
    [2, 0.5, [0, 180, 360, 360.5]],
  ])("%p sectors, %p° of overlap", (count, overlap, edges) => {
    const sectors = weldRing({ ...WELD, sectors: si(count, COUNT), overlap: si(overlap, ANGLE) }).sectors;
    expect(sectors).toHaveLength(edges.length - 1);
    sectors.forEach(({ from, to }, i) => {
      expect(from).toBeCloseTo(edges[i] ?? NaN, 9);
      expect(to).toBeCloseTo(edges[i + 1] ?? NaN, 9);
    });
  });

  test("of a program", () => {
    const amps = [60, 55, 50].map((one) => si(one, CURRENT));
    const program = { ...TUBE, amps, dwellAmps: undefined, overlap: si(30, ANGLE), watts: 7 };
    const told = ringBead(program).map(({ from, to, amps: told }) => [from, to, told]);
    const expected = [
      [0, 120, 60],
      [120, 240, 55],
      [240, 360, 50],
      [360, 390, 50],
    ];
    expect(told).toHaveLength(4);
    expected.forEach((row, i) => {
      row.forEach((value, j) => {
        expect(told[i]?.[j]).toBeCloseTo(value, 9);
      });
    });
  });
});

test("nine sectors to a quarter have together the power of the quarter", () => {
  const overlap = si(0, ANGLE);
  const [few, many] = [4, 36].map(
    (count) => weldRing({ ...WELD, sectors: si(count, COUNT), overlap }).sectors,
  );
  few?.forEach(({ power }, quarter) => {
    const within = many?.slice(9 * quarter, 9 * quarter + 9) ?? [];
    const mean = within.reduce((sum, one) => sum + one.power, 0) / within.length;
    expect(Math.abs(mean / power - 1)).toBeLessThan(3e-3);
  });
});

describe("the smallest and the largest ring are told as they are: v(1 − h/d)·π(d − h)/(4α) at 0.02 and 10 000", () => {
  /** The refusal of a diameter, or undefined. */
  function refused(od: number, weld: typeof TUBE): Refusal | undefined {
    const answer = orRefusal(() => ringOf(si(od, LENGTH), weld));
    return answer instanceof Refusal ? answer : undefined;
  }

  test.each([
    ["too small", { ...TUBE, wall: si(0.0001, LENGTH), speed: si(0.000_05, SPEED) }, 0.000_21, 0.02, 1],
    ["too large", { ...TUBE, speed: si(0.01, SPEED) }, 100, 10_000, -1],
  ] as const)("%s", (words, weld, od, peclet, side) => {
    const said = refused(od, weld);
    expect(said?.rule[0]).toContain(`is ${words} a ring for this travel`);
    const limit = (said?.rule.find((part): part is Amount => typeof part !== "string") ?? { base: NaN }).base;
    const { wall, speed } = weld;
    const alpha = plateOf(weld).metal.diffusivity;
    const found = (speed * (1 - wall / limit) * Math.PI * (limit - wall)) / (4 * alpha);
    expect(Math.abs(found / peclet - 1)).toBeLessThan(1e-9);
    expect(refused(limit * (1 + side * 1e-9), weld)).toBeUndefined();
    expect(refused(limit * (1 - side * 1e-9), weld)).toBeDefined();
  });
});
