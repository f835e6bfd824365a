import fc from "fast-check";

import { ampsByWall } from "../../../src/current/amperage";
import { DESIGNATIONS, MATERIALS } from "../../../src/metal/material";
import { LENGTH } from "../../../src/quantity";
import { RUNS } from "../../arbitrary-cells";
import { decadesOf } from "../../arbitrary-quantities";
import { expectNear, number } from "../../bead";
import { BY_HAND, evidence } from "../../evidence";

const wall = decadesOf(LENGTH, 1e-4, 0.01);

test(`one ampere a thousandth of an inch of 316L (${RUNS})`, () => {
  fc.assert(
    fc.property(wall, (thickness) => {
      expectNear(ampsByWall(thickness, MATERIALS["316L"]), thickness / 0.0000254);
    }),
  );
});

describe(
  evidence("AMPS_WALL", BY_HAND, "1 A per 0.001 in, in the proportion of AMPS_MELT at each TRAVEL_SUGGEST"),
  () => {
    test.each(DESIGNATIONS)("%s", (name) => {
      const melt = (metal: string): number =>
        number("AMPS_MELT", 0.065, number("TRAVEL_SUGGEST", 0.065, "", metal), "", metal);
      expectNear(number("AMPS_WALL", 0.065, name), (65 * melt(name)) / melt("316L"), 1e-9);
    });
  },
);
