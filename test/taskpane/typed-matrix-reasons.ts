/** Why a result may stand after a strange content, while all checks hold: by what is typed, then by the cell. */

import { TYPED } from "../../taskpane/sheets/cycle/inputs";

/** Without these the first what-if of the example is none, or is told. */
const OF_WHAT_IF = ["shop_heads", "finish_by", "changes"];
/** Numbers of a what-if. */
const ALIKE = TYPED.flatMap(([, rows]) => rows)
  .filter(({ name, look }) => look === "input" && !OF_WHAT_IF.includes(name))
  .map(({ name }) => `cycle ${name}_b`);
/** Of the cycle plan, in the shop as it is and in a what-if. */
const both = (...names: readonly string[]): string[] =>
  names.flatMap((name) => [`cycle ${name}`, `cycle ${name}_b`]);

const ofBid = (...names: readonly string[]): string[] => names.map((name) => `bid ${name}`);
const FRACTIONS_OF_BID = ofBid("purge_waited", "reject_rate", "margin", "waste");

/** A program of one's own: blank, it is as computed. */
const OF_PROGRAM = [
  "share_set",
  "rate_set",
  "wall_tolerance",
  "set_first",
  "set_second",
  "set_third",
  "set_fourth",
  "set_overlap",
].map((name) => `procedure ${name}`);

export const REASONS: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  blank: {
    "the cell may stay blank: the formula has a default, which the label or the help tells": [
      "procedure bead_typed",
      "procedure runout",
      "procedure peak_typed",
      "procedure volts_typed",
      "procedure efficiency",
      "procedure speed_typed",
      "procedure overlap_typed",
      "procedure dwell_typed",
      "procedure bore_typed",
      ...OF_PROGRAM,
      "bid supply_ppm",
      "cycle speed_typed",
      "sizes efficiency",
      "coupons arc_spot",
      "coupons confidence",
      "log concavity_typed",
      "log convexity_typed",
      "log misalignment_typed",
      "cycle learn_rate",
      "cycle changeovers_typed",
      "cycle start_date",
    ],
    "a joint without a result is open, and counts as not inspected": ["log log_result"],
    "a what-if that does not say otherwise is as the first": ALIKE,
  },
  zero: {
    "none of it is a choice: no gas before or after, no walk, no waste, no overlap": [
      "procedure dwell_typed",
      "procedure prepurge",
      "procedure postpurge",
      "procedure handling",
      "procedure supply_ppm",
      "procedure wall_tolerance",
      "gas supply_ppm",
      "gas overlap",
      "gas handling",
      "gas waste",
      ...ofBid("supply_ppm", "purge_least", "overlap", "handling", "setup_minutes", "coupon_minutes"),
      ...ofBid("coupon_price", "reject_price", "electrode_price", "other_cost"),
      ...FRACTIONS_OF_BID,
      ...both("purge", "prepurge", "postpurge", "walk", "changes", "change_minutes", "coupons"),
      ...both("coupon_minutes", "reject_rate", "changeovers_typed", "changeover_minutes"),
      "log idles",
      "log changes",
    ],
    "a joint may be called 0": ["log log_joint"],
    "none of it is the best that can be measured": [
      "log log_oxygen",
      "log log_concavity",
      "log log_convexity",
      "log log_misalignment",
    ],
    "some hosts hand a blank cell of a list over as 0, so it is the metal of a blank, or no result yet": [
      "gas material",
      "bid material",
      "sizes material",
      "log log_result",
      "cycle joint_metal",
    ],
  },
  percent: {
    "a fraction: 5% is the 0.05 that it means": [
      "procedure back_share",
      "procedure wall_tolerance",
      "gas waste",
      "cycle reject_rate",
      ...FRACTIONS_OF_BID,
    ],
    "a sheet takes 5% for 0.05 and shows it; a size or pressure that small can be": [
      "procedure od_tolerance",
      "procedure runout",
      "procedure pressure_wanted",
      "coupons arc_spot",
      "log coupon_wall",
      "procedure coupon_wall",
      "log convexity_typed",
      "cycle wall",
    ],
  },
  "other system": {
    "usual in both systems: 15 ft³/h and 7 L/min are each a flow of the other, 0.3 inH₂O and 0.75 mbar a pressure":
      [
        "procedure purge_flow",
        "procedure pressure_wanted",
        "gas torch_flow",
        "gas purge_flow",
        ...ofBid("torch_flow", "purge_flow"),
      ],
    "a limit of 212 °C suits a dam as one of 212 °F does": ["procedure dam_limit"],
  },
  date: {
    "a container may cost 46 024 of some currency; no price is written as a fraction": ["gas price"],
    "a lump sum of 46 024 of some currency; nobody writes one as a fraction": ofBid("other_cost"),
    "a day on which work starts": both("start_date"),
  },
};
