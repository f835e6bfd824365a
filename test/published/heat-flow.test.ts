import { scaledBesselK } from "../../src/numerics/bessel";
import { meltPower, meltWidth } from "../../src/heat-flow/melt-power";
import type { Plate } from "../../src/heat-flow/plate";
import type { Length, Speed } from "../../src/quantity";
import { CURRENT, LENGTH, si, SPEED } from "../../src/quantity";
import { expectPrinted } from "../bead";
import { INDEPENDENT, MEMORY, evidence } from "../evidence";

/** Rise in a plate at ξ ahead of and y beside the arc, K: q/(2πkh)·exp(−λξ)·K₀(λr), λ = v/2α (Rosenthal 1941, 1946). */
function rise(plate: Plate, speed: number, power: number, ahead: number, beside: number): number {
  const lambda = speed / (2 * plate.diffusivity);
  const radius = Math.hypot(ahead, beside);
  const { k0 } = scaledBesselK(lambda * radius);
  const strength = power / (2 * Math.PI * plate.conductivity * plate.wall);
  return strength * k0 * Math.exp(-lambda * (ahead + radius));
}

/** 360 W, 2 mm/s on 1.65 mm, k 25 W/mK, α 6 mm²/s, from 20 °C, melting at 1420 °C. */
const PLATE: Plate = { wall: si(0.00165, LENGTH), conductivity: 25, diffusivity: 6e-6, meltingRise: 1400 };

/** Fused width, m, of so much power into the plate: a current at one watt per ampere. */
function widthOf(plate: Plate, speed: Speed, watts: number): Length {
  return meltWidth(plate, speed, si(watts, CURRENT), 1);
}

describe("Rosenthal's plate", () => {
  // Recomputed from the formula apart from this code.
  test.each([
    [0, 3, "1304.0075"],
    [-3, 3, "1515.6577"],
    [-10, 0, "1289.5794"],
    [2, 0, "1290.5255"],
  ])("temperature %p mm ahead, %p mm beside", (x, y, printed) => {
    expectPrinted(20 + rise(PLATE, 0.002, 360, x / 1000, y / 1000), printed);
  });

  describe(
    evidence(
      "AMPS_MELT MELT_WIDTH",
      INDEPENDENT,
      "Wells 1952, q = 8kθh·(0.2 + v·w/4α): power within 8 %, width within 4 %",
    ),
    () => {
      test.each([
        [360, 2, "6.7033", "6.9506"],
        [500, 2, "10.5402", "10.5870"],
        [500, 4, "5.2701", "5.2935"],
        [700, 4, "7.9705", "7.8909"],
      ])("fused width at %p W and %p mm/s (recomputed), Wells within 4 %%", (power, speed, width, wells) => {
        const fused = widthOf(PLATE, si(speed / 1000, SPEED), power);
        expectPrinted(1000 * fused, width);
        // Wells 1952: q = 8kθh·(0.2 + v·w/4α), which follows the exact width within 4 %.
        const { conductivity, meltingRise, wall, diffusivity } = PLATE;
        const byWells =
          (power / (8 * conductivity * meltingRise * wall) - 0.2) * ((4 * diffusivity) / (speed / 1000));
        expectPrinted(1000 * byWells, wells);
        expect(Math.abs(byWells / fused - 1)).toBeLessThan(0.04);
      });

      // Apart most near 0.16, by 7.9 %; at 0.4, the suggested speed, by 4.7 %.
      test.each([0.05, 0.1, 0.2, 0.4, 0.7, 1, 2, 5])("v·w/4α = %p: the power within 8 %%", (ratio) => {
        const width = si(0.004, LENGTH);
        const speed = si((4 * PLATE.diffusivity * ratio) / width, SPEED);
        const { conductivity, meltingRise, wall } = PLATE;
        const wells = 8 * conductivity * meltingRise * wall * (0.2 + ratio);
        expect(Math.abs(meltPower(PLATE, speed, width) / wells - 1)).toBeLessThan(0.08);
      });
    },
  );

  describe(
    evidence(
      "AMPS_MELT",
      INDEPENDENT,
      "Rosenthal's temperature field (1941, 1946) searched point by point for its widest isotherm",
    ),
    () => {
      /** The widest line by search over the field itself, not by its equation. */
      test.each([0.001, 0.002, 0.02])(
        "no point at half the width is hotter than the liquidus, %p m/s",
        (speed) => {
          const width = si(0.004, LENGTH);
          const power = meltPower(PLATE, si(speed, SPEED), width);
          let hottest = 0;
          for (let ahead = -0.04; ahead <= 0; ahead += 1e-6) {
            hottest = Math.max(hottest, rise(PLATE, speed, power, ahead, width / 2));
          }
          expect(Math.abs(hottest / PLATE.meltingRise - 1)).toBeLessThan(1e-6);
        },
      );
    },
  );

  describe(evidence("MELT_WIDTH", MEMORY, "Swift-Hook & Gick 1973, the width at high speed"), () => {
    test("at high speed the width is √(2/πe)·q/(ρc·v·h·θ)", () => {
      const { conductivity, diffusivity, meltingRise, wall } = PLATE;
      const [speed, power] = [10, 2e6];
      const limit =
        (Math.sqrt(2 / (Math.PI * Math.E)) * power) /
        ((conductivity / diffusivity) * speed * wall * meltingRise);
      expect(limit).toBeLessThan(1);
      // A tenth of both: the fastest travel there is an answer for is 1 m/s.
      expect(Math.abs(widthOf(PLATE, si(1, SPEED), power / 10) / limit - 1)).toBeLessThan(1e-3);
    });
  });
});

/**
 * Adams' peak temperatures beside a fusion line, 1/(Tp − T₀) = √(2πe)·ρC·h·Y/H + 1/(Tm − T₀): 5 mm steel, ρC 0.0044
 * J/mm³K, 720 J/mm (20 V, 200 A, 5 mm/s, efficiency 0.9), melting at 1510 °C. Adams takes the plate as heated at once
 * along the whole line; the moving source leads some heat ahead, which leaves its peak 0.4 to 1.2 % of the rise hotter
 * at the same Y, less and less with distance from the arc.
 */
describe(
  evidence(
    "MELT_WIDTH",
    MEMORY,
    "Welding Handbook, Adams' peak temperatures beside a fusion line, within 1.2 %",
  ),
  () => {
    const volume = 0.0044;
    const steel = (from: number, to: number): Plate => ({
      wall: si(0.005, LENGTH),
      conductivity: 28,
      diffusivity: 28 / (volume * 1e9),
      meltingRise: to - from,
    });
    const speed = si(0.005, SPEED);

    test.each([
      ["1184 °C at 1.5 mm", 720, 25, "1184", 1.5, 0.012],
      ["976 °C at 3.0 mm", 720, 25, "976", 3.0, 0.012],
      ["730 °C at 5.9 mm", 720, 25, "730", 5.903897, 0.012],
      ["430 °C at 14.2 mm", 720, 25, "430", 14.229906, 0.01],
      ["430 °C at 28.4 mm, from 200 °C", 720, 200, "430", 28.404319, 0.006],
    ] as const)("%s", (_, joulesPerMm, from, printed, beside, apart) => {
      const overRise = (constant: number): number =>
        (constant * volume * 5 * beside) / joulesPerMm + 1 / (1510 - from);
      // The handbook writes √(2πe) as 4.13.
      expectPrinted(from + 1 / overRise(4.13), printed);

      const power = joulesPerMm * 1000 * speed;
      const fusionLine = widthOf(steel(from, 1510), speed, power) / 2;
      const y = fusionLine + beside / 1000;
      let peak = 0;
      for (let ahead = -0.6; ahead <= 0; ahead += 2e-5) {
        peak = Math.max(peak, rise(steel(from, 1510), speed, power, ahead, y));
      }
      expect(peak * overRise(Math.sqrt(2 * Math.PI * Math.E)) - 1).toBeGreaterThan(0);
      expect(peak * overRise(Math.sqrt(2 * Math.PI * Math.E)) - 1).toBeLessThan(apart);
    });
  },
);
