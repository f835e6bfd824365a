/** The coldest place of a ring against a dense grid of places and times. */

import { coldestRise } from "../../../src/heat-flow/coldest";
import { effectiveMetal } from "../../../src/heat-flow/effective";
import type { RingPass } from "../../../src/heat-flow/ring-pass";
import { ringHistory, ringRise } from "../../../src/heat-flow/ring-rise";
import { numbersOf } from "./tube-runs";

const PLACES = 72;
const TIMES = 120;

function minimumAt(pass: RingPass, time: number): number {
  const history = ringHistory(pass, time, Math.max(0, time - pass.end));
  let minimum = Infinity;
  for (let i = 0; i < PLACES; i += 1) {
    const along = (i * pass.circumference) / PLACES;
    minimum = Math.min(minimum, ringRise(history, history.mean, along, 0, time).value);
  }
  return minimum;
}

/** The maximum over time: through the weld and for twice the time in which the ring evens out. */
function greatest(pass: RingPass): number {
  const even = (pass.circumference / (2 * Math.PI)) ** 2 / pass.plate.metal.diffusivity;
  const last = pass.end + 2 * even;
  let most = 0;
  for (let i = 1; i <= TIMES; i += 1) most = Math.max(most, minimumAt(pass, (i * last) / TIMES));
  return most;
}

/** Small tubes, on which it counts: circumference m, speed m/s, one power or one that falls. */
test.each([
  [0.01, 0.003, [120], "316L"],
  [0.016, 0.0025, [200, 180, 150], "316L"],
  [0.03, 0.002, [300, 250], "carbon-steel-like"],
  [0.016, 0.004, [150], "titanium-like"],
] as const)("%p m round at %p m/s, %p W, %s: within 4 %", (circumference, speed, powers, metal) => {
  const plate = { metal: effectiveMetal(numbersOf(metal)), wall: 0.001, spread: 0.0008, speed };
  const dwell = 1;
  const end = dwell + (1.1 * circumference) / speed;
  const steps = powers.map((power, i) => ({ from: (i * end) / powers.length, power }));
  const pass = { plate, circumference, dwell, steps, end };
  const found = coldestRise(pass) / greatest(pass);
  expect(found).toBeGreaterThan(0.96);
  expect(found).toBeLessThan(1.04);
});
