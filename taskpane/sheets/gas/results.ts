/** What the gas estimate adds up, and what it costs. */

import { COUNT, SHARE, VOLUME } from "../../../src/quantity";
import type { Check } from "../frame";
import type { Row } from "../layout";

/**
 * Argon from a litre of liquid: 29.71 ft³, 841 L at 70 °F and 1 atm (2018 International Fire Code, Table G101.2); at the
 * SI standard state of 15 °C and 1 bar 841 × 0.97923 × 1.01325 = 834.4 L.
 */
const PER_LITRE_OF_LIQUID = 'IF({sheet_units}="SI",834.4,29.71)';

/** The list and what all of its lines share. */
export const TAKEOFF_ARGUMENTS = "{list},{handling?},{torch_flow?},,,{overlap?},{sheet_units}";

/** The formula's answer where any line of the list is counted: nothing has no total, which is not the same as 0. */
export function ofLines(formula: string): string {
  return `IF(COUNT({takeoff_cycle})=0,"",${formula})`;
}

export const TOTALS: Row[] = [
  {
    label: "Joints that are counted",
    name: "joints",
    content: `=${ofLines("SUM(IF(ISNUMBER({takeoff_cycle}),1*{list_joints},0))")}`,
    look: "result",
    quantity: COUNT,
    format: "0",
  },
  {
    label: "Gas through torch and bore",
    name: "gas_used",
    content: "={total_gas}",
    look: "result",
    quantity: VOLUME,
    format: "0.0",
  },
  {
    label: "Share that is purge",
    name: "purge_share",
    content: '=IFERROR({purge_gas}/{gas_used},"")',
    look: "result",
    quantity: SHARE,
    format: "0%",
  },
  {
    label: "Gas to buy, waste included",
    name: "gas_bought",
    content: '=IF({gas_used}="","",{gas_used}/(1-{waste}))',
    look: "result",
    quantity: VOLUME,
    format: "0.0",
  },
  {
    label: "Gas per joint",
    name: "gas_per_joint",
    content: '=IFERROR({gas_bought}/{joints},"")',
    look: "result",
    quantity: VOLUME,
    format: "0.00",
  },
  {
    label: "Head and handling time",
    name: "hours",
    content: `=${ofLines("{takeoff_hours}")}`,
    look: "result",
    quantity: COUNT,
    unit: "h",
    format: "0.0",
  },
];

export const COST: Row[] = [
  {
    label: "Usable gas per container",
    name: "usable",
    content: `=IF({supply}="liquid",{liquid_litres}*{liquid_share}*${PER_LITRE_OF_LIQUID},BEAD.GAS_CYLINDER({water_volume},{full_pressure},{residual?},,{sheet_units}))`,
    look: "result",
    quantity: VOLUME,
    format: "0.0",
  },
  {
    label: "Containers, reckoned",
    name: "containers_exact",
    content: '=IF({gas_bought}="","",{gas_bought}/{usable})',
    look: "result",
    quantity: COUNT,
    format: "0.00",
  },
  {
    label: "Containers to order",
    name: "containers",
    content: '=IF({containers_exact}="","",ROUNDUP(ROUND({containers_exact},9),0))',
    look: "result",
    quantity: COUNT,
    format: "0",
  },
  {
    label: "Gas cost",
    name: "cost",
    content: '=IF({price}="","no price typed",IF({containers}="","",{containers}*{price}))',
    look: "result",
    quantity: COUNT,
    unit: "money",
    format: "0.00",
  },
  {
    label: "Gas cost per joint",
    name: "cost_per_joint",
    content: '=IFERROR({cost}/{joints},"")',
    look: "result",
    quantity: COUNT,
    unit: "money",
    format: "0.00",
  },
  {
    label: "Lines",
    name: "lines_verdict",
    content:
      '=IF({takeoff_left_out}<>"",{takeoff_left_out},IF(COUNTA({list})=0,"no lines to count","none counted: see the checks"))',
    look: "text",
  },
];

export const CHECKS: readonly Check[] = [
  [
    "Joint list",
    "check_list",
    `=IF(COUNTA({list})=0,"no lines to count",BEAD.REASON("TAKEOFF",${TAKEOFF_ARGUMENTS}))`,
  ],
  ["Purge of the list", "check_purge", '=BEAD.REASON("PURGE_CHANGES",{target_ppm?},{supply_ppm?})'],
  [
    "Cylinder",
    "check_cylinder",
    '=IF({supply}="liquid","fine",BEAD.REASON("GAS_CYLINDER",{water_volume},{full_pressure},{residual?},,{sheet_units}))',
  ],
  [
    "Units",
    "check_units",
    '=IF(AND({sheet_units}="US",MAX({list_walls})>=0.3),"The walls look like millimetres; this sheet is in inches.",IF(AND({sheet_units}="SI",MAX({list_walls})>0,MAX({list_walls})<0.3),"The walls look like inches; this sheet is in millimetres.","fine"))',
  ],
];
