/**
 * ∫₀^∞ f(s) ds by the trapezoidal rule in y = ln s, which converges geometrically for a smooth f that dies out at both
 * ends on that scale. For the integral forms of the special functions; shares nothing with src.
 */
export function integral(f: (s: number) => number): number {
  const step = 1 / 24;
  const reach = 70;
  let sum = 0;
  for (let i = -reach / step; i <= reach / step; i += 1) {
    const s = Math.exp(i * step);
    sum += f(s) * s;
  }
  return sum * step;
}

/** Gauss's three points on each of `panels` equal parts of a finite stretch. */
export function integralBetween(f: (x: number) => number, from: number, to: number, panels: number): number {
  const half = (to - from) / panels / 2;
  const away = half * Math.sqrt(0.6);
  let sum = 0;
  for (let i = 0; i < panels; i += 1) {
    const middle = from + (2 * i + 1) * half;
    sum += 5 * f(middle - away) + 8 * f(middle) + 5 * f(middle + away);
  }
  return (sum * half) / 9;
}
