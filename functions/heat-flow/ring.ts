/** What a programmed schedule melts. */

import { commonArcVolts, wattsPerAmp } from "../../src/heat-flow/arc";
import { dwellOf } from "../../src/heat-flow/dwell";
import { ringBead } from "../../src/heat-flow/ring-forward";
import { MOST_OVERLAP, MOST_SECTORS } from "../../src/heat-flow/ring-weld";
import { usualBead } from "../../src/heat-flow/plate";
import { AMBIENT } from "../../src/metal/material";
import { ANGLE, COUNT, CURRENT, LENGTH, TEMPERATURE_RISE, TIME, written } from "../../src/quantity";
import { number, orComputed, someNumbers, toldInBoth } from "../argument";
import {
  ARC_SIZE,
  EFFICIENCY,
  MATERIAL,
  OD,
  OVERLAP_OR_NONE,
  SPEED_OF_TRAVEL,
  VOLTS_OF_WALL,
  WALL,
} from "../arguments";
import { formula } from "../formula";
import { column, table } from "../gives";
import { LEFT_OUT, MODEL_SOURCE, NEARNESS } from "./told";

export const RING_BEAD = formula({
  id: "RING_BEAD",
  meaning: "What a programmed schedule melts, sector by sector",
  detail: "a row each, the overlap as one more",
  args: {
    od: OD,
    wall: WALL,
    speed: SPEED_OF_TRAVEL,
    amps: someNumbers("Mean current, one a sector of equal length", CURRENT),
    dwell: orComputed(number("Arc-on time before rotation", TIME), "START_DWELL of the default bead"),
    overlap: OVERLAP_OR_NONE,
    material: MATERIAL,
    volts: VOLTS_OF_WALL,
    efficiency: EFFICIENCY,
    arcSize: ARC_SIZE,
    dwellAmps: orComputed(number("Current during the dwell", CURRENT), "that of the first sector"),
  },
  gives: table({
    from: column("from", ANGLE),
    to: column("to", ANGLE),
    amps: column("mean current", CURRENT),
    face: column("face width at the sector's end", LENGTH),
    root: column("root width at the sector's end", LENGTH),
    warmth: column("warmth ahead at its end", TEMPERATURE_RISE),
  }),
  tex: [
    String.raw`T(x, y, z, t) = \int_0^t q(t - \tau)\,a(\tau)\,G(z, \tau)\sum_n\exp\left(-\frac{(x - x_a(t - \tau) + nC)^2 + y^2}{2s^2}\right)\frac{\mathrm{d}\tau}{s^2}`,
    String.raw`a = \frac{\mathrm{e}^{-m\tau}\varphi}{2\pi\rho c\,h},\quad C = \pi(d - h)`,
  ],
  where: {
    T: "temperature rise",
    x: "place around the tube",
    y: "distance beside the joint",
    z: "depth from the face",
    t: "time since the arc started",
    q: "power into the tube, W",
    τ: "age of an increment of heat",
    a: "what is left of it",
    G: "face or root over the mean through the wall",
    n: "revolutions around the tube, forward and backward",
    xₐ: "place of the arc",
    C: "mean circumference",
    s: "spread of the heat of one instant, as AMPS_MELT",
    m: "rate of surface loss, as AMPS_MELT",
    φ: "factor of old heat, as AMPS_MELT",
    ρ: "density at room temperature",
    c: "heat from 20 °C to the liquidus and half of the latent heat, per degree",
    d: "outside diameter (od)",
    h: "wall thickness (wall)",
  },
  validity: `As AMPS_MELT, 1 to ${toldInBoth(MOST_SECTORS, COUNT)} sectors, overlap up to ${written(MOST_OVERLAP, ANGLE, "SI")}. The overlap has the last sector's current unless it is given its own. #N/A where the whole ring reaches the liquidus.`,
  assumptions: `Tube at 20 °C (68 °F) when the arc starts, current constant within a sector, no slopes. Warmth: what the tube has at the arc beyond a cold plate under the same arc. ${LEFT_OUT}`,
  source: MODEL_SOURCE,
  unconfirmed: NEARNESS,
  unchecked: "No measured widths of a tube weld with its amps, volts and speed by sector were found",
  related: ["AMPS_SECTORS", "SCHEDULE", "MELT_SECTION", "START_DWELL"],
  synonyms: [
    "check a program",
    "forward",
    "existing schedule",
    "bead by sector",
    "heat buildup",
    "simulation",
    "weld program",
    "verify a program",
    "existing program",
  ],
  figure: "ring",
  example: { args: [1, 0.065, 5, 50], gives: "0, 360, 50, 0.219412, 0.211224, 313.926" },
  calc: ({ dwell, volts, efficiency, ...program }) =>
    ringBead({
      ...program,
      dwell: dwell ?? dwellOf(program, usualBead(program)),
      preheat: AMBIENT,
      watts: wattsPerAmp(volts ?? commonArcVolts(program.wall), efficiency),
    }),
});
