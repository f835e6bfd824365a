/** Color samples for purged welds. */

import { atLeast0, isAbove } from "../limits";
import type { Count, Oxygen } from "../quantity";
import { COUNT, OXYGEN, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** [aws-d18.2]: oxygen in the argon backing of samples 1 to 10, ppm. */
const SAMPLES = [10, 25, 50, 100, 200, 500, 1000, 5000, 12_500, 25_000] as const;
/** The last level that a sample shows, ppm. */
export const MOST_SAMPLED = si(SAMPLES[9], OXYGEN);

/** Number of the D18.2 sample welded with the smallest listed oxygen level that is not under `ppm`. */
export function tintSample(ppm: Oxygen): Count {
  atLeast0("ppm", ppm, OXYGEN);
  const index = SAMPLES.findIndex((level) => !isAbove(ppm, level));
  if (index >= 0) return si(index + 1, COUNT);
  throw new Refusal(
    "ppm",
    amount(ppm, OXYGEN),
    rule`no sample shows so much oxygen; the last is for ${amount(MOST_SAMPLED, OXYGEN)}`,
    "unanswerable",
  );
}
