/** What a shop's own coupons say of the formulas. */

import type { Fit, Pair } from "../../src/shop/fit";
import {
  ANY_SIZE,
  checkedConfidence,
  CONFIDENCES,
  fitThroughOrigin,
  meanOf,
  SPREADS,
} from "../../src/shop/fit";
import { efficiencyOf, SIDES } from "../../src/shop/coupon";
import { between } from "../../src/limits";
import { COUNT, LENGTH, plainNumber, SHARE } from "../../src/quantity";
import { number, word } from "../argument";
import { ARC_SIZE, MATERIAL, MEAN_AMPS, SPEED_OF_TRAVEL, VOLTS, WALL } from "../arguments";
import { family, formula } from "../formula";
import type { Gives } from "../gives";
import { column, columnOrBlank, row } from "../gives";
import { LEFT_OUT, MEAN_TEX, MEAN_WHERE, MODEL_SOURCE, MODEL_TEX, MODEL_WHERE } from "../heat-flow/told";
import { eachRow, series } from "../series";
import { CONFIDENCE } from "./confidence";
import { COUPON_TABLE } from "./coupon-table";

const MOST_PAIRS = 100_000;
const MOST_COUPONS = 1000;
const ROWS = "a cell a row, or one for all";

function fitRow(value: string, next: string): Gives<Fit> {
  return row({
    value: column(value, SHARE),
    low: columnOrBlank("low", SHARE),
    high: columnOrBlank("high", SHARE),
    nextLow: columnOrBlank(`${next} low`, SHARE),
    nextHigh: columnOrBlank(`${next} high`, SHARE),
    count: column("count", COUNT),
  });
}

const ALONE = "One row alone gives its value and blank intervals; under five the intervals are wide.";

const SHOP_FACTOR = formula({
  id: "SHOP_FACTOR",
  meaning: "Factor from what a formula predicts to what your shop measures, with its intervals",
  args: {
    predicted: series(number(`What was predicted, any unit, ${ROWS}`, SHARE)),
    measured: series(number(`What was measured, the same unit, ${ROWS}`, SHARE)),
    spread: word('How the scatter goes: "percent" (default), "same" or "growing"', SPREADS, "percent"),
    confidence: CONFIDENCE,
  },
  gives: fitRow("factor", "next"),
  tex: [
    String.raw`k = \frac{\sum w x y}{\sum w x^2},\quad w = x^{-p},\quad s^2 = \frac{\sum w (y - k x)^2}{n - 1}`,
    String.raw`k \pm \frac{t s}{\sqrt{\sum w x^2}},\quad \text{next} = k \pm t s \sqrt{\frac{1}{w_0 x_0^2} + \frac{1}{\sum w x^2}}`,
  ],
  where: {
    k: "factor",
    x: "predicted",
    y: "measured",
    w: "weight of a row",
    p: "2 for percent (mean of the ratios), 0 for same (least squares through the origin), 1 for growing (ratio of the sums)",
    s: "scatter of a row of weight 1",
    n: "rows",
    t: "Student's t of the confidence with n − 1 degrees of freedom",
    "x₀": "mean of what was predicted",
    "w₀": "weight there",
  },
  validity: `Values ${plainNumber(ANY_SIZE[0])} to ${plainNumber(ANY_SIZE[1])}, up to ${plainNumber(MOST_PAIRS)} rows, blank rows passed over; confidence ${plainNumber(CONFIDENCES[0])} to ${plainNumber(CONFIDENCES[1])}. ${ALONE} Next: the ratio of one more weld, for same and growing at the mean of what was predicted.`,
  assumptions:
    "Measured is in proportion to predicted; rows independent, scatter normal; percent: the same percentage at every size, same: the same amount, growing: a variance in proportion to the size. It holds for welds like those measured.",
  source: "Least squares through the origin with Student's t; same is certified by [nist-strd]",
  related: ["COUPON_EFFICIENCY", "AMPS_MELT", "MELT_WIDTH"],
  synonyms: [
    "calibration",
    "calibrate",
    "correction factor",
    "regression",
    "confidence interval",
    "prediction interval",
    "own welds",
    "test coupons",
    "fit",
  ],
  example: {
    args: [[[4], [5], [6]], [[3], [4], [4]], "same"],
    gives: "0.727273, 0.546205, 0.90834, 0.361535, 1.09301, 3",
  },
  calc: ({ spread, confidence, ...columns }) => {
    checkedConfidence(confidence);
    const pairs = eachRow(columns, MOST_PAIRS, ({ predicted, measured }): Pair => {
      between("predicted", predicted, SHARE, ...ANY_SIZE);
      between("measured", measured, SHARE, ...ANY_SIZE);
      return { predicted, measured };
    });
    return fitThroughOrigin(pairs, spread, confidence);
  },
});

const COUPON_EFFICIENCY = formula({
  id: "COUPON_EFFICIENCY",
  meaning: "Arc efficiency at which the heat flow meets the widths of your own coupons, with its intervals",
  args: {
    wall: series({ ...WALL, what: `Wall thickness, ${ROWS}` }),
    amps: series({ ...MEAN_AMPS, what: `Mean current, ${ROWS}` }),
    volts: series({ ...VOLTS, what: `Arc voltage, ${ROWS}` }),
    speed: series({ ...SPEED_OF_TRAVEL, what: `Surface travel, ${ROWS}` }),
    width: series(number(`Fused width measured, ${ROWS}`, LENGTH)),
    side: word('What was measured: "mean" of face and root (default), "face" or "root"', SIDES, "mean"),
    material: MATERIAL,
    arcSize: ARC_SIZE,
    confidence: CONFIDENCE,
  },
  gives: fitRow("efficiency", "next weld"),
  tex: [
    String.raw`\eta = \frac{1}{n}\sum\eta_i,\quad s^2 = \frac{\sum(\eta_i - \eta)^2}{n - 1}`,
    String.raw`\eta \pm t s\sqrt{\frac{1}{n}},\quad \text{next} = \eta \pm t s\sqrt{1 + \frac{1}{n}}`,
    MEAN_TEX,
    ...MODEL_TEX,
  ],
  where: {
    ...MODEL_WHERE,
    ...MEAN_WHERE,
    η: "fraction of the arc's power that reaches the tube, mean of the coupons",
    ηᵢ: "that of one coupon, at which MELT_SECTION gives its measured width",
    n: "coupons",
    t: "Student's t of the confidence with n − 1 degrees of freedom; below, τ is the age of heat",
  },
  validity: `As MELT_SECTION; up to ${plainNumber(MOST_COUPONS)} coupons, blank rows passed over; confidence ${plainNumber(CONFIDENCES[0])} to ${plainNumber(CONFIDENCES[1])}. ${ALONE} A coupon that takes more than the arc's power is refused by its row.`,
  assumptions: `One metal and one arc length: the coupons speak for these only. A flat plate from 20 °C (68 °F): measure a tube late in its first quarter, 45 to 90° from the start, and give the travel at its mean radius, × (1 − wall/od). A bead without a root counts half its face as the mean. ${LEFT_OUT}`,
  source: `${MODEL_SOURCE}; mean and intervals by Student's t`,
  unconfirmed:
    "An estimate of the arc and of what the model leaves out together, so it may lie outside what calorimeters measure (0.67 to 0.85)",
  unchecked:
    "No published full-penetration weld with amps, volts, speed, wall and a measured width was found: coupons made by the model and runs of the independent 3-D solution give their efficiency back",
  related: ["COUPON_TABLE", "SHOP_FACTOR", "MELT_WIDTH", "MELT_SECTION", "AMPS_WINDOW"],
  synonyms: [
    "calibrate",
    "calibration",
    "arc efficiency",
    "own coupons",
    "test coupon",
    "shop factor",
    "heat transfer efficiency",
    "thermal efficiency",
  ],
  figure: "bead-section",
  example: {
    args: [0.065, [[45], [50], [55]], 9.4, 5, [[0.145], [0.172], [0.19]]],
    gives: "0.771756, 0.736438, 0.807074, 0.70112, 0.842392, 3",
  },
  calc: ({ side, material, arcSize, confidence, ...columns }) => {
    checkedConfidence(confidence);
    const efficiencies = eachRow(columns, MOST_COUPONS, (coupon) =>
      efficiencyOf({ ...coupon, material, arcSize }, side),
    );
    return meanOf(efficiencies, confidence);
  },
});

export const OWN_COUPONS = family("Your own coupons", [SHOP_FACTOR, COUPON_EFFICIENCY, COUPON_TABLE]);
