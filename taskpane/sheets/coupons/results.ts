/** The shop's arc efficiency and what its checks look for. */

import { COUNT, SHARE } from "../../../src/quantity";
import { call, refusal } from "../call";
import type { Check } from "../frame";
import { firstOf, unless } from "../frame";
import type { Row } from "../layout";

/** The list from its header to the line that ends it, and what all of its lines share. */
const LIST = {
  coupons: "{list}",
  material: "{material?}",
  arcSize: "{arc_spot?}",
  confidence: "{confidence?}",
} as const;
export const FORMULA = `=${call("COUPON_TABLE", LIST)}`;

/** Mean and intervals of the efficiencies beside the lines. */
const FIT = {
  predicted: 1,
  measured: "{list_efficiency}",
  spread: '"same"',
  confidence: "{confidence?}",
} as const;

/** Fewer make an interval that is wider than what is known without any coupon. */
const FEW = 5;

/** What a procedure sheet takes; the published ones are well inside. */
const SENSE = [0.4, 0.95] as const;

function fitted(label: string, name: string, column: number): Row {
  return {
    label,
    name,
    content: `=IF({coupons_done}=0,"",INDEX(${call("SHOP_FACTOR", FIT)},1,${String(column)}))`,
    look: "result",
    quantity: SHARE,
    format: "0.000",
  };
}

export const RESULT: Row[] = [
  fitted("Arc efficiency of the shop", "shop_efficiency", 1),
  fitted("Its interval, low", "shop_low", 2),
  fitted("Its interval, high", "shop_high", 3),
];

export const NEXT: Row[] = [
  fitted("Next weld, low", "next_low", 4),
  fitted("Next weld, high", "next_high", 5),
  {
    label: "More coupons to halve it, at most",
    name: "more_coupons",
    content: '=IF({coupons_done}<2,"",3*{coupons_done})',
    look: "result",
    quantity: COUNT,
    format: "0",
  },
];

export const COUNTED: Row = {
  label: "Coupons counted",
  name: "coupons",
  content: '={coupons_done}&" of "&{coupons_typed}',
  look: "text",
};

/** A line each. */
export const CANNOT_KNOW = [
  "One metal, one arc length: the efficiency holds for welds like these,",
  "and takes up what the heat flow leaves out, such as sulfur.",
  "Widths at 45 to 90° from the start, tube at room temperature.",
  "Under five coupons the interval is wide.",
] as const;

export const CHECKS: readonly Check[] = [
  {
    label: "Coupon list",
    name: "check_list",
    problem: firstOf(
      unless("{coupons_typed}>0", "no coupons to work out"),
      refusal("COUPON_TABLE", LIST),
      unless(
        "ISTEXT({coupon_table})",
        "no table: a cell that the list's formula fills is not empty, or the formula was deleted",
      ),
      unless(
        "SUMPRODUCT(LEN({list_below}))=0",
        "something is typed below the end of the list: insert rows above the end and move it there",
      ),
      unless(
        "{coupons_done}={coupons_typed}",
        '=({coupons_typed}-{coupons_done})&" of "&{coupons_typed}&" coupons not counted; the remark beside each says why"',
      ),
    ),
  },
  {
    label: "Outliers",
    name: "check_outliers",
    problem: unless(
      'COUNTIF({list_remark},"outlier*")=0',
      '=COUNTIF({list_remark},"outlier*")&" of "&{coupons_done}&" coupons stand apart (#"&TEXTJOIN(", ",TRUE,{coupons_apart})&"): find out why before the efficiency is used"',
    ),
  },
  {
    label: "Number of coupons",
    name: "check_count",
    problem: unless(
      `{coupons_done}>=${String(FEW)}`,
      `="only "&{coupons_done}&" coupons: under ${String(FEW)} the interval is wide"`,
    ),
  },
  {
    label: "Efficiency",
    name: "check_efficiency",
    problem: firstOf(
      unless(
        "COUNT({shop_efficiency},{shop_low},{shop_high},{next_low},{next_high})=5",
        "no efficiency with its intervals",
      ),
      unless(
        "AND({next_low}>0,{next_high}<1)",
        "the interval of a next weld goes beyond 0 to 1: the coupons differ too much or are too few",
      ),
      unless(
        `AND({shop_efficiency}>=${String(SENSE[0])},{shop_efficiency}<=${String(SENSE[1])})`,
        `="an arc efficiency of "&ROUND({shop_efficiency},3)&" is not from ${SENSE.join(" to ")}: look for a wrong unit, volts not read at the head, or a peak typed as the mean"`,
      ),
    ),
  },
];
