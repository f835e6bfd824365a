import fc from "fast-check";

import { ampsByWall } from "../../../src/current/amperage";
import { DESIGNATIONS, MATERIALS } from "../../../src/metal/material";
import { LENGTH } from "../../../src/quantity";
import { RUNS } from "../../arbitrary-cells";
import { decadesOf, times } from "../../arbitrary-quantities";
import { expectNear, number, table } from "../../bead";
import { BY_HAND, evidence } from "../../evidence";

const wall = decadesOf(LENGTH, 1e-4, 0.01);

test(`one ampere a thousandth of an inch of 316L, more wall more amps in proportion (${RUNS})`, () => {
  fc.assert(
    fc.property(wall, fc.constantFrom(...DESIGNATIONS), (thickness, designation) => {
      const metal = MATERIALS[designation];
      expectNear(ampsByWall(thickness, MATERIALS["316L"]), thickness / 0.0000254);
      expectNear(ampsByWall(times(2, thickness), metal), 2 * ampsByWall(thickness, metal));
    }),
  );
});

describe(
  evidence(
    "AMPS_WALL",
    BY_HAND,
    "1 A per 0.001 in, in proportion to hot k × (liquidus − 20 °C) of MATERIALS",
  ),
  () => {
    test("every metal of the table", () => {
      const power = new Map(
        table("MATERIALS").map(([name, hotK, , liquidus]) => [
          name,
          (hotK as number) * ((liquidus as number) - 20),
        ]),
      );
      for (const name of DESIGNATIONS) {
        const ratio = (power.get(name) ?? NaN) / (power.get("316L") ?? NaN);
        expectNear(number("AMPS_WALL", 0.065, name), 65 * ratio);
      }
    });
  },
);
