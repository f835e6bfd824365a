/** One weld cycle, from start to start. */

import { COMMON_POSTPURGE, COMMON_PREPURGE, cyclePhases, cycleTime } from "../../src/planning/cycle";
import { si, TIME, written } from "../../src/quantity";
import { number, orDefault } from "../argument";
import { DWELL, OD, OVERLAP_OR_NONE, SPEED_OF_TRAVEL } from "../arguments";
import { family, formula } from "../formula";
import { column, scalar, table, wordsColumn } from "../gives";

const NONE = si(0, TIME);
const CYCLE_ARGUMENTS = {
  od: OD,
  speed: SPEED_OF_TRAVEL,
  prepurge: orDefault(number("Gas before the arc", TIME), COMMON_PREPURGE),
  dwell: orDefault(DWELL, NONE),
  overlap: OVERLAP_OR_NONE,
  downslope: orDefault(number("Ramp-down of the current", TIME), NONE),
  postpurge: orDefault(number("Gas after the arc", TIME), COMMON_POSTPURGE),
  handling: orDefault(number("Unload, load and set up", TIME), NONE),
};
const ASSUMPTIONS =
  "One phase after the other, none at the same time; the travel is that of the tube's outside";
const SOURCE = `Sum of the phases; ${written(COMMON_PREPURGE, TIME, "SI")} and ${written(COMMON_POSTPURGE, TIME, "SI")} of gas are common practice`;

const CYCLE_TIME = formula({
  id: "CYCLE_TIME",
  meaning: "Time of one weld cycle from start to start",
  args: CYCLE_ARGUMENTS,
  gives: scalar(TIME),
  tex: [
    String.raw`T = \text{prepurge} + \text{dwell} + \frac{\pi d}{v}\cdot\frac{360^\circ + \text{overlap}}{360^\circ} + \text{downslope} + \text{postpurge} + \text{handling}`,
  ],
  where: {
    T: "time from start to start",
    d: "outside diameter (od)",
    v: "surface travel (speed)",
    overlap: "degrees past the full turn",
    dwell: "arc on before rotation",
  },
  validity: "Times 0 or more. The purge of the bore is not included; see PURGE_TIME.",
  assumptions: ASSUMPTIONS,
  source: SOURCE,
  related: ["CYCLE_PHASES", "TRAVEL_TIME", "START_DWELL", "PURGE_TIME", "TAKEOFF"],
  synonyms: [
    "cycle time",
    "weld time",
    "arc time",
    "upslope",
    "downslope",
    "ramp",
    "slope",
    "preflow",
    "postflow",
    "fit-up",
    "tack",
    "handling",
  ],
  figure: "cycle",
  example: { args: [50.8, 127, 30, 0, 0, 0, 15, 0, "SI"], gives: "120.398224" },
  calc: (cycle) => cycleTime(cycle),
});

const CYCLE_PHASES = formula({
  id: "CYCLE_PHASES",
  meaning: "The phases of one weld cycle, one row each",
  args: CYCLE_ARGUMENTS,
  gives: table(
    {
      label: wordsColumn("label"),
      starts: column("starts at", TIME),
      lasts: column("lasts", TIME),
      arcOn: wordsColumn<boolean>("arc on"),
    },
    { more: "Seven rows: prepurge, start dwell, full turn, overlap, downslope, postpurge, handling" },
  ),
  equation: "Each phase starts where the one before it ends; turn = π·d/v, lap = turn·overlap/360°",
  tex: [
    String.raw`\text{turn} = \frac{\pi d}{v}`,
    String.raw`\text{lap} = \text{turn}\cdot\frac{\text{overlap}}{360^\circ}`,
  ],
  where: {
    turn: "time of the full turn",
    lap: "time of the overlap",
    d: "outside diameter (od)",
    v: "surface travel (speed)",
    overlap: "degrees past the full turn",
  },
  validity: "Times 0 or more; a phase of 0 s keeps its row",
  assumptions: ASSUMPTIONS,
  source: SOURCE,
  unchecked: "Sums of times: the check is their arithmetic worked out by hand",
  related: ["CYCLE_TIME", "TRAVEL_TIME", "START_DWELL", "OVERLAP_SUGGEST"],
  synonyms: [
    "weld sequence",
    "timeline",
    "downslope",
    "postflow",
    "preflow",
    "phases",
    "ramp",
    "slope",
    "upslope",
    "sequence chart",
  ],
  figure: "cycle",
  example: {
    args: [50.8, 127, 30, 2, 0, 5, 15, 0, "SI"],
    gives: '"Prepurge", 0, 30, FALSE; "Start dwell", 30, 2, TRUE; "Full turn", 32, 75.398, TRUE; …',
  },
  calc: (cycle) => cyclePhases(cycle),
});

export const CYCLE = family("Cycle", [CYCLE_TIME, CYCLE_PHASES]);
