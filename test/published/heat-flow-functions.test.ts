/** Printed tables of the functions that the heat flow is written in, as remembered. */

import { scaledBesselK } from "../../src/numerics/bessel";
import { erfc, ierfc } from "../../src/numerics/error-function";
import { e1 } from "../../src/numerics/exponential-integral";
import { expectPrinted } from "../bead";
import { INPUT_DATA, evidence } from "../evidence";

describe(
  evidence(
    "AMPS_MELT MELT_WIDTH START_DWELL AMPS_SECTORS",
    INPUT_DATA,
    "abramowitz-stegun-1964",
    "table 9.8: K₀ and K₁ that the equation is written in, from memory",
  ),
  () => {
    test.each([
      [0.1, "2.42707", "9.85384"],
      [0.5, "0.92442", "1.65644"],
      [1, "0.421024", "0.601907"],
      [2, "0.113894", "0.139866"],
      [5, "0.00369110", "0.00404461"],
    ])("K₀ and K₁ at %p", (x, k0, k1) => {
      const scaled = scaledBesselK(x);
      expectPrinted(scaled.k0 * Math.exp(-x), k0);
      expectPrinted((scaled.k0 + scaled.gap) * Math.exp(-x), k1);
    });
  },
);

describe(
  evidence(
    "START_DWELL AMPS_SECTORS",
    INPUT_DATA,
    "abramowitz-stegun-1964",
    "table 5.1: E₁ that the equation is written in, from memory",
  ),
  () => {
    test.each([
      [0.1, "1.822924"],
      [0.5, "0.559774"],
      [1, "0.219384"],
      [2, "0.0489005"],
      [5, "0.00114830"],
    ])("E₁ at %p", (x, printed) => {
      expectPrinted(e1(x), printed);
    });
  },
);

describe(
  evidence(
    "DAM_TEMPERATURE DAM_DISTANCE AMPS_SECTORS",
    INPUT_DATA,
    "abramowitz-stegun-1964",
    "table 7.1, and [carslaw-jaeger-1959], appendix II: erfc and ierfc that the equation is written in, from memory",
  ),
  () => {
    test.each([
      [0.1, "0.8875370840", "0.4698"],
      [0.5, "0.4795001222", "0.1996"],
      [1, "0.1572992071", "0.0503"],
      [1.5, "0.0338948535", "0.0086"],
      [2, "0.0046777350", "0.0010"],
    ])("erfc and ierfc at %p", (z, first, integrated) => {
      expectPrinted(erfc(z), first);
      expectPrinted(ierfc(z), integrated);
    });
  },
);
