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

/** Small tubes, on which it counts: circumference m, speed m/s, turns, one power or one that falls. */
test.each([
  [0.01, 0.003, 1.1, [120], "316L"],
  [0.016, 0.0025, 1.1, [200, 180, 150], "316L"],
  [0.03, 0.002, 1.1, [300, 250], "carbon-steel-like"],
  [0.016, 0.004, 1.1, [150], "titanium-like"],
  // The far side is warmest long after the arc has gone out.
  [0.016, 0.008, 0.3, [300], "316L"],
  [0.024, 0.006, 0.5, [250, 300], "316L"],
  // The first power is by far the larger: it is over when the ring is warmest.
  [0.008, 0.0005, 1.1, [120, 4], "carbon-steel-like"],
] as const)(
  "%p m at %p m/s, %p turns, %p W, %s: within 4 %",
  (circumference, speed, turns, powers, metal) => {
    const plate = { metal: effectiveMetal(numbersOf(metal)), wall: 0.001, spread: 0.0008, speed };
    const dwell = 1;
    const end = dwell + (turns * circumference) / speed;
    const steps = powers.map((power, i) => ({ from: (i * end) / powers.length, power }));
    const pass = { plate, circumference, dwell, steps, end };
    const found = coldestRise(pass) / greatest(pass);
    expect(found).toBeGreaterThan(0.96);
    expect(found).toBeLessThan(1.04);
  },
);
