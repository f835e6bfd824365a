/**
 * Work, cost and price of a bid. What is bought or started whole (joints to start, electrodes, containers, working
 * periods) is rounded up once, over the whole bid: never by line or size, which would add a fraction for each.
 */

import type { Quantity } from "../../../src/quantity";
import { COUNT, DURATION, SHARE, VOLUME } from "../../../src/quantity";
import { call } from "../call";
import type { Row } from "../layout";
import { from, sound } from "../native";

/** The list from its header to the line that ends it, and what all of its lines share. */
export const LIST = {
  joints: "{list}",
  handlingSeconds: "{handling?}",
  torchFlow: "{torch_flow?}",
  purgeFlow: "{purge_flow?}",
  overlap: "{overlap?}",
  damSpacing: "{dam_spacing?}",
  ppm: "{target_ppm?}",
  supplyPpm: "{supply_ppm?}",
  purgeAtLeast: "{purge_least?}",
  purgeWaited: "{purge_waited?}",
} as const;
export const STARTED = {
  good: "{joints}",
  yield: "1-{reject_rate}",
  confidence: "{confidence?}",
} as const;
export const TESTED = { hours: "{period_hours}", every: "{coupon_every}" } as const;
export const CYLINDER = {
  waterVolume: "{water_volume?}",
  pressure: "{full_pressure?}",
  residual: "{residual?}",
} as const;
export const LIQUID = { liquid: "{liquid_liters?}", usable: "{usable_share?}" } as const;

/** Whole pieces; a number that rounding left a hair above one is that one. */
function whole(exact: string): string {
  return `ROUNDUP(ROUND(${exact},9),0)`;
}

/** Nothing while a word is none of its list. */
function chosen(word: string, formula: string): string {
  return `IF(${sound([word])},${formula},"")`;
}

interface Shown {
  readonly format: string;
  readonly quantity?: Quantity;
  readonly unit?: string;
}
const PIECES: Shown = { format: "0" };
const HOURS: Shown = { format: "0.0", quantity: DURATION };
const GAS: Shown = { format: "0.0", quantity: VOLUME };
const MONEY: Shown = { format: "#,##0.00", unit: "money" };
const PART: Shown = { format: "0.0%", quantity: SHARE };

function result(label: string, name: string, content: string, { quantity = COUNT, ...shown }: Shown): Row {
  return { label, name, content: `=${content}`, look: "result", quantity, ...shown };
}

export const WORK: Row[] = [
  {
    label: "Lines counted",
    name: "lines",
    content: '={lines_counted}&" of "&{lines_typed}',
    look: "text",
  },
  // With a line that is not counted there is no bid: its price would be too low.
  result(
    "Joints of the list",
    "joints",
    from(["total_joints"], [], 'IF(OR({lines_counted}=0,{lines_counted}<>{lines_typed}),"",{total_joints})'),
    PIECES,
  ),
  result(
    "Joints to start",
    "start",
    from(["joints"], ["reject_rate", "confidence"], call("JOINTS_START", STARTED)),
    PIECES,
  ),
  result(
    "Changes of set-up",
    "changes",
    chosen(
      "work_order",
      from(
        ["joints"],
        [],
        `INDEX(${call("SETUP_COUNT", { joints: "{list}" })},1,IF({work_order}="grouped",2,1))`,
      ),
    ),
    PIECES,
  ),
  result(
    "Time, joints of the list",
    "joint_hours",
    from(["joints", "total_hours"], [], "{total_hours}"),
    HOURS,
  ),
  result(
    "Time, joints started over",
    "extra_hours",
    from(["joint_hours", "joints", "start"], [], "{joint_hours}*({start}-{joints})/{joints}"),
    HOURS,
  ),
  result(
    "Time, changes of set-up",
    "setup_hours",
    from(["changes"], ["setup_minutes"], "{changes}*{setup_minutes}/60"),
    HOURS,
  ),
  result(
    "Working periods",
    "periods",
    from(
      ["joint_hours", "extra_hours", "setup_hours"],
      ["period_hours"],
      whole("({joint_hours}+{extra_hours}+{setup_hours})/{period_hours}"),
    ),
    PIECES,
  ),
  result(
    "Coupons per working period",
    "period_coupons",
    from([], ["period_hours", "coupon_every"], call("COUPONS", TESTED)),
    PIECES,
  ),
  result("Coupons", "coupons", from(["periods", "period_coupons"], [], "{periods}*{period_coupons}"), PIECES),
  result(
    "Time, coupons",
    "coupon_hours",
    from(["coupons"], ["coupon_minutes"], "{coupons}*{coupon_minutes}/60"),
    HOURS,
  ),
  result(
    "Time, all",
    "hours",
    from(
      ["joint_hours", "extra_hours", "setup_hours", "coupon_hours"],
      [],
      "{joint_hours}+{extra_hours}+{setup_hours}+{coupon_hours}",
    ),
    HOURS,
  ),
  result(
    "Electrodes",
    "electrodes",
    from(["start", "coupons"], ["joints_per_electrode"], whole("({start}+{coupons})/{joints_per_electrode}")),
    PIECES,
  ),
  result(
    "Gas through torch and bore",
    "gas_used",
    from(["joints", "start", "coupons", "total_gas"], [], "{total_gas}*({start}+{coupons})/{joints}"),
    GAS,
  ),
  result(
    "Gas to buy, waste included",
    "gas_bought",
    from(["gas_used"], ["waste"], "{gas_used}/(1-{waste})"),
    GAS,
  ),
];

const USABLE =
  `IF({supply}="contents",${from([], ["contents", "usable_share"], "{contents}*{usable_share}")},` +
  `IF({supply}="water volume",${call("GAS_CYLINDER", CYLINDER)},IF({supply}="liquid",${call("GAS_LIQUID", LIQUID)},"")))`;

const COSTS = ["labor", "gas", "electrode", "coupon", "reject"].map((name) => `${name}_cost`);

export const PRICE: Row[] = [
  result(
    "Price",
    "price",
    from(["price_exact"], ["price_step"], `${whole("{price_exact}/{price_step}")}*{price_step}`),
    {
      ...MONEY,
      format: "#,##0",
    },
  ),
  result(
    "Price before rounding up",
    "price_exact",
    chosen("margin_of", from(["cost"], ["margin"], priceOf("{cost}", "{margin}"))),
    MONEY,
  ),
  result(
    "Margin as a fraction of the price",
    "margin_on_price",
    from(["price", "cost"], [], "1-{cost}/{price}"),
    PART,
  ),
  result(
    "Margin as a fraction of the cost",
    "margin_on_cost",
    from(["price", "cost"], [], "{price}/{cost}-1"),
    PART,
  ),
  result(
    "Price per joint of the list",
    "joint_price",
    from(["price", "joints"], [], "{price}/{joints}"),
    MONEY,
  ),
  result(
    "Cost, all",
    "cost",
    from(COSTS, ["other_cost"], [...COSTS, "other_cost"].map((name) => `{${name}}`).join("+")),
    MONEY,
  ),
  result("Cost of labor", "labor_cost", from(["hours"], ["labor_rate"], "{hours}*{labor_rate}"), MONEY),
  result(
    "Cost of gas",
    "gas_cost",
    from(["containers"], ["container_price"], "{containers}*{container_price}"),
    MONEY,
  ),
  result(
    "Cost of electrodes",
    "electrode_cost",
    from(["electrodes"], ["electrode_price"], "{electrodes}*{electrode_price}"),
    MONEY,
  ),
  result(
    "Cost of coupons",
    "coupon_cost",
    from(["coupons"], ["coupon_price"], "{coupons}*{coupon_price}"),
    MONEY,
  ),
  result(
    "Cost of joints started over",
    "reject_cost",
    from(["start", "joints"], ["reject_price"], "({start}-{joints})*{reject_price}"),
    MONEY,
  ),
  result("Usable gas per container", "usable", USABLE, GAS),
  result(
    "Containers, exact",
    "containers_exact",
    from(["gas_bought", "usable"], [], "{gas_bought}/{usable}"),
    { format: "0.00" },
  ),
  result(
    "Containers to order",
    "containers",
    from(["containers_exact"], [], whole("{containers_exact}")),
    PIECES,
  ),
];

/** What is asked for a cost: a margin of the price is taken from the price, one of the cost comes on top of the cost. */
export function priceOf(cost: string, margin: string): string {
  return `IF({margin_of}="price",${cost}/(1-(${margin})),${cost}*(1+(${margin})))`;
}
