/** The ring that runs into its own heat: the current of each sector and the dwell at the start. */

import { commonArcVolts, wattsPerAmp } from "../../src/heat-flow/arc";
import { plateOf } from "../../src/heat-flow/plate";
import { COMMON_SECTORS, MOST_OVERLAP, MOST_SECTORS, ringSectors } from "../../src/heat-flow/sectors";
import { startDwell } from "../../src/heat-flow/start-dwell";
import { ANGLE, COUNT, CURRENT, SHARE, si, TEMPERATURE_RISE, TIME, written } from "../../src/quantity";
import { commonBeadWidth } from "../../src/travel/bead";
import { number, orComputed, orDefault, toldInBoth } from "../argument";
import {
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
  },
  gives: table({
    from: column("from", ANGLE),
    to: column("to", ANGLE),
    amps: column("mean current", CURRENT),
    share: column("fraction of the first sector's current", SHARE),
    rise: column("rise ahead of the arc at the sector's end", TEMPERATURE_RISE),
  }),
  tex: [
    String.raw`q(t) = q_b\left(1 - \frac{T(t)}{\theta}\right)`,
    String.raw`T(t) = \frac{1}{4\pi k h}\int_0^{t + D} q(t - u)\sum_{n \ne 0}\exp\left(-\frac{(s + nC)^2}{4\alpha u}\right)\frac{\mathrm{d}u}{u}`,
    String.raw`s = v\min(u, t),\quad C = \pi(d - h),\quad I = \frac{\bar{q}}{\eta V}`,
  ],
  where: {
    q: "power into the tube, q_b until the head turns, W",
    q_b: "power of the bead in a plate, of AMPS_MELT, W",
    t: "time since the head turns",
    T: "rise ahead of the arc by all heat that came around the tube",
    θ: "rise from preheat to the liquidus",
    k: "conductivity near 1200 K (material)",
    h: "wall thickness (wall)",
    D: "dwell before the head turns (dwell)",
    u: "time since an increment of heat went in",
    n: "revolutions around the tube, forward and backward",
    s: "travel of the arc since then",
    C: "mean circumference",
    α: "diffusivity near 1200 K",
    v: "surface travel (speed)",
    d: "outside diameter (od)",
    I: "mean current of a sector, A",
    η: "fraction of the arc's power that reaches the tube (efficiency)",
    V: "arc voltage (volts)",
  },
  validity: `As AMPS_MELT. overlap up to ${written(MOST_OVERLAP, ANGLE, "SI")}, 1 to ${toldInBoth(MOST_SECTORS, COUNT)} sectors. #N/A where the tube's own heat would melt it ahead of the arc.`,
  assumptions:
    "As AMPS_MELT, on a tube of uniform temperature at the start. Travel of the outside is taken at the mean diameter.",
  source:
    "The line source of [rosenthal-1946] with images around the ring, solved as a Volterra equation to 0.1 %; the heating it answers is what [kou-le-1984] measured on small girth welds",
  unconfirmed:
    "Compared with a finite-difference run of the same ring, not with a weld. Default width and voltage are estimates from common practice.",
  unchecked: "No measured power by sector was found; [kou-le-1984] tells only which way it goes",
  related: ["AMPS_MELT", "START_DWELL", "OVERLAP_SUGGEST", "SCHEDULE"],
  synonyms: ["current taper", "stepped current", "amps by position", "heat buildup"],
  figure: "sectors",
  example: {
    args: [1, 0.065, 5],
    gives:
      "0, 90, 45.383, 1, 0.0; 90, 180, 45.337, 0.9990, 13.8; 180, 270, 43.944, 0.9683, 187.4; 270, 360, 39.611, 0.8728, 458.5",
  },
  calc: ({ od, wall, speed, sectors, overlap, dwell, beadWidth, material, volts, efficiency, preheat }) => {
    const plate = plateOf(wall, material, preheat);
    const width = beadWidth ?? commonBeadWidth(wall);
    const rows = ringSectors(plate, {
      od,
      speed,
      beadWidth: width,
      dwell: dwell ?? startDwell(plate, speed, width),
      sectors,
      overlap,
    });
    const watts = wattsPerAmp(volts ?? commonArcVolts(wall), efficiency);
    return rows.map(({ from, to, power, share, rise }) => ({
      from,
      to,
      amps: si(power / watts, CURRENT),
      share,
      rise,
    }));
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
  },
  gives: scalar(TIME),
  tex: [String.raw`E_1\left(\frac{b^2}{16\alpha t}\right) = \frac{4\pi k h\theta}{q}`],
  where: {
    "E₁": "exponential integral",
    b: "fused width (beadWidth)",
    α: "diffusivity near 1200 K (material)",
    t: "dwell",
    k: "conductivity near 1200 K (material)",
    h: "wall thickness (wall)",
    θ: "rise from preheat to the liquidus",
    q: "power into the tube, of AMPS_MELT, W",
  },
  validity: "As AMPS_MELT. preheat does not change it: the power of AMPS_MELT falls in the same proportion.",
  assumptions: "As AMPS_MELT, at the bead's own power from the first moment",
  source: "Standing line source in a plate, [carslaw-jaeger-1959] §10.4",
  unconfirmed:
    "As AMPS_MELT: not compared with a measured weld. The default width is an estimate from common practice.",
  related: ["AMPS_MELT", "AMPS_SECTORS", "CYCLE_TIME"],
  synonyms: ["start delay", "travel delay", "rotation delay", "puddle formation"],
  figure: "plate",
  example: { args: [0.065, 5], gives: "4.27072" },
  calc: ({ wall, speed, beadWidth, material, preheat }) =>
    startDwell(plateOf(wall, material, preheat), speed, beadWidth ?? commonBeadWidth(wall)),
});

export const HEAT_FLOW = family("Heat flow", [...MELT, AMPS_SECTORS, START_DWELL]);
