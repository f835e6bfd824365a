/** What the checks of the procedure sheet look for, each a sentence when it is not so. */

import { refusal } from "../call";
import type { Check } from "../frame";
import { firstOf, spilledOver, unless } from "../frame";
import { sound } from "../native";
import { qualified } from "../qualification";
import { scheduled } from "../schedule-table";
import { ODD_TUBE } from "../tube";
import { WINDOW } from "./bead";
import { OWN_CHECK } from "./program";
import { CYCLE, SCHEDULE, TO_TARGET } from "./results";
import { ENDS } from "./course";

/** How far a typed bore may lie off OD less two walls: mill tolerances, no other tube. */
const BORE_TOLERANCE = 0.04;
const NOMINAL_BORE = scheduled("Bore");
/** Safety against blow-out: common practice asks for a good margin. */
const MARGIN = 2;

export const CHECKS: readonly Check[] = [
  {
    label: "Tube and schedule",
    name: "check_tube",
    problem: firstOf(ODD_TUBE, SCHEDULE.refusal, SCHEDULE.blocked),
    rows: 2,
  },
  {
    label: "Electrode and gap",
    name: "check_gap",
    problem: firstOf(
      unless("COUNT({electrode},{standoff})=2", "no electrode or no standoff"),
      refusal("STANDOFF_SPREAD", {
        standoff: "{standoff}",
        odTolerance: "{od_tolerance?}",
        runout: "{runout?}",
      }),
      refusal("FEELER_STACK", { gap: "{standoff}" }),
      refusal("ELECTRODE_LENGTH", { reach: "{reach?}", od: "{od}", standoff: "{standoff}" }),
      unless("COUNT({gap_least},{electrode_length})=2", "a value of the gap is missing"),
    ),
  },
  {
    label: "Current by sector",
    name: "check_sectors",
    problem: firstOf(
      unless("COUNT({means})=5", "a sector has no current"),
      unless('OR({style}="steady",COUNT({peaks})+COUNT({backs})=10)', "a sector has no peak or background"),
      unless("COUNT({speed},{rpm},{overlap},{dwell},{downslope})=5", "a time or a speed is missing"),
      unless(
        `COUNT({course_needed})+COUNT({course_set})=${String(2 * ENDS)}`,
        spilledOver("the current around the tube"),
      ),
    ),
  },
  {
    label: "Bead",
    name: "check_bead",
    problem: firstOf(
      unless("COUNT({faces})+COUNT({roots})=10", "a sector has no face or no root"),
      unless("MIN({roots})>0", "a sector does not melt through"),
      refusal("AMPS_WINDOW", WINDOW),
      unless(
        "COUNT({amps_through},{plate_amps},{window_least},{window_most},{window_room})=5",
        "no room for current to judge",
      ),
      unless(
        "{window_room}>0",
        "no current suits every wall and arc of the usual spread: the window is closed",
      ),
      unless(
        "{mean_first}>={window_least}*(1-1E-9)",
        "the current is below the window: with the weakest arc or the thickest wall the root is too narrow",
      ),
      unless(
        "{mean_first}<={window_most}*(1+1E-9)",
        "the current is above the window: with the strongest arc or the thinnest wall the face is too wide",
      ),
    ),
  },
  OWN_CHECK,
  {
    label: "Remarks of the schedule",
    name: "check_remarks",
    problem: SCHEDULE.remarks,
  },
  {
    label: "Heat input",
    name: "check_heat",
    problem: firstOf(
      unless("COUNT({heats})=5", "a sector has no heat input"),
      unless(`AND(ISNUMBER({heat_most}),${sound(["heat_most"])})`, "no qualified maximum to judge by"),
      unless(
        "{heat}<={heat_most}*(1+1E-9)",
        '="above the qualified maximum: "&ROUND({heat},3)&" against "&{heat_most}',
      ),
      unless(
        "OR(NOT(ISNUMBER({own_heat})),{own_heat}<={heat_most}*(1+1E-9))",
        '="your own program is above the qualified maximum: "&ROUND({own_heat},3)&" against "&{heat_most}',
      ),
    ),
  },
  qualified([
    ["Heat input", "{heat}"],
    ["The smallest heat input", "MIN({heats})"],
    ["The heat input of your own program", "{own_heat}"],
  ]),
  {
    label: "Bore purge",
    name: "check_purge",
    problem: firstOf(
      unless("ISNUMBER({bore})", "no bore"),
      `IF({bore_typed_read}="","",IF(ABS({bore_typed_read}-${NOMINAL_BORE})<=${String(BORE_TOLERANCE)}*${NOMINAL_BORE}*(1+1E-9),"","the bore typed is not OD − 2 × wall of this tube"))`,
      refusal("PURGE_TIME", TO_TARGET),
      unless("COUNT({purge_time},{purge_gas},{tint})=3", "a value of the purge is missing"),
    ),
  },
  {
    label: "Purge flow",
    name: "check_flow",
    problem: firstOf(
      unless(`AND(COUNT({purge_flow},{laminar})=2,${sound(["purge_flow"])})`, "no flow to judge"),
      unless(
        "{purge_flow}<={laminar}*(1+1E-9)",
        "above laminar: the gas mixes with the air instead of pushing it out",
      ),
    ),
  },
  {
    label: "Vent and bore pressure",
    name: "check_vent",
    problem: firstOf(
      refusal("PURGE_VENT", { flow: "{purge_flow?}", pressure: "{pressure_wanted?}" }),
      refusal("PURGE_PRESSURE", { flow: "{purge_flow?}", ventDiameter: "{vent?}" }),
      unless("COUNT({vent_read},{bore},{pressure},{ceiling})=4", "no pressure to judge"),
      unless("{vent_read}<{bore}", "the vent is not smaller than the bore"),
      unless(
        `{pressure}<={ceiling}/${String(MARGIN)}*(1+1E-9)`,
        "bore pressure above half of the blow-out pressure: fit a larger vent",
      ),
    ),
  },
  {
    label: "Dams",
    name: "check_dams",
    problem: firstOf(
      unless(
        `AND(COUNT({dam_distance},{dam_spacing_read})=2,${sound(["dam_least", "dam_limit", "dam_spacing"])})`,
        "no distance to judge",
      ),
      unless(
        "{dam_spacing_read}/2>={dam_distance}*(1-1E-9)",
        "dams too near the weld: half their spacing is less than the distance",
      ),
    ),
  },
  {
    label: "Cycle",
    name: "check_cycle",
    problem: firstOf(
      unless("COUNT({speed},{overlap},{dwell},{downslope})=4", "no travel to time"),
      refusal("CYCLE_TIME", CYCLE),
      unless("ISNUMBER({cycle})", "no cycle time"),
    ),
  },
];
