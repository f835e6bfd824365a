import {
  heatInput,
  meanAmps,
  meteredHeatInput,
  pulsedHeatInput,
  pulseRate,
  pulseShare,
} from "../../src/current/heat-input";
import { CURRENT, ENERGY, HEAT_INPUT, LENGTH, SHARE, SPEED, TIME, VOLTAGE } from "../../src/quantity";
import { answer, answerAlike } from "../answer";

/** Common practice of pulsed tube welding: spots overlap by three quarters. */
const COMMON_SPOT_OVERLAP = 0.75;

/**
 * Heat input of a steady arc, kJ/in | kJ/mm.
 * @customfunction HEAT_INPUT
 * @param volts Arc voltage, V
 * @param amps Current, A
 * @param speed Surface travel, in/min | mm/min
 * @param [efficiency] 1 (default) for ASME arc energy; 0.6 for TIG by EN 1011-1
 * @param [units] "US" (default) or "SI"
 * @equation H = 60·V·I/(1000·v)·η
 * @math H = \frac{60\,V I}{1000\,v}\,\eta
 * @where H heat input, kJ/in or kJ/mm; V arc voltage, V (volts); I current, A (amps); v surface travel, in/min or mm/min (speed); η efficiency (efficiency)
 * @validity efficiency above 0 and at most 1. For a pulsed arc use HEAT_PULSED. Your qualified procedure says which definition it was qualified by.
 * @assumptions A steady arc: volts and amps do not change along the bead
 * @source ASME BPVC Section IX QW-409.1(a) with efficiency 1; EN 1011-1 and ISO/TR 17671-1 with 0.6
 * @related HEAT_PULSED, HEAT_METERED, ARC_VOLTS, TRAVEL_SPEED
 * @example =BEAD.HEAT_INPUT(24, 120, 10) → 17.28
 */
export function heatInputCell(
  volts: unknown,
  amps: unknown,
  speed: unknown,
  efficiency?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    read.give(
      heatInput(
        read.number("volts", volts, VOLTAGE),
        read.number("amps", amps, CURRENT),
        read.number("speed", speed, SPEED),
        read.numberOr("efficiency", efficiency, SHARE, 1),
      ),
      HEAT_INPUT,
    ),
  );
}

/**
 * Heat input of a pulsed arc from the energy of one pulse, kJ/in | kJ/mm.
 * @customfunction HEAT_PULSED
 * @param peakVolts Arc voltage at peak, V
 * @param peakAmps Peak current, A
 * @param peakTime Time at peak, s
 * @param backVolts Arc voltage at background, V
 * @param backAmps Background current, A
 * @param backTime Time at background, s
 * @param speed Surface travel, in/min | mm/min
 * @param [efficiency] 1 (default) for ASME arc energy; 0.6 for TIG by EN 1011-1
 * @param [units] "US" (default) or "SI"
 * @equation H = 60/(1000·v)·(Vp·Ip·tp + Vb·Ib·tb)/(tp + tb)·η; the mean of V·I, not the product of means
 * @math H = \frac{60}{1000\,v}\cdot\frac{V_p I_p t_p + V_b I_b t_b}{t_p + t_b}\,\eta
 * @where H heat input, kJ/in or kJ/mm; v surface travel, in/min or mm/min (speed); Vₚ arc voltage at peak, V (peakVolts); Iₚ peak current, A (peakAmps); tₚ time at peak, s (peakTime); V_b arc voltage at background, V (backVolts); I_b background current, A (backAmps); t_b time at background, s (backTime); η efficiency (efficiency)
 * @validity Peak volts, amps and time above 0, those of the background not below 0; efficiency above 0 and at most 1
 * @assumptions Square pulses; slopes between the levels are not counted
 * @source ISO/TR 18491 and QW-409.1(c): instantaneous power; mean power of J. Braz. Soc. Mech. Sci. Eng. 2021, eq. 2–4
 * @related HEAT_INPUT, HEAT_METERED, AMPS_MEAN, PULSE_SHARE
 * @figure pulse
 * @example =BEAD.HEAT_PULSED(10, 100, 0.5, 9, 30, 0.5, 5) → 7.62
 */
export function heatPulsedCell(
  peakVolts: unknown,
  peakAmps: unknown,
  peakTime: unknown,
  backVolts: unknown,
  backAmps: unknown,
  backTime: unknown,
  speed: unknown,
  efficiency?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) => {
    const peak = {
      volts: read.number("peakVolts", peakVolts, VOLTAGE),
      amps: read.number("peakAmps", peakAmps, CURRENT),
      seconds: read.number("peakTime", peakTime, TIME),
    };
    const back = {
      volts: read.number("backVolts", backVolts, VOLTAGE),
      amps: read.number("backAmps", backAmps, CURRENT),
      seconds: read.number("backTime", backTime, TIME),
    };
    const travel = read.number("speed", speed, SPEED);
    return read.give(
      pulsedHeatInput(peak, back, travel, read.numberOr("efficiency", efficiency, SHARE, 1)),
      HEAT_INPUT,
    );
  });
}

/**
 * Heat input from the arc energy a meter read, kJ/in | kJ/mm.
 * @customfunction HEAT_METERED
 * @param joules Metered arc energy, J
 * @param length Bead length it was spent on, in | mm
 * @param [efficiency] 1 (default) for ASME arc energy; 0.6 for TIG by EN 1011-1
 * @param [units] "US" (default) or "SI"
 * @equation H = E/(1000·L)·η
 * @math H = \frac{E}{1000\,L}\,\eta
 * @where H heat input, kJ/in or kJ/mm; E metered arc energy, J (joules); L bead length it was spent on, in or mm (length); η efficiency (efficiency)
 * @validity joules and length above 0, efficiency above 0 and at most 1
 * @assumptions Energy metered as instantaneous power over the arc-on time
 * @source ASME BPVC Section IX QW-409.1(c), 2010 edition on
 * @related HEAT_INPUT, HEAT_PULSED
 * @example =BEAD.HEAT_METERED(24000, 10, 1, "SI") → 2.4
 */
export function heatMeteredCell(
  joules: unknown,
  length: unknown,
  efficiency?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    read.give(
      meteredHeatInput(
        read.number("joules", joules, ENERGY),
        read.number("length", length, LENGTH),
        read.numberOr("efficiency", efficiency, SHARE, 1),
      ),
      HEAT_INPUT,
    ),
  );
}

/**
 * Time-weighted mean current of a pulsed arc, A.
 * @customfunction AMPS_MEAN
 * @param peakAmps Peak current, A
 * @param peakTime Time at peak, s
 * @param backAmps Background current, A
 * @param backTime Time at background, s
 * @equation I = (Ip·tp + Ib·tb)/(tp + tb)
 * @math I = \frac{I_p t_p + I_b t_b}{t_p + t_b}
 * @where I mean current; Iₚ peak current (peakAmps); tₚ time at peak (peakTime); I_b background current (backAmps); t_b time at background (backTime)
 * @validity Peak current and time above 0, those of the background not below 0
 * @assumptions Square pulses
 * @source Definition of a time-weighted mean
 * @related PULSE_SHARE, PULSE_RATE, HEAT_PULSED
 * @figure pulse
 * @example =BEAD.AMPS_MEAN(180, 0.125, 90, 0.125) → 135
 */
export function ampsMeanCell(
  peakAmps: unknown,
  peakTime: unknown,
  backAmps: unknown,
  backTime: unknown,
): number {
  return answerAlike((read) =>
    meanAmps(
      read.number("peakAmps", peakAmps, CURRENT),
      read.number("peakTime", peakTime, TIME),
      read.number("backAmps", backAmps, CURRENT),
      read.number("backTime", backTime, TIME),
    ),
  );
}

/**
 * Share of the pulse time at peak that gives a mean current, 0 to 1.
 * @customfunction PULSE_SHARE
 * @param meanAmps Mean current wanted, A
 * @param peakAmps Peak current, A
 * @param backAmps Background current, A
 * @equation s = (I − Ib)/(Ip − Ib)
 * @math s = \frac{I - I_b}{I_p - I_b}
 * @where s share of the pulse time at peak; I mean current wanted (meanAmps); Iₚ peak current (peakAmps); I_b background current (backAmps)
 * @validity mean between background and peak
 * @assumptions Square pulses
 * @source AMPS_MEAN solved for the share
 * @related AMPS_MEAN, PULSE_RATE, HEAT_PULSED, SCHEDULE
 * @figure pulse
 * @example =BEAD.PULSE_SHARE(48, 65, 19.5) → 0.6264
 */
export function pulseShareCell(meanAmps: unknown, peakAmps: unknown, backAmps: unknown): number {
  return answerAlike((read) =>
    pulseShare(
      read.number("meanAmps", meanAmps, CURRENT),
      read.number("peakAmps", peakAmps, CURRENT),
      read.number("backAmps", backAmps, CURRENT),
    ),
  );
}

/**
 * Pulse rate at which successive spots overlap, Hz.
 * @customfunction PULSE_RATE
 * @param speed Surface travel, in/min | mm/min
 * @param beadWidth Fused width, the size of one spot, in | mm
 * @param [overlap] Share of a spot that the next one covers, 0 to under 1; 0.75 if left out
 * @param [units] "US" (default) or "SI"
 * @equation f = v/(b·(1 − o))
 * @math f = \frac{v}{b\,(1 - o)}
 * @where f pulse rate; v surface travel (speed); b fused width, the size of one spot (beadWidth); o share of a spot that the next one covers (overlap)
 * @validity overlap at least 0 and under 1
 * @assumptions Each pulse melts one spot as long as the bead is wide
 * @source Geometry; an overlap of three quarters is common practice
 * @related PULSE_SHARE, AMPS_MEAN, MELT_WIDTH, SCHEDULE
 * @example =BEAD.PULSE_RATE(5.138, 0.1694) → 2.022
 */
export function pulseRateCell(
  speed: unknown,
  beadWidth: unknown,
  overlap?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    pulseRate(
      read.number("speed", speed, SPEED),
      read.number("beadWidth", beadWidth, LENGTH),
      read.numberOr("overlap", overlap, SHARE, COMMON_SPOT_OVERLAP),
    ),
  );
}
