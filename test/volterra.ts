/**
 * The ring's equation solved the plain way, in meters and seconds, with images alone, an even and very fine grid and
 * the trapezoidal rule. Slow, and shares nothing with src.
 */

import { integralBetween } from "./quadrature";

export interface PlainRing {
  /** m */
  readonly circumference: number;
  /** m/s */
  readonly speed: number;
  /** m²/s */
  readonly diffusivity: number;
  /** q/(4πkhθ) of the bead. */
  readonly strength: number;
  /** s */
  readonly dwell: number;
  readonly turns: number;
}

/** Mean of power over the bead's power between ends told in turns: one more than there are means. */
export function plainMeans(ring: PlainRing, ends: readonly number[], points: number): number[] {
  const { circumference, speed, diffusivity, strength, dwell, turns } = ring;
  const last = (turns * circumference) / speed;
  const step = last / points;
  const most = Math.ceil(turns + Math.sqrt(160 * diffusivity * (last + dwell)) / circumference) + 1;
  const arriving = (travelled: number, ago: number): number => {
    let sum = 0;
    for (let n = -most; n <= most; n += 1) {
      if (n !== 0) sum += Math.exp(-((travelled + n * circumference) ** 2) / (4 * diffusivity * ago));
    }
    return sum / ago;
  };
  const kernel = [0];
  const powers: number[] = [];
  for (let i = 0; i <= points; i += 1) {
    const time = i * step;
    if (i > 0) kernel.push(strength * arriving(speed * time, time));
    // In ln of the time since, so that a short dwell and a long one are equally smooth.
    const first = Math.log(Math.max(time, 1e-5 * (time + dwell)));
    const heldStill = integralBetween(
      (log) => arriving(speed * time, Math.exp(log)) * Math.exp(log),
      first,
      Math.log(time + dwell),
      dwell > 0 ? 24 : 0,
    );
    let heat = strength * (dwell > 0 ? heldStill : 0);
    for (let j = 0; j < i; j += 1) {
      heat += (j === 0 ? 0.5 : 1) * step * (powers[j] ?? NaN) * (kernel[i - j] ?? NaN);
    }
    powers.push(1 - heat);
  }
  const total = [0];
  for (let i = 1; i <= points; i += 1) {
    total.push((total[i - 1] ?? NaN) + ((powers[i - 1] ?? NaN) + (powers[i] ?? NaN)) / 2);
  }
  const until = (end: number): number => {
    const place = Math.min((end / turns) * points, points - 1e-9);
    const [below, rest] = [Math.floor(place), place - Math.floor(place)];
    return (total[below] ?? NaN) * (1 - rest) + (total[below + 1] ?? NaN) * rest;
  };
  return ends.slice(1).map((end, i) => {
    const from = ends[i] ?? NaN;
    return ((until(end) - until(from)) * turns) / (end - from) / points;
  });
}
