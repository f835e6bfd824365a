/** Works on statistics and on special functions. */

import type { Source } from "../source";
import { NOT_NOTED } from "../source";

export const STATISTICS_SOURCES = {
  "nist-dlmf": {
    short: "NIST Digital Library of Mathematical Functions",
    author: "National Institute of Standards and Technology",
    title: "Digital Library of Mathematical Functions",
    where: "NIST, chapter 8.17, incomplete beta functions",
    edition: NOT_NOTED,
    standing: "reference library",
    access: "memory",
  },
  "nist-strd": {
    short: "NIST Statistical Reference Datasets",
    author: "National Institute of Standards and Technology",
    title: "Statistical Reference Datasets: linear regression, NoInt1 and NoInt2",
    where: "NIST, Statistical Engineering Division",
    edition: "1999",
    standing: "reference library",
    access: "second-hand",
    note: "Certified to 15 digits; read in the test suites of several open statistics packages, which agree.",
  },
} as const satisfies Record<string, Source>;
