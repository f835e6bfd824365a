/** How long the arc stands still before it travels. */

import { rootBetween } from "../numerics/root";
import { scaledE1 } from "../numerics/exponential-integral";
import { dimensionlessWidth, meltResistance } from "./melt-power";
import type { Plate } from "./plate";
import type { Length, Speed, Time } from "../quantity";
import { TIME, si } from "../quantity";

/**
 * Seconds a standing line source of the bead's own power needs to melt out to half its width:
 * E₁(b²/16αt) = 4πkhθ/q. Wall, conductivity and preheat cancel, for q is in proportion to them.
 */
export function startDwell(plate: Plate, speed: Speed, width: Length): Time {
  return si((width * width * dwellNumber(dimensionlessWidth(plate, speed, width))) / plate.diffusivity, TIME);
}

/** The dwell in units of b²/α, αt/b², which follows from λb/2 = v·b/(4α) alone. */
export function dwellNumber(halfWidth: number): number {
  return 1 / (16 * inverseE1(meltResistance(halfWidth)));
}

/** The u with E₁(u) = value; u > e^−(value + 1), for E₁(u) > −ln u − γ, and u < max(1, −ln value), for E₁(u) < e^−u. */
function inverseE1(value: number): number {
  const miss = (logU: number): number => {
    const u = Math.exp(logU);
    return Math.log(scaledE1(u)) - u - Math.log(value);
  };
  return Math.exp(rootBetween(miss, -value - 1, Math.log(Math.max(1, -Math.log(value)))));
}
