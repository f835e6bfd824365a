/**
 * How long an arc stands still until the bead is as wide as it is to be, straight from the equations that START_DWELL
 * and AMPS_MELT state in their help: Simpson's rule over many even steps of ln τ, places found by halving. Slow, and shares nothing
 * with src. Base SI.
 */

export interface StandingMetal {
  readonly diffusivity: number;
  readonly heatCapacity: number;
  readonly farDiffusivity: number;
  readonly farStrength: number;
  readonly surfaceLoss: number;
}

export interface StandingArc {
  readonly metal: StandingMetal;
  readonly wall: number;
  readonly spread: number;
  readonly speed: number;
  readonly beadWidth: number;
  readonly rise: number;
}

const FIRST = 1e-14;
const STEP = 1 / 12;
const LAST = 300;

interface Instant {
  readonly age: number;
  readonly weight: number;
  readonly variance: number;
}

/** What each instant of 1 W adds up to `until` s old, at the face or at the root. */
function instants({ metal, wall, spread, speed }: StandingArc, root: boolean, until: number): Instant[] {
  const { diffusivity, heatCapacity, farDiffusivity, farStrength, surfaceLoss } = metal;
  const cooling = (1.1785 * 4 * diffusivity) / speed ** 2;
  const steps = 2 * Math.ceil(Math.log(until / FIRST) / STEP / 2);
  const step = Math.log(until / FIRST) / steps;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const age = until * Math.exp((i - steps) * step);
    const simpson = i === 0 || i === steps ? 1 / 3 : i % 2 === 1 ? 4 / 3 : 2 / 3;
    const late = age - cooling * Math.log(1 + age / cooling);
    const variance = spread ** 2 + 2 * diffusivity * age + 2 * (farDiffusivity - diffusivity) * late;
    const fourier = (diffusivity * age) / wall ** 2;
    let through = 0;
    for (let n = -30; n <= 30; n += 1) {
      through += Math.exp(-(((root ? 1 : 0) + 2 * n) ** 2) / (4 * fourier)) / Math.sqrt(Math.PI * fourier);
    }
    const even = fourier > 20 ? 1 : through;
    const kept = Math.exp((-surfaceLoss * age) / (heatCapacity * wall));
    const strength = kept * (1 + (farStrength - 1) * (age / (age + cooling)));
    const weight = (simpson * step * age * even * strength) / variance;
    return { age, variance, weight: weight / (2 * Math.PI * heatCapacity * wall) };
  });
}

function risePerWatt(all: readonly Instant[], speed: number, ahead: number, across: number): number {
  return all.reduce((sum, { age, variance, weight }) => {
    return sum + weight * Math.exp(-((ahead + speed * age) ** 2 + across ** 2) / (2 * variance));
  }, 0);
}

/** The hottest place behind a traveling arc, by thirds. */
function crest(all: readonly Instant[], speed: number, across: number): number {
  let [low, high] = [-0.02, 0];
  for (let i = 0; i < 26; i += 1) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (risePerWatt(all, speed, a, across) < risePerWatt(all, speed, b, across)) low = a;
    else high = b;
  }
  return risePerWatt(all, speed, (low + high) / 2, across);
}

/** Where a function that rises or falls all the way is `aim`, by halving. */
function where(f: (x: number) => number, aim: number, from: number, to: number): number {
  const above = f(from) > aim;
  let [low, high] = [from, to];
  for (let i = 0; i < 30; i += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > aim === above) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** s */
export function standingSeconds(arc: StandingArc): number {
  const { speed, rise, beadWidth } = arc;
  const [face, root] = [instants(arc, false, LAST), instants(arc, true, LAST)];
  const powerOf = (half: number): number => rise / crest(face, speed, half);
  const half = where(
    (y) => y + where((z) => crest(root, speed, z), rise / powerOf(y), 0, beadWidth),
    beadWidth,
    beadWidth / 2,
    beadWidth,
  );
  const target = rise / powerOf(half);
  const width = (seconds: number): number => {
    const sides = [false, true].map((side) => instants(arc, side, seconds));
    return sides.reduce((sum, side) => {
      const rises = (y: number): number => risePerWatt(side, 0, 0, y);
      return sum + (rises(0) > target ? where(rises, target, 0, beadWidth) : 0);
    }, 0);
  };
  return where(width, beadWidth, 0.5, 60);
}
