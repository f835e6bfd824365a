/** What the gas estimate adds up, what it costs, and what its checks look for. */

import type { Quantity } from "../../../src/quantity";
import { COUNT, SHARE, VOLUME } from "../../../src/quantity";
import { call, refusal } from "../call";
import type { Check } from "../frame";
import { firstOf, unless } from "../frame";
import { listProblem } from "../joint-list";
import type { Row } from "../layout";
import { from } from "../native";

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
} as const;

const CYLINDER = {
  waterVolume: "{water_volume?}",
  pressure: "{full_pressure?}",
  residual: "{residual?}",
} as const;
const LIQUID = { liquid: "{liquid_liters?}", usable: "{liquid_share?}" } as const;

function result(
  label: string,
  name: string,
  content: string,
  format: string,
  quantity: Quantity = COUNT,
  unit?: string,
): Row {
  return {
    label,
    name,
    content: `=${content}`,
    look: "result",
    quantity,
    format,
    ...(unit === undefined ? {} : { unit }),
  };
}

export const TOTALS: Row[] = [
  {
    label: "Lines counted",
    name: "lines",
    content: '={lines_counted}&" of "&{lines_typed}',
    look: "text",
  },
  result(
    "Joints counted",
    "joints",
    from(["total_joints"], [], 'IF({lines_counted}=0,"",{total_joints})'),
    "0",
  ),
  result(
    "Gas through torch and bore",
    "gas_used",
    from(["joints", "total_gas"], [], "{total_gas}"),
    "0.0",
    VOLUME,
  ),
  result(
    "Fraction that is purge",
    "purge_share",
    from(["total_purge_gas", "gas_used"], [], "{total_purge_gas}/{gas_used}"),
    "0%",
    SHARE,
  ),
  result(
    "Gas to buy, waste included",
    "gas_bought",
    from(["gas_used"], ["waste"], "{gas_used}/(1-{waste})"),
    "0.0",
    VOLUME,
  ),
  result(
    "Gas per joint",
    "gas_per_joint",
    from(["gas_bought", "joints"], [], "{gas_bought}/{joints}"),
    "0.00",
    VOLUME,
  ),
  result(
    "Machine and handling time",
    "hours",
    from(["joints", "total_hours"], [], "{total_hours}"),
    "0.0",
    COUNT,
    "h",
  ),
];

export const COST: Row[] = [
  result(
    "Usable gas per container",
    "usable",
    `IF({supply}="liquid",${call("GAS_LIQUID", LIQUID)},IF({supply}="cylinder",${call("GAS_CYLINDER", CYLINDER)},""))`,
    "0.0",
    VOLUME,
  ),
  result(
    "Containers, exact",
    "containers_exact",
    from(["gas_bought", "usable"], [], "{gas_bought}/{usable}"),
    "0.00",
  ),
  result(
    "Containers to order",
    "containers",
    from(["containers_exact"], [], "ROUNDUP(ROUND({containers_exact},9),0)"),
    "0",
  ),
  result("Gas cost", "cost", from(["containers"], ["price"], "{containers}*{price}"), "0.00", COUNT, "money"),
  result(
    "Gas cost per joint",
    "cost_per_joint",
    from(["cost", "joints"], [], "{cost}/{joints}"),
    "0.00",
    COUNT,
    "money",
  ),
];

export const CHECKS: readonly Check[] = [
  {
    label: "Joint list",
    name: "check_list",
    problem: listProblem(LIST),
  },
  {
    label: "Purge of the list",
    name: "check_purge",
    problem: refusal("PURGE_CHANGES", { ppm: "{target_ppm?}", supplyPpm: "{supply_ppm?}" }),
  },
  {
    label: "Supply",
    name: "check_supply",
    problem: firstOf(
      `IF({supply}="liquid",${refusal("GAS_LIQUID", LIQUID)},${refusal("GAS_CYLINDER", CYLINDER)})`,
      unless("SUM({usable})>0", "a container gives no usable gas: full and change-out pressure are alike"),
    ),
  },
  {
    label: "Totals",
    name: "check_totals",
    problem: firstOf(
      unless(
        "COUNT({joints},{gas_used},{gas_bought},{hours},{containers},{cost},{cost_per_joint})=7",
        "a total or a cost is missing",
      ),
      unless(
        "AND(ABS(SUM({size_gas})-{total_gas})<=1E-9*{total_gas},ABS(SUM({size_hours})-{total_hours})<=1E-9*{total_hours})",
        "the table by size does not add up to the totals: a cell that its formula fills is not empty, or was typed over",
      ),
    ),
  },
];
