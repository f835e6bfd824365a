/** Travel of the arc around the tube: its speed, its time and how far it overlaps. */

import { commonBeadWidth } from "../../src/travel/bead";
import { ANGLE, LENGTH, ROTATION, SPEED, TIME } from "../../src/quantity";
import {
  commonOverlap,
  rotation,
  suggestedOverlap,
  suggestedSpeed,
  travelSpeed,
  travelTime,
} from "../../src/travel/travel";
import { number, orComputed } from "../argument";
import { BEAD_WIDTH, COMMON_WIDTH, MATERIAL, OD, OVERLAP_OR_NONE, SPEED_OF_TRAVEL, WALL } from "../arguments";
import { family, formula } from "../formula";
import { scalar } from "../gives";

const TRAVEL_SPEED = formula({
  id: "TRAVEL_SPEED",
  meaning: "Surface travel of the arc at a rotor speed",
  args: { od: OD, rpm: number("Rotor speed", ROTATION) },
  gives: scalar(SPEED),
  tex: [String.raw`v = \pi d\,n`],
  where: {
    v: "surface travel",
    d: "outside diameter (od)",
    n: "rotor speed (rpm)",
  },
  validity: "od and rpm above 0",
  source: "Geometry",
  unchecked: "Geometry alone: the check is its arithmetic worked out by hand",
  related: ["TRAVEL_RPM", "TRAVEL_TIME", "TRAVEL_SUGGEST"],
  synonyms: [
    "ipm",
    "inches per minute",
    "travel speed",
    "welding speed",
    "mm/min",
    "surface speed",
    "linear speed",
    "rpm to ipm",
  ],
  example: { args: [1, 1.6], gives: "5.0265" },
  calc: ({ od, rpm }) => travelSpeed(od, rpm),
});

const TRAVEL_RPM = formula({
  id: "TRAVEL_RPM",
  meaning: "Rotor speed for a surface travel",
  args: { od: OD, speed: SPEED_OF_TRAVEL },
  gives: scalar(ROTATION),
  tex: [String.raw`n = \frac{v}{\pi d}`],
  where: {
    n: "rotor speed",
    v: "surface travel (speed)",
    d: "outside diameter (od)",
  },
  validity: "od and speed above 0",
  source: "Geometry",
  unchecked: "Geometry alone: the check is its arithmetic worked out by hand",
  related: ["TRAVEL_SPEED", "TRAVEL_TIME", "TRAVEL_SUGGEST"],
  synonyms: [
    "rotation speed",
    "revolutions per minute",
    "turns per minute",
    "ipm to rpm",
    "rpm",
    "rotor speed",
    "head speed",
    "rev/min",
  ],
  example: { args: [50.8, 127, "SI"], gives: "0.795775" },
  calc: ({ od, speed }) => rotation(od, speed),
});

const TRAVEL_TIME = formula({
  id: "TRAVEL_TIME",
  meaning: "Time of one revolution and the overlap",
  args: { od: OD, speed: SPEED_OF_TRAVEL, overlap: OVERLAP_OR_NONE },
  gives: scalar(TIME),
  tex: [String.raw`t = \frac{\pi d}{v}\cdot\frac{360^\circ + \text{overlap}}{360^\circ}`],
  where: {
    t: "time of the revolution and the overlap",
    d: "outside diameter (od)",
    v: "surface travel (speed)",
    overlap: "degrees past the full turn",
  },
  validity: "od and speed above 0, overlap 0 or more",
  source: "Geometry",
  unchecked: "Geometry alone: the check is its arithmetic worked out by hand",
  related: ["TRAVEL_SPEED", "OVERLAP_SUGGEST", "CYCLE_TIME"],
  synonyms: [
    "rotation time",
    "weld time",
    "lap time",
    "arc time",
    "arc-on time",
    "circumference",
    "seconds per turn",
  ],
  figure: "overlap",
  example: { args: [50.8, 127, 0, "SI"], gives: "75.398224" },
  calc: ({ od, speed, overlap }) => travelTime(od, speed, overlap),
});

const TRAVEL_SUGGEST = formula({
  id: "TRAVEL_SUGGEST",
  meaning: "Suggested travel speed for a wall",
  args: { wall: WALL, beadWidth: BEAD_WIDTH, material: MATERIAL },
  gives: scalar(SPEED),
  tex: [
    String.raw`v = \frac{1.6\,\alpha}{b},\quad\text{so that}\quad \frac{v\,b}{4\alpha} = 0.4`,
    String.raw`\text{3 in/min (76.2 mm/min)} \le v \le \text{10 in/min (254 mm/min)}`,
  ],
  where: {
    v: "surface travel",
    α: "diffusivity of the metal near 1200 K (material)",
    b: "target fused width (beadWidth)",
  },
  validity: "A starting value for full-penetration single passes",
  assumptions:
    "α near 1200 K stands for the metal; thick walls and conductive metals are held to what heads turn at",
  source:
    "Dimensionless speed of the plate of [rosenthal-1946]; the target 0.4, the default width and 3 to 10 in/min are common practice",
  unconfirmed:
    "The level 0.4 and the default width are estimates from common practice; no published table confirms the width",
  related: ["AMPS_MELT", "MELT_WIDTH", "TRAVEL_RPM", "SCHEDULE"],
  synonyms: ["ipm", "welding speed", "starting speed", "speed", "how fast", "travel rate", "mm/min"],
  figure: "plate",
  example: { args: [0.065], gives: "5.138" },
  calc: ({ wall, beadWidth, material }) => {
    // A wall that cannot be is refused also where the width is given.
    const common = commonBeadWidth(wall);
    return suggestedSpeed(beadWidth ?? common, material);
  },
});

const OVERLAP_SUGGEST = formula({
  id: "OVERLAP_SUGGEST",
  meaning: "Overlap past the start that covers one bead width",
  detail: "in steps of 5°",
  args: { od: OD, wall: WALL, beadWidth: orComputed(number("Fused width", LENGTH), COMMON_WIDTH) },
  gives: scalar(ANGLE),
  tex: [String.raw`o = 5^\circ\left\lceil\frac{360^\circ\, b}{5^\circ\,\pi d}\right\rceil`],
  where: {
    o: "overlap, degrees",
    b: "fused width (beadWidth)",
    d: "outside diameter (od)",
  },
  validity: "wall less than half of od; the bead no wider than the circumference",
  source: "Geometry; one bead width of overlap is common practice",
  unconfirmed: "The default width is an estimate from common practice",
  related: ["TRAVEL_TIME", "AMPS_SECTORS", "CYCLE_PHASES", "SCHEDULE"],
  synonyms: [
    "tie-in",
    "lap",
    "overrun",
    "weld past the start",
    "overlap",
    "closing overlap",
    "degrees past the start",
  ],
  figure: "overlap",
  example: { args: [1, 0.065], gives: "20" },
  calc: ({ od, wall, beadWidth }) =>
    beadWidth === undefined ? commonOverlap(od, wall) : suggestedOverlap(od, wall, beadWidth),
});

export const TRAVEL = family("Travel", [
  TRAVEL_SPEED,
  TRAVEL_RPM,
  TRAVEL_TIME,
  TRAVEL_SUGGEST,
  OVERLAP_SUGGEST,
]);
