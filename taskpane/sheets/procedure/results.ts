/** What the procedure sheet computes, in the order of its blocks. */

import {
  ANGLE,
  BORE_PRESSURE,
  COUNT,
  CURRENT,
  FLOW,
  FREQUENCY,
  HEAT_INPUT,
  LENGTH,
  OXYGEN,
  ROTATION,
  SHARE,
  SPEED,
  TIME,
  VOLTAGE,
  VOLUME,
} from "../../../src/quantity";
import type { Row } from "../layout";
import { COMMON_BEAD, DIFFUSIVITY, DOWNSLOPE, ofTube, OVERLAP, SPEED_OR_TYPED } from "../starting-values";

/** Arguments that end every heat-flow formula on the sheet: material, volts, efficiency, preheat, units. */
export const HEAT_FLOW_TAIL = "{material?},{volts_typed?},,,{sheet_units}";

export const GAP: Row[] = [
  {
    label: "Electrode diameter",
    name: "electrode",
    content: '=BEAD.ELECTRODE_DIAMETER(IF({style}="steady",{mean_first},{peak}),{sheet_units})',
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Standoff",
    name: "standoff",
    content: "=BEAD.STANDOFF({wall},{allowance?},{sheet_units})",
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Gap round the tube, least/most",
    name: "gap_least",
    content: "=BEAD.STANDOFF_SPREAD({standoff},{od_tolerance},{runout?},{sheet_units})",
    look: "result",
    quantity: LENGTH,
    spill: 2,
  },
  {
    label: "Feeler leaves",
    name: "feeler",
    content: '=TEXTJOIN(" + ",TRUE,ROUND(BEAD.FEELER_STACK({standoff},,,{sheet_units}),5))',
    look: "result",
    quantity: LENGTH,
    format: "General",
    columns: 2,
  },
  {
    label: "Electrode length",
    name: "electrode_length",
    content: "=BEAD.ELECTRODE_LENGTH({reach},{od},{standoff},{sheet_units})",
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Arc voltage",
    name: "volts",
    content:
      '=IF({volts_typed}<>"",{volts_typed},IF(ISNUMBER({bead}),BEAD.ARC_VOLTS({wall}/2+IF({allowance}="",IF({sheet_units}="SI",0.254,0.01),{allowance}),{sheet_units}),""))',
    look: "result",
    quantity: VOLTAGE,
  },
  {
    label: "Bead width, fused",
    name: "bead",
    content: `=${ofTube(`IF({bead_typed}="",${COMMON_BEAD},IF(AND(ISNUMBER({bead_typed}),SUM({bead_typed})>0),{bead_typed},""))`)}`,
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Hot diffusivity α of the metal",
    name: "alpha",
    content: `=${DIFFUSIVITY}`,
    look: "result",
    quantity: COUNT,
    format: "0.000",
    unit: "mm²/s",
  },
];

export const TRAVEL: Row[] = [
  {
    label: "Travel speed, 1.6 α/bead width",
    name: "speed",
    content: `=${SPEED_OR_TYPED}`,
    look: "result",
    quantity: SPEED,
  },
  {
    label: "Rotor speed",
    name: "rpm",
    content: "=BEAD.TRAVEL_RPM({od},{speed},{sheet_units})",
    look: "result",
    quantity: ROTATION,
  },
  {
    label: "Overlap, covers the bead",
    name: "overlap",
    content: `=IF({overlap_typed}="",${OVERLAP},{overlap_typed})`,
    look: "result",
    quantity: ANGLE,
    format: "0",
  },
  {
    label: "Start dwell",
    name: "dwell",
    content:
      '=IF({dwell_typed}<>"",{dwell_typed},IF(COUNT({bead},{speed})=2,BEAD.START_DWELL({wall},{speed},{bead},{material?},,{sheet_units}),""))',
    look: "result",
    quantity: TIME,
  },
  {
    label: "Peak, sector 1",
    name: "peak",
    content:
      '=IF({style}="steady","",IF({peak_typed}<>"",{peak_typed},IF(ISNUMBER({bead}),BEAD.AMPS_WALL({wall},{material?},{sheet_units}),"")))',
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Peak share of the pulse",
    name: "pulse_share",
    content:
      '=IF(OR({style}="steady",NOT(ISNUMBER({mean_first}))),"",BEAD.PULSE_SHARE({mean_first},{peak},{back_share}*{peak}))',
    look: "result",
    quantity: SHARE,
  },
  {
    label: "Pulse rate",
    name: "pulse_rate",
    content:
      '=IF(OR({style}="steady",COUNT({bead},{speed})<2),"",BEAD.PULSE_RATE({speed},{bead},,{sheet_units}))',
    look: "result",
    quantity: FREQUENCY,
  },
  {
    label: "Downslope, three bead widths",
    name: "downslope",
    content: `=${DOWNSLOPE}`,
    look: "result",
    quantity: TIME,
  },
];

export const HEAT: Row[] = [
  {
    label: "Heat input, hottest sector",
    name: "heat",
    content:
      '=IF(COUNT({means})=0,"",BEAD.HEAT_INPUT({volts},MAX({means}),{speed},{heat_factor?},{sheet_units}))',
    look: "result",
    quantity: HEAT_INPUT,
  },
];

export const VERDICT: Row[] = [
  {
    label: "Against the qualified maximum",
    name: "verdict",
    content:
      '=IF(NOT(ISNUMBER({heat})),"No heat input to judge",IF({heat_most}="","No qualified maximum typed",IF({heat}<={heat_most},"Within the maximum","ABOVE the maximum")))',
    look: "text",
  },
];

/** The verdict takes a mean current and one voltage; a pulse with a higher peak voltage brings more heat. */
export const PULSE_NOTE =
  '=IF({style}="steady","","Pulsed arcs are judged by metered or instantaneous power, which can be higher: see the formula HEAT_PULSED.")';

const PURGED = "{bore},{dam_spacing},{purge_flow}";
/** Seconds that so many volume changes take: flows are per hour in US, per minute in SI. */
function displaced(changes: number): string {
  const seconds = `${String(changes)}*{purge_volume}/{purge_flow}*IF({sheet_units}="SI",60,3600)`;
  return `IFERROR(IF({purge_flow}>0,${seconds},""),"")`;
}
/** Common practice: how many volume changes people purge with. */
const COMMON_CHANGES = 6;

export const PURGE_TIMES: Row[] = [
  {
    label: "Volume between the dams",
    name: "purge_volume",
    content: "=BEAD.PURGE_VOLUME({bore},{dam_spacing},{sheet_units})",
    look: "result",
    quantity: VOLUME,
  },
  {
    label: "Volume changes to the target",
    name: "purge_changes",
    content: "=BEAD.PURGE_CHANGES({target_ppm?},{supply_ppm?},{cells?})",
    look: "result",
    quantity: COUNT,
    format: "0.00",
  },
  {
    label: "Purge time, mixed",
    name: "purge_time",
    content: `=BEAD.PURGE_TIME(${PURGED},{target_ppm?},{supply_ppm?},{cells?},{sheet_units})`,
    look: "result",
    quantity: TIME,
  },
  {
    label: "Purge time, plain displacement",
    name: "purge_displaced",
    content: `=${displaced(1)}`,
    look: "result",
    quantity: TIME,
  },
  {
    label: `Common practice, ${String(COMMON_CHANGES)} changes`,
    name: "purge_common",
    content: `=${displaced(COMMON_CHANGES)}`,
    look: "result",
    quantity: TIME,
  },
  {
    label: "Oxygen after these, mixed",
    name: "purge_common_ppm",
    content: `=BEAD.PURGE_OXYGEN(${PURGED},{purge_common},{supply_ppm?},{cells?},{sheet_units})`,
    look: "result",
    quantity: OXYGEN,
  },
  {
    label: "Gas for the purge, mixed",
    name: "purge_gas",
    content: '=IF(ISNUMBER({purge_time}),{purge_flow}*{purge_time}/IF({sheet_units}="SI",60,3600),"")',
    look: "result",
    quantity: VOLUME,
  },
  {
    label: "AWS D18.2 sample at the target",
    name: "tint",
    content: "=BEAD.PURGE_TINT({target_ppm})",
    look: "result",
    quantity: COUNT,
    format: "0",
  },
];

export const PURGE_FLOWS: Row[] = [
  {
    label: "Greatest laminar purge flow",
    name: "laminar",
    content: "=BEAD.PURGE_LAMINAR({bore},,{sheet_units})",
    look: "result",
    quantity: FLOW,
  },
  {
    label: "Purge flow",
    name: "laminar_verdict",
    content:
      '=IF(NOT(AND(ISNUMBER({laminar}),ISNUMBER({purge_displaced}))),"No limit to judge",IF({purge_flow}<={laminar},"Laminar: little mixing","ABOVE laminar: it mixes"))',
    look: "text",
  },
  {
    label: "Vent for the pressure wanted",
    name: "vent_wanted",
    content: "=BEAD.PURGE_VENT({purge_flow},{pressure_wanted},,,{sheet_units})",
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Bore pressure, vent fitted",
    name: "pressure",
    content: "=BEAD.PURGE_PRESSURE({purge_flow},{vent},,,{sheet_units})",
    look: "result",
    quantity: BORE_PRESSURE,
  },
  {
    label: "Puddle blows out at",
    name: "ceiling",
    content: "=BEAD.PURGE_CEILING({bead},{material},{sheet_units})",
    look: "result",
    quantity: BORE_PRESSURE,
  },
  {
    label: "Pressure against half of that",
    name: "pressure_verdict",
    content:
      '=IF(NOT(AND(ISNUMBER({pressure}),ISNUMBER({ceiling}))),"No pressure to judge",IF(AND(ISNUMBER({bore}),SUM({vent})>SUM({bore})),"Vent larger than the bore",IF({pressure}<={ceiling}/2,"Safe by a factor of 2","TOO HIGH: larger vent")))',
    look: "text",
  },
];

export const DAMS: Row[] = [
  {
    label: "Dam from the weld, by heat",
    name: "dam_heat",
    content:
      '=IF(COUNT({means_of_turn})=0,"",BEAD.DAM_DISTANCE({dam_limit},{od},{wall},AVERAGE({means_of_turn}),{volts},{speed},{dwell}+{overlap}/360*PI()*{od}/{speed}*60+{downslope},,{material?},,{sheet_units}))',
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Dam from the weld, the larger",
    name: "dam_distance",
    content: '=IF(ISNUMBER({dam_heat}),MAX({dam_heat},IF({sheet_units}="SI",150,6)),"")',
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Half the dam spacing",
    name: "dam_verdict",
    content:
      '=IF(NOT(ISNUMBER({dam_distance})),"No distance to judge",IF({dam_spacing}/2>={dam_distance},"Far enough","TOO NEAR the weld"))',
    look: "text",
  },
];
