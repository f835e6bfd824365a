/** Heat flow by explicit finite differences: the plain method, which shares no code and no formula with src. */

export interface RingRun {
  /** Mean circumference, wall and how far along the tube the heat is followed on either side, m. */
  readonly circumference: number;
  readonly wall: number;
  readonly reach: number;
  /** Side of a square cell, m. */
  readonly cell: number;
  /** W/(m·K), m²/s, rise to the liquidus K. */
  readonly conductivity: number;
  readonly diffusivity: number;
  readonly meltingRise: number;
  /** m/s, and seconds the arc stands still first. */
  readonly speed: number;
  readonly dwell: number;
  /** Power into the tube, W, at a travelled distance, m; below 0 stands for the dwell. */
  readonly power: (travelled: number) => number;
}

/** Fraction of the maximum stable time step. */
const SAFETY = 0.9;
/** Steps between two looks at the maximum temperatures; the arc moves a few hundredths of a cell meanwhile. */
const LOOK = 4;

/**
 * Fused width, m, at each cell round an unrolled ring after one turn: rows along the circumference, which closes on
 * itself; half of the tube, the joint being a line of symmetry; the far end is insulated.
 */
export function fusedWidths(run: RingRun): number[] {
  const across = Math.round(run.circumference / run.cell);
  const dx = run.circumference / across;
  const along = Math.round(run.reach / dx);
  const dt = (SAFETY * dx * dx) / (4 * run.diffusivity);
  const mixing = (run.diffusivity * dt) / (dx * dx);
  /** Rise of one cell of the joint line per W in one step: energy over its heat capacity. */
  const risePerWatt = (dt * run.diffusivity) / (run.conductivity * dx * dx * run.wall);
  const steps = Math.ceil((run.dwell + run.circumference / run.speed) / dt);

  let now = new Float64Array(across * along);
  let next = new Float64Array(across * along);
  const looked = Math.min(along, Math.ceil(0.012 / dx));
  const highest = new Float64Array(across * looked);
  for (let step = 0; step < steps; step += 1) {
    for (let i = 0; i < across; i += 1) {
      const row = i * along;
      const before = (i === 0 ? across - 1 : i - 1) * along;
      const after = (i === across - 1 ? 0 : i + 1) * along;
      for (let j = 0; j < along; j += 1) {
        const here = at(now, row + j);
        const inner = at(now, row + (j === 0 ? 1 : j - 1));
        const outer = j === along - 1 ? here : at(now, row + j + 1);
        next[row + j] = here + mixing * (at(now, before + j) + at(now, after + j) + inner + outer - 4 * here);
      }
    }
    const travelled = ((step + 0.5) * dt - run.dwell) * run.speed;
    const rise = run.power(travelled) * risePerWatt;
    const place = Math.max(travelled, 0) / dx;
    const left = Math.floor(place);
    const [behind, ahead] = [(left % across) * along, ((left + 1) % across) * along];
    next[behind] = at(next, behind) + rise * (1 - (place - left));
    next[ahead] = at(next, ahead) + rise * (place - left);
    [now, next] = [next, now];
    if (step % LOOK !== 0 && step !== steps - 1) continue;
    for (let i = 0; i < across; i += 1) {
      for (let j = 0; j < looked; j += 1) {
        const value = at(now, i * along + j);
        if (value > at(highest, i * looked + j)) highest[i * looked + j] = value;
      }
    }
  }
  return Array.from({ length: across }, (_, i) => {
    const peaks = highest.subarray(i * looked, (i + 1) * looked);
    const solid = peaks.findIndex((peak) => peak < run.meltingRise);
    if (solid <= 0) return 0;
    const [inside, outside] = [at(peaks, solid - 1), at(peaks, solid)];
    return 2 * dx * (solid - 1 + (inside - run.meltingRise) / (inside - outside));
  });
}

export interface RodRun {
  /** W/(m·K), J/(m³·K), m², W into both sides together. */
  readonly conductivity: number;
  readonly heatCapacity: number;
  readonly section: number;
  readonly power: number;
  readonly seconds: number;
  readonly length: number;
  readonly cell: number;
  /** How long to watch, s. */
  readonly until: number;
}

/** Greatest rise at each cell of half the tube, K, and the heat in it at the end, J. */
export function rodPeaks(run: RodRun): { peaks: Float64Array; heat: number } {
  const cells = Math.round(run.length / run.cell);
  const diffusivity = run.conductivity / run.heatCapacity;
  const dt = (SAFETY * run.cell * run.cell) / (2 * diffusivity);
  const mixing = (diffusivity * dt) / (run.cell * run.cell);
  // The first cell is half as long: its middle is the joint itself.
  const risePerStep = (run.power / 2) * (dt / (run.heatCapacity * run.section * (run.cell / 2)));
  const peaks = new Float64Array(cells);
  let now = new Float64Array(cells);
  let next = new Float64Array(cells);
  for (let time = 0; time < run.until; time += dt) {
    const share = Math.max(0, Math.min(1, (run.seconds - time) / dt));
    for (let j = 0; j < cells; j += 1) {
      const here = at(now, j);
      const inner = at(now, j === 0 ? 1 : j - 1);
      const outer = j === cells - 1 ? here : at(now, j + 1);
      const value = here + mixing * (inner + outer - 2 * here) + (j === 0 ? share * risePerStep : 0);
      next[j] = value;
      if (value > at(peaks, j)) peaks[j] = value;
    }
    [now, next] = [next, now];
  }
  const halves = now.reduce((sum, rise, j) => sum + (j === 0 ? rise / 2 : rise), 0);
  return { peaks, heat: 2 * halves * run.cell * run.section * run.heatCapacity };
}

function at(row: Float64Array, i: number): number {
  return row[i] ?? 0;
}
