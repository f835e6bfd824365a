/** The ring that runs into its own heat: the current of each sector and the dwell at the start. */

import { commonArcVolts, wattsPerAmp } from "../../src/heat-flow/arc";
import { dwellOf } from "../../src/heat-flow/dwell";
import { riseToMelt } from "../../src/heat-flow/plate";
import { COMMON_SECTORS, MOST_OVERLAP, MOST_SECTORS, weldRing } from "../../src/heat-flow/ring-weld";
import { ANGLE, COUNT, CURRENT, SHARE, si, TEMPERATURE_RISE, TIME, written } from "../../src/quantity";
import { commonBeadWidth } from "../../src/travel/bead";
import { number, orComputed, orDefault, toldInBoth } from "../argument";
import {
  ARC_SIZE,
  BEAD_WIDTH,
  DWELL,
  EFFICIENCY,
  MATERIAL,
  OD,
  OVERLAP_OR_NONE,
  SPEED_OF_TRAVEL,
  TUBE_TEMPERATURE,
  VOLTS_OF_WALL,
  WALL,
} from "../arguments";
import { family, formula } from "../formula";
import { column, scalar, table } from "../gives";
import { MELT } from "./melt";
import { PROGRAM_BEAD } from "./program";
import { RING_BEAD } from "./ring";
import { AGE_TEX, LEFT_OUT, MODEL_SOURCE, NEARNESS, STANDING_WHERE } from "./told";
import { AMPS_WINDOW } from "./window";

const AMPS_SECTORS = formula({
  id: "AMPS_SECTORS",
  meaning: "Current sector by sector around the tube, which heats up as it is welded",
  detail: "a row each, the overlap as one more",
  args: {
    od: OD,
    wall: WALL,
    speed: SPEED_OF_TRAVEL,
    sectors: orDefault(number("Equal sectors per revolution", COUNT), COMMON_SECTORS),
    overlap: OVERLAP_OR_NONE,
    dwell: orComputed(DWELL, "START_DWELL of the same bead"),
    beadWidth: BEAD_WIDTH,
    material: MATERIAL,
    volts: VOLTS_OF_WALL,
    efficiency: EFFICIENCY,
    preheat: TUBE_TEMPERATURE,
    arcSize: ARC_SIZE,
  },
  gives: table({
    from: column("from", ANGLE),
    to: column("to", ANGLE),
    amps: column("mean current", CURRENT),
    share: column("fraction of the first sector's current", SHARE),
    rise: column("rise ahead of the arc at the sector's end", TEMPERATURE_RISE),
  }),
  tex: [
    String.raw`q(t) = q_b\,\min_{\text{edge}}\frac{1 - R(t)}{T_b/\theta}`,
    String.raw`R(t) = \frac{1}{\theta}\int_0^{t + D} q(t - u)\,a(u)\sum_{n \ne 0}\exp\left(-\frac{(x + vu + nC)^2 + y^2}{2s^2}\right)\frac{\mathrm{d}u}{s^2}`,
    String.raw`C = \pi(d - h),\quad I = \frac{\bar{q}}{\eta V}`,
  ],
  where: {
    q: "power into the tube, q_b during the dwell, W",
    q_b: "power of the bead in a plate, of AMPS_MELT, W",
    t: "time since the head turns",
    R: "rise at the bead's edge by all heat that came around the tube, over θ; of face and root together",
    T_b: "rise at the edge under the bead's own arc, θ where it is widest",
    θ: "rise from preheat to the liquidus",
    D: "dwell before the head turns (dwell)",
    u: "time since an increment of heat went in",
    a: "what is left of it, as RING_BEAD",
    n: "revolutions around the tube, forward and backward",
    x: "place of the edge, behind the arc",
    y: "its distance beside the path",
    s: "spread of the heat of one instant, as AMPS_MELT",
    C: "mean circumference",
    v: "surface travel at the mean radius (speed)",
    d: "outside diameter (od)",
    h: "wall thickness (wall)",
    I: "mean current of a sector, A",
    η: "fraction of the arc's power that reaches the tube (efficiency)",
    V: "arc voltage (volts)",
  },
  validity: `As AMPS_MELT. overlap up to ${written(MOST_OVERLAP, ANGLE, "SI")}, 1 to ${toldInBoth(MOST_SECTORS, COUNT)} sectors. #N/A where the tube's own heat would melt it ahead of the arc or all round, and where the bead would have no root.`,
  assumptions: `Tube of uniform temperature at the start; the dwell has the current of AMPS_MELT on the mean radius. ${LEFT_OUT}`,
  source: `${MODEL_SOURCE}; images around the ring, solved as a Volterra equation and corrected once by everything superposed in time. The heating it answers is what [kou-le-1984] measured on small girth welds`,
  unconfirmed: `${NEARNESS} Within the sectors the bead keeps its width within 5 to 8 % from 1/4 in (6.35 mm) OD. Default width and voltage are estimates from common practice.`,
  unchecked: "No measured power by sector was found; [kou-le-1984] tells only which way it goes",
  related: ["AMPS_MELT", "START_DWELL", "OVERLAP_SUGGEST", "SCHEDULE"],
  synonyms: [
    "current taper",
    "stepped current",
    "amps by position",
    "heat buildup",
    "taper",
    "levels",
    "sectors",
    "zones",
    "segments",
    "step down",
  ],
  figure: "sectors",
  example: {
    args: [1, 0.065, 5],
    gives:
      "0, 90, 46.672, 1, 0.0; 90, 180, 47.505, 1.0179, 3.1; 180, 270, 46.775, 1.0022, 92.6; 270, 360, 43.517, 0.9324, 280.0",
  },
  calc: ({ dwell, beadWidth, volts, efficiency, ...weld }) => {
    const width = beadWidth ?? commonBeadWidth(weld.wall);
    const { sectors } = weldRing({
      ...weld,
      beadWidth: width,
      dwell: dwell ?? dwellOf(weld, width),
    });
    const watts = wattsPerAmp(volts ?? commonArcVolts(weld.wall), efficiency);
    return sectors.map(({ power, ...sector }) => ({ ...sector, amps: si(power / watts, CURRENT) }));
  },
});

const START_DWELL = formula({
  id: "START_DWELL",
  meaning: "Time the arc stands still to melt out to half the bead width before the head turns",
  args: {
    wall: WALL,
    speed: SPEED_OF_TRAVEL,
    beadWidth: BEAD_WIDTH,
    material: MATERIAL,
    preheat: TUBE_TEMPERATURE,
    arcSize: ARC_SIZE,
  },
  gives: scalar(TIME),
  tex: [
    String.raw`b = \frac{b_0 + b_h}{2},\quad b_z = 2\,y\ \text{where}\ T(y, z) = \theta`,
    String.raw`T(y, z) = \frac{q}{\rho c\,h}\int_0^t \mathrm{e}^{-m\tau}\,\varphi\,G(z, \tau)\,\frac{\exp\left(-\frac{y^2}{2s^2}\right)}{2\pi s^2}\,\mathrm{d}\tau`,
    ...AGE_TEX,
  ],
  where: { ...STANDING_WHERE, b: "target mean of face and root (beadWidth)" },
  validity:
    "As AMPS_MELT. preheat does not change it: the current of AMPS_MELT falls in the same proportion.",
  assumptions: `At the current of AMPS_MELT from the first moment; SCHEDULE tells it as its own row. ${LEFT_OUT}`,
  source: MODEL_SOURCE,
  unconfirmed:
    "Not compared with a measured weld, nor by itself with the 3-D solution. The default width is an estimate from common practice.",
  unchecked: "No measured dwell with its amps, volts and wall was found",
  related: ["AMPS_MELT", "AMPS_SECTORS", "RING_BEAD", "CYCLE_TIME"],
  synonyms: [
    "start delay",
    "travel delay",
    "rotation delay",
    "puddle formation",
    "dwell",
    "delay",
    "initial puddle",
    "pool formation",
  ],
  figure: "cycle",
  example: { args: [0.065, 5], gives: "3.65757" },
  calc: ({ beadWidth, preheat, ...weld }) => {
    riseToMelt(weld.material, preheat);
    return dwellOf(weld, beadWidth ?? commonBeadWidth(weld.wall));
  },
});

export const HEAT_FLOW = family("Heat flow", [
  ...MELT,
  AMPS_WINDOW,
  AMPS_SECTORS,
  RING_BEAD,
  PROGRAM_BEAD,
  START_DWELL,
]);
