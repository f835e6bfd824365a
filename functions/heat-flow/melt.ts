/** The current that melts a bead through the wall, and the bead that a current melts. */

import { commonArcVolts, wattsPerAmp } from "../../src/heat-flow/arc";
import { meltPower, meltWidth } from "../../src/heat-flow/melt-power";
import { plateOf } from "../../src/heat-flow/plate";
import { CURRENT, LENGTH, si } from "../../src/quantity";
import { commonBeadWidth } from "../../src/travel/bead";
import {
  BEAD_WIDTH,
  EFFICIENCY,
  MATERIAL,
  MEAN_AMPS,
  SPEED_OF_TRAVEL,
  TUBE_TEMPERATURE,
  VOLTS_OF_WALL,
  WALL,
} from "../arguments";
import { formula } from "../formula";
import { scalar } from "../gives";

const AMPS_MELT = formula({
  id: "AMPS_MELT",
  meaning: "Mean current that melts a bead of a given width through the wall, from heat flow",
  args: {
    wall: WALL,
    speed: SPEED_OF_TRAVEL,
    beadWidth: BEAD_WIDTH,
    material: MATERIAL,
    volts: VOLTS_OF_WALL,
    efficiency: EFFICIENCY,
    preheat: TUBE_TEMPERATURE,
  },
  gives: scalar(CURRENT),
  tex: [
    String.raw`I = \frac{q}{\eta V}`,
    String.raw`q = \frac{2\pi k h\theta}{\exp\left(x\,\frac{K_0}{K_1}\right) K_0},\quad \theta = \text{liquidus} - \text{preheat}`,
    String.raw`x\sqrt{1 - \left(\frac{K_0}{K_1}\right)^2} = \frac{\lambda b}{2},\quad \lambda = \frac{v}{2\alpha}`,
  ],
  where: {
    I: "mean current, A",
    q: "power into the tube, W",
    η: "fraction of the arc's power that reaches it (efficiency)",
    V: "arc voltage (volts)",
    k: "conductivity near 1200 K (material)",
    h: "wall thickness (wall)",
    θ: "rise to the liquidus",
    liquidus: "temperature at which the last solid melts",
    preheat: "temperature before welding",
    x: "distance of the isotherm's widest point from the arc, times λ",
    "K₀": "modified Bessel function of the second kind and order 0, of x",
    "K₁": "the same of order 1",
    λ: "of the moving source, 1/length",
    b: "fused width (beadWidth)",
    v: "surface travel (speed)",
    α: "diffusivity near 1200 K",
  },
  validity: "Full-penetration single passes, autogenous; prove on a coupon",
  assumptions:
    "Heat uniform through the wall, k and α constant; no surface loss, no heat lost to clamps, no effect of sulfur on penetration",
  source:
    "Rosenthal 1941 and 1946, moving line source in a plate; arc efficiency Stenbacka, Choquet & Hurtig 2012 (95 % range 0.73–0.82)",
  unconfirmed:
    "Compared only with brackets of published practice for 316L of 1 to 3.2 mm (see SCHEDULE), not with a measured weld. Default width and voltage are estimates from common practice.",
  related: ["MELT_WIDTH", "AMPS_SECTORS", "AMPS_WALL", "START_DWELL", "TRAVEL_SUGGEST"],
  synonyms: ["welding current", "amps for full penetration", "penetration", "preheat"],
  figure: "plate",
  example: { args: [0.065, 5], gives: "45.3828" },
  calc: ({ wall, speed, beadWidth, material, volts, efficiency, preheat }) => {
    const power = meltPower(plateOf(wall, material, preheat), speed, beadWidth ?? commonBeadWidth(wall));
    return si(power / wattsPerAmp(volts ?? commonArcVolts(wall), efficiency), CURRENT);
  },
});

const MELT_WIDTH = formula({
  id: "MELT_WIDTH",
  meaning: "Fused width that a current melts, from heat flow",
  detail: "the inverse of AMPS_MELT",
  args: {
    wall: WALL,
    amps: MEAN_AMPS,
    speed: SPEED_OF_TRAVEL,
    material: MATERIAL,
    volts: VOLTS_OF_WALL,
    efficiency: EFFICIENCY,
    preheat: TUBE_TEMPERATURE,
  },
  gives: scalar(LENGTH),
  tex: [
    String.raw`b = \frac{2x}{\lambda}\sqrt{1 - \left(\frac{K_0}{K_1}\right)^2},\quad \lambda = \frac{v}{2\alpha}`,
    String.raw`\exp\left(x\,\frac{K_0}{K_1}\right) K_0 = \frac{2\pi k h\theta}{\eta V I},\quad \theta = \text{liquidus} - \text{preheat}`,
  ],
  where: {
    b: "fused width",
    x: "distance of the isotherm's widest point from the arc, times λ",
    λ: "of the moving source, 1/length",
    "K₀": "modified Bessel function of the second kind and order 0, of x",
    "K₁": "the same of order 1",
    v: "surface travel (speed)",
    α: "diffusivity near 1200 K (material)",
    k: "conductivity near 1200 K (material)",
    h: "wall thickness (wall)",
    θ: "rise to the liquidus",
    liquidus: "temperature at which the last solid melts",
    preheat: "temperature before welding",
    η: "fraction of the arc's power that reaches the tube (efficiency)",
    V: "arc voltage (volts)",
    I: "mean current (amps)",
  },
  validity:
    "As AMPS_MELT. A width of less than one wall thickness is not a full-penetration bead: the heat is then not uniform through the wall.",
  assumptions: "As AMPS_MELT",
  source:
    "Rosenthal 1941 and 1946, moving line source in a plate; the power of Wells 1952 agrees within 8 % for v·b/4α from 0.05 to 5",
  unconfirmed:
    "As AMPS_MELT: not compared with a measured weld. The default voltage is an estimate from common practice.",
  related: ["AMPS_MELT", "AMPS_SECTORS", "PULSE_RATE", "TRAVEL_SUGGEST"],
  synonyms: ["bead width", "weld width", "fusion zone", "penetration"],
  figure: "plate",
  example: { args: [0.065, 45, 5], gives: "0.16701" },
  calc: ({ wall, amps, speed, material, volts, efficiency, preheat }) => {
    const plate = plateOf(wall, material, preheat);
    return meltWidth(plate, speed, amps, wattsPerAmp(volts ?? commonArcVolts(wall), efficiency));
  },
});

export const MELT = [AMPS_MELT, MELT_WIDTH] as const;
