import { scaledBesselK } from "../../../src/numerics/bessel";
import { scaledErrorFunctions } from "../../../src/numerics/error-function";
import { decayIntegral, scaledE1 } from "../../../src/numerics/exponential-integral";
import { integral, integralBetween } from "../../quadrature";
import { BY_HAND, INDEPENDENT, evidence } from "../../evidence";

/** From far under any pool to far over any, and close to where one method hands over to the next. */
const ARGUMENTS = [
  1e-12, 3e-9, 1e-6, 0.000_4, 0.02, 0.3, 0.999, 1.4999, 1.5001, 1.9999, 2.0001, 3.7, 5.7599, 5.7601, 11, 47,
  300, 1e4, 1e7, 1e10,
];
/** Ten times nearer than asked for even after the quadrature's own rounding. */
const CLOSE = 1e-11;

function expectNear(value: number, expected: number, relative = CLOSE): void {
  expect(Math.abs(value / expected - 1)).toBeLessThan(relative);
}

describe("integral forms, by quadrature", () => {
  describe(
    evidence(
      "AMPS_MELT MELT_WIDTH START_DWELL AMPS_SECTORS",
      INDEPENDENT,
      "integral forms of K₀ and K₁ ([abramowitz-stegun-1964] 9.6.23 and 9.6.24), by quadrature",
    ),
    () => {
      test.each(ARGUMENTS)("e^x·K₀ and e^x·(K₁ − K₀) at %p, with t = 1 + s²", (x) => {
        const { k0, gap } = scaledBesselK(x);
        const plain = integral((s) => (2 * Math.exp(-x * s * s)) / Math.sqrt(s * s + 2));
        const first = integral((s) => 2 * x * s * s * Math.exp(-x * s * s) * Math.sqrt(s * s + 2));
        expectNear(k0, plain);
        expectNear(k0 + gap, first);
        // 9.6.24 with cosh t = 1 + s²: the difference itself, nothing cancels.
        expectNear(
          gap,
          integral((s) => (2 * s * s * Math.exp(-x * s * s)) / Math.sqrt(s * s + 2)),
        );
      });
    },
  );

  describe(
    evidence(
      "START_DWELL AMPS_SECTORS",
      INDEPENDENT,
      "integral form of E₁ ([abramowitz-stegun-1964] 5.1.1), by quadrature",
    ),
    () => {
      test.each(ARGUMENTS)("e^x·E₁ at %p, with s = t − x", (x) => {
        expectNear(
          scaledE1(x),
          integral((s) => Math.exp(-s) / (x + s)),
        );
      });
    },
  );

  describe(
    evidence(
      "DAM_TEMPERATURE DAM_DISTANCE AMPS_SECTORS",
      INDEPENDENT,
      "integral forms of erfc and ierfc ([abramowitz-stegun-1964] 7.2.3), by quadrature",
    ),
    () => {
      test.each([...ARGUMENTS, 0])("e^(z²)·erfc and e^(z²)·ierfc at %p", (z) => {
        const { erfc, ierfc } = scaledErrorFunctions(z);
        const twoOverRootPi = 2 / Math.sqrt(Math.PI);
        expectNear(erfc, twoOverRootPi * integral((s) => Math.exp(-s * s - 2 * z * s)));
        expectNear(ierfc, twoOverRootPi * integral((s) => s * Math.exp(-s * s - 2 * z * s)));
      });
    },
  );

  describe(
    evidence("AMPS_SECTORS", INDEPENDENT, "the integral over the dwell and the turns before, by quadrature"),
    () => {
      test.each([
        [0.3, 0.2, 5],
        [1e-9, 0.2, 5],
        [0, 0.2, 5],
        [4, 1, 1.5],
        [1.5, 0.99, 1.01],
        [9, 0.5, 40],
      ])("∫ e^(−c/u)/u du for c = %p from %p to %p", (c, from, to) => {
        expectNear(
          decayIntegral(c, from, to),
          integralBetween((u) => Math.exp(-c / u) / u, from, to, 4000),
          1e-10,
        );
      });

      test("∫ from nothing is E₁ itself", () => {
        expectNear(
          decayIntegral(2, 0, 4),
          integral((s) => Math.exp(-0.5 - s) / (0.5 + s)),
        );
        expect(decayIntegral(2, 0, 0)).toBe(0);
      });
    },
  );
});

describe(
  evidence(
    "AMPS_MELT MELT_WIDTH START_DWELL AMPS_SECTORS DAM_TEMPERATURE DAM_DISTANCE",
    BY_HAND,
    "leading terms ([abramowitz-stegun-1964]) of the functions that the equation is written in, far beyond any weld",
  ),
  () => {
    test.each([1e-300, 1e-100, 1e-20])("small argument %p: Abramowitz & Stegun 9.6.8, 9.6.9, 5.1.11", (x) => {
      const gamma = 0.577_215_664_901_532_9;
      const { k0, gap } = scaledBesselK(x);
      expectNear(k0, -Math.log(x / 2) - gamma, 1e-14);
      expectNear(gap, 1 / x, 1e-14);
      expectNear(scaledE1(x), -Math.log(x) - gamma, 1e-14);
    });

    test.each([1e12, 1e60, 1e150])("large argument %p: Abramowitz & Stegun 9.7.2, 5.1.51, 7.1.23", (x) => {
      const { k0, gap } = scaledBesselK(x);
      expectNear(k0, Math.sqrt(Math.PI / (2 * x)), 1e-12);
      expectNear(gap, Math.sqrt(Math.PI / (2 * x)) / (2 * x), 1e-11);
      expectNear(scaledE1(x), 1 / x, 2e-12);
      const { erfc, ierfc } = scaledErrorFunctions(x);
      expectNear(erfc, 1 / (x * Math.sqrt(Math.PI)), 1e-14);
      expectNear(ierfc, 1 / (2 * x * x * Math.sqrt(Math.PI)), 1e-14);
    });
  },
);
