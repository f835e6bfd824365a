/** Statistics of inspection. */

import type { Source } from "../source";
import { NOT_NOTED } from "../source";

export const INSPECTION_SOURCES = {
  "aqlschemes-1.7": {
    short: "AQLSchemes 1.7-2",
    title: "AQLSchemes, the tables of MIL-STD-105E as a statistics library",
    where: "R package AQLSchemes",
    edition: "1.7-2",
    standing: "reference library",
    access: "copy",
    note: "Only the figures of the tables were taken.",
  },
  "binom-intervals": {
    short: "R binom",
    title: "binom, binomial confidence intervals for several parameterizations",
    where: "R package binom",
    edition: NOT_NOTED,
    standing: "reference library",
    access: "second-hand",
    note: "Its exact intervals as the tests of other libraries quote them.",
  },
  "clopper-pearson-1934": {
    short: "Clopper & Pearson 1934",
    author: "C. J. Clopper and E. S. Pearson",
    title: "The Use of Confidence or Fiducial Limits Illustrated in the Case of the Binomial",
    where: "Biometrika 26, 404",
    edition: "1934",
    standing: "paper",
    access: "memory",
  },
  "feller-probability": {
    short: "Feller",
    author: "W. Feller",
    title: "An Introduction to Probability Theory and Its Applications",
    where: "Wiley, volume 1",
    edition: NOT_NOTED,
    standing: "textbook",
    access: "memory",
    note: "The dice of de Méré, and of Pepys and Newton.",
  },
  "jovanovic-levy-1997": {
    short: "Jovanovic & Levy 1997",
    author: "B. D. Jovanovic and P. S. Levy",
    title: "A Look at the Rule of Three",
    where: "The American Statistician 51, 137",
    edition: "1997",
    standing: "paper",
    access: "second-hand",
  },
  "kiermeier-2008": {
    short: "Kiermeier 2008",
    author: "A. Kiermeier",
    title: "Visualizing and Assessing Acceptance Sampling Plans",
    where: "Journal of Statistical Software 26(6)",
    edition: "2008",
    standing: "paper",
    access: "copy",
  },
} as const satisfies Record<string, Source>;
