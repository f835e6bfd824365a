/** Purge dams: how hot the tube gets away from the weld, and how far is far enough. */

import { damDistance, damTemperature, SURFACES } from "../../src/heat-flow/dam-place";
import { LENGTH, si, TEMPERATURE, TIME } from "../../src/quantity";
import { number, orDefault, word } from "../argument";
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
  surface: word('What takes heat from the tube: "none" (default) or "still air"', SURFACES, "none"),
};

const HELD_AGAINST =
  'Compared with an independent nonlinear 3-D solution of 316L (computed, no measurement): "none" within 1.5 % of the rise to 40 mm (1.6 in), "still air" from 2 % low to 12.5 % high to 50 mm (2 in). Farther out only the heat of an instant in a rod confirms it.';

const DAM_TEMPERATURE = formula({
  id: "DAM_TEMPERATURE",
  meaning: "Maximum temperature that a place on the tube ever reaches, for a purge dam there",
  args: { distance: number("Distance from the weld along the tube", LENGTH), ...HEATED_TUBE },
  gives: scalar(TEMPERATURE),
  tex: [
    String.raw`T_l = \max_{t, x}\int_0^t q(t - \tau)\,\mathrm{e}^{-m\tau}\sum_n\exp\left(-\frac{(x - x_a(t - \tau) + nC)^2 + y^2}{2s^2}\right)\frac{\mathrm{d}\tau}{2\pi\rho c\,h\,s^2}`,
    String.raw`s^2 = \sigma^2 + 2\kappa\tau,\quad C = \pi(d - h),\quad T_l = (T - T_0)\left(1 + \frac{\beta\,r^3}{1 + r^3/4}\right)`,
    String.raw`r = \frac{T - T_0}{\text{liquidus} - 20\ \text{°C}}`,
  ],
  where: {
    T: "maximum temperature",
    "T₀": "temperature before welding (ambient)",
    Tₗ: "maximum rise in metal that stays as when cold",
    q: "power into the tube, volts × amps × efficiency, W",
    t: "time since the arc started",
    x: "place around the tube",
    y: "distance from the weld (distance)",
    xₐ: "place of the arc",
    τ: "age of an increment of heat",
    m: "rate of surface loss, 0 or 30 W/m²K over ρ·c·h (surface)",
    n: "revolutions around the tube",
    s: "spread of the heat of one instant",
    σ: "spread of the arc",
    κ: "diffusivity at 25 °C (material)",
    ρ: "density at 25 °C",
    c: "heat capacity per mass at 25 °C",
    h: "wall thickness (wall)",
    C: "mean circumference",
    d: "outside diameter (od)",
    β: "how much the hot metal near the weld takes off, 0.79·(√(ratio of k·ρc, liquidus to cold) − 1)",
    r: "rise over the rise to melting",
  },
  validity: "From the edge of the bead outward; refused where the metal would melt",
  assumptions:
    'One moving arc of constant power, extraSeconds of it standing where the turn begins; heat even through the wall, tube long on both sides, no heat taken by clamps or by the dam. surface "none" loses nothing and errs hot.',
  source:
    "Images around the ring as in [carslaw-jaeger-1959]; common practice keeps water-soluble dams 6 in (150 mm) or more away: the larger of the two governs",
  unconfirmed: HELD_AGAINST,
  unchecked: "No measured temperature beside a weld that goes around a tube was found",
  related: ["DAM_DISTANCE", "AMPS_MELT", "MATERIALS", "TRAVEL_TIME"],
  synonyms: [
    "purge plug",
    "bladder",
    "soluble paper",
    "heat conduction",
    "hot zone",
    "dam",
    "purge bag",
    "water-soluble film",
    "how hot",
    "melted dam",
  ],
  figure: "dams",
  example: { args: [6, 1, 0.065, 46, 9.4, 5], gives: "144.817" },
  calc: ({ distance, ...heated }) => damTemperature(distance, { ...heated, arcSize: undefined }),
});

const DAM_DISTANCE = formula({
  id: "DAM_DISTANCE",
  meaning: "Minimum distance from the weld that never exceeds a temperature, for a purge dam",
  args: { limit: number("Maximum temperature for the dam", TEMPERATURE), ...HEATED_TUBE },
  gives: scalar(LENGTH),
  equation: "The x at which DAM_TEMPERATURE is the limit",
  validity:
    "As DAM_TEMPERATURE. Refused at or above the liquidus and at or below ambient; #N/A if the limit is above what the weld itself reaches by this calculation.",
  assumptions:
    'As DAM_TEMPERATURE. With surface "none" the distance comes out too long rather than too short.',
  source:
    "As DAM_TEMPERATURE. Common practice keeps water-soluble dams 6 in (150 mm) or more away: the larger of the two governs",
  unconfirmed: HELD_AGAINST,
  unchecked: "No measured temperature beside a weld that goes around a tube was found",
  related: ["DAM_TEMPERATURE", "AMPS_MELT", "MATERIALS"],
  synonyms: [
    "purge plug",
    "bladder",
    "soluble paper",
    "dam placement",
    "how far",
    "dam",
    "purge bag",
    "water-soluble film",
    "where to put the dam",
  ],
  figure: "dams",
  example: { args: [212, 1, 0.065, 46, 9.4, 5], gives: "3.2003" },
  calc: ({ limit, ...heated }) => damDistance(limit, { ...heated, arcSize: undefined }),
});

export const DAMS = family("Dams", [DAM_TEMPERATURE, DAM_DISTANCE]);
