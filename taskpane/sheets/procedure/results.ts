/** What the procedure sheet computes, in the order of its blocks: looked up in the schedule, or a formula's own answer. */

import type { Quantity } from "../../../src/quantity";
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
import { call } from "../call";
import type { Row } from "../layout";
import { scheduled, ScheduleTable } from "../schedule-table";

export const SCHEDULE = new ScheduleTable({
  od: "{od}",
  wall: "{wall}",
  material: "{material?}",
  style: "{style?}",
  volts: "{volts_typed?}",
  efficiency: "{efficiency?}",
  speed: "{speed_typed?}",
  beadWidth: "{bead_typed?}",
  overlap: "{overlap_typed?}",
  dwell: "{dwell_typed?}",
  peak: "{peak_typed?}",
  background: "{back_share?}",
  allowance: "{allowance?}",
});

/** A value of the schedule; its label tells whether it was typed or suggested where a person may type it. */
function ofSchedule(
  label: string,
  name: string,
  row: string,
  quantity: Quantity,
  more: Partial<Row> & { readonly typedIn?: string } = {},
): Row {
  const { typedIn, ...rest } = more;
  const labelFormula =
    typedIn === undefined
      ? {}
      : { labelFormula: `=IF(TRIM({${typedIn}}&"")="","${label}","${label}, typed")` };
  return { label, name, content: `=${scheduled(row)}`, look: "result", quantity, ...labelFormula, ...rest };
}

function result(label: string, name: string, content: string, quantity: Quantity, format?: string): Row {
  return {
    label,
    name,
    content: `=${content}`,
    look: "result",
    quantity,
    ...(format === undefined ? {} : { format }),
  };
}

const LEAVES = call("FEELER_STACK", { gap: "{standoff}" });
/** As many as the cells have room for; a sum that is cut off at its left would read as another. */
const MOST_LEAVES_SHOWN = 4;

export const GAP: Row[] = [
  ofSchedule("Electrode diameter", "electrode", "Electrode diameter", LENGTH),
  ofSchedule("Standoff", "standoff", "Standoff", LENGTH),
  ofSchedule("Arc spot, 4σ", "arc_spot", "Arc spot", LENGTH),
  {
    label: "Arc gap around the tube, min/max",
    name: "gap_least",
    content: `=${call("STANDOFF_SPREAD", { standoff: "{standoff}", odTolerance: "{od_tolerance?}", runout: "{runout?}" })}`,
    look: "result",
    quantity: LENGTH,
    fills: ["gap_most"],
  },
  {
    label: "Feeler leaves",
    name: "feeler",
    content: `=IF(ROWS(${LEAVES})>${String(MOST_LEAVES_SHOWN)},ROWS(${LEAVES})&" leaves: see FEELER_STACK",TEXTJOIN(" + ",TRUE,${LEAVES})&IF({sheet_units}="SI"," mm"," in"))`,
    look: "result",
    quantity: LENGTH,
    format: "General",
    unit: "",
    columns: 3,
  },
  result(
    "Electrode length",
    "electrode_length",
    call("ELECTRODE_LENGTH", { reach: "{reach?}", od: "{od}", standoff: "{standoff}" }),
    LENGTH,
  ),
  ofSchedule("Arc voltage", "volts", "Arc voltage", VOLTAGE, { typedIn: "volts_typed" }),
  ofSchedule("Bead width, fused", "bead", "Bead width", LENGTH, { typedIn: "bead_typed" }),
];

export const TRAVEL: Row[] = [
  ofSchedule("Travel speed", "speed", "Travel speed", SPEED, { typedIn: "speed_typed" }),
  ofSchedule("Rotor speed", "rpm", "Rotor speed", ROTATION),
  ofSchedule("Overlap", "overlap", "Overlap", ANGLE, { typedIn: "overlap_typed", format: "0" }),
  ofSchedule("Start dwell", "dwell", "Start dwell", TIME, { typedIn: "dwell_typed" }),
  ofSchedule("Start dwell current", "dwell_amps", "Start dwell current", CURRENT),
  ofSchedule("Downslope, three bead widths", "downslope", "Downslope", TIME),
  ofSchedule("Peak share of the pulse", "pulse_share", "Peak share of the pulse", SHARE),
  ofSchedule("Pulse rate", "pulse_rate", "Pulse rate", FREQUENCY),
];

/** The dwell may take more current than any sector. */
const DWELL_HEAT = call("HEAT_INPUT", {
  volts: "{volts}",
  amps: "{dwell_amps}",
  speed: "{speed}",
  efficiency: "{heat_factor?}",
});

export const HEAT: Row[] = [
  result(
    "Heat input, maximum",
    "heat",
    `IF(OR(COUNT({heats})<5,NOT(ISNUMBER({dwell_amps}))),"",MAX({heats},${DWELL_HEAT}))`,
    HEAT_INPUT,
  ),
];

export const MEAN: Row[] = [
  result(
    "Mean current of the full turn",
    "mean_of_turn",
    'IF(COUNT({means_of_turn})<4,"",AVERAGE({means_of_turn}))',
    CURRENT,
  ),
];

/** The check takes a mean current and one voltage; a pulse with a higher peak voltage brings more heat. */
export const PULSE_NOTE =
  '=IF({style}="steady","","Pulsed arcs are judged by metered or instantaneous power, which can be higher: see the formula HEAT_PULSED.")';

/** Common practice: how many volume changes people purge with. */
const COMMON_CHANGES = 6;

const SWEPT = { bore: "{bore}", length: "{dam_spacing?}", flow: "{purge_flow?}" } as const;
const SUPPLY = { supplyPpm: "{supply_ppm?}", cells: "{cells?}" } as const;
export const TO_TARGET = { ...SWEPT, ppm: "{target_ppm?}", ...SUPPLY } as const;

export const PURGE_TIMES: Row[] = [
  result("Bore", "bore", `IF(TRIM({bore_typed}&"")="",${scheduled("Bore")},{bore_typed_read})`, LENGTH),
  result(
    "Volume between the dams",
    "purge_volume",
    call("PURGE_VOLUME", { bore: "{bore}", length: "{dam_spacing?}" }),
    VOLUME,
  ),
  result(
    "Volume changes to the target",
    "purge_changes",
    call("PURGE_CHANGES", { ppm: "{target_ppm?}", ...SUPPLY }),
    COUNT,
    "0.00",
  ),
  result("Purge time, mixed", "purge_time", call("PURGE_TIME", TO_TARGET), TIME),
  result(
    "Purge time, plain displacement",
    "purge_displaced",
    call("PURGE_TIME", { ...SWEPT, changes: 1 }),
    TIME,
  ),
  result(
    `Common practice, ${String(COMMON_CHANGES)} changes`,
    "purge_common",
    call("PURGE_TIME", { ...SWEPT, changes: COMMON_CHANGES }),
    TIME,
  ),
  result(
    "Oxygen after these, mixed",
    "purge_common_ppm",
    call("PURGE_OXYGEN", { ...SWEPT, seconds: "{purge_common}", ...SUPPLY }),
    OXYGEN,
  ),
  result(
    "Gas for the purge, mixed",
    "purge_gas",
    call("GAS_JOINT", { torchFlow: "{purge_flow?}", torchSeconds: "{purge_time}" }),
    VOLUME,
  ),
];

export const PURGE_FLOWS: Row[] = [
  result("Maximum laminar purge flow", "laminar", call("PURGE_LAMINAR", { bore: "{bore}" }), FLOW),
  result(
    "Vent for the pressure wanted",
    "vent_wanted",
    call("PURGE_VENT", { flow: "{purge_flow?}", pressure: "{pressure_wanted?}" }),
    LENGTH,
  ),
  result(
    "Bore pressure, vent fitted",
    "pressure",
    call("PURGE_PRESSURE", { flow: "{purge_flow?}", ventDiameter: "{vent?}" }),
    BORE_PRESSURE,
  ),
  result(
    "Blow-out pressure of the weld pool",
    "ceiling",
    // The widest root, or the bead aimed at where no sector's is wider: the wider pool blows out first.
    call("PURGE_CEILING", {
      rootWidth: 'IF(COUNT({bead},{roots})<6,"",MAX({bead},{roots}))',
      material: "{material?}",
    }),
    BORE_PRESSURE,
  ),
  result("AWS D18.2 sample at the target", "tint", call("PURGE_TINT", { ppm: "{target_ppm?}" }), COUNT, "0"),
];

export const DAMS: Row[] = [
  result(
    "Dam from the weld, by heat",
    "dam_heat",
    call("DAM_DISTANCE", {
      limit: "{dam_limit?}",
      od: "{od}",
      wall: "{wall}",
      amps: "{mean_of_turn}",
      volts: "{volts}",
      speed: "{speed}",
      extraSeconds: `${scheduled("Arc time")}-${scheduled("Full turn")}`,
      efficiency: "{efficiency?}",
      material: "{material?}",
    }),
    LENGTH,
  ),
  result(
    "Dam from the weld, the larger",
    "dam_distance",
    'IF(COUNT({dam_heat},{dam_least_read})<2,"",MAX({dam_heat},{dam_least_read}))',
    LENGTH,
  ),
];

export const CYCLE = {
  od: "{od}",
  speed: "{speed}",
  prepurge: "{prepurge?}",
  dwell: "{dwell}",
  overlap: "{overlap}",
  downslope: "{downslope}",
  postpurge: "{postpurge?}",
  handling: "{handling?}",
} as const;
