/**
 * No call keeps a sheet waiting, whatever its cells hold. Work is counted in blocks entered, which depends on no
 * clock. Calibration, Node 20 on two cores of a server: a block costs 1.4 ns in the hottest loop (9 million of
 * FEELER_STACK in 13 ms), 11 ns among exponentials and logarithms (50 thousand of AMPS_SECTORS in 0.55 ms), and 180 ns
 * the first time, while nothing is compiled yet (the same in 8.8 ms).
 */

// First, so that the formulas are compiled with their blocks counted.
import { stopCounting, workOf } from "../work";

import fc from "fast-check";

import type { FormulaHelp } from "../../functions/help-text";
import { HELP } from "../../functions/help";
import { argumentsOf } from "../arbitrary-calls";
import { decades, SETTINGS } from "../arbitrary-cells";
import { bead, exampleCells } from "../bead";

/** At 200 ns, the price of code never run before, 50 ms. */
const MOST = 250_000;
/**
 * Its steps grow with the square root of v·π·d/2α, up to 500 a turn and so 2000 in four, and each looks back on all
 * before it: 2 million pairs, three blocks each. Only a tube of 170 m diameter comes there; one of 300 in needs 0.7
 * million, one of 12 in under 0.1 million.
 */
const MOST_OF_AMPS_SECTORS = 7_000_000;
/** Some 400 sums over the ages of a weld, about 100 each, to check the bead sector by sector: at 11 ns 8 ms. */
const MOST_OF_A_RING = 800_000;
/** A coupon is one bead on a plate, 0.15 ms. */
const MOST_A_COUPON = 50_000;
/** Newton's steps over such a ring, a dozen to thirty; an arc of 1 % efficiency for minutes needs the most: 0.14 s. */
const MOST_OF_DAM_DISTANCE = 20_000_000;
/** 100 leaves × sums up to 110 000 grains, nearly a block each, and two where coverage is measured: at 1.4 ns 28 ms. */
const MOST_OF_FEELER_STACK = 20_000_000;
/** A line of a list, whose start dwell is read off a curve of its metal. At 11 ns, 200 000 lines are 2.2 s. */
const MOST_A_LINE = 1000;

const ANY = 5;
const STRETCHED = 10;

/** Numbers that are allowed somewhere and make for much to do. */
const EXTREME = fc.constantFrom(0.001, 0.01, 100, 360, 999, 1000, 1080, 1e4, 1e6, 1e9);

/** The example with its numbers, and the optional ones it omits, made small and large. */
function stretched(about: FormulaHelp): fc.Arbitrary<unknown[]> {
  const places = exampleCells(about).map((cell) => {
    if (typeof cell !== "number" && cell !== null) return fc.constant(cell);
    const near = typeof cell === "number" ? decades(0.1, 10).map((times) => times * cell) : fc.constant(null);
    return fc.oneof({ weight: 3, arbitrary: near }, { weight: 1, arbitrary: EXTREME });
  });
  return fc.tuple(...places);
}

function most(id: string, cells: readonly unknown[]): number {
  if (id === "FEELER_STACK") return MOST_OF_FEELER_STACK;
  if (id === "AMPS_SECTORS") return MOST_OF_AMPS_SECTORS;
  if (id === "SCHEDULE") return mostOfSchedule(cells);
  if (["DAM_TEMPERATURE", "RING_BEAD", "PROGRAM_BEAD"].includes(id)) return MOST_OF_A_RING;
  if (id === "DAM_DISTANCE") return MOST_OF_DAM_DISTANCE;
  const lines = Math.max(1, ...cells.map((cell) => (Array.isArray(cell) ? cell.length : 1)));
  if (id === "SIZE_TABLE") return lines * MOST_OF_A_RING;
  if (id === "COUPON_EFFICIENCY" || id === "COUPON_TABLE") return MOST + lines * MOST_A_COUPON;
  return MOST + (lines - 1) * MOST_A_LINE;
}

/** Speed and overlap are free where they are typed, and a refusal tries without each choice whether there is an answer. */
function mostOfSchedule(cells: readonly unknown[]): number {
  const typed = cells.slice(4, 12).filter((cell) => cell !== null && cell !== undefined).length;
  return typed === 0 ? MOST_OF_A_RING : (1 + typed) * MOST_OF_AMPS_SECTORS;
}

afterAll(stopCounting);

function expectBounded(id: string, cells: readonly unknown[]): void {
  const work = workOf(() => bead(id, ...cells));
  expect(work).toBeGreaterThan(0);
  expect(work).toBeLessThanOrEqual(most(id, cells));
}

test("the count grows with the work", () => {
  const listed = (count: number): number => workOf(() => bead("TAKEOFF", lines(count), 300));
  // The curve of the metal's dwells is found by the first list that needs it.
  listed(1);
  const few = listed(2);
  expect(listed(1000)).toBeGreaterThan(50 * few);
});

describe(`bounded work (${String(ANY)} of any arguments, ${String(STRETCHED)} stretched, seed ${String(SETTINGS.seed)})`, () => {
  test.each(HELP.map((about) => [about.id, about] as const))("%s", (id, about) => {
    const { seed } = SETTINGS;
    const calls = [
      exampleCells(about),
      ...fc.sample(argumentsOf(about), { seed, numRuns: ANY }),
      ...fc.sample(stretched(about), { seed, numRuns: STRETCHED }),
    ];
    const all = workOf(...calls.map((cells) => () => bead(id, ...cells)));
    expect(all).toBeGreaterThanOrEqual(calls.length);
    // Counting takes longer than most calls: one by one only where all together are over the bound of one.
    if (all > MOST) for (const cells of calls) expectBounded(id, cells);
  });
});

/** Just allowed: as much as can be asked of a formula in one call. */
const DEAREST: readonly (readonly [what: string, id: string, ...cells: unknown[]])[] = [
  ["360 sectors, three turns of overlap", "AMPS_SECTORS", 1, 0.065, 5, 360, 1080],
  ["the same on a small tube", "AMPS_SECTORS", 0.125, 0.02, 9, 360, 1080],
  ["the same on a large tube", "AMPS_SECTORS", 300, 0.2, 2.5, 360, 1080],
  ["the largest that the heat flow takes", "AMPS_SECTORS", 6826, 1, 1, 360, 1080, 0],
  ["the same, very fast", "AMPS_SECTORS", 1, 0.065, 60, 360, 1080],
  ["a small tube's schedule", "SCHEDULE", 0.125, 0.02],
  ["a large tube's schedule", "SCHEDULE", 12, 0.2, "C12200"],
  ["every choice typed", "SCHEDULE", 12, 0.2, null, "pulsed", 10, 0.7, 3, 0.4, 1080, 0, 200, 0.3],
  ["every choice typed and refused", "SCHEDULE", 12, 0.2, null, "pulsed", 10, 0.7, 3, 0.4, 1080, 0, 20, 0.9],
  ["the same on the largest ring", "SCHEDULE", 6826, 1, null, "pulsed", 10, 0.7, 1, 2, 1080, 0, 20, 0.9],
  ["1000 cells, most changes", "PURGE_CHANGES", 1e-9, 0, 1000],
  ["1000 cells", "PURGE_TIME", 2, 12, 20, 50, 0, 1000],
  ["1000 cells", "PURGE_FLOW", 2, 12, 20, 50, 0, 1000],
  ["1000 cells", "PURGE_OXYGEN", 2, 12, 20, 500, 0, 1000],
  ["1000 heads", "CREW_OUTPUT", 1000, 120, 360, 8, 0.8, "random", 30],
  ["10000 heads", "CREW_OUTPUT", 10_000, 120, 360, 8, 0.8, "random", 30],
  ["10000 heads, 500 operators", "CREW_OUTPUT", 10_000, 120, 3600, 8, 0.8, "random", 30, 500],
  [
    "10000 heads, 1000 operators a long way apart",
    "CREW_OUTPUT",
    10_000,
    120,
    360,
    8,
    0.8,
    "random",
    350,
    1000,
  ],
  ["the longest course", "CREW_COURSE", 20, 0, 2, 0, 2000 / 3600, 5, 20],
  ["a billion joints learned", "LEARN_TOTAL", 1, 1, 1e9, 0.8, "unit"],
  ["1000 heads, nearly no machine time", "CREW_OUTPUT", 1000, 120, 1e-6, 8, 0.8, "random", 30],
  ["a temperature hard to find", "DAM_DISTANCE", 68.001, 1, 0.065, 46, 9.4, 5, 1e6],
  ["a full cylinder", "GAS_CYLINDER", 50, 300, 0, 60, "SI"],
  ["100 leaves, widest tolerance", "FEELER_STACK", 10, leaves(0.05, 0.0007), 1, "SI"],
  ["100 leaves, most sums to look at", "FEELER_STACK", 10, leaves(0.3, 0.0137), 1, "SI"],
  ["100 leaves, thinnest", "FEELER_STACK", 10, leaves(0.0001, 0.0001), 1, "SI"],
  ["the largest sample of a process", "SAMPLE_ODDS", 1e6, 5e5, 0.5],
  ["the largest sample of the largest lot", "SAMPLE_ODDS", 1e6, 5e5, 5e8, 1e9],
  ["the largest lot, half of it bad", "SAMPLE_SIZE", 1e9, 5e8, 1e-9],
  ["the largest lot, one bad", "SAMPLE_SIZE", 1e9, 1, 0.999999],
  ["most inspected", "REJECT_RATE", 5e5, 1e6, 0.999999],
  ["most good, even yield", "JOINTS_START", 1e5, 0.5, 0.999999],
  ["most good, least yield", "JOINTS_START", 1e5, 0.00011, 0.999999],
  ["a thousand lines, every wall different", "TAKEOFF", lines(1000), 300, 20, 10, 60, 1080],
  ["fifty sizes, every wall different", "SIZE_TABLE", lines(50).map(([, ...size]) => size)],
  [
    "a hundred coupons in a list",
    "COUPON_TABLE",
    coupons(100).map(([amps]) => [1, 0.065, amps, 9.4, 5, 0.18, 0.15]),
  ],
  ["a thousand coupons", "COUPON_EFFICIENCY", 0.065, coupons(1000), 9.4, 5, 0.17],
];

function leaves(thinnest: number, step: number): number[][] {
  return Array.from({ length: 100 }, (_, i) => [thinnest + i * step]);
}

function coupons(count: number): number[][] {
  return Array.from({ length: count }, (_, i) => [50 + i * 1e-3]);
}

function lines(count: number): unknown[][] {
  return Array.from({ length: count }, (_, i) => [i + 1, 2, 0.03 + i * 1e-5, "316L"]);
}

test.each(DEAREST.map(([what, id, ...cells]) => [id, what, cells] as const))("%s, %s", (id, _, cells) => {
  expectBounded(id, cells);
});
