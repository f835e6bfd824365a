/** The dwell against a slow sum of the same equations, and what must hold of it. */

import { effectiveMetal, metalNumbers, ROOM } from "../../../src/heat-flow/effective";
import { MATERIALS } from "../../../src/metal/material";
import { byName, expectNear, number } from "../../bead";
import { evidence, INDEPENDENT } from "../../evidence";
import { standingSeconds } from "../../standing-arc";

describe(evidence("START_DWELL", INDEPENDENT, "Simpson's rule in ln τ, places found by halving"), () => {
  // Wall and bead, mm; travel, mm/min; σ by default 0.5 mm + half the gap of wall/2 + 0.254 mm.
  test.each([
    ["316L", 1.651, 130.499_302_65, 4.302],
    ["2205", 2.1, 109.532_307_69, 5.2],
    ["CS", 3, 90, 8],
  ] as const)("%s of %d mm at %d mm/min, bead %d mm", (material, wall, speed, beadWidth) => {
    const metal = effectiveMetal(metalNumbers(MATERIALS[material]));
    const spread = 0.0005 + (wall / 2 + 0.254) / 2000;
    const seconds = standingSeconds({
      metal,
      wall: wall / 1000,
      spread,
      speed: speed / 60_000,
      beadWidth: beadWidth / 1000,
      rise: metal.liquidus - ROOM,
    });
    const cells = byName("START_DWELL", { wall, speed, beadWidth, material, units: "SI" });
    expectNear(number("START_DWELL", ...cells), seconds, 1e-6);
  });
});
