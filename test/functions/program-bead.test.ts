/** A program judged: what its pulse, its arc and its wall make of the bead. */

import * as fc from "fast-check";

import { byName, refusal, table } from "../bead";
import { rowOf } from "../schedule-rows";

type Row = readonly number[];

interface Program {
  readonly od: number;
  readonly wall: number;
  readonly speed: number;
  readonly peaks: unknown;
  readonly [more: string]: unknown;
}

function program(cells: Program): Row[] {
  return table("PROGRAM_BEAD", ...byName("PROGRAM_BEAD", cells)) as Row[];
}

const [FROM, TO, MEAN, STEADY, FACE, ROOT, ROOT_LEAST, FACE_MOST, WARMTH] = [0, 1, 2, 3, 4, 5, 6, 7, 8];

test("a steady arc is judged as RING_BEAD judges it", () => {
  const tube = { od: 2, wall: 0.083, speed: 4, dwell: 4, overlap: 15 };
  const rows = program({ ...tube, peaks: [[70], [66], [62]] });
  const ring = table("RING_BEAD", ...byName("RING_BEAD", { ...tube, amps: [[70], [66], [62]] })) as Row[];
  expect(rows.map((row) => [FROM, TO, MEAN, FACE, ROOT, WARMTH].map((column) => row[column]))).toEqual(ring);
  rows.forEach((row) => {
    expect(row[STEADY]).toBe(row[MEAN]);
  });
});

test.each([
  [1, 0.065],
  [2, 0.083],
  [0.5, 0.049],
])("the schedule of %f × %f in, typed as a program, melts the schedule's bead", (od, wall) => {
  const of = rowOf({ od, wall });
  const sectors = ["Sector 1", "Sector 2", "Sector 3", "Sector 4"];
  const rows = program({
    od,
    wall,
    speed: of("Travel speed"),
    peaks: sectors.map((sector) => [of(`${sector} peak`)]),
    share: of("Peak share of the pulse"),
    rate: of("Pulse rate"),
    beadWidth: of("Bead width"),
    dwell: of("Start dwell"),
    dwellAmps: of("Start dwell current"),
    overlap: of("Overlap"),
    overlapPeak: of("Overlap peak"),
  });
  expect(rows).toHaveLength(sectors.length + 1);
  [...sectors, "Overlap"].forEach((sector, i) => {
    const row = rows[i] ?? [];
    expect((row[MEAN] ?? NaN) / of(`${sector} mean`)).toBeCloseTo(1, 6);
    expect((row[STEADY] ?? NaN) / of(`${sector} steady equivalent`)).toBeCloseTo(1, 6);
    expect((row[FACE] ?? NaN) / of(`${sector} face`)).toBeCloseTo(1, 8);
    expect((row[ROOT] ?? NaN) / of(`${sector} root`)).toBeCloseTo(1, 8);
  });
});

test("the overlap runs on at the last sector's peak unless it has one of its own, which changes nothing before it", () => {
  const tube = { od: 1, wall: 0.065, speed: 5, peaks: [[52], [48]], overlap: 25 };
  const [runsOn, same, less] = [undefined, 48, 40].map((overlapPeak) => program({ ...tube, overlapPeak }));
  expect(runsOn).toEqual(same);
  // To the accuracy of the sum over the heat's ages, whose steps change.
  for (const column of [MEAN, FACE, ROOT, ROOT_LEAST, FACE_MOST, WARMTH])
    for (const sector of [0, 1])
      expect((less?.[sector]?.[column] ?? NaN) / (runsOn?.[sector]?.[column] ?? NaN)).toBeCloseTo(1, 4);
  const [own, other] = [less?.[2] ?? [], runsOn?.[2] ?? []];
  expect(own[MEAN]).toBeCloseTo(40, 12);
  expect(own[FACE]).toBeLessThan(other[FACE] ?? NaN);
  // Without an overlap there is nothing that it could change.
  expect(program({ ...tube, overlap: 0, overlapPeak: 40 })).toEqual(program({ ...tube, overlap: 0 }));
});

test("more sectors than a turn may have are refused by the argument that lists them", () => {
  const peaks = Array.from({ length: 361 }, () => [65]);
  expect(refusal("PROGRAM_BEAD", ...byName("PROGRAM_BEAD", { od: 1, wall: 0.065, speed: 5, peaks }))).toBe(
    "#VALUE! peaks = 361: sectors are too many; at most 360",
  );
});

test("the mean of a pulse, by hand: peak × (background + share × (1 − background))", () => {
  const [row] = program({ od: 1, wall: 0.065, speed: 5, peaks: 70, share: 0.5, background: 0.2 });
  // 70·(0.2 + 0.5·0.8) = 42 A.
  expect(row?.[MEAN]).toBeCloseTo(42, 12);
  // D = 0.5·0.5·0.8/(0.5 + 0.5·0.2) = 1/3; a quarter of a bead a pulse: 42·(1 + 0.37/12) = 43.295 A.
  expect(row?.[STEADY]).toBeCloseTo(43.295, 9);
});

test("a steady arc needs no rate, and its background says nothing", () => {
  const tube = { od: 1, wall: 0.065, speed: 5, peaks: 45 };
  const [steady] = program(tube);
  // 5 in/min over a pulse a second is half a bead of 0.17 in; a tenth of that is refused of a pulse.
  expect(program({ ...tube, share: 1, rate: 0.05 })[0]).toEqual(steady);
  expect(refusal("PROGRAM_BEAD", ...byName("PROGRAM_BEAD", { ...tube, share: 0.99, rate: 0.05 }))).toMatch(
    /^#VALUE! rate = 0\.05 Hz: must be at least /,
  );
});

test("the background from none to all of the peak, the wall off by half of it", () => {
  const pulse = { od: 1, wall: 0.065, speed: 5, peaks: 70, share: 0.6 };
  const said = (cells: Record<string, unknown>): string =>
    refusal("PROGRAM_BEAD", ...byName("PROGRAM_BEAD", { ...pulse, ...cells }));
  // 70·0.6 = 42 A with none, 70 A with all.
  expect(program({ ...pulse, background: 0 })[0]?.[MEAN]).toBeCloseTo(42, 12);
  expect(program({ ...pulse, peaks: 45, background: 1 })[0]?.[MEAN]).toBeCloseTo(45, 12);
  expect(said({ background: 1.005 })).toBe("#VALUE! background = 1.005: must be between 0 and 1");
  expect(said({ wallTolerance: 0.501 })).toBe("#VALUE! wallTolerance = 0.501: must be between 0 and 0.5");
});

test("an arc that gives the tube all of its power can be no stronger; a wall is off by a tenth unless told", () => {
  const tube = { od: 1.5, wall: 0.065, speed: 5, dwell: 3, volts: 9.4, arcSize: 0.16 };
  const [row] = program({ ...tube, peaks: 40, efficiency: 1 });
  const cells = { ...tube, amps: 40, efficiency: 1, wall: 0.9 * 0.065 };
  const [thin] = table("RING_BEAD", ...byName("RING_BEAD", cells)) as Row[];
  expect(row?.[FACE_MOST]).toBeCloseTo(thin?.[3] ?? NaN, 9);
});

test("the band holds the bead, closes without spread of the wall's, and is that of the changed wall and arc", () => {
  const tube = { od: 1.5, wall: 0.065, speed: 5, peaks: 52, dwell: 3, volts: 9.4, arcSize: 0.16 };
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.2, noNaN: true }), (wallTolerance) => {
      const [row] = program({ ...tube, wallTolerance });
      expect(row?.[ROOT_LEAST]).toBeLessThanOrEqual(row?.[ROOT] ?? NaN);
      expect(row?.[FACE_MOST]).toBeGreaterThanOrEqual(row?.[FACE] ?? NaN);
      const at = (wall: number, efficiency: number): Row =>
        (table("RING_BEAD", ...byName("RING_BEAD", ring(wall, efficiency))) as Row[])[0] ?? [];
      expect(row?.[ROOT_LEAST]).toBeCloseTo(at(0.065 * (1 + wallTolerance), 0.73)[4] ?? NaN, 9);
      expect(row?.[FACE_MOST]).toBeCloseTo(at(0.065 * (1 - wallTolerance), 0.82)[3] ?? NaN, 9);
    }),
  );
  function ring(wall: number, efficiency: number): Record<string, unknown> {
    const { peaks, ...rest } = tube;
    return { ...rest, amps: peaks, wall, efficiency };
  }
});

test("where a thin wall under a strong arc melts all round, the bead is told and the face is words", () => {
  const tube = { od: 0.25, wall: 0.035, speed: 6, dwell: 1 };
  const words = [30, 32, 34, 36, 38, 40, 42]
    .map((peaks) => {
      const cells = byName("PROGRAM_BEAD", { ...tube, peaks, wallTolerance: 0.15 });
      return refusalOrRow(cells);
    })
    .filter((row) => Array.isArray(row) && row[FACE_MOST] === "melts all round");
  expect(words.length).toBeGreaterThan(0);
});

function refusalOrRow(cells: unknown[]): unknown {
  try {
    return table("PROGRAM_BEAD", ...cells)[0];
  } catch {
    return refusal("PROGRAM_BEAD", ...cells);
  }
}
