/** Moisture of a gas: dew or frost point and parts per million by volume at 1 atm. */

import { between } from "../limits";
import { rootBetween } from "../numerics/root";
import type { Moisture, Temperature } from "../quantity";
import { MOISTURE, si, TEMPERATURE } from "../quantity";

/** K. The driest gas that anyone meters, and the wettest that is still a purge gas. */
export const DEW_POINTS = [si(173.15, TEMPERATURE), si(323.15, TEMPERATURE)] as const;
const ATMOSPHERE = 101_325;
/** Ice, water and vapor in balance, K: frost below, dew above. */
const TRIPLE_POINT = 273.16;
const MILLION = 1e6;

/** Water vapor in gas saturated at the dew point, ppm by volume: 10⁶·e(T)/1 atm. Gas as ideal. */
export function moistureAt(dewPoint: Temperature): Moisture {
  const [driest, wettest] = DEW_POINTS;
  return ppm(between("dewPoint", dewPoint, TEMPERATURE, driest, wettest));
}

/** The dew point of a gas, K, frost point below the triple point: the inverse. */
export function dewPointOf(moisture: Moisture): Temperature {
  const [driest, wettest] = DEW_POINTS;
  const held = between("ppm", moisture, MOISTURE, ppm(driest), ppm(wettest));
  // In logarithms the curve is nearly straight.
  return si(
    rootBetween((kelvin) => Math.log(ppm(kelvin) / held), driest, wettest),
    TEMPERATURE,
  );
}

function ppm(kelvin: number): Moisture {
  const logPressure = kelvin < TRIPLE_POINT ? logOverIce(kelvin) : logOverWater(kelvin);
  return si((MILLION * Math.exp(logPressure)) / ATMOSPHERE, MOISTURE);
}

/** ln of the vapor pressure over ice, Pa [murphy-koop-2005], above 110 K. */
function logOverIce(kelvin: number): number {
  return 9.550426 - 5723.265 / kelvin + 3.53068 * Math.log(kelvin) - 0.00728332 * kelvin;
}

/** ln of the vapor pressure over liquid water, Pa [murphy-koop-2005], 123 to 332 K. */
function logOverWater(kelvin: number): number {
  const logT = Math.log(kelvin);
  const warm = 54.842763 - 6763.22 / kelvin - 4.21 * logT + 0.000367 * kelvin;
  const cold = 53.878 - 1331.22 / kelvin - 9.44523 * logT + 0.014025 * kelvin;
  return warm + Math.tanh(0.0415 * (kelvin - 218.8)) * cold;
}
