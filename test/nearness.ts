/**
 * How near the heat-flow model is to the runs of an independent nonlinear 3-D solution. The test holds it against its
 * bounds, and docs/how-near-the-amps-are.md tells it; as it takes some ten seconds, the test keeps what it found for
 * the page, under a hash of everything that goes into it.
 */

import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { powerOfMean, readyPlate } from "../src/heat-flow/melt";
import { placeSection, readyPass, ringCrest } from "../src/heat-flow/ring-bead";
import type { Place, WidthRun } from "./src/heat-flow/tube-runs";
import { ALIKE, passOf, placesOf, riseOf, STAINLESS, WIDTH_RUNS } from "./src/heat-flow/tube-runs";

/** Each place takes a millisecond or two. */
const STRIDE = 9;

/** A place of a run, mm: the widths of the run, and what the model melts there. */
export interface Compared {
  readonly metal: string;
  readonly od: number;
  readonly face: number;
  readonly root: number;
  readonly modelFace: number;
  readonly modelRoot: number;
}

export interface Nearness {
  readonly places: readonly Compared[];
  /** Relative errors of the power for a wanted mean width: round the ring as it was welded, and of a steady plate. */
  readonly ringPower: readonly number[];
  readonly platePower: readonly number[];
  /** Relative errors of the minimum power that melts through. */
  readonly throughPower: readonly number[];
}

/** A bound that the model has to meet on the runs of some metals and outside diameters, mm. */
export interface Bound {
  readonly metals: readonly string[];
  readonly from: number;
  readonly below: number;
  readonly within: number;
}

/** Of 95 in 100 face widths, relative. */
export const FACE_BOUNDS: readonly Bound[] = [
  { metals: STAINLESS, from: 12, below: Infinity, within: 0.05 },
  { metals: STAINLESS, from: 8, below: 12, within: 0.07 },
  { metals: STAINLESS, from: 0, below: 8, within: 0.12 },
  { metals: ALIKE, from: 18, below: Infinity, within: 0.06 },
];
/** Of 95 in 100 root widths, mm. */
export const ROOT_BOUNDS: readonly Bound[] = [
  { metals: STAINLESS, from: 20, below: Infinity, within: 0.4 },
  { metals: STAINLESS, from: 8, below: 20, within: 0.8 },
  { metals: ALIKE, from: 18, below: Infinity, within: 0.7 },
];
/** Of 95 in 100 powers, relative. */
export const RING_POWER_BOUND = 0.04;
export const PLATE_POWER_BOUND = 0.04;
export const THROUGH_POWER_BOUND = 0.06;

export function comparedPlaces(): Compared[] {
  return WIDTH_RUNS.flatMap((run) => {
    const pass = passOf(run);
    const ready = readyPass(pass);
    return placesOf(run, STRIDE).map(({ deg, face, root }) => {
      const section = placeSection(ready, riseOf(run), (pass.circumference * deg) / 360);
      const { metal, od } = run;
      return { metal, od, face, root, modelFace: 1000 * section.face, modelRoot: 1000 * section.root };
    });
  });
}

export function within(
  places: readonly Compared[],
  { metals, from, below }: Omit<Bound, "within">,
): Compared[] {
  return places.filter(({ metal, od }) => metals.includes(metal) && od >= from && od < below);
}

/** Relative. */
export function faceError({ face, modelFace }: Compared): number {
  return modelFace / face - 1;
}

/** mm */
export function rootError({ root, modelRoot }: Compared): number {
  return modelRoot - root;
}

/** Round the ring as it was welded, outside diameters from 12 mm. */
export function ringPowerErrors(): number[] {
  return WIDTH_RUNS.filter(({ od }) => od >= 12)
    .flatMap((run) => placesOf(run, 36))
    .map(powerError);
}

/** ln of the factor on all powers at which the mean of face and root is the run's. */
function powerError({ run, deg, face, root }: Place): number {
  const pass = passOf(run);
  const ready = readyPass(pass);
  const miss = (log: number): number => {
    const section = placeSection(ready, riseOf(run) / Math.exp(log), (pass.circumference * deg) / 360);
    return (1000 * (section.face + section.root)) / (face + root) - 1;
  };
  // Thousandths are enough for a percentile of percents.
  let [low, high] = [-0.256, 0.256];
  while (high - low > 0.001) {
    const middle = (low + high) / 2;
    if (miss(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The steady plate against the first quarter of large tubes, outside diameters from 20 mm. */
export function platePowerErrors(): number[] {
  return WIDTH_RUNS.filter(({ od }) => od >= 20).flatMap((run) =>
    placesOf(run, 1)
      .filter(({ deg }) => deg > 60 && deg < 70)
      .map(({ face, root }) => {
        const ready = readyPlate(passOf(run).plate);
        return powerOfMean(ready, riseOf(run), (face + root) / 2000) / (run.power[0] ?? NaN) - 1;
      }),
  );
}

/** Minimum power through, of three tubes of 12.7 to 50.8 mm, by place. */
export function throughPowerErrors(): number[] {
  const errors: number[] = [];
  for (const sweep of sweeps().values()) {
    const [run] = sweep;
    if (run === undefined) continue;
    const pass = passOf(run);
    const { history, root } = readyPass(pass);
    run.deg.forEach((deg, i) => {
      const found = throughPower(sweep, i);
      if (deg < 45 || deg > 320 || Number.isNaN(found)) return;
      const crest = ringCrest(history, root, (pass.circumference * deg) / 360, 0, 0);
      errors.push(((run.power[0] ?? NaN) * riseOf(run)) / crest.value / found - 1);
    });
  }
  return errors;
}

/** The runs of one tube, power rising. */
function sweeps(): Map<string, WidthRun[]> {
  const found = new Map<string, WidthRun[]>();
  for (const run of WIDTH_RUNS.filter(({ id }) => id.startsWith("through"))) {
    const tube = `${String(run.od)} ${String(run.wall)}`;
    found.set(tube, [...(found.get(tube) ?? []), run]);
  }
  return found;
}

/** Where the square of the root, nearly straight there, would come to nothing; between the last 0 and the first root. */
function throughPower(sweep: readonly WidthRun[], place: number): number {
  const rows = sweep
    .map((run) => ({ power: run.power[0] ?? NaN, square: (run.root[place] ?? NaN) ** 2 }))
    .sort((a, b) => a.power - b.power);
  const first = rows.findIndex(({ square }) => square > 0);
  const [below, one, two] = [rows[first - 1], rows[first], rows[first + 1]];
  if (below === undefined || one === undefined || two === undefined) return NaN;
  const aim = one.power - (one.square * (two.power - one.power)) / (two.square - one.square);
  return Math.min(Math.max(aim, below.power), one.power);
}

const KEPT = path.join("generated", "nearness.json");

/** For the page, which so need not work it out again. */
export function keep(nearness: Nearness): void {
  mkdirSync(path.dirname(KEPT), { recursive: true });
  writeFileSync(KEPT, JSON.stringify({ of: inputs(), nearness }));
}

/** What the test kept of these very sources and runs, or else worked out now. */
export function nearness(): Nearness {
  const kept = existsSync(KEPT) ? (JSON.parse(readFileSync(KEPT, "utf8")) as Kept) : undefined;
  if (kept?.of === inputs()) return kept.nearness;
  const found = {
    places: comparedPlaces(),
    ringPower: ringPowerErrors(),
    platePower: platePowerErrors(),
    throughPower: throughPowerErrors(),
  };
  keep(found);
  return found;
}

interface Kept {
  readonly of: string;
  readonly nearness: Nearness;
}

function inputs(): string {
  const hash = createHash("sha256");
  const sources = readdirSync("src", { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => path.join("src", file));
  const own = ["test/nearness.ts", "test/src/heat-flow/tube-runs.ts", "test/data/tube-runs.jsonl"];
  for (const file of [...sources, ...own]) hash.update(file).update(readFileSync(file));
  return hash.digest("hex");
}
