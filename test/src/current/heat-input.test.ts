import fc from "fast-check";

import {
  heatInput,
  meanAmps,
  meteredHeatInput,
  pulsedHeatInput,
  pulseRate,
  pulseShare,
} from "../../../src/current/heat-input";
import { CURRENT, ENERGY, LENGTH, SHARE, si, SPEED, TIME, VOLTAGE } from "../../../src/quantity";
import { RUNS } from "../../arbitrary-cells";
import { decadesOf, evenly, times } from "../../arbitrary-quantities";
import { expectNear, number } from "../../bead";
import { BY_HAND, COMMON_PRACTICE, evidence } from "../../evidence";

const volts = decadesOf(VOLTAGE, 5, 40);
const amps = decadesOf(CURRENT, 1, 500);
const seconds = decadesOf(TIME, 1e-3, 2);
const speed = decadesOf(SPEED, 1e-4, 0.1);
const share = evenly(SHARE, 0.01, 1);
const ALL = si(1, SHARE);

describe(`laws (${RUNS})`, () => {
  test("a pulse of two equal levels is a steady arc", () => {
    fc.assert(
      fc.property(volts, amps, seconds, seconds, speed, share, (u, i, tp, tb, v, k) => {
        const level = { volts: u, amps: i };
        expectNear(
          pulsedHeatInput({ ...level, seconds: tp }, { ...level, seconds: tb }, v, k),
          heatInput(u, i, v, k),
        );
      }),
    );
  });

  test("a pulse without background is a steady arc at peak", () => {
    fc.assert(
      fc.property(volts, amps, seconds, speed, (u, i, tp, v) => {
        const back = { volts: si(0, VOLTAGE), amps: si(0, CURRENT), seconds: si(0, TIME) };
        const peak = { volts: u, amps: i, seconds: tp };
        expectNear(pulsedHeatInput(peak, back, v, ALL), heatInput(u, i, v, ALL));
      }),
    );
  });

  test("the energy of many pulses over the bead they run along is the same heat input", () => {
    fc.assert(
      fc.property(volts, amps, seconds, seconds, speed, share, (u, i, tp, tb, v, k) => {
        const peak = { volts: u, amps: i, seconds: tp };
        const back = { volts: times(0.8, u), amps: times(0.3, i), seconds: tb };
        const pulse = u * i * tp + back.volts * back.amps * tb;
        const metered = meteredHeatInput(si(50 * pulse, ENERGY), si(50 * v * (tp + tb), LENGTH), k);
        expectNear(pulsedHeatInput(peak, back, v, k), metered);
      }),
    );
  });

  test("volts and amps that rise together give more than the product of their means", () => {
    fc.assert(
      fc.property(volts, amps, seconds, seconds, speed, (u, i, tp, tb, v) => {
        const peak = { volts: u, amps: i, seconds: tp };
        const back = { volts: times(0.8, u), amps: times(0.3, i), seconds: tb };
        const meanVolts = si((u * tp + back.volts * tb) / (tp + tb), VOLTAGE);
        const product = heatInput(meanVolts, meanAmps(i, tp, back.amps, tb), v, ALL);
        expect(pulsedHeatInput(peak, back, v, ALL)).toBeGreaterThanOrEqual(product);
      }),
    );
  });

  test("proportional to power and efficiency, inverse to speed", () => {
    fc.assert(
      fc.property(volts, amps, speed, share, (u, i, v, k) => {
        const heat = heatInput(u, i, v, k);
        expectNear(heatInput(times(2, u), i, v, k), 2 * heat);
        expectNear(heatInput(u, times(2, i), v, k), 2 * heat);
        expectNear(heatInput(u, i, times(2, v), k), heat / 2);
        expectNear(heatInput(u, i, v, times(0.5, k)), heat / 2);
        expectNear(meteredHeatInput(si(u * i, ENERGY), si(v, LENGTH), k), heat);
      }),
    );
  });

  test("the share of the mean is the share of the time", () => {
    fc.assert(
      fc.property(amps, share, seconds, seconds, (peak, low, tp, tb) => {
        const back = times(0.9 * low, peak);
        const found = pulseShare(meanAmps(peak, tp, back, tb), peak, back);
        // A background near the peak takes one digit off their difference.
        expectNear(found, tp / (tp + tb), 1e-11);
      }),
    );
  });

  test("the mean lies between background and peak", () => {
    fc.assert(
      fc.property(amps, share, seconds, seconds, (peak, low, tp, tb) => {
        const mean = meanAmps(peak, tp, times(low, peak), tb);
        expect(mean).toBeLessThanOrEqual(peak * (1 + 1e-12));
        expect(mean).toBeGreaterThanOrEqual(low * peak * (1 - 1e-12));
      }),
    );
  });

  test("at the pulse rate the head moves on by what the overlap leaves of a spot", () => {
    const width = decadesOf(LENGTH, 1e-4, 0.02);
    fc.assert(
      fc.property(speed, width, evenly(SHARE, 0, 0.99), (v, b, over) => {
        expectNear(v / pulseRate(v, b, over), b * (1 - over));
      }),
    );
  });
});

describe(evidence("PULSE_SHARE", BY_HAND, "all background, all peak, and 30 A of 100 A"), () => {
  test("shares at the ends: all background 0, all peak 1", () => {
    const shareOf = (mean: number, peak: number, back: number): number =>
      pulseShare(si(mean, CURRENT), si(peak, CURRENT), si(back, CURRENT));
    expect(shareOf(30, 100, 30)).toBe(0);
    expect(shareOf(100, 100, 30)).toBe(1);
    expect(shareOf(30, 100, 0)).toBeCloseTo(0.3, 15);
  });
});

describe(evidence("PULSE_RATE", BY_HAND, "1 mm/s over spots of 2 mm that overlap by half, 1 Hz"), () => {
  test("1 mm/s over spots of 2 mm that overlap by half", () => {
    expectNear(pulseRate(si(0.001, SPEED), si(0.002, LENGTH), si(0.5, SHARE)), 1);
  });
});

describe(evidence("PULSE_RATE", COMMON_PRACTICE, "spots overlap by three quarters"), () => {
  test("unless another overlap is given", () => {
    // 60 mm/min is 1 mm/s; spots of 2 mm move on by 0.5 mm.
    expectNear(number("PULSE_RATE", 60, 2, null, "SI"), 2);
    expectNear(number("PULSE_RATE", 60, 2, 0, "SI"), 0.5);
  });
});

test("efficiency is 1 unless given", () => {
  expect(number("HEAT_INPUT", 10, 100, 5)).toBe(number("HEAT_INPUT", 10, 100, 5, 1, "US"));
  expectNear(number("HEAT_METERED", 1000, 1), 1);
  expectNear(number("HEAT_PULSED", 10, 100, 1, 10, 100, 1, 5), number("HEAT_INPUT", 10, 100, 5));
});
