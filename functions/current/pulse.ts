/** The pulsed current: its mean, its peak share and its rate. */

import { COMMON_SPOT_OVERLAP, meanAmps, pulseRate, pulseShare } from "../../src/current/heat-input";
import { CURRENT, FREQUENCY, LENGTH, SHARE } from "../../src/quantity";
import { number, orDefault } from "../argument";
import { BACK_AMPS, BACK_TIME, PEAK_AMPS, PEAK_TIME, SPEED_OF_TRAVEL } from "../arguments";
import { formula } from "../formula";
import { scalar } from "../gives";

const AMPS_MEAN = formula({
  id: "AMPS_MEAN",
  meaning: "Time-weighted mean current of a pulsed arc",
  args: { peakAmps: PEAK_AMPS, peakTime: PEAK_TIME, backAmps: BACK_AMPS, backTime: BACK_TIME },
  gives: scalar(CURRENT),
  tex: [String.raw`I = \frac{I_p t_p + I_b t_b}{t_p + t_b}`],
  where: {
    I: "mean current",
    Iₚ: "peak current (peakAmps)",
    tₚ: "time at peak (peakTime)",
    I_b: "background current (backAmps)",
    t_b: "time at background (backTime)",
  },
  validity: "Peak current and time above 0, those of the background 0 or more",
  assumptions: "Square pulses",
  source: "Definition of a time-weighted mean",
  unchecked: "A definition: the check is its arithmetic worked out by hand",
  related: ["PULSE_SHARE", "PULSE_RATE", "HEAT_PULSED"],
  synonyms: ["average amps", "average current", "mean amps", "pulse", "pulsed", "peak and background"],
  figure: "pulse",
  example: { args: [180, 0.125, 90, 0.125], gives: "135" },
  calc: ({ peakAmps, peakTime, backAmps, backTime }) => meanAmps(peakAmps, peakTime, backAmps, backTime),
});

const PULSE_SHARE = formula({
  id: "PULSE_SHARE",
  meaning: "Fraction of the pulse time at peak that gives a mean current, 0 to 1",
  args: { meanAmps: number("Mean current wanted", CURRENT), peakAmps: PEAK_AMPS, backAmps: BACK_AMPS },
  gives: scalar(SHARE),
  tex: [String.raw`s = \frac{I - I_b}{I_p - I_b}`],
  where: {
    s: "fraction of the pulse time at peak",
    I: "mean current wanted (meanAmps)",
    Iₚ: "peak current (peakAmps)",
    I_b: "background current (backAmps)",
  },
  validity: "Mean from background to peak",
  assumptions: "Square pulses",
  source: "AMPS_MEAN solved for the peak share",
  unchecked: "A definition solved for one of its terms: the check is its arithmetic worked out by hand",
  related: ["AMPS_MEAN", "PULSE_RATE", "HEAT_PULSED", "SCHEDULE"],
  synonyms: [
    "duty cycle",
    "percent on time",
    "peak time",
    "pulse width",
    "duty",
    "on time",
    "percent peak",
    "peak width",
  ],
  figure: "pulse",
  example: { args: [48, 65, 19.5], gives: "0.6264" },
  calc: ({ meanAmps: mean, peakAmps, backAmps }) => pulseShare(mean, peakAmps, backAmps),
});

const PULSE_RATE = formula({
  id: "PULSE_RATE",
  meaning: "Pulse rate at which successive spots overlap",
  args: {
    speed: SPEED_OF_TRAVEL,
    beadWidth: number("Fused width, the size of one spot", LENGTH),
    overlap: orDefault(
      number("Fraction of a spot that the next one covers, 0 to less than 1", SHARE),
      COMMON_SPOT_OVERLAP,
    ),
  },
  gives: scalar(FREQUENCY),
  tex: [String.raw`f = \frac{v}{b\,(1 - o)}`],
  where: {
    f: "pulse rate",
    v: "surface travel (speed)",
    b: "fused width, the size of one spot (beadWidth)",
    o: "fraction of a spot that the next one covers (overlap)",
  },
  validity: "overlap 0 or more and less than 1",
  assumptions: "Each pulse melts one spot as long as the bead is wide",
  source: "Geometry; an overlap of three quarters is common practice",
  related: ["PULSE_SHARE", "AMPS_MEAN", "MELT_WIDTH", "SCHEDULE"],
  synonyms: [
    "pulse frequency",
    "pulses per second",
    "pps",
    "hertz",
    "spot overlap",
    "Hz",
    "pulsing",
    "ripple spacing",
  ],
  example: { args: [5.138, 0.1694], gives: "2.022" },
  calc: ({ speed, beadWidth, overlap }) => pulseRate(speed, beadWidth, overlap),
});

export const PULSE = [AMPS_MEAN, PULSE_SHARE, PULSE_RATE] as const;
