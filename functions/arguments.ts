/** The arguments that recur, each said once. A default goes to it where a formula has one: `orDefault(PREHEAT, AMBIENT)`. */

import type { Material } from "../src/metal/material";
import { DEFAULT_MATERIAL, DESIGNATIONS, MATERIALS } from "../src/metal/material";
import { ANGLE, LENGTH, si, SPEED } from "../src/quantity";
import type { Argument } from "./argument";
import { named, number, orDefault, word } from "./argument";

export const OD = number("Outside diameter", LENGTH);
export const WALL = number("Wall thickness", LENGTH);
export const STANDOFF = number("Arc gap", LENGTH);
export const SPEED_OF_TRAVEL = number("Surface travel", SPEED);
export const OVERLAP = orDefault(number("Degrees past the full turn", ANGLE), si(0, ANGLE));

export const MATERIAL: Argument<Material, true> = named(
  word('Designation such as "316L" (default); BEAD.MATERIALS lists them', DESIGNATIONS, DEFAULT_MATERIAL),
  (designation) => MATERIALS[designation],
);
