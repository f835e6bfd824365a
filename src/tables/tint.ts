/** Colour samples for purged welds. */

import { atLeast0 } from "../limits";
import { OXYGEN } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** AWS D18.2: oxygen in the argon backing of samples 1 to 10, ppm. */
const SAMPLES = [10, 25, 50, 100, 200, 500, 1000, 5000, 12_500, 25_000] as const;

/** Number of the D18.2 sample welded with the smallest listed oxygen level that is not under `ppm`. */
export function tintSample(ppm: number): number {
  atLeast0("ppm", ppm, OXYGEN);
  const index = SAMPLES.findIndex((level) => level >= ppm);
  if (index >= 0) return index + 1;
  throw new Refusal(
    "ppm",
    amount(ppm, OXYGEN),
    rule`no sample shows so much oxygen; the last is for ${amount(SAMPLES[9], OXYGEN)}`,
    "unanswerable",
  );
}
