/** What the checks say: a sentence when something is wrong, "fine" when not. Hosts may hide the sentence of a cell. */

import type { Check } from "../frame";
import { otherSystem, WAITS } from "../frame";
import { SPEED_OF_BEAD } from "../starting-values";
import { HEAT_FLOW_TAIL } from "./results";

export const CYCLE = `{od},${SPEED_OF_BEAD},{prepurge?},{dwell},{overlap},{downslope},{postpurge?},{handling?},{sheet_units}`;

/** What the formula gives once there are a bead and a speed. */
function onceMoving(formula: string): string {
  return `IF(COUNT({bead},{speed})<2,${WAITS},IFERROR(${formula},${WAITS}))`;
}

export const CHECKS: readonly Check[] = [
  [
    "Tube and units",
    "check_tube",
    `=${otherSystem('BEAD.REASON("OVERLAP_SUGGEST",{od},{wall},{bead_typed?},{sheet_units})')}`,
  ],
  ["Standoff", "check_standoff", '=BEAD.REASON("STANDOFF",{wall},{allowance?},{sheet_units})'],
  [
    "Gap round the tube",
    "check_gap",
    `=IFERROR(BEAD.REASON("STANDOFF_SPREAD",{standoff},{od_tolerance},{runout?},{sheet_units}),${WAITS})`,
  ],
  [
    "Metal, speed and bead",
    "check_speed",
    '=IF({speed_typed}="",BEAD.REASON("TRAVEL_SUGGEST",{wall},{bead_typed?},{material?},{sheet_units}),BEAD.REASON("TRAVEL_RPM",{od},{speed_typed},{sheet_units}))',
  ],
  [
    "Amps by sector",
    "check_sectors",
    `=${onceMoving(`BEAD.REASON("AMPS_SECTORS",{od},{wall},{speed},4,{overlap},{dwell_typed?},{bead},${HEAT_FLOW_TAIL})`)}`,
  ],
  [
    "Pulse",
    "check_pulse",
    `=IF({style}="steady","fine",IF(ISNUMBER({mean_first}),IFERROR(BEAD.REASON("PULSE_SHARE",{mean_first},{peak},{back_share}*{peak}),${WAITS}),${WAITS}))`,
  ],
  [
    "Heat input",
    "check_heat",
    `=IF(COUNT({means})=0,${WAITS},IFERROR(BEAD.REASON("HEAT_INPUT",{volts},MAX({means}),{speed},{heat_factor?},{sheet_units}),${WAITS}))`,
  ],
  [
    "Bore purge",
    "check_purge",
    `=IF(NOT(ISNUMBER({bead})),${WAITS},IF(SUM({bore})>=SUM({od}),"bore must be under the outside diameter",IFERROR(BEAD.REASON("PURGE_TIME",{bore},{dam_spacing},{purge_flow},{target_ppm?},{supply_ppm?},{cells?},{sheet_units}),${WAITS})))`,
  ],
  [
    "Vent and pressure",
    "check_vent",
    `=IF(AND(ISNUMBER({bore}),SUM({vent})>SUM({bore})),"vent must not be larger than the bore; 1/16 is typed as 0.0625, or else it becomes a date",IFERROR(IF(BEAD.REASON("PURGE_VENT",{purge_flow},{pressure_wanted},,,{sheet_units})="fine",BEAD.REASON("PURGE_PRESSURE",{purge_flow},{vent},,,{sheet_units}),BEAD.REASON("PURGE_VENT",{purge_flow},{pressure_wanted},,,{sheet_units})),${WAITS}))`,
  ],
  ["Cycle", "check_cycle", `=${onceMoving(`BEAD.REASON("CYCLE_TIME",${CYCLE})`)}`],
];
