import fc from "fast-check";

import type { PulseLevel } from "../../../src/current/heat-input";
import {
  heatInput,
  meanAmps,
  meteredHeatInput,
  pulsedHeatInput,
  pulseRate,
  pulseShare,
} from "../../../src/current/heat-input";
import { decades, RUNS } from "../../arbitrary-cells";
import { expectNear, number } from "../../bead";
import { BY_HAND, COMMON_PRACTICE, evidence } from "../../evidence";
import { CURRENT, ENERGY, LENGTH, SHARE, si, SPEED, TIME, VOLTAGE } from "../../../src/quantity";

const volts = decades(5, 40);
const amps = decades(1, 500);
const seconds = decades(1e-3, 2);
const speed = decades(1e-4, 0.1);
const share = fc.double({ min: 0.01, max: 1, noNaN: true });

describe(`laws (${RUNS})`, () => {
  test("a pulse of two equal levels is a steady arc", () => {
    fc.assert(
      fc.property(volts, amps, seconds, seconds, speed, share, (u, i, tp, tb, v, k) => {
        const level = (time: number): PulseLevel => ({
          volts: si(u, VOLTAGE),
          amps: si(i, CURRENT),
          seconds: si(time, TIME),
        });
        expectNear(
          pulsedHeatInput(level(tp), level(tb), si(v, SPEED), si(k, SHARE)),
          heatInput(si(u, VOLTAGE), si(i, CURRENT), si(v, SPEED), si(k, SHARE)),
        );
      }),
    );
  });

  test("a pulse without background is a steady arc at peak", () => {
    fc.assert(
      fc.property(volts, amps, seconds, speed, (u, i, tp, v) => {
        const back = { volts: 0, amps: 0, seconds: 0 };
        expectNear(
          pulsedHeatInput({ volts: si(u, VOLTAGE), amps: si(i, CURRENT), seconds: si(tp, TIME) }, back, v, 1),
          heatInput(si(u, VOLTAGE), si(i, CURRENT), si(v, SPEED), si(1, SHARE)),
        );
      }),
    );
  });

  test("the energy of many pulses over the bead they run along is the same heat input", () => {
    fc.assert(
      fc.property(volts, amps, seconds, seconds, speed, share, (u, i, tp, tb, v, k) => {
        const back = { volts: 0.8 * u, amps: 0.3 * i, seconds: tb };
        const pulse = u * i * tp + back.volts * back.amps * tb;
        const metered = meteredHeatInput(
          si(50 * pulse, ENERGY),
          si(50 * v * (tp + tb), LENGTH),
          si(k, SHARE),
        );
        expectNear(
          pulsedHeatInput({ volts: si(u, VOLTAGE), amps: si(i, CURRENT), seconds: si(tp, TIME) }, back, v, k),
          metered,
        );
      }),
    );
  });

  test("volts and amps that rise together give more than the product of their means", () => {
    fc.assert(
      fc.property(volts, amps, seconds, seconds, speed, (u, i, tp, tb, v) => {
        const back = { volts: 0.8 * u, amps: 0.3 * i, seconds: tb };
        const meanVolts = (u * tp + back.volts * tb) / (tp + tb);
        const product = heatInput(
          si(meanVolts, VOLTAGE),
          meanAmps(si(i, CURRENT), si(tp, TIME), si(back.amps, CURRENT), tb),
          si(v, SPEED),
          si(1, SHARE),
        );
        const pulsed = pulsedHeatInput(
          { volts: si(u, VOLTAGE), amps: si(i, CURRENT), seconds: si(tp, TIME) },
          back,
          v,
          1,
        );
        expect(pulsed).toBeGreaterThanOrEqual(product);
      }),
    );
  });

  test("proportional to power and efficiency, inverse to speed", () => {
    fc.assert(
      fc.property(volts, amps, speed, share, (u, i, v, k) => {
        const heat = heatInput(si(u, VOLTAGE), si(i, CURRENT), si(v, SPEED), si(k, SHARE));
        expectNear(heatInput(si(2 * u, VOLTAGE), si(i, CURRENT), si(v, SPEED), si(k, SHARE)), 2 * heat);
        expectNear(heatInput(si(u, VOLTAGE), si(2 * i, CURRENT), si(v, SPEED), si(k, SHARE)), 2 * heat);
        expectNear(heatInput(si(u, VOLTAGE), si(i, CURRENT), si(2 * v, SPEED), si(k, SHARE)), heat / 2);
        expectNear(heatInput(si(u, VOLTAGE), si(i, CURRENT), si(v, SPEED), si(k / 2, SHARE)), heat / 2);
        expectNear(meteredHeatInput(si(u * i, ENERGY), si(v, LENGTH), si(k, SHARE)), heat);
      }),
    );
  });

  test("the share of the mean is the share of the time", () => {
    fc.assert(
      fc.property(amps, share, seconds, seconds, (peak, low, tp, tb) => {
        const back = 0.9 * low * peak;
        const found = pulseShare(
          meanAmps(si(peak, CURRENT), si(tp, TIME), si(back, CURRENT), tb),
          si(peak, CURRENT),
          back,
        );
        // A background near the peak takes one digit off their difference.
        expectNear(found, tp / (tp + tb), 1e-11);
      }),
    );
  });

  test("the mean lies between background and peak", () => {
    fc.assert(
      fc.property(amps, share, seconds, seconds, (peak, low, tp, tb) => {
        const mean = meanAmps(si(peak, CURRENT), si(tp, TIME), si(low * peak, CURRENT), tb);
        expect(mean).toBeLessThanOrEqual(peak * (1 + 1e-12));
        expect(mean).toBeGreaterThanOrEqual(low * peak * (1 - 1e-12));
      }),
    );
  });

  test("at the pulse rate the head moves on by what the overlap leaves of a spot", () => {
    const overlap = fc.double({ min: 0, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(speed, decades(1e-4, 0.02), overlap, (v, width, over) => {
        expectNear(v / pulseRate(si(v, SPEED), si(width, LENGTH), over), width * (1 - over));
      }),
    );
  });
});

describe(evidence("PULSE_SHARE", BY_HAND, "all background, all peak, and 30 A of 100 A"), () => {
  test("shares at the ends: all background 0, all peak 1", () => {
    expect(pulseShare(si(30, CURRENT), si(100, CURRENT), 30)).toBe(0);
    expect(pulseShare(si(100, CURRENT), si(100, CURRENT), 30)).toBe(1);
    expect(pulseShare(si(30, CURRENT), si(100, CURRENT), 0)).toBeCloseTo(0.3, 15);
  });
});

describe(evidence("PULSE_RATE", BY_HAND, "1 mm/s over spots of 2 mm that overlap by half, 1 Hz"), () => {
  test("1 mm/s over spots of 2 mm that overlap by half", () => {
    expectNear(pulseRate(si(0.001, SPEED), si(0.002, LENGTH), 0.5), 1);
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
