/** The curve of the usual dwell against the dwell itself. */

import fc from "fast-check";

import { dwellOf } from "../../../src/heat-flow/dwell";
import { TABLE_WALLS, usualDwell } from "../../../src/heat-flow/dwell-table";
import { DESIGNATIONS, MATERIALS } from "../../../src/metal/material";
import { LENGTH } from "../../../src/quantity";
import { decadesOf } from "../../arbitrary-quantities";
import { commonBeadWidth } from "../../../src/travel/bead";
import { suggestedSpeed } from "../../../src/travel/travel";

test("every wall and metal: within 1e-4", () => {
  fc.assert(
    fc.property(decadesOf(LENGTH, ...TABLE_WALLS), fc.constantFrom(...DESIGNATIONS), (wall, designation) => {
      const material = MATERIALS[designation];
      const beadWidth = commonBeadWidth(wall);
      const speed = suggestedSpeed(beadWidth, material);
      const exact = dwellOf({ wall, speed, material, arcSize: undefined }, beadWidth);
      expect(Math.abs(usualDwell(wall, material) / exact - 1)).toBeLessThan(1e-4);
    }),
  );
});
