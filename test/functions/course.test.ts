/** The course of a shift: by hand, and as the output of a long one. */

import fc from "fast-check";

import { BY_HAND, evidence } from "../evidence";
import { number, refusal, table } from "../bead";

const course = (...cells: unknown[]): number[][] => table("CREW_COURSE", ...cells) as number[][];
const [WAITS, LOADED, RUNS] = [0, 1, 2];

describe(evidence("CREW_COURSE", BY_HAND, "an operator–machine chart drawn from the times"), () => {
  test("two heads, load 120 s, machine 360 s: the operator waits for the heads", () => {
    // Head 1 loaded 0–120, runs to 480; head 2 loaded 120–240, runs to 600; then again from 480 and from 600.
    expect(course(2, 120, 360, 0, 0.2, 120)).toEqual([
      [0, 0, 1, LOADED, WAITS],
      [120, 0, 2, RUNS, LOADED],
      [240, 0, 0, RUNS, RUNS],
      [360, 0, 0, RUNS, RUNS],
      [480, 1, 1, LOADED, RUNS],
      [600, 2, 2, RUNS, LOADED],
      [720, 2, 0, RUNS, RUNS],
    ]);
  });
  test("three heads, load 100, walk 20, machine 150: the heads wait for the operator", () => {
    // Starts at 0, 120, 240 and, a round of 360 s later, at 360 …; head 1 has run out at 250 and waits 110 s.
    expect(course(3, 100, 150, 20, 360 / 3600, 60)).toEqual([
      [0, 0, 1, LOADED, WAITS, WAITS],
      [60, 0, 1, LOADED, WAITS, WAITS],
      [120, 0, 2, RUNS, LOADED, WAITS],
      [180, 0, 2, RUNS, LOADED, WAITS],
      [240, 0, 3, RUNS, RUNS, LOADED],
      [300, 1, 3, WAITS, RUNS, LOADED],
      [360, 1, 1, LOADED, RUNS, RUNS],
    ]);
  });
  test("on the way from head to head", () => {
    // 20 s of walk after each load of 100 s.
    const [, , onTheWay] = course(3, 100, 150, 20, 110 / 3600, 55);
    expect(onTheWay).toEqual([110, 0, -1, RUNS, WAITS, WAITS]);
  });
  test("two operators on three heads", () => {
    // Starts: 0 and 0, then operator 1 at head 3 at 100; head 1 has run out at 300.
    expect(course(3, 100, 200, 0, 300 / 3600, 100, 2)).toEqual([
      [0, 0, 1, 2, LOADED, LOADED, WAITS],
      [100, 0, 3, 0, RUNS, RUNS, LOADED],
      [200, 0, 0, 0, RUNS, RUNS, RUNS],
      [300, 2, 2, 1, LOADED, LOADED, RUNS],
    ]);
  });
  test("a walk longer than the machine runs is not taken: the second head stands", () => {
    expect(course(2, 100, 200, 250, 400 / 3600, 100)).toEqual([
      [0, 0, 1, LOADED, WAITS],
      [100, 0, 0, RUNS, WAITS],
      [200, 0, 0, RUNS, WAITS],
      [300, 1, 1, LOADED, WAITS],
      [400, 1, 0, RUNS, WAITS],
    ]);
  });
  test("more operators than heads: the others wait, nobody walks", () => {
    expect(course(1, 100, 200, 250, 300 / 3600, 150, 2)).toEqual([
      [0, 0, 1, 0, LOADED],
      [150, 0, 0, 0, RUNS],
      [300, 1, 1, 0, LOADED],
    ]);
  });
});

test("a joint that is loaded in no time: nobody is at a head, and who stays at one walks nowhere", () => {
  expect(course(1, 0, 100, 0, 200 / 3600, 100)).toEqual([
    [0, 0, 0, RUNS],
    [100, 1, 0, RUNS],
    [200, 2, 0, RUNS],
  ]);
});

test("an hour by the minute, one operator and no walk unless said otherwise", () => {
  const told = course(2, 180, 262, 0, 1, 60, 1);
  expect(course(2, 180, 262)).toEqual(told);
  expect(told).toHaveLength(61);
  expect(told.at(-1)?.[0]).toBe(3600);
});

const whole = fc.integer({ min: 1, max: 12 });
/** One that takes no time is never seen. */
const load = fc.integer({ min: 1, max: 400 });
const machine = fc.integer({ min: 1, max: 600 });
const walk = fc.integer({ min: 0, max: 700 });

test("over a long time the joints done come to the steady output of the crew", () => {
  fc.assert(
    fc.property(whole, whole, load, machine, walk, (heads, operators, ...work) => {
      const perHour = number("CREW_OUTPUT", heads, work[0], work[1], 1, 1, "steady", work[2], operators);
      const hours = 4000 / perHour;
      const last = course(heads, ...work, hours, hours * 3600, operators).at(-1);
      // The first round begins with empty heads: a joint of each is under way at the end, and one was at the start.
      expect(Math.abs((last?.[1] ?? NaN) - 4000)).toBeLessThanOrEqual(2 * (heads + operators) + 2);
    }),
  );
});

test("at every moment: an operator at a head is a head that is loaded, joints never fall, runs fit", () => {
  fc.assert(
    fc.property(whole, whole, load, machine, walk, (heads, operators, ...work) => {
      // No longer than the largest and quickest crew is shown: 5000 joints, one of 2 s at each of 12 heads.
      const all = course(heads, ...work, 0.2, 12, operators);
      let before = 0;
      for (const [, joints = 0, ...states] of all) {
        const at = states.slice(0, operators).filter((head) => head > 0);
        const loaded = states.slice(operators).flatMap((state, i) => (state === LOADED ? [i + 1] : []));
        expect([...at].sort((a, b) => a - b)).toEqual(loaded);
        expect(joints).toBeGreaterThanOrEqual(before);
        before = joints;
      }
    }),
  );
});

test("the limits of what is shown", () => {
  // Steps of 60 s, 480 of them; a joint of 0.4 s, 5000 of them.
  expect(course(1, 100, 200, 0, 8)).toHaveLength(481);
  expect(refusal("CREW_COURSE", 1, 100, 200, 0, 8.01)).toBe("#VALUE! hours = 8.01 h: must be at most 8 h");
  expect(course(1, 0, 0.4, 0, 2000 / 3600)).toHaveLength(34);
  expect(refusal("CREW_COURSE", 1, 0, 0.4, 0, 0.56)).toBe(
    "#VALUE! hours = 0.56 h: must be at most 0.555556 h",
  );
});

test.each([
  [[0, 120, 360], "#VALUE! heads = 0: must be a whole number from 1 to 20"],
  [[2, -1, 360], "#VALUE! loadSeconds = -1 s: must be 0 or more"],
  [[2, 120, 0], "#VALUE! machineSeconds = 0 s: must be above 0"],
  [[2, 120, 360, -1], "#VALUE! walkSeconds = -1 s: must be 0 or more"],
  [[2, 120, 360, 0, 0], "#VALUE! hours = 0 h: must be above 0"],
  [[2, 120, 360, 0, 1, 0], "#VALUE! stepSeconds = 0 s: must be above 0"],
  [[2, 120, 360, 0, 1, 60, 1.5], "#VALUE! operators = 1.5: must be a whole number from 1 to 20"],
])("%j: %s", (cells, sentence) => {
  expect(refusal("CREW_COURSE", ...cells)).toBe(sentence);
});
