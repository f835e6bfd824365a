/** What the qualified coupon covers, as the rule reads, and whether the tube of the sheet is among it. */

import type { Quantity, Units } from "../../src/quantity";
import { HEAT_INPUT, LENGTH } from "../../src/quantity";
import { call, refusal } from "./call";
import type { Check } from "./frame";
import { firstOf, spilledOver, unless } from "./frame";
import type { Layout, Row } from "./layout";
import { choice, typed } from "./typed";

const WALL = { couponWall: "{coupon_wall}", rule: "{wall_rule?}" } as const;
const OD = { couponOd: "{coupon_od}", rule: "{od_rule?}" } as const;
const HEAT = { couponHeat: "{coupon_heat}", rule: "{heat_rule?}" } as const;
/** A hair of rounding is nothing. */
const HAIR = "1E-9";

type Both = Readonly<Record<Units, number>>;

/** Diameter and heat input of the invented coupon. */
export interface InventedCoupon {
  readonly od: Both;
  readonly heat: Both;
}

export function qualification(form: Layout, invented: InventedCoupon): void {
  form.section(
    "Qualification: what the coupon covers, as read from the rule; the code and its edition govern",
  );
  form.blocks(coupon(invented), COVERED);
}

function coupon({ od, heat }: InventedCoupon): Row[] {
  return [
    typed({
      label: "Coupon wall",
      name: "coupon_wall",
      content: { US: 0.065, SI: 1.65 },
      quantity: LENGTH,
      range: { US: [0.005, 0.5], SI: [0.127, 12.7] },
    }),
    typed({
      label: "Coupon outside diameter",
      name: "coupon_od",
      content: od,
      quantity: LENGTH,
      range: { US: [0.06, 20], SI: [1.5, 508] },
    }),
    typed({
      label: "Coupon heat input",
      name: "coupon_heat",
      content: heat,
      quantity: HEAT_INPUT,
      range: { US: [0.2, 60], SI: [0.008, 2.4] },
    }),
    choice("Rule for the wall", "wall_rule", "ASME IX", ["ASME IX", "ISO 15614-1", "ISO 9606-1"], {
      columns: 2,
    }),
    choice("Rule for the diameter", "od_rule", "ASME IX", ["ASME IX", "ISO 9606-1"], { columns: 2 }),
    choice("Rule for the heat input", "heat_rule", "ASME IX", ["ASME IX", "ISO 15614-1"], { columns: 2 }),
  ];
}

function range(label: string, name: string, content: string, quantity: Quantity): Row {
  return {
    label: `${label} covered, from and to`,
    name: `covered_${name}_least`,
    content: `=${content}`,
    look: "result",
    quantity,
    fills: [`covered_${name}_most`],
  };
}

const COVERED: Row[] = [
  range("Wall", "wall", call("COVER_WALL", WALL), LENGTH),
  range("Diameter", "od", call("COVER_OD", OD), LENGTH),
  range("Heat", "heat", call("COVER_HEAT", HEAT), HEAT_INPUT),
  {
    label: "This tube",
    name: "covered",
    content: `=IF(AND(${within("{wall_read}", "wall")},${within("{od_read}", "od")}),"covered: wall and diameter","not covered: see the checks")`,
    look: "text",
  },
];

/** Whether a value lies in a range that is covered; a limit that the rule does not set is none. */
function within(value: string, range: string): string {
  const [least, most] = [`{covered_${range}_least}`, `{covered_${range}_most}`];
  return `AND(${value}>=SUM(${least})*(1-${HAIR}),IF(ISNUMBER(${most}),${value}<=${most}*(1+${HAIR}),TRUE))`;
}

function unlessWithin(what: string, value: string, range: string, told = value): string {
  const [least, most] = [`{covered_${range}_least}`, `{covered_${range}_most}`];
  return unless(
    within(value, range),
    `="${what} is not covered by the coupon: "&${told}&" is not from "&ROUND(SUM(${least}),4)&IF(ISNUMBER(${most})," to "&ROUND(${most},4)," up")`,
  );
}

/** `heats`: what else must be covered, as names of a heat input each, with what it is said to be. */
export function qualified(heats: readonly (readonly [what: string, heat: string])[] = []): Check {
  return {
    label: "Qualification",
    name: "check_qualified",
    problem: firstOf(
      refusal("COVER_WALL", WALL),
      refusal("COVER_OD", OD),
      refusal("COVER_HEAT", HEAT),
      unless(
        "COUNT({covered_wall_least},{covered_od_least},{covered_heat_most})=3",
        spilledOver("what the coupon covers"),
      ),
      unless(
        "2*{coupon_wall_read}<{coupon_od_read}",
        "the wall of the coupon leaves no bore in its diameter",
      ),
      // Before any comparison: a blank or a text is above every number, and rounds to 0.
      unless(
        `COUNT(${["{wall_read}", "{od_read}", ...heats.map(([, heat]) => heat)].join(",")})=${String(2 + heats.length)}`,
        heats.length === 0 ? "no tube to judge" : "no tube or no heat input to judge",
      ),
      unlessWithin("Wall of this tube", "{wall_read}", "wall", "{wall}"),
      unlessWithin("Diameter of this tube", "{od_read}", "od", "{od}"),
      ...heats.map(([what, heat]) => unlessWithin(what, heat, "heat", `ROUND(${heat},3)`)),
    ),
  };
}
