/** The limits of each formula: the sentence just beyond, and an answer at the limit where it still holds. */

import { typedCall } from "../../tools/docs/typed-call";
import { bead, refusal } from "../bead";
import { REFUSED } from "../refused";

test.each(REFUSED)("%s", (call, sentence) => {
  const { id, args } = typedCall(call);
  expect(refusal(id, ...args)).toBe(sentence);
});

/** At the limit, or just inside it, there is an answer. */
const ANSWERED = [
  "=BEAD.STANDOFF(0.065, 0)",
  "=BEAD.STANDOFF_SPREAD(0.0401, 0.06, 0.02)",
  "=BEAD.STANDOFF_SPREAD(0.04, 0, 0)",
  '=BEAD.FEELER_STACK(10, {5,6}, 1, "SI")',
  '=BEAD.FEELER_STACK(1, {1}, 1, "SI")',
  '=BEAD.FEELER_STACK(1, {1}, 0, "SI")',
  "=BEAD.ELECTRODE_LENGTH(0.7501, 1, 0.25)",
  "=BEAD.ELECTRODE_DIAMETER(5)",
  "=BEAD.ELECTRODE_DIAMETER(500)",
  '=BEAD.ARC_VOLTS(0.5, , "SI")',
  '=BEAD.ARC_VOLTS(3, , "SI")',
  "=BEAD.ARC_VOLTS(0.019686)",
  "=BEAD.ARC_VOLTS(0.11811)",
  "=BEAD.TRAVEL_TIME(1, 5, 0)",
  "=BEAD.OVERLAP_SUGGEST(1, 0.49999999)",
  "=BEAD.HEAT_INPUT(10, 100, 5, 1)",
  "=BEAD.HEAT_PULSED(10, 100, 1, 0, 0, 0, 5)",
  "=BEAD.AMPS_MEAN(100, 1, 0, 0)",
  "=BEAD.PULSE_SHARE(19.5, 65, 19.5)",
  "=BEAD.PULSE_SHARE(65, 65, 19.5)",
  "=BEAD.PULSE_SHARE(0, 65, 0)",
  "=BEAD.PULSE_RATE(5, 0.17, 0)",
  "=BEAD.PULSE_RATE(5, 0.17, 0.9999)",
  "=BEAD.PURGE_CHANGES(209499.9)",
  "=BEAD.PURGE_CHANGES(5.001, 5)",
  "=BEAD.PURGE_CHANGES(50, 0, 1000)",
  "=BEAD.PURGE_OXYGEN(2, 12, 20, 0)",
  "=BEAD.PURGE_LEAK(10, 0)",
  "=BEAD.CYCLE_TIME(1, 5, 0, 0, 0, 0, 0, 0)",
  "=BEAD.SCHEDULE(1, 0.065, , , , 1, , , 1080, 0.5, , 0)",
];

test.each(ANSWERED)("%s answers", (call) => {
  const { id, args } = typedCall(call);
  expect(bead(id, ...args)).toBeDefined();
});

test("more than a hundred feeler leaves are refused, a hundred are not", () => {
  const leaves = (count: number): number[][] => Array.from({ length: count }, () => [0.01]);
  expect(refusal("FEELER_STACK", 0.05, leaves(101))).toBe("#VALUE! leaves = 101: must be at most 100 leaves");
  expect(bead("FEELER_STACK", 0.05, leaves(100))).toHaveLength(5);
});
