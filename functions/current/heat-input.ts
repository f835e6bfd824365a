/** Heat input per length of bead, by each of the definitions that codes have. */

import { heatInput, meteredHeatInput, pulsedHeatInput } from "../../src/current/heat-input";
import {
  CURRENT,
  ENERGY,
  HEAT_INPUT as HEAT_INPUT_QUANTITY,
  LENGTH,
  SHARE,
  si,
  VOLTAGE,
} from "../../src/quantity";
import { number, orDefault } from "../argument";
import { BACK_AMPS, BACK_TIME, PEAK_AMPS, PEAK_TIME, SPEED_OF_TRAVEL, VOLTS } from "../arguments";
import { family, formula } from "../formula";
import { scalar } from "../gives";

/** The factor of a code, which is not the physical fraction of the heat-flow formulas. */
const CODE_EFFICIENCY = orDefault(
  number("Efficiency", SHARE, "1 for ASME arc energy, 0.6 for TIG by EN 1011-1"),
  si(1, SHARE),
);

const HEAT_INPUT = formula({
  id: "HEAT_INPUT",
  meaning: "Heat input of a steady arc",
  args: {
    volts: VOLTS,
    amps: number("Current", CURRENT),
    speed: SPEED_OF_TRAVEL,
    efficiency: CODE_EFFICIENCY,
  },
  gives: scalar(HEAT_INPUT_QUANTITY),
  tex: [String.raw`H = \frac{60\,V I}{1000\,v}\,\eta`],
  where: {
    H: "heat input, kJ/in or kJ/mm",
    V: "arc voltage, V (volts)",
    I: "current, A (amps)",
    v: "surface travel, in/min or mm/min (speed)",
    η: "efficiency (efficiency)",
  },
  validity:
    "efficiency above 0 and at most 1. For a pulsed arc use HEAT_PULSED. Your qualified procedure states which definition it was qualified by.",
  assumptions: "A steady arc: volts and amps do not change along the bead",
  source: "[asme-ix-2010], QW-409.1(a), with efficiency 1; [en-1011-1] and [iso-tr-17671-1] with 0.6",
  related: ["HEAT_PULSED", "HEAT_METERED", "ARC_VOLTS", "TRAVEL_SPEED"],
  synonyms: [
    "arc energy",
    "energy per length",
    "joules per inch",
    "kJ/in",
    "heat",
    "kJ/mm",
    "joules",
    "energy input",
  ],
  example: { args: [24, 120, 10], gives: "17.28" },
  calc: ({ volts, amps, speed, efficiency }) => heatInput(volts, amps, speed, efficiency),
});

const HEAT_PULSED = formula({
  id: "HEAT_PULSED",
  meaning: "Heat input of a pulsed arc from the energy of one pulse",
  args: {
    peakVolts: number("Arc voltage at peak", VOLTAGE),
    peakAmps: PEAK_AMPS,
    peakTime: PEAK_TIME,
    backVolts: number("Arc voltage at background", VOLTAGE),
    backAmps: BACK_AMPS,
    backTime: BACK_TIME,
    speed: SPEED_OF_TRAVEL,
    efficiency: CODE_EFFICIENCY,
  },
  gives: scalar(HEAT_INPUT_QUANTITY),
  tex: [String.raw`H = \frac{60}{1000\,v}\cdot\frac{V_p I_p t_p + V_b I_b t_b}{t_p + t_b}\,\eta`],
  where: {
    H: "heat input, kJ/in or kJ/mm",
    v: "surface travel, in/min or mm/min (speed)",
    Vₚ: "arc voltage at peak, V (peakVolts)",
    Iₚ: "peak current, A (peakAmps)",
    tₚ: "time at peak, s (peakTime)",
    V_b: "arc voltage at background, V (backVolts)",
    I_b: "background current, A (backAmps)",
    t_b: "time at background, s (backTime)",
    η: "efficiency (efficiency)",
  },
  validity:
    "Peak volts, amps and time above 0, those of the background 0 or more; efficiency above 0 and at most 1",
  assumptions: "Square pulses; slopes between the levels are not counted",
  source:
    "[iso-tr-18491-2015] and [asme-ix-2010], QW-409.1(c): instantaneous power; mean power of [arc-power-2021], eq. 2–4",
  unchecked: "A definition of the code: no worked example of it was found",
  related: ["HEAT_INPUT", "HEAT_METERED", "AMPS_MEAN", "PULSE_SHARE"],
  synonyms: [
    "pulsed arc energy",
    "instantaneous power",
    "joules per inch",
    "kJ/in",
    "pulse energy",
    "pulsed heat",
  ],
  figure: "pulse",
  example: { args: [10, 100, 0.5, 9, 30, 0.5, 5], gives: "7.62" },
  calc: ({ peakVolts, peakAmps, peakTime, backVolts, backAmps, backTime, speed, efficiency }) =>
    pulsedHeatInput(
      { volts: peakVolts, amps: peakAmps, seconds: peakTime },
      { volts: backVolts, amps: backAmps, seconds: backTime },
      speed,
      efficiency,
    ),
});

const HEAT_METERED = formula({
  id: "HEAT_METERED",
  meaning: "Heat input from metered arc energy",
  args: {
    joules: number("Metered arc energy", ENERGY),
    length: number("Bead length the energy was spent on", LENGTH),
    efficiency: CODE_EFFICIENCY,
  },
  gives: scalar(HEAT_INPUT_QUANTITY),
  tex: [String.raw`H = \frac{E}{1000\,L}\,\eta`],
  where: {
    H: "heat input, kJ/in or kJ/mm",
    E: "metered arc energy, J (joules)",
    L: "bead length the energy was spent on, in or mm (length)",
    η: "efficiency (efficiency)",
  },
  validity: "joules and length above 0, efficiency above 0 and at most 1",
  assumptions: "Energy metered as instantaneous power over the arc-on time",
  source: "[asme-ix-2010], QW-409.1(c), 2010 edition on",
  unchecked: "A definition of the code: no worked example of it was found",
  related: ["HEAT_INPUT", "HEAT_PULSED"],
  synonyms: [
    "instantaneous energy",
    "power meter",
    "joules per inch",
    "waveform",
    "energy meter",
    "metered energy",
    "metered arc energy",
  ],
  example: { args: [24000, 10, 1, "SI"], gives: "2.4" },
  calc: ({ joules, length, efficiency }) => meteredHeatInput(joules, length, efficiency),
});

export const HEAT_INPUTS = family("Heat input", [HEAT_INPUT, HEAT_PULSED, HEAT_METERED]);
