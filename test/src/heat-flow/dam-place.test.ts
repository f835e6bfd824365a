/** What the surface loses beside the weld. */

import { damDistance, damTemperature } from "../../../src/heat-flow/dam-place";
import type { HeatedTube } from "../../../src/heat-flow/dam-place";
import { AMBIENT, MATERIALS } from "../../../src/metal/material";
import { CURRENT, LENGTH, SHARE, si, SPEED, TEMPERATURE, TIME, VOLTAGE } from "../../../src/quantity";

const TUBE: HeatedTube = {
  od: si(0.0508, LENGTH),
  wall: si(0.00165, LENGTH),
  speed: si(0.0022, SPEED),
  material: MATERIALS["316L"],
  arcSize: undefined,
  amps: si(48, CURRENT),
  volts: si(9.4, VOLTAGE),
  extraSeconds: si(5, TIME),
  efficiency: si(0.78, SHARE),
  ambient: AMBIENT,
  surface: "none",
};
const AIR: HeatedTube = { ...TUBE, surface: "still air" };

test("still air takes heat: cooler at every distance, the more the further, and a limit is met nearer", () => {
  const left = [0.02, 0.05, 0.1].map((meters) => {
    const distance = si(meters, LENGTH);
    return (damTemperature(distance, AIR) - AMBIENT) / (damTemperature(distance, TUBE) - AMBIENT);
  });
  expect(Math.max(...left)).toBeLessThan(1);
  expect([...left].sort((a, b) => b - a)).toEqual(left);
  const limit = si(373.15, TEMPERATURE);
  expect(damDistance(limit, AIR)).toBeLessThan(damDistance(limit, TUBE));
});
