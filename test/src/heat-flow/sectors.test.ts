/** The power by sectors against everything superposed in time. */

import { effectiveMetal } from "../../../src/heat-flow/effective";
import { powerOfMean, readyPlate } from "../../../src/heat-flow/melt";
import { placeSection, readyPass } from "../../../src/heat-flow/ring-bead";
import type { RingPass } from "../../../src/heat-flow/ring-pass";
import type { SectorPlan, SectorPower } from "../../../src/heat-flow/sectors";
import { sectorPowers } from "../../../src/heat-flow/sectors";
import { startDwell } from "../../../src/heat-flow/start-dwell";
import { numbersOf } from "./tube-runs";

const QUARTERS = [0.25, 0.5, 0.75, 1];

/** od, wall mm; mm/s at the mean radius; bead 1 mm + 2 walls. */
function planOf(od: number, wall: number, speed: number, metal: string, ends = QUARTERS): SectorPlan {
  const effective = effectiveMetal(numbersOf(metal));
  const plate = { metal: effective, wall: wall / 1000, spread: 0.001, speed: speed / 1000 };
  const width = 0.001 + (2 * wall) / 1000;
  const rise = effective.liquidus - 293.15;
  const power = powerOfMean(readyPlate(plate), rise, width);
  const dwell = startDwell(plate, rise, power, width);
  return { plate, circumference: (Math.PI * (od - wall)) / 1000, width, rise, dwell, ends };
}

function passOf(
  { plate, circumference, dwell, ends }: SectorPlan,
  sectors: readonly SectorPower[],
): RingPass {
  const turn = circumference / plate.speed;
  const steps = sectors.map(({ power }, i) => ({
    from: i === 0 ? 0 : dwell + turn * (ends[i - 1] ?? 0),
    power,
  }));
  return { plate, circumference, dwell, steps, end: dwell + turn * (ends[ends.length - 1] ?? 1) };
}

describe("the bead keeps its mean width round the ring, superposed in time, from 30° to 310°", () => {
  test.each([
    [6.35, 0.889, 3, "316L", 0.08],
    [12.7, 1.245, 2.4, "316L", 0.06],
    [25.4, 1.651, 2, "316L", 0.05],
    [12.7, 1.245, 2.4, "carbon-steel-like", 0.06],
    [101.6, 2.11, 1.8, "titanium-like", 0.06],
  ] as const)("%p × %p mm, %p mm/s, %s: within %p", (od, wall, speed, metal, bound) => {
    const plan = planOf(od, wall, speed, metal);
    const ready = readyPass(passOf(plan, sectorPowers(plan)));
    for (let deg = 30; deg <= 310; deg += 20) {
      const { face, root } = placeSection(ready, plan.rise, (plan.circumference * deg) / 360);
      expect(Math.abs((face + root) / 2 / plan.width - 1)).toBeLessThan(bound);
    }
  });
});

test("the first sector of a large tube takes what a cold plate takes", () => {
  const plan = planOf(300, 1.651, 2, "316L");
  const cold = powerOfMean(readyPlate(plan.plate), plan.rise, plan.width);
  expect(Math.abs((sectorPowers(plan)[0]?.power ?? NaN) / cold - 1)).toBeLessThan(0.02);
});

test("the tube warms up: power falls from sector to sector, sooner on a smaller tube, and in the overlap", () => {
  const ends = [...QUARTERS, 1.1];
  const shares = [50.8, 25.4, 12.7].map((od) => {
    const sectors = sectorPowers(planOf(od, 1.245, 2.4, "316L", ends));
    const warmths = sectors.map(({ warmth }) => warmth);
    expect([...warmths].sort((a, b) => a - b)).toEqual(warmths);
    const [first, , , fourth, overlap] = sectors.map(({ power }) => power);
    expect(overlap).toBeLessThan(fourth ?? NaN);
    return (fourth ?? NaN) / (first ?? NaN);
  });
  expect([...shares].sort((a, b) => b - a)).toEqual(shares);
});

test("without a dwell and with many sectors there is a power for each", () => {
  const ends = Array.from({ length: 36 }, (_, i) => (i + 1) / 36);
  const sectors = sectorPowers({ ...planOf(25.4, 1.651, 2, "316L", ends), dwell: 0 });
  expect(sectors).toHaveLength(36);
  for (const { power } of sectors) expect(power).toBeGreaterThan(0);
});
