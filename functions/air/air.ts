/** Moisture of the purge gas, and the air that people breathe beside it. */

import { DEW_POINTS, dewPointOf, moistureAt } from "../../src/air/moisture";
import { roomOxygen } from "../../src/air/room";
import {
  AIR_CHANGES,
  DURATION,
  FLOW,
  MOISTURE,
  PERCENT,
  plainNumber,
  si,
  TEMPERATURE,
  VOLUME,
} from "../../src/quantity";
import { number, orComputed, orDefault, toldInBoth } from "../argument";
import { family, formula } from "../formula";
import { scalar } from "../gives";

const [DRIEST, WETTEST] = DEW_POINTS;
const OVER_ICE =
  "Frost point over ice below 0.01 °C, dew point over water above. At 1 atm: a meter in a line under pressure reads a higher dew point for the same gas.";
const SATURATION = {
  p: "1 atm",
  e: "vapor pressure over ice or water, Pa",
  T: "dew or frost point, K",
};
const SATURATION_TEX = [
  String.raw`\text{ice:}\quad \ln e = 9.550426 - 5723.265/T + 3.53068 \ln T - 0.00728332\,T`,
  String.raw`\text{water:}\quad \ln e = 54.842763 - 6763.22/T - 4.21 \ln T + 0.000367\,T + \text{tanh}\bigl(0.0415\,(T - 218.8)\bigr)\,(53.878 - 1331.22/T - 9.44523 \ln T + 0.014025\,T)`,
];
const MURPHY_KOOP =
  "[murphy-koop-2005]; vapor treated as an ideal gas, which is off by less than the equations above 0 °C";
const WORDS = ["humidity", "water vapor", "dry gas", "frost point", "hygrometer", "ppmv", "gas purity"];

const MOISTURE_PPM = formula({
  id: "MOISTURE_PPM",
  meaning: "Water vapor in a gas of that dew point at 1 atm",
  args: { dewPoint: number("Dew point, or frost point below freezing", TEMPERATURE) },
  gives: scalar(MOISTURE),
  tex: [String.raw`x = 10^6\, e(T)/p`, ...SATURATION_TEX],
  where: { x: "water vapor by volume, ppm", ...SATURATION },
  validity: `dewPoint ${toldInBoth(DRIEST, TEMPERATURE)} to ${toldInBoth(WETTEST, TEMPERATURE)}. ${OVER_ICE}`,
  source: MURPHY_KOOP,
  related: ["DEW_POINT", "PURGE_OXYGEN", "PURGE_TINT"],
  synonyms: ["moisture", "dew point to ppm", ...WORDS],
  example: { args: [-60, "SI"], gives: "10.6762" },
  calc: ({ dewPoint }) => moistureAt(dewPoint),
});

const DEW_POINT = formula({
  id: "DEW_POINT",
  meaning: "Dew point, below freezing the frost point, of a gas with so much water vapor at 1 atm",
  args: { ppm: number("Water vapor by volume", MOISTURE) },
  gives: scalar(TEMPERATURE),
  tex: [String.raw`e(T) = x\,p/10^6`, ...SATURATION_TEX],
  where: { x: "water vapor by volume (ppm)", ...SATURATION },
  validity: `ppm ${plainNumber(moistureAt(DRIEST))} to ${plainNumber(moistureAt(WETTEST))}. ${OVER_ICE}`,
  source: MURPHY_KOOP,
  related: ["MOISTURE_PPM", "PURGE_OXYGEN"],
  synonyms: ["ppm to dew point", ...WORDS],
  example: { args: [10, "SI"], gives: "-60.4827" },
  calc: ({ ppm }) => dewPointOf(ppm),
});

const ROOM_OXYGEN = formula({
  id: "ROOM_OXYGEN",
  meaning: "Oxygen in a room into which purge or torch gas flows",
  detail: "the best case, all of the room mixed. A meter decides",
  args: {
    volume: number("Air in the room", VOLUME),
    flow: number("Argon that flows into it", FLOW),
    airChanges: orDefault(number("Fresh air, changes of the whole room", AIR_CHANGES), si(0, AIR_CHANGES)),
    hours: orComputed(number("Time that the argon flows", DURATION), "any time, which needs fresh air,"),
  },
  gives: scalar(PERCENT),
  tex: [
    String.raw`C = C_\infty + (20.95 - C_\infty)\,\exp\left(-(Q + R)\,t/V\right)`,
    String.raw`C_\infty = \frac{20.95\,Q}{Q + R}`,
  ],
  where: {
    C: "oxygen, %",
    "C_∞": "oxygen after any time, %",
    V: "air in the room (volume)",
    R: "argon that flows in (flow)",
    Q: "fresh air that is blown in: volume × airChanges",
    t: "time (hours)",
  },
  validity:
    "volume above 0; flow, airChanges and hours 0 or more. Safety: argon is heavier than air and pools near the floor, in pits, vessels and trenches; there the oxygen is lower than this, down to none. Nobody enters where it is under 19.5 %, and 19.5 % is not called safe. A person feels nothing before fainting. An oxygen meter at breathing height and low down decides, not this number.",
  assumptions:
    "All of the room mixes at once, the best case low down; fresh air is blown in and mixes as well. A fan that draws air out leaves a little less oxygen",
  source: "Balance of oxygen in a mixed room, as in the [odh-model]; 19.5 % is the limit of [cfr-1910.146]",
  unconfirmed:
    "The equation is from memory and was compared with no measurement: how argon lies in a real room, nothing here tells.",
  related: ["GAS_JOINT", "GAS_CYLINDER", "PURGE_FLOW"],
  synonyms: [
    "asphyxiation",
    "confined space",
    "oxygen deficiency",
    "ventilation",
    "gas leak",
    "safety",
    "19.5",
    "suffocation",
    "pit",
    "oxygen meter",
  ],
  example: { args: [50000, 10, 1, 1, "SI"], gives: "20.7919" },
  calc: ({ volume, flow, airChanges, hours }) => roomOxygen(volume, flow, airChanges, hours),
});

export const AIR = family("Air", [MOISTURE_PPM, DEW_POINT, ROOM_OXYGEN]);
