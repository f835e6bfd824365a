/** Reject rate of a process, with its interval. */

import { MOST_INSPECTED, rejectRate } from "../../src/inspection/reject-rate";
import { COUNT, plainNumber, SHARE } from "../../src/quantity";
import { number } from "../argument";
import { formula } from "../formula";
import { column, row } from "../gives";
import { CONFIDENCE } from "./plan";

export const REJECT_RATE = formula({
  id: "REJECT_RATE",
  meaning: "Reject rate of a process with its confidence interval",
  args: {
    rejected: number("Joints rejected", COUNT),
    inspected: number("Joints inspected", COUNT),
    confidence: CONFIDENCE,
  },
  gives: row({
    low: column("low", SHARE),
    estimate: column("estimate", SHARE),
    high: column("high", SHARE),
  }),
  tex: [
    String.raw`\text{low} = B(\alpha/2,\ k,\ n - k + 1)`,
    String.raw`\text{estimate} = k/n`,
    String.raw`\text{high} = B(1 - \alpha/2,\ k + 1,\ n - k)`,
  ],
  where: {
    k: "joints rejected (rejected)",
    n: "joints inspected (inspected)",
    α: "1 − confidence",
    B: "quantile of the beta distribution",
  },
  validity: `inspected 1 to ${plainNumber(MOST_INSPECTED)}, rejected 0 to inspected. Two-sided; for one side alone give 2 × confidence − 1. Holds with that confidence or more; few joints make a wide interval.`,
  assumptions: "Joints are rejected independently, all with the same chance: one process that did not change",
  source: "Exact: [clopper-pearson-1934]",
  related: ["SAMPLE_ODDS", "SAMPLE_SIZE", "SAMPLE_PLAN", "JOINTS_START"],
  synonyms: [
    "repair rate",
    "weld reject rate",
    "confidence interval",
    "Clopper-Pearson",
    "first pass yield",
    "quality",
    "rule of three",
    "defect rate",
    "percent defective",
  ],
  example: { args: [1, 10], gives: "0.00252858, 0.1, 0.445016" },
  calc: ({ rejected, inspected, confidence }) => rejectRate(rejected, inspected, confidence),
});
