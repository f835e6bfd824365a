/** How times fall over a lot. */

import { LEARNING_MODELS, learnTime, learnTotal, MOST_UNITS, STEEPEST } from "../../src/planning/learning";
import { COUNT, plainNumber, SHARE } from "../../src/quantity";
import { number, word } from "../argument";
import { family, formula } from "../formula";
import { scalar } from "../gives";

const FIRST = number("Time or cost of the first joint, in any unit; the result is in the same", COUNT);
const RATE = number(
  "Time after a doubling of the joints over the time before, such as 0.9; 1: none is learned",
  SHARE,
);
const MODEL = word(
  '"average" (default, Wright): the mean of all so far falls; "unit" (Crawford): the joint made just then',
  LEARNING_MODELS,
  "average",
);
const VALIDITY = `first above 0, rate above ${plainNumber(STEEPEST)} and at most 1; whole numbers 1 to ${plainNumber(MOST_UNITS)}. Name the model beside the number: after a few doublings the totals of the two differ by a third.`;
const ASSUMPTIONS =
  "The same work again and again without a long break; a curve of one rate runs too low late in a long run";
const SOURCE = 'The learning curve: "average" as [wright-1936], "unit" as [crawford-1944]';
const SYNONYMS = [
  "learning curve",
  "experience curve",
  "Wright",
  "Crawford",
  "man-hours",
  "improvement curve",
  "repetition",
];
const WHERE = {
  a: "time of the first joint (first)",
  b: "exponent of the curve, 0 or less",
};

const LEARN_TIME = formula({
  id: "LEARN_TIME",
  meaning: "Time of the nth joint alone on a learning curve, in the unit of the first",
  args: { first: FIRST, n: number("Which joint, the first is 1", COUNT), rate: RATE, model: MODEL },
  gives: scalar(COUNT),
  tex: [
    String.raw`\text{average:}\quad y_n = a\left(n^{1+b} - (n-1)^{1+b}\right)`,
    String.raw`\text{unit:}\quad y_n = a\,n^b`,
    String.raw`b = \frac{\ln\text{rate}}{\ln 2}`,
  ],
  where: { yₙ: "time of the nth joint alone", n: "which joint (n)", ...WHERE },
  validity: VALIDITY,
  assumptions: ASSUMPTIONS,
  source: SOURCE,
  related: ["LEARN_TOTAL", "CREW_OUTPUT", "TAKEOFF"],
  synonyms: SYNONYMS,
  example: { args: [100, 8, 0.8, "unit"], gives: "51.2" },
  calc: ({ first, n, rate, model }) => learnTime({ first, rate, model }, n),
});

const LEARN_TOTAL = formula({
  id: "LEARN_TOTAL",
  meaning: "Time of a run of joints on a learning curve, in the unit of the first",
  args: {
    first: FIRST,
    from: number("First joint of the run, counted from the first ever made", COUNT),
    to: number("Last joint of the run", COUNT),
    rate: RATE,
    model: MODEL,
  },
  gives: scalar(COUNT),
  tex: [
    String.raw`\text{average:}\quad Y = a\left(m^{1+b} - (k-1)^{1+b}\right)`,
    String.raw`\text{unit:}\quad Y = a\sum_{i=k}^{m} i^b`,
    String.raw`b = \frac{\ln\text{rate}}{\ln 2}`,
  ],
  where: {
    Y: "time of the run",
    k: "first joint of the run (from)",
    m: "last joint of the run (to)",
    i: "each joint of the run",
    ...WHERE,
  },
  validity: `${VALIDITY} to is at least from.`,
  assumptions: ASSUMPTIONS,
  source: SOURCE,
  related: ["LEARN_TIME", "CREW_OUTPUT", "TAKEOFF"],
  synonyms: SYNONYMS,
  example: { args: [100, 1, 4, 0.8], gives: "256" },
  calc: ({ first, from, to, rate, model }) => learnTotal({ first, rate, model }, from, to),
});

export const LEARNING = family("Learning", [LEARN_TIME, LEARN_TOTAL]);
