/**
 * The formulas themselves, called as a sheet calls them, against the independent nonlinear 3-D solution: at the bounds
 * that the model under them has to meet, with the metals of our own tables.
 */

import { FACE_BOUNDS, PLATE_POWER_BOUND, ROOT_BOUNDS } from "../nearness";
import type { WidthRun } from "../src/heat-flow/tube-runs";
import { percentile95, placesOf, STAINLESS, WIDTH_RUNS } from "../src/heat-flow/tube-runs";
import { number, table } from "../bead";

/** Any pair does: only their product with the current counts. */
const [VOLTS, EFFICIENCY] = [10, 0.75];
const amps = (power: number): number => power / VOLTS / EFFICIENCY;
/** An arc's spot is told as four spreads. */
const spot = ({ sigma }: WidthRun): number => 4 * sigma;

const runs = WIDTH_RUNS.filter(({ metal }) => (STAINLESS as readonly string[]).includes(metal));

interface Ended {
  readonly od: number;
  readonly face: number;
  readonly root: number;
  readonly told: { readonly face: number; readonly root: number };
}

/** What RING_BEAD tells of the ends of the first three sectors, where the run's bead is a bead of the trade, mm. */
function sectorEnds(): Ended[] {
  return runs.flatMap((run) => {
    const all = placesOf(run, 1);
    if (all.length === 0) return [];
    const rows = table(
      "RING_BEAD",
      ...[run.od, run.wall, run.speed * 60, [run.power.map(amps)], run.dwell, 0, run.metal],
      ...[VOLTS, EFFICIENCY, spot(run), "", "SI"],
    );
    return [90, 180, 270].flatMap((end) => {
      const places = all.filter(({ deg }) => Math.abs(deg - end) < 8);
      const before = places.filter(({ deg }) => deg <= end).at(-1);
      const after = places.find(({ deg }) => deg >= end);
      const row = rows.find(([, to]) => to === end);
      if (before === undefined || after === undefined || row === undefined) return [];
      const share = after.deg === before.deg ? 0 : (end - before.deg) / (after.deg - before.deg);
      const between = (a: number, b: number): number => a + share * (b - a);
      return [
        {
          od: run.od,
          face: between(before.face, after.face),
          root: between(before.root, after.root),
          told: { face: Number(row[3]), root: Number(row[4]) },
        },
      ];
    });
  });
}

describe("RING_BEAD at the ends of the first three quarters, 95th percentile", () => {
  let ends: Ended[] = [];
  beforeAll(() => {
    ends = sectorEnds();
  });
  const inRange = ({ from, below }: { from: number; below: number }): Ended[] => {
    const found = ends.filter(({ od }) => od >= from && od < below);
    expect(found.length).toBeGreaterThan(30);
    return found;
  };

  test.each(FACE_BOUNDS.filter(({ metals }) => metals === STAINLESS))(
    "face, OD from $from to $below mm: within $within of itself",
    (bound) => {
      const errors = inRange(bound).map(({ face, told }) => told.face / face - 1);
      expect(percentile95(errors)).toBeLessThan(bound.within);
    },
  );

  test.each(ROOT_BOUNDS.filter(({ metals }) => metals === STAINLESS))(
    "root, OD from $from to $below mm: within $within mm",
    (bound) => {
      const errors = inRange(bound).map(({ root, told }) => told.root - root);
      expect(percentile95(errors)).toBeLessThan(bound.within);
    },
  );
});

test("AMPS_MELT for the mean width of the first quarter of large tubes: within 4 %, 95th percentile", () => {
  const errors = runs
    .filter(({ od }) => od >= 20)
    .flatMap((run) => {
      const place = placesOf(run, 1).find(({ deg }) => deg > 60 && deg < 70);
      if (place === undefined) return [];
      // The plate passes at the speed of the mean radius.
      const speed = run.speed * 60 * (1 - run.wall / run.od);
      const width = (place.face + place.root) / 2;
      const told = number(
        "AMPS_MELT",
        ...[run.wall, speed, width, run.metal, VOLTS, EFFICIENCY, 20, spot(run), "SI"],
      );
      return [told / amps(run.power[0] ?? NaN) - 1];
    });
  expect(errors.length).toBeGreaterThan(60);
  expect(percentile95(errors)).toBeLessThan(PLATE_POWER_BOUND);
});
