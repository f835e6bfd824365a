/** Purge dams: how hot the tube gets away from the weld, and how far is far enough. */

import { damDistance, damTemperature } from "../../src/heat-flow/dam";
import { LENGTH, si, TEMPERATURE, TIME } from "../../src/quantity";
import { number, orDefault } from "../argument";
import {
  EFFICIENCY,
  MATERIAL,
  MEAN_AMPS,
  OD,
  SPEED_OF_TRAVEL,
  TUBE_TEMPERATURE,
  VOLTS,
  WALL,
} from "../arguments";
import { family, formula } from "../formula";
import { scalar } from "../gives";

/** The tube and the weld that heats it. */
const HEATED_TUBE = {
  od: OD,
  wall: WALL,
  amps: MEAN_AMPS,
  volts: VOLTS,
  speed: SPEED_OF_TRAVEL,
  extraSeconds: orDefault(number("Arc-on time besides one revolution (dwell, overlap)", TIME), si(0, TIME)),
  efficiency: EFFICIENCY,
  material: MATERIAL,
  ambient: TUBE_TEMPERATURE,
};

const DAM_TEMPERATURE = formula({
  id: "DAM_TEMPERATURE",
  meaning: "Maximum temperature that a place on the tube ever reaches, for a purge dam there",
  args: { distance: number("Distance from the weld along the tube", LENGTH), ...HEATED_TUBE },
  gives: scalar(TEMPERATURE),
  tex: [
    String.raw`T - T_0 = \max_t\,\bigl(f(t) - f(t - t_{\text{on}})\bigr)`,
    String.raw`f(t) = \frac{q\sqrt{\kappa t}}{A\,k}\,\operatorname{ierfc}\frac{x}{2\sqrt{\kappa t}},\quad f(t) = 0\ \text{for}\ t \le 0`,
    String.raw`q = \eta V I,\quad \kappa = \frac{k}{\rho\,c_p}`,
    String.raw`A = \pi(d - h)h,\quad t_{\text{on}} = \frac{\pi d}{v} + \text{extra}`,
  ],
  where: {
    T: "maximum temperature",
    "T₀": "temperature before welding (ambient)",
    t: "time since the arc started",
    tₒₙ: "time the arc is on",
    f: "rise under an arc that never stops",
    x: "distance from the weld (distance)",
    q: "power into the tube, W",
    η: "fraction of the arc's power that reaches it (efficiency)",
    V: "arc voltage (volts)",
    I: "mean current (amps)",
    k: "conductivity at 25 °C (material)",
    κ: "diffusivity at 25 °C",
    ρ: "density",
    cₚ: "specific heat",
    A: "cross-section of the tube's wall",
    d: "outside diameter (od)",
    h: "wall thickness (wall)",
    v: "surface travel (speed)",
    extra: "arc-on time besides one revolution (extraSeconds)",
    ierfc: "integral of the complementary error function",
  },
  validity: "Several wall thicknesses or more from the weld, where the heat has evened out around the tube",
  assumptions:
    "The weld is one source, uniform around the tube, of constant power while the arc is on, half of it each way. Cold k and ρ·cp, no surface loss, tube long on both sides: errs on the hot side.",
  source:
    "Carslaw & Jaeger §2.9, constant flux; common practice keeps water-soluble dams 6 in (150 mm) or more away: the larger of the two governs",
  unconfirmed: "Compared with finite differences of the same rod, not with a weld",
  related: ["DAM_DISTANCE", "AMPS_MELT", "MATERIALS", "TRAVEL_TIME"],
  synonyms: ["purge plug", "bladder", "soluble paper", "heat conduction", "hot zone"],
  figure: "dams",
  example: { args: [6, 1, 0.065, 46, 9.4, 5], gives: "144.818" },
  calc: ({ distance, ...heated }) => damTemperature(distance, heated),
});

const DAM_DISTANCE = formula({
  id: "DAM_DISTANCE",
  meaning: "Minimum distance from the weld that never exceeds a temperature, for a purge dam",
  args: { limit: number("Maximum temperature for the dam", TEMPERATURE), ...HEATED_TUBE },
  gives: scalar(LENGTH),
  equation: "The x at which DAM_TEMPERATURE is the limit",
  validity:
    "As DAM_TEMPERATURE. #N/A if the limit is above what the weld itself reaches by this calculation.",
  assumptions:
    "As DAM_TEMPERATURE, erring on the hot side: the distance comes out too long rather than too short",
  source:
    "As DAM_TEMPERATURE. Common practice keeps water-soluble dams 6 in (150 mm) or more away: the larger of the two governs",
  unconfirmed: "As DAM_TEMPERATURE: compared with finite differences of the same rod, not with a weld",
  related: ["DAM_TEMPERATURE", "AMPS_MELT", "MATERIALS"],
  synonyms: ["purge plug", "bladder", "soluble paper", "dam placement", "how far"],
  figure: "dams",
  example: { args: [212, 1, 0.065, 46, 9.4, 5], gives: "3.20066" },
  calc: ({ limit, ...heated }) => damDistance(limit, heated),
});

export const DAMS = family("Dams", [DAM_TEMPERATURE, DAM_DISTANCE]);
