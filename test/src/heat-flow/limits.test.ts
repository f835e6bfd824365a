/** The model where it has to become a solution known from the literature. */

import type { ArcPlate } from "../../../src/heat-flow/arc-plate";
import type { EffectiveMetal } from "../../../src/heat-flow/effective";
import { meltSection, powerOfFace, powerOfMean, readyPlate } from "../../../src/heat-flow/melt";
import { movingArc, riseAt, weightsAt } from "../../../src/heat-flow/moving-arc";
import { ringHistory, ringRise } from "../../../src/heat-flow/ring-rise";
import { standingWidth } from "../../../src/heat-flow/start-dwell";
import { throughWall } from "../../../src/heat-flow/through-wall";
import { erfc } from "../../error-function";
import { rosenthalPower } from "../../rosenthal";

/** Round numbers: k 25 W/mK, α 5 mm²/s, no change with the age of the heat. */
const METAL: EffectiveMetal = {
  diffusivity: 5e-6,
  heatCapacity: 5e6,
  farDiffusivity: 5e-6,
  farStrength: 1,
  surfaceLoss: 0,
  liquidus: 1700,
};
const CONDUCTIVITY = 25;
const RISE = 1400;

function plate(changes: Partial<ArcPlate>): ArcPlate {
  return { metal: METAL, wall: 0.002, spread: 0.001, speed: 0.002, ...changes };
}

describe("heat through the wall", () => {
  test.each([0, 0.3, 0.5, 1])("both theta forms meet where they change over, depth %p", (part) => {
    // At f = 0.16 the images and the waves each converge in a few terms: the series is written out here.
    const waves = (f: number): number =>
      1 +
      2 *
        [1, 2, 3, 4, 5, 6].reduce(
          (sum, n) => sum + Math.cos(n * Math.PI * part) * Math.exp(-n * n * Math.PI * Math.PI * f),
          0,
        );
    for (const f of [0.1, 0.159, 0.161, 0.3]) {
      expect(Math.abs(throughWall(f, part) - waves(f))).toBeLessThan(1e-10);
    }
  });

  test("no heat is lost in it: its mean over the wall is 1", () => {
    for (const f of [0.001, 0.05, 0.24, 0.26, 1, 30]) {
      const steps = 2000;
      let mean = 0;
      for (let i = 0; i < steps; i += 1) mean += throughWall(f, (i + 0.5) / steps) / steps;
      expect(Math.abs(mean - 1)).toBeLessThan(1e-5);
    }
  });
});

describe("thin wall, small arc, no loss: Rosenthal's line source (1941, 1946)", () => {
  test.each([
    [0.001, 0.002],
    [0.004, 0.004],
    [0.002, 0.008],
  ])("speed %p m/s, width %p m", (speed, width) => {
    const thin = plate({ wall: width / 200, spread: width / 2000, speed });
    const found = powerOfMean(readyPlate(thin), RISE, width);
    const line = { wall: thin.wall, conductivity: CONDUCTIVITY, diffusivity: 5e-6, meltingRise: RISE };
    expect(Math.abs(found / rosenthalPower(line, speed, width) - 1)).toBeLessThan(2e-4);
  });
});

describe("thick wall, small arc: Rosenthal's point source on a half-space (1946)", () => {
  // T = q/(2πkR)·exp(−v(ξ + R)/2α)
  test.each([
    [-0.002, 0.001],
    [0.0005, 0.001],
    [0, 0.003],
  ])("ξ %p m, y %p m", (ahead, across) => {
    const arc = movingArc(plate({ wall: 0.5, spread: 1e-6 }));
    const distance = Math.hypot(ahead, across);
    const point =
      Math.exp((-0.002 * (ahead + distance)) / (2 * 5e-6)) / (2 * Math.PI * CONDUCTIVITY * distance);
    const found = riseAt(arc, weightsAt(arc, 0), ahead, across * across).value;
    expect(Math.abs(found / point - 1)).toBeLessThan(1e-4);
  });
});

test("thick wall, slow arc: the middle of a Gaussian source on a half-space, q/(2kσ√(2π))", () => {
  // ∫ q/(2πσ²)·exp(−r²/2σ²)/(2πkr)·2πr dr = q/(2πσ²k)·σ√(π/2), worked out by hand.
  const arc = movingArc(plate({ wall: 5, speed: 2e-6 }));
  const middle = 1 / (2 * CONDUCTIVITY * 0.001 * Math.sqrt(2 * Math.PI));
  expect(Math.abs(riseAt(arc, weightsAt(arc, 0), 0, 0).value / middle - 1)).toBeLessThan(2e-3);
});

test.each([0.5, 3, 20])("a point source standing for %p s: Carslaw & Jaeger §10.4", (seconds) => {
  // q/(2πkr)·erfc(r/√(4αt)) is the target at r; the root of so thick a wall stays cold, so the mean is half the face.
  const radius = 0.003;
  const target = erfc(radius / Math.sqrt(4 * 5e-6 * seconds)) / (2 * Math.PI * CONDUCTIVITY * radius);
  const width = standingWidth(plate({ wall: 0.5, spread: 1e-6 }), target, seconds);
  expect(Math.abs(width / radius - 1)).toBeLessThan(1e-4);
});

test("a small tube turned for long with loss: the fin, q/(2kA·μ)·exp(−μy), μ = √(H/kh)", () => {
  const metal = { ...METAL, surfaceLoss: 200 };
  const wall = 0.001;
  const circumference = 0.02;
  const end = 400;
  const pass = {
    plate: plate({ metal, wall, speed: 0.02 }),
    circumference,
    dwell: 0,
    steps: [{ from: 0, power: 50 }],
    end,
  };
  const history = ringHistory(pass, end);
  const mu = Math.sqrt(200 / (CONDUCTIVITY * wall));
  for (const distance of [0.01, 0.02, 0.04]) {
    const fin = (50 * Math.exp(-mu * distance)) / (2 * CONDUCTIVITY * circumference * wall * mu);
    const found = ringRise(history, history.mean, 0.003, distance * distance, end).value;
    expect(Math.abs(found / fin - 1)).toBeLessThan(0.01);
  }
});

test("without loss the ring keeps the heat it was given", () => {
  const pass = {
    plate: plate({ wall: 0.001 }),
    circumference: 0.04,
    dwell: 2,
    steps: [
      { from: 0, power: 200 },
      { from: 8, power: 150 },
    ],
    end: 20,
  };
  const history = ringHistory(pass, 20);
  // 200 W × 8 s + 150 W × 7 s = 2650 J at 15 s; both sides of the joint, trapezoids no wider than the arc's σ, exact for Gaussians.
  const grid = 0.001;
  let heat = 0;
  for (let i = 0; i <= 80; i += 1) {
    for (let j = 0; j < 40; j += 1) {
      const cell = (i > 0 ? 2 : 1) * grid * grid;
      heat += ringRise(history, history.mean, j * grid, (i * grid) ** 2, 15).value * cell;
    }
  }
  expect(Math.abs((heat * METAL.heatCapacity * 0.001) / 2650 - 1)).toBeLessThan(1e-3);
});

test("a larger arc on the same wall needs more power to melt at all, and melts through later", () => {
  const spreads = [0, 0.0004, 0.0008, 0.0012, 0.0016, 0.002];
  const least = spreads.map((spread) => powerOfFace(readyPlate(plate({ spread })), RISE, 0));
  const roots = spreads.map((spread) => meltSection(readyPlate(plate({ spread })), RISE, 420).root);
  expect([...least].sort((a, b) => a - b)).toEqual(least);
  expect([...roots].sort((a, b) => b - a)).toEqual(roots);
});
