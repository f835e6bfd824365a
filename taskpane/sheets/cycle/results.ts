/** What the cycle plan computes for the crew as typed. */

import { ANGLE, COUNT, LENGTH, SPEED as TRAVEL, TIME } from "../../../src/quantity";
import type { Check } from "../frame";
import { otherSystem, WAITS } from "../frame";
import type { Row } from "../layout";
import { COMMON_BEAD, DIFFUSIVITY, DOWNSLOPE, ofTube, OVERLAP, SPEED_OR_TYPED } from "../starting-values";

function computed(label: string, name: string, content: string, unit: string, format: string): Row {
  return { label, name, content, look: "result", quantity: COUNT, unit, format };
}

/** What a crew turns out in a shift, steady or random; the stops come off the hours first. */
export function output(heads: string, load: string, pattern: "steady" | "random"): string {
  return `BEAD.CREW_OUTPUT(${heads},${load},{machine},{net_hours},{availability?},"${pattern}",{walk?})`;
}

/** Nothing where the lot cannot be reckoned: the check of the crew says why. */
function lot(needs: string, formula: string): string {
  return `IF(ISNUMBER({${needs}}),IFERROR(${formula},""),"")`;
}

export const WELD: Row[] = [
  computed("Hot diffusivity α of the metal", "alpha", `=${DIFFUSIVITY}`, "mm²/s", "0.000"),
  {
    label: "Bead width, fused",
    name: "bead",
    content: `=${ofTube(COMMON_BEAD)}`,
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Travel speed",
    name: "speed",
    content: `=${SPEED_OR_TYPED}`,
    look: "result",
    quantity: TRAVEL,
  },
  {
    label: "Overlap, covers the bead",
    name: "overlap",
    content: `=${OVERLAP}`,
    look: "result",
    quantity: ANGLE,
    format: "0",
  },
  {
    label: "Start dwell, heat flow",
    name: "dwell",
    content:
      '=IF(COUNT({bead},{speed})<2,"",BEAD.START_DWELL({wall},{speed},{bead},{material?},,{sheet_units}))',
    look: "result",
    quantity: TIME,
  },
  {
    label: "Downslope, three bead widths",
    name: "downslope",
    content: `=${DOWNSLOPE}`,
    look: "result",
    quantity: TIME,
  },
  {
    label: "Head on its own, per joint",
    name: "machine",
    content:
      '=IF(COUNT({dwell},{downslope})<2,"",{purge}+{prepurge}+{dwell}+PI()*{od}/{speed}*60*(1+{overlap}/360)+{downslope}+{postpurge})',
    look: "result",
    quantity: TIME,
  },
  computed(
    "Hours left after changes, coupons",
    "net_hours",
    "={hours}-({changes}*{change_minutes}+{coupons}*{coupon_minutes})/60",
    "h",
    "0.00",
  ),
];

export const CREW: Row[] = [
  computed(
    "Heads one operator keeps busy",
    "heads_busy",
    "=BEAD.CREW_HEADS({load},{machine},{walk?})",
    "",
    "0",
  ),
  {
    label: "What holds the crew back",
    name: "bottleneck",
    content:
      '=IF(NOT(ISNUMBER({machine})),"waits for the cycle",IF({heads}*({load}+{walk})>{load}+{machine},"The operator","The heads"))',
    look: "text",
  },
  computed(
    "Joints a shift, steady",
    "shift_steady",
    `={operators}*${output("{heads}", "{load}", "steady")}`,
    "",
    "0.0",
  ),
  computed(
    "Joints a shift, random",
    "shift_random",
    `={operators}*${output("{heads}", "{load}", "random")}`,
    "",
    "0.0",
  ),
  computed(
    "Shifts for the lot, steady",
    "shifts",
    `=${lot("shift_steady", "ROUNDUP(ROUND({joints}/{shift_steady},9),0)")}`,
    "",
    "0",
  ),
  computed(
    "Shifts for the lot, random",
    "shifts_random",
    `=${lot("shift_random", "ROUNDUP(ROUND({joints}/{shift_random},9),0)")}`,
    "",
    "0",
  ),
  computed(
    "Calendar days, steady",
    "days",
    `=${lot("shifts", "INT((ROUNDUP({shifts}/{shifts_a_day},0)-1)/{days_a_week})*7+MOD(ROUNDUP({shifts}/{shifts_a_day},0)-1,{days_a_week})+1")}`,
    "",
    "0",
  ),
  computed("Labour for the lot, steady", "labour_lot", `=${lot("labour", "{labour}*{joints}")}`, "h", "0.0"),
  computed(
    "Labour per joint, steady",
    "labour",
    `=${lot("shift_steady", "{operators}*{hours}/{shift_steady}")}`,
    "h",
    "0.000",
  ),
  computed(
    "Labour cost per joint",
    "labour_cost",
    `=IF({rate}="","",${lot("labour", "{labour}*{rate}")})`,
    "money",
    "0.00",
  ),
];

/** What one operator with these heads refuses, the heads that he keeps busy first. */
const CREW_HEADS = 'BEAD.REASON("CREW_HEADS",{load},{machine},{walk?})';
const CREW_OUTPUT =
  'BEAD.REASON("CREW_OUTPUT",{heads},{load},{machine},{net_hours},{availability?},"steady",{walk?})';

export const CHECKS: readonly Check[] = [
  [
    "Tube and metal",
    "check_tube",
    '=IF(BEAD.REASON("OVERLAP_SUGGEST",{od},{wall},,{sheet_units})="fine",BEAD.REASON("TRAVEL_SUGGEST",{wall},,{material?},{sheet_units}),BEAD.REASON("OVERLAP_SUGGEST",{od},{wall},,{sheet_units}))',
  ],
  ["Units", "check_units", `=${otherSystem('"fine"')}`],
  [
    "Crew",
    "check_crew",
    `=IF(NOT(ISNUMBER({machine})),${WAITS},IFERROR(IF(${CREW_HEADS}="fine",IF(AND(${CREW_OUTPUT}="fine",NOT(SUM({operators})>0)),"operators must be above 0",${CREW_OUTPUT}),${CREW_HEADS}),${WAITS}))`,
  ],
];
