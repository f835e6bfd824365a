/** The currents between a root too narrow and a face too wide. */

import {
  commonArcVolts,
  EFFICIENCIES,
  FACE_MOST,
  ROOT_LEAST,
  WALL_TOLERANCE,
  wattsPerAmp,
} from "../../src/heat-flow/arc";
import { ampsWindow } from "../../src/heat-flow/plate-melt";
import { usualBead } from "../../src/heat-flow/plate";
import { AMBIENT } from "../../src/metal/material";
import { CURRENT, LENGTH, SHARE, si } from "../../src/quantity";
import { number, orComputed, orDefault } from "../argument";
import { ARC_SIZE, MATERIAL, SPEED_OF_TRAVEL, VOLTS_OF_WALL, WALL } from "../arguments";
import { formula } from "../formula";
import { column, row } from "../gives";
import { LEFT_OUT, MEAN_TEX, MEAN_WHERE, MODEL_SOURCE, MODEL_TEX, MODEL_WHERE, NEARNESS } from "./told";

export const AMPS_WINDOW = formula({
  id: "AMPS_WINDOW",
  meaning: "Room between the current that leaves too little root and the one that makes the face too wide",
  args: {
    wall: WALL,
    speed: SPEED_OF_TRAVEL,
    rootLeast: orComputed(number("Minimum root width", LENGTH), "half the wall"),
    faceMost: orComputed(number("Maximum face width", LENGTH), "1.5 × the default bead"),
    wallTolerance: orDefault(number("Wall off by, either way, fraction", SHARE), WALL_TOLERANCE),
    efficiencyLow: orDefault(
      number("Weakest arc, fraction of its power into the tube", SHARE),
      EFFICIENCIES[0],
    ),
    efficiencyHigh: orDefault(number("Strongest arc, the same", SHARE), EFFICIENCIES[1]),
    material: MATERIAL,
    volts: VOLTS_OF_WALL,
    arcSize: ARC_SIZE,
  },
  gives: row({
    minimum: column("minimum amps", CURRENT),
    amps: column("amps for the default bead", CURRENT),
    maximum: column("maximum amps", CURRENT),
    room: column("room", SHARE),
  }),
  tex: [
    String.raw`b_h(I_{\text{min}}, h(1 + u), \eta_{\text{low}}) = r,\quad b_0(I_{\text{max}}, h(1 - u), \eta_{\text{high}}) = f`,
    String.raw`b(I, h, \eta) = \text{default},\quad \eta = \frac{\eta_{\text{low}} + \eta_{\text{high}}}{2},\quad \text{room} = \frac{I_{\text{max}} - I_{\text{min}}}{I}`,
    MEAN_TEX,
    ...MODEL_TEX,
  ],
  where: {
    ...MODEL_WHERE,
    ...MEAN_WHERE,
    I: "mean current of the default bead, A",
    Iₘᵢₙ: "minimum amps",
    Iₘₐₓ: "maximum amps",
    u: "wall off by, either way (wallTolerance)",
    r: "minimum root width (rootLeast)",
    f: "maximum face width (faceMost)",
    η: "fraction of the arc's power that reaches the tube, mean of both",
    η_low: "that of the weakest arc (efficiencyLow)",
    η_high: "that of the strongest arc (efficiencyHigh)",
    θ: "rise from 20 °C to the liquidus",
  },
  validity:
    "As AMPS_MELT. A negative room is a closed window: no one current suits every tube and arc of that spread.",
  assumptions: `Gap, volts and arc spot stay as set. ${LEFT_OUT}`,
  source: `${MODEL_SOURCE}; the range of [stenbacka-2012] is the default of efficiencyLow and efficiencyHigh`,
  unconfirmed: `${NEARNESS} Half a wall of root and 1.5 beads of face are estimates from common practice.`,
  unchecked: "No published range of currents with its volts, speed, wall and both widths was found",
  related: ["AMPS_MELT", "AMPS_THROUGH", "MELT_SECTION", "SCHEDULE"],
  synonyms: [
    "parameter window",
    "tolerance",
    "robustness",
    "process window",
    "how much room",
    "margin",
    "sensitivity",
    "burn-through",
    "maximum and minimum amps",
  ],
  figure: "bead-section",
  example: { args: [0.065, 5], gives: "45.8375, 49.8602, 57.0443, 0.224765" },
  calc: ({ rootLeast, faceMost, wallTolerance, efficiencyLow, efficiencyHigh, volts, ...weld }) => {
    const beadWidth = usualBead(weld);
    const arc = volts ?? commonArcVolts(weld.wall);
    wattsPerAmp(arc, efficiencyHigh, "efficiencyHigh");
    wattsPerAmp(arc, efficiencyLow, "efficiencyLow");
    return ampsWindow(weld, AMBIENT, {
      rootLeast: rootLeast ?? si(ROOT_LEAST * weld.wall, LENGTH),
      faceMost: faceMost ?? si(FACE_MOST * beadWidth, LENGTH),
      beadWidth,
      wallTolerance,
      efficiencyLow,
      efficiencyHigh,
      efficiency: si((efficiencyLow + efficiencyHigh) / 2, SHARE),
      volts: arc,
    });
  },
});
