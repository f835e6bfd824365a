/** Joints to start, and coupons to weld. */

import { COMMON_EVERY, couponsDue, LEAST_EVERY, MOST_EVENTS, MOST_HOURS } from "../../src/inspection/coupons";
import { EVEN_ODDS, jointsToStart, MOST_GOOD, MOST_STARTED } from "../../src/inspection/starts";
import { COUNT, DURATION, plainNumber, SHARE, si, written } from "../../src/quantity";
import { number, orDefault, someNumbers } from "../argument";
import { formula } from "../formula";
import { scalar } from "../gives";

export const JOINTS_START = formula({
  id: "JOINTS_START",
  meaning: "Joints to start so that enough of them are good",
  args: {
    good: number("Good joints needed", COUNT),
    yield: someNumbers("Fraction of joints that are good; a range holds one of each stage in turn", SHARE),
    confidence: orDefault(number("Confidence, above 0 and less than 1", SHARE), EVEN_ODDS),
  },
  gives: scalar(COUNT),
  tex: [String.raw`P = \sum_{i \ge g} C(N, i)\, y^i\, (1 - y)^{N - i}`, String.raw`P \ge \text{confidence}`],
  where: {
    N: "joints to start: the smallest number that holds",
    P: "chance that enough are good",
    C: "ways to choose the second number out of the first",
    i: "good joints among them",
    g: "good joints needed (good)",
    y: "fraction that is good (yield), the product of the stages",
    confidence: "chance of having enough",
  },
  validity: `good 1 to ${plainNumber(MOST_GOOD)}, each yield above 0 to 1; #N/A above ${plainNumber(MOST_STARTED)} joints to start`,
  assumptions: "Every joint is good with the same chance, whatever became of the others",
  source: "Exact: binomial sum; terms by [loader-2000]",
  related: ["REJECT_RATE", "SAMPLE_PLAN", "COUPONS", "TAKEOFF"],
  synonyms: [
    "scrap allowance",
    "overage",
    "spares",
    "first pass yield",
    "rolled yield",
    "reject allowance",
    "rework",
    "extra joints",
  ],
  example: { args: [100, 0.97, 0.95], gives: "106" },
  calc: ({ good, yield: yields, confidence }) => jointsToStart(good, yields, confidence),
});

export const COUPONS = formula({
  id: "COUPONS",
  meaning: "Test coupons of a working period",
  args: {
    hours: number("Length of the working period", DURATION),
    every: orDefault(number("Time from coupon to coupon", DURATION), COMMON_EVERY),
    idles: orDefault(number("Times that the machine was idle too long", COUNT), si(0, COUNT)),
    changes: orDefault(
      number("Changes of operator, weld head, power supply or gas source", COUNT),
      si(0, COUNT),
    ),
  },
  gives: scalar(COUNT),
  tex: [
    String.raw`N = 2 + \left(\left\lceil\frac{\text{hours}}{\text{every}}\right\rceil - 1\right) + \text{idles} + \text{changes}`,
  ],
  where: {
    N: "coupons: one at the start, one at the end, and those between",
    hours: "length of the period",
    every: "from coupon to coupon",
    idles: "times idle for more than 30 min",
    changes: "of operator, weld head, power supply or gas source",
  },
  validity: `hours above 0 to ${written(MOST_HOURS, DURATION, "US")}, every ${written(LEAST_EVERY, DURATION, "US")} or more, idles and changes 0 to ${plainNumber(MOST_EVENTS)}. Idle too long: over 30 min by NFPA 99. A coupon due at the very end is the one of the end. The procedure and its code govern.`,
  source: "[nfpa-99], medical gas tube; that a coupon due at the end counts once is our reading: an estimate",
  related: ["SAMPLE_PLAN", "JOINTS_START", "CYCLE_TIME", "CREW_OUTPUT"],
  synonyms: [
    "coupon",
    "test weld",
    "sample weld",
    "every four hours",
    "shift",
    "NFPA 99",
    "bead check",
    "start of shift",
  ],
  example: { args: [10], gives: "4" },
  calc: ({ hours, every, idles, changes }) => couponsDue(hours, every, idles, changes),
});
