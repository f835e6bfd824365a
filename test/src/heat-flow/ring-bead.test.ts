/** The bead on a ring so large that its heat never comes round is the bead of a plate. */

import { effectiveMetal } from "../../../src/heat-flow/effective";
import { meltSection, readyPlate } from "../../../src/heat-flow/melt";
import { readyPass, ringSection } from "../../../src/heat-flow/ring-bead";
import { numbersOf } from "./tube-runs";

test.each(["316L", "titanium-like", "carbon-steel-like"])("%s: face and root within a millionth", (metal) => {
  const effective = effectiveMetal(numbersOf(metal));
  const plate = { metal: effective, wall: 0.0016, spread: 0.001, speed: 0.003 };
  const rise = effective.liquidus - 293.15;
  const power = 480;
  // 0.6 m of travel at 3 mm/s: 200 s, long after the start has been forgotten.
  const pass = { plate, circumference: 1, dwell: 0, steps: [{ from: 0, power }], end: 300 };
  const ring = ringSection(readyPass(pass), rise, 0.6);
  const flat = meltSection(readyPlate(plate), rise, power);
  expect(flat.root).toBeGreaterThan(0.001);
  expect(Math.abs(ring.face / flat.face - 1)).toBeLessThan(1e-6);
  expect(Math.abs(ring.root / flat.root - 1)).toBeLessThan(1e-6);
});
