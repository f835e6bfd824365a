/** The arguments that recur, each said once. A default goes to it where a formula has one: `orDefault(PREHEAT, AMBIENT)`. */

import { ARC_VOLTS_GAPS, COMMON_ALLOWANCE } from "../src/gap/electrode";
import type { Gas } from "../src/gas/gas";
import { DEFAULT_GAS, GAS_NAMES, GASES } from "../src/gas/gas";
import { ARC_EFFICIENCY } from "../src/heat-flow/arc";
import type { Material } from "../src/metal/material";
import { AMBIENT, DEFAULT_MATERIAL, DESIGNATIONS, MATERIALS } from "../src/metal/material";
import {
  ANGLE,
  CURRENT,
  FLOW,
  LENGTH,
  plainNumber,
  SHARE,
  si,
  SPEED,
  TEMPERATURE,
  TIME,
  VOLTAGE,
  written,
} from "../src/quantity";
import { BASE_WIDTH, WIDTH_PER_WALL } from "../src/travel/bead";
import { designationOf } from "../src/metal/names";
import type { Argument } from "./argument";
import { named, number, ofTrade, orComputed, orDefault, word } from "./argument";
import { TRADE_ODS, TRADE_WALLS } from "./sense";

export const OD = ofTrade(number("Outside diameter", LENGTH), TRADE_ODS);
export const WALL = ofTrade(number("Wall thickness", LENGTH), TRADE_WALLS);
export const NOMINAL_WALL = ofTrade(number("Nominal wall thickness", LENGTH), TRADE_WALLS);
export const STANDOFF = number("Arc gap", LENGTH);
export const ALLOWANCE = orDefault(number("Added to half the wall", LENGTH), COMMON_ALLOWANCE);
export const SPEED_OF_TRAVEL = number("Surface travel", SPEED);
export const DWELL = number("Arc-on time before rotation", TIME);
export const OVERLAP = number("Overlap past the full turn", ANGLE);
export const OVERLAP_OR_NONE = orDefault(OVERLAP, si(0, ANGLE));

export const VOLTS = number("Arc voltage", VOLTAGE);
export const VOLTS_OF_WALL = orComputed(
  VOLTS,
  `ARC_VOLTS at STANDOFF of the wall, but of ${written(ARC_VOLTS_GAPS[0], LENGTH, "SI")} at the minimum,`,
);
export const ARC_SIZE = orComputed(
  number("Width of the arc's spot, 4σ of its Gaussian", LENGTH),
  "4 × (0.5 mm + half of STANDOFF)",
);
export const MEAN_AMPS = number("Mean current", CURRENT);
export const PEAK_AMPS = number("Peak current", CURRENT);
export const PEAK_TIME = number("Time at peak", TIME);
export const BACK_AMPS = number("Background current", CURRENT);
export const BACK_TIME = number("Time at background", TIME);

/** How `commonBeadWidth` finds the width that is omitted. */
export const COMMON_WIDTH = `${written(BASE_WIDTH, LENGTH, "SI")} + ${plainNumber(WIDTH_PER_WALL)} × wall`;
export const BEAD_WIDTH = orComputed(number("Fused width, mean of face and root", LENGTH), COMMON_WIDTH);

export const EFFICIENCY = orDefault(
  number("Fraction of the arc's power that reaches the tube", SHARE),
  ARC_EFFICIENCY,
);
export const TUBE_TEMPERATURE = orDefault(
  number("Temperature of the tube before welding", TEMPERATURE),
  AMBIENT,
);

export const MATERIAL: Argument<Material, true> = named(
  word(
    'Designation such as "316L" (default); BEAD.MATERIALS lists them',
    DESIGNATIONS,
    DEFAULT_MATERIAL,
    designationOf,
  ),
  (designation) => MATERIALS[designation],
);

export const BORE = number("Inside diameter", LENGTH);
export const FLOW_OF_PURGE = number("Purge flow", FLOW);
export const FLOW_OF_TORCH = number("Shielding gas flow at the torch", FLOW);

export const GAS: Argument<Gas, true> = named(
  word('"AR" (default), "N2", "HE" or "AIR"', GAS_NAMES, DEFAULT_GAS),
  (name) => GASES[name],
);
