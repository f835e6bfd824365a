/** Refusals of sampling, yield and coupons. */

import type { Refused } from "./example";

export const INSPECTION: readonly Refused[] = [
  ["=BEAD.SAMPLE_PLAN(1, 4)", "#VALUE! lot = 1: must be a whole number from 2 to 1000000000"],
  ["=BEAD.SAMPLE_PLAN(80.5, 4)", "#VALUE! lot = 80.5: must be a whole number from 2 to 1000000000"],
  [
    "=BEAD.SAMPLE_PLAN(80, 3)",
    "#N/A aql = 3 %: must be one of 0.1, 0.15, 0.25, 0.4, 0.65, 1, 1.5, 2.5, 4, 6.5, 10 %",
  ],
  [
    "=BEAD.SAMPLE_PLAN(80, 0)",
    "#VALUE! aql = 0 %: must be one of 0.1, 0.15, 0.25, 0.4, 0.65, 1, 1.5, 2.5, 4, 6.5, 10 %",
  ],
  [
    "=BEAD.SAMPLE_PLAN(80, 0.005)",
    "#N/A aql = 0.005 %: must be one of 0.1, 0.15, 0.25, 0.4, 0.65, 1, 1.5, 2.5, 4, 6.5, 10 %",
  ],
  ['=BEAD.SAMPLE_PLAN(80, 4, "IV")', '#VALUE! level = "IV": must be one of S-1, S-2, S-3, S-4, I, II, III'],
  ['=BEAD.SAMPLE_PLAN(80, 4, , "reduced")', '#VALUE! severity = "reduced": must be one of normal, tightened'],
  [
    "=BEAD.SAMPLE_ODDS(2000000, 0, 0.05)",
    "#VALUE! sample = 2000000: must be a whole number from 1 to 1000000",
  ],
  ["=BEAD.SAMPLE_ODDS(20, 21, 0.05)", "#VALUE! accept = 21: must be a whole number from 0 to 20"],
  ["=BEAD.SAMPLE_ODDS(20, 0, 5)", "#VALUE! bad = 5: must be at most 1"],
  ["=BEAD.SAMPLE_ODDS(20, 0, -0.1)", "#VALUE! bad = -0.1: must be 0 or more"],
  ["=BEAD.SAMPLE_ODDS(20, 0, 0.05, 100)", "#VALUE! bad = 0.05: must be a whole number from 0 to 100"],
  ["=BEAD.SAMPLE_ODDS(20, 0, 5, 19)", "#VALUE! lot = 19: must be a whole number from 20 to 1000000000"],
  ["=BEAD.SAMPLE_SIZE(100, 0)", "#VALUE! bad = 0: must be a whole number from 1 to 100"],
  ["=BEAD.SAMPLE_SIZE(100, 5, 95)", "#VALUE! confidence = 95: must be above 0 and less than 1"],
  ["=BEAD.SAMPLE_SIZE(100, 5, 1)", "#VALUE! confidence = 1: must be above 0 and less than 1"],
  ["=BEAD.REJECT_RATE(11, 10)", "#VALUE! rejected = 11: must be a whole number from 0 to 10"],
  ["=BEAD.REJECT_RATE(0, 0)", "#VALUE! inspected = 0: must be a whole number from 1 to 1000000"],
  ["=BEAD.REJECT_RATE(0.5, 10)", "#VALUE! rejected = 0.5: must be a whole number from 0 to 10"],
  ["=BEAD.JOINTS_START(0, 0.9)", "#VALUE! good = 0: must be a whole number from 1 to 100000"],
  ["=BEAD.JOINTS_START(10, 97)", "#VALUE! yield = 97: must be above 0 and at most 1"],
  ["=BEAD.JOINTS_START(10, {0.9,0})", "#VALUE! yield = 0: must be above 0 and at most 1"],
  ["=BEAD.JOINTS_START(10)", "#VALUE! yield = blank: needs a number or a range of them"],
  [
    "=BEAD.JOINTS_START(10, 0.000000001)",
    "#N/A yield = 1e-9: is so small that more than 1000000000 joints have to be started",
  ],
  ["=BEAD.COUPONS(0)", "#VALUE! hours = 0 h: must be above 0"],
  ["=BEAD.COUPONS(2000)", "#VALUE! hours = 2000 h: must be at most 1000 h"],
  ["=BEAD.COUPONS(8, 0)", "#VALUE! every = 0 h: must be at least 0.1 h"],
  ["=BEAD.COUPONS(8, , -1)", "#VALUE! idles = -1: must be a whole number from 0 to 10000"],
  ["=BEAD.COUPONS(8, , , 1.5)", "#VALUE! changes = 1.5: must be a whole number from 0 to 10000"],
  [
    "=BEAD.LOG_CHECK({60,60})",
    "#VALUE! log = 2 columns: must be 10 columns: setAmps, amps, volts, travel, ppm, color, concavity, convexity, misalignment, result",
  ],
  ['=BEAD.LOG_CHECK({60,60,9,5,20,2,0,0,0,"accept"}, -0.05)', "#VALUE! ampsOff = -0.05: must be 0 or more"],
];
