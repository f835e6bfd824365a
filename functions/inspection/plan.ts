/** How many joints of a lot to look at, and what that proves. */

import { LEVELS, QUALITY_LIMITS, SEVERITIES } from "../../src/inspection/plan-table";
import {
  acceptanceOdds,
  COMMON_CONFIDENCE,
  LEAST_LOT,
  MOST_LOT,
  MOST_SAMPLE,
  provingSample,
  samplePlan,
} from "../../src/inspection/sample";
import { COUNT, PERCENT, plainNumber, SHARE } from "../../src/quantity";
import { number, orComputed, orDefault, word } from "../argument";
import { formula } from "../formula";
import { column, scalar, table, wordsColumn } from "../gives";

const LOT = number("Joints in the lot", COUNT);
export const CONFIDENCE = orDefault(number("Confidence, above 0 and less than 1", SHARE), COMMON_CONFIDENCE);
const ONE_LOT_ALONE =
  "Made for a stream of lots, with its switching rules; for one lot alone see SAMPLE_SIZE. The contract and its edition govern.";

export const SAMPLE_PLAN = formula({
  id: "SAMPLE_PLAN",
  meaning: "Single sampling plan of a lot: how many joints to inspect and how many may be bad",
  args: {
    lot: LOT,
    aql: number("Acceptance quality limit", PERCENT, QUALITY_LIMITS.join(", ")),
    level: word('Inspection level: "S-1" to "S-4", "I", "II" (default), "III"', LEVELS, "II"),
    severity: word('"normal" (default) or "tightened"', SEVERITIES, "normal"),
  },
  gives: table(
    {
      letter: wordsColumn("code letter"),
      sample: column("sample", COUNT),
      accept: column("accept", COUNT),
      reject: column("reject", COUNT),
    },
    { lead: "One row" },
  ),
  equation: "Tables: lot and level give the code letter, letter and limit the plan; arrows are followed",
  validity: `lot ${plainNumber(LEAST_LOT)} to ${plainNumber(MOST_LOT)}; #N/A for a limit that is not listed. A sample as large as the lot means all of it. ${ONE_LOT_ALONE}`,
  assumptions: "Every joint of the lot is as likely to be drawn as any other",
  source:
    "As read from [mil-std-105e] by [aqlschemes-1.7]; ISO 2859-1 and ANSI/ASQ Z1.4 have the same single plans",
  unconfirmed:
    "That ISO 2859-1 has the same plans is from memory. In 13 tightened plans the copies differ; the arrow is followed, as memory has it.",
  related: ["SAMPLE_ODDS", "SAMPLE_SIZE", "REJECT_RATE", "JOINTS_START", "COUPONS"],
  synonyms: [
    "AQL",
    "sampling",
    "sample size",
    "inspection lot",
    "Z1.4",
    "ISO 2859",
    "105E",
    "borescope",
    "how many to inspect",
    "random sample",
    "spot check",
  ],
  example: { args: [80, 4], gives: '"E", 13, 1, 2' },
  calc: ({ lot, aql, level, severity }) => [samplePlan(lot, aql, level, severity)],
});

export const SAMPLE_ODDS = formula({
  id: "SAMPLE_ODDS",
  meaning: "Chance that a sample passes",
  args: {
    sample: number("Joints inspected", COUNT),
    accept: number("Bad joints in the sample that still pass", COUNT),
    bad: number("Bad joints: a fraction of the process, or their count in the lot", SHARE),
    lot: orComputed(number("Joints in the lot", COUNT), "a running process, bad a fraction,"),
  },
  gives: scalar(SHARE),
  tex: [
    String.raw`P = \sum_{i \le c} C(n, i)\, p^i\, (1 - p)^{n - i}`,
    String.raw`\text{one lot:}\quad P = \sum_{i \le c} \frac{C(D, i)\, C(N - D, n - i)}{C(N, n)}`,
  ],
  where: {
    P: "chance that the sample passes",
    n: "joints inspected (sample)",
    c: "bad ones that still pass (accept)",
    p: "fraction of bad joints (bad without lot)",
    D: "bad joints in the lot (bad with lot)",
    N: "joints in the lot (lot)",
    i: "bad joints found",
    C: "ways to choose the second number out of the first",
  },
  validity: `sample 1 to ${plainNumber(MOST_SAMPLE)}, accept 0 to sample; lot from sample to ${plainNumber(MOST_LOT)}. Without lot, bad 0 to 1; with lot, 0 to lot. A 20 % sample finds a single bad joint one time in five.`,
  assumptions: "Drawn at random; every bad joint that is looked at is seen",
  source: "Exact: binomial or hypergeometric sum; terms by [loader-2000]",
  related: ["SAMPLE_PLAN", "SAMPLE_SIZE", "REJECT_RATE"],
  synonyms: [
    "probability of acceptance",
    "operating characteristic",
    "OC curve",
    "producer's risk",
    "consumer's risk",
    "binomial",
    "hypergeometric",
    "borescope",
  ],
  example: { args: [20, 0, 1, 100], gives: "0.8" },
  calc: ({ sample, accept, bad, lot }) => acceptanceOdds(sample, accept, bad, lot),
});

export const SAMPLE_SIZE = formula({
  id: "SAMPLE_SIZE",
  meaning: "Sample that, all good, proves fewer than so many bad joints in one lot",
  args: {
    lot: LOT,
    bad: number("Bad joints that the lot must have fewer of", COUNT),
    confidence: CONFIDENCE,
  },
  gives: scalar(COUNT),
  tex: [String.raw`\frac{C(N - D, n)}{C(N, n)} \le 1 - \text{confidence}`],
  where: {
    n: "joints to inspect: the smallest number that holds",
    C: "ways to choose the second number out of the first",
    N: "joints in the lot (lot)",
    D: "bad joints that the lot must have fewer of (bad)",
    confidence: "of the proof",
  },
  validity: `lot 1 to ${plainNumber(MOST_LOT)}, bad 1 to lot. One bad joint found, and nothing is proven: inspect more.`,
  assumptions: "Drawn at random; every bad joint that is looked at is seen",
  source: "Exact: hypergeometric chance of no bad joint in the sample; terms by [loader-2000]",
  related: ["SAMPLE_PLAN", "SAMPLE_ODDS", "REJECT_RATE"],
  synonyms: [
    "zero failures",
    "success run",
    "confidence",
    "reliability",
    "how many to inspect",
    "limiting quality",
    "LTPD",
    "all good",
  ],
  example: { args: [100, 5], gives: "45" },
  calc: ({ lot, bad, confidence }) => provingSample(lot, bad, confidence),
});
