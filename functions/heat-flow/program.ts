/** What a program on the machine melts. */

import { COMMON_BACKGROUND } from "../../src/current/choices";
import { COMMON_SPOT_OVERLAP, pulseRate } from "../../src/current/heat-input";
import { programBead } from "../../src/current/program";
import { commonArcVolts, WALL_TOLERANCE } from "../../src/heat-flow/arc";
import { dwellOf } from "../../src/heat-flow/dwell";
import { AMBIENT } from "../../src/metal/material";
import type { Length } from "../../src/quantity";
import { ANGLE, CURRENT, FREQUENCY, LENGTH, SHARE, si, TEMPERATURE_RISE } from "../../src/quantity";
import { commonBeadWidth } from "../../src/travel/bead";
import { number, orComputed, orDefault, someNumbers } from "../argument";
import {
  ARC_SIZE,
  BEAD_WIDTH,
  DWELL,
  EFFICIENCY,
  MATERIAL,
  OD,
  OVERLAP_OR_NONE,
  SPEED_OF_TRAVEL,
  VOLTS_OF_WALL,
  WALL,
} from "../arguments";
import { formula } from "../formula";
import { column, columnOrWords, table } from "../gives";
import { LEFT_OUT, MODEL_SOURCE, NEARNESS } from "./told";

/** Stands for a face where a thin wall under a strong arc melts all round. */
const ALL_ROUND = "melts all round";

export const PROGRAM_BEAD = formula({
  id: "PROGRAM_BEAD",
  meaning: "What the program of a pulsed or steady arc melts, sector by sector",
  detail: "a row each, the overlap as one more",
  args: {
    od: OD,
    wall: WALL,
    speed: SPEED_OF_TRAVEL,
    peaks: someNumbers("Peak current, one a sector of equal length", CURRENT),
    share: orDefault(number("Fraction of the pulse time at peak; 1 is a steady arc", SHARE), si(1, SHARE)),
    background: orDefault(number("Background current, fraction of the peak", SHARE), COMMON_BACKGROUND),
    rate: orComputed(number("Pulse rate", FREQUENCY), "PULSE_RATE of the bead"),
    beadWidth: BEAD_WIDTH,
    dwell: orComputed(DWELL, "START_DWELL of the bead"),
    dwellAmps: orComputed(number("Steady current during the dwell", CURRENT), "as the first sector melts"),
    overlap: OVERLAP_OR_NONE,
    material: MATERIAL,
    volts: VOLTS_OF_WALL,
    efficiency: EFFICIENCY,
    arcSize: ARC_SIZE,
    wallTolerance: orDefault(number("Wall off by, either way, fraction", SHARE), WALL_TOLERANCE),
    overlapPeak: orComputed(number("Peak current of the overlap", CURRENT), "as the last of peaks"),
  },
  gives: table({
    from: column("from", ANGLE),
    to: column("to", ANGLE),
    mean: column("mean current", CURRENT),
    amps: column("steady current that melts the same", CURRENT),
    face: column("face width at the sector's end", LENGTH),
    root: column("root width at the sector's end", LENGTH),
    rootLeast: column("minimum root, thick wall and weak arc", LENGTH),
    faceMost: columnOrWords("maximum face, thin wall and strong arc", LENGTH),
    warmth: column("warmth ahead at its end", TEMPERATURE_RISE),
  }),
  tex: [
    String.raw`I = I_p\,(\beta + s\,(1 - \beta)),\quad I_s = I\,\left(1 + 0.37\,D\,\frac{v}{f b}\right)`,
    String.raw`D = \frac{s(1 - s)(1 - \beta)}{s + (1 - s)\beta},\quad \text{widths} = \text{RING\_BEAD of }I_s`,
  ],
  where: {
    Iₚ: "peak current of the sector (peaks)",
    I: "its mean current",
    Iₛ: "the steady current that melts the same",
    β: "background over peak (background)",
    s: "fraction of the pulse time at peak (share)",
    D: "charge of a pulse beyond its mean, over the charge of the pulse",
    v: "surface travel (speed)",
    f: "pulse rate (rate)",
    b: "fused width (beadWidth)",
  },
  validity:
    "As RING_BEAD. share above 0, to 1; background 0 to 1; wallTolerance 0 to 0.5. A pulse per half bead of travel or more: what a pulse melts beyond its mean was fitted up to there. The strongest arc at most 1.",
  assumptions: `As SCHEDULE and RING_BEAD: the same rule for a pulse, gap, volts and arc spot as set. The band takes wall × (1 ± wallTolerance) and efficiency × 0.73/0.78 and 0.82/0.78 at their worst together. ${LEFT_OUT}`,
  source: `${MODEL_SOURCE}; the band of the arc is the range of [stenbacka-2012] about its mean`,
  unconfirmed: `${NEARNESS} A wall off by a tenth is an estimate from common practice.`,
  unchecked: "No measured widths of a pulsed tube weld with its program were found",
  related: ["RING_BEAD", "SCHEDULE", "AMPS_WINDOW", "COUPON_EFFICIENCY"],
  synonyms: [
    "check a program",
    "programmed schedule",
    "existing program",
    "judge a program",
    "pulsed bead",
    "primary amps",
    "what if",
    "forward",
    "burn-through",
    "lack of penetration",
  ],
  figure: "ring",
  example: {
    args: [1, 0.065, 5.138, 65, 0.6],
    gives: "0, 360, 46.8, 47.8101, 0.202934, 0.18928, 0.124632, 0.243369, 299.877",
  },
  calc: ({ beadWidth, rate, dwell, volts, ...program }) => {
    const bead: Length = beadWidth ?? commonBeadWidth(program.wall);
    return programBead({
      ...program,
      beadWidth: bead,
      rate: rate ?? pulseRate(program.speed, bead, COMMON_SPOT_OVERLAP),
      dwell: dwell ?? dwellOf(program, bead),
      volts: volts ?? commonArcVolts(program.wall),
      preheat: AMBIENT,
    }).map(({ faceMost = ALL_ROUND, ...row }) => ({ ...row, faceMost }));
  },
});
