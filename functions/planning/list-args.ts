/** What formulas over a list of joints take: the list, and what all of its lines share. */

import { COMMON_TARGET_PPM } from "../../src/purge/purge";
import { FLOW, LENGTH, OXYGEN, SHARE, si, TIME } from "../../src/quantity";
import { number, orComputed, orDefault } from "../argument";
import { FLOW_OF_PURGE, FLOW_OF_TORCH, OVERLAP_OR_NONE } from "../arguments";
import { JOINTS } from "./joints";

export const LIST_ARGS = {
  joints: JOINTS,
  handlingSeconds: orDefault(number("Unload, load and set up per joint", TIME), si(0, TIME)),
  torchFlow: orDefault(FLOW_OF_TORCH, si(0, FLOW)),
  purgeFlow: orDefault(FLOW_OF_PURGE, si(0, FLOW)),
  purgeSeconds: orComputed(
    number("Purge of the bore before the cycle", TIME),
    "PURGE_TIME of the damSpacing, or 0 without one",
  ),
  overlap: OVERLAP_OR_NONE,
  damSpacing: orComputed(number("Length of bore from dam to dam", LENGTH), "no purge time of its own"),
  ppm: orDefault(number("Oxygen to reach", OXYGEN), COMMON_TARGET_PPM),
  supplyPpm: orDefault(number("Oxygen in the purge gas", OXYGEN), si(0, OXYGEN)),
} as const;

/** Came later: they stand behind all other arguments, so that earlier calls keep their meaning. */
export const PURGE_ARGS = {
  purgeAtLeast: orDefault(number("Purge of each bore at least", TIME), si(0, TIME)),
  purgeWaited: orDefault(
    number("Fraction of the purge that is waited for and counts in the hours", SHARE),
    si(0, SHARE),
  ),
} as const;
