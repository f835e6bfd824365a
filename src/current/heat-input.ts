/** Heat input of an arc per length of bead, and the pulsed current behind it. */

import { above0, atLeast0, between, isAbove, isBelow, shareAbove0 } from "../limits";
import type { Current, Energy, Frequency, HeatInput, Length, Share, Speed, Time, Voltage } from "../quantity";
import { CURRENT, ENERGY, FREQUENCY, HEAT_INPUT, LENGTH, SHARE, si, SPEED, TIME, VOLTAGE } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/**
 * Heat input of a steady arc, J/m: V·A/v × efficiency. With efficiency 1 it is [asme-ix-2010], QW-409.1(a); with the
 * thermal efficiency of the process (0.6 for TIG) the heat input of [en-1011-1] and [iso-tr-17671-1].
 */
export function heatInput(volts: Voltage, amps: Current, speed: Speed, efficiency: Share): HeatInput {
  const power = above0("volts", volts, VOLTAGE) * above0("amps", amps, CURRENT);
  return si((power / above0("speed", speed, SPEED)) * shareAbove0("efficiency", efficiency), HEAT_INPUT);
}

/** One level of a pulse: what the arc does and for how long. */
export interface PulseLevel {
  readonly volts: Voltage;
  readonly amps: Current;
  readonly seconds: Time;
}

/**
 * Heat input of a pulsed arc, J/m: energy of one pulse over its time, over speed. The mean of V·I, which an average
 * of volts times an average of amps falls short of.
 */
export function pulsedHeatInput(
  peak: PulseLevel,
  back: PulseLevel,
  speed: Speed,
  efficiency: Share,
): HeatInput {
  const time = pulseTime(peak.seconds, back.seconds);
  const peakEnergy =
    above0("peakVolts", peak.volts, VOLTAGE) * above0("peakAmps", peak.amps, CURRENT) * peak.seconds;
  const backEnergy =
    atLeast0("backVolts", back.volts, VOLTAGE) * atLeast0("backAmps", back.amps, CURRENT) * back.seconds;
  return si(
    ((peakEnergy + backEnergy) / time / above0("speed", speed, SPEED)) *
      shareAbove0("efficiency", efficiency),
    HEAT_INPUT,
  );
}

/** Heat input from metered arc energy, J/m: energy over bead length × efficiency. [asme-ix-2010], QW-409.1(c). */
export function meteredHeatInput(joules: Energy, length: Length, efficiency: Share): HeatInput {
  return si(
    (above0("joules", joules, ENERGY) / above0("length", length, LENGTH)) *
      shareAbove0("efficiency", efficiency),
    HEAT_INPUT,
  );
}

/** Time-weighted mean current of a pulse, A. */
export function meanAmps(peakAmps: Current, peakTime: Time, backAmps: Current, backTime: Time): Current {
  const time = pulseTime(peakTime, backTime);
  const peak = above0("peakAmps", peakAmps, CURRENT) * peakTime;
  return si((peak + atLeast0("backAmps", backAmps, CURRENT) * backTime) / time, CURRENT);
}

function pulseTime(peakTime: Time, backTime: Time): number {
  return above0("peakTime", peakTime, TIME) + atLeast0("backTime", backTime, TIME);
}

/** Fraction of the pulse time at peak, 0 to 1, that gives a mean current: (mean − back)/(peak − back). */
export function pulseShare(mean: Current, peak: Current, back: Current): Share {
  atLeast0("backAmps", back, CURRENT);
  if (!isAbove(peak, back)) {
    throw new Refusal(
      "peakAmps",
      amount(peak, CURRENT),
      rule`must be above backAmps, ${amount(back, CURRENT)}`,
    );
  }
  return si((between("meanAmps", mean, CURRENT, back, peak) - back) / (peak - back), SHARE);
}

/** Common practice of pulsed tube welding: successive spots overlap by three quarters. */
export const COMMON_SPOT_OVERLAP = si(0.75, SHARE);

/** Pulses per second at which successive spots of one bead width overlap by a fraction of it: v/(b·(1 − overlap)). */
export function pulseRate(speed: Speed, beadWidth: Length, overlap: Share): Frequency {
  if (!(overlap >= 0 && isBelow(overlap, 1))) {
    throw new Refusal(
      "overlap",
      amount(overlap, SHARE),
      rule`must be 0 or more and less than ${amount(1, SHARE)}`,
    );
  }
  return si(
    above0("speed", speed, SPEED) / (above0("beadWidth", beadWidth, LENGTH) * (1 - overlap)),
    FREQUENCY,
  );
}
