/** Changes of set-up, counted by hand. */

import fc from "fast-check";

import { bead, refusal, table } from "../bead";

const changes = (rows: unknown[][], ...units: unknown[]): unknown => table("SETUP_COUNT", rows, ...units)[0];

test("as listed and when grouped", () => {
  // 1 × .065, 2 × .065, 1 × .065, 1 × .049: three changes; three kinds, so two when grouped.
  const list = [
    [40, 1, 0.065],
    [10, 2, 0.065],
    [25, 1, 0.065],
    [5, 1, 0.049],
  ];
  expect(changes(list)).toEqual([3, 2]);
});

test("one line, or only a header, asks for no change", () => {
  expect(changes([[40, 1, 0.065]])).toEqual([0, 0]);
  expect(changes([["joints", "od", "wall"]])).toEqual([0, 0]);
});

test("another material is another set-up; another quantity is none", () => {
  const list = [
    [40, 1, 0.065, "316L"],
    [10, 1, 0.065, ""],
    [10, 1, 0.065, "304L"],
    [7, 1, 0.065, "1.4307"],
  ];
  // Blank is 316L, 1.4307 another name of 304L.
  expect(changes(list)).toEqual([1, 1]);
});

test("a header, blank lines, numbers and sizes as text are read as in a take-off", () => {
  const list = [
    ["Qty.", "O.D. (in)", "Wall, in", "Mat'l"],
    ["40", "1-1/2", "0.065", "316L"],
    [null, "", " ", null],
    [0, 0, 0, 0],
    [3, "38.1 mm", "1.651 mm", null],
    [3, "2 in", "1/16", 0],
  ];
  expect(changes(list)).toEqual([1, 1]);
});

test("a whole column below the list costs nothing and counts for nothing", () => {
  const blank = Array.from({ length: 1_048_570 }, () => [null, null, null]);
  expect(changes([[40, 1, 0.065], [10, 2, 0.065], ...blank])).toEqual([1, 1]);
});

test("the same list in the other system has as many", () => {
  const sizes = fc.constantFrom([1, 0.065], [1.5, 0.065], [2, 0.083], [0.5, 0.049]);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 99 }), sizes), { minLength: 1, maxLength: 30 }),
      (list) => {
        const inches = list.map(([quantity, size]) => [quantity, ...size]);
        const millimeters = list.map(([quantity, size]) => [quantity, ...size.map((one) => one * 25.4)]);
        const [asListed, grouped] = changes(inches) as number[];
        expect(changes(millimeters, "SI")).toEqual([asListed, grouped]);
        expect(grouped).toBe(new Set(list.map(([, size]) => size)).size - 1);
        expect(asListed).toBeGreaterThanOrEqual(grouped ?? NaN);
        expect(asListed).toBeLessThan(list.length);
      },
    ),
  );
});

test.each<[unknown[][], string]>([
  [
    [
      ["joints", "od", "wall"],
      [40, 1, 0.065],
      [10, "two inch", 0.065],
    ],
    '#VALUE! joints = row 3: is no joint: od = "two inch": ',
  ],
  [
    [[2.5, 1, 0.065]],
    "#VALUE! joints = row 1: is no joint: quantity = 2.5: must be a whole number from 1 to 1000000000",
  ],
  [[[8, 1, null]], "#VALUE! joints = row 1: is no joint: wall = blank: needs a number (in)"],
  [
    [[8, 1, 0.065, "unobtainium"]],
    '#VALUE! joints = row 1: is no joint: material = "unobtainium": must be one of ',
  ],
  [[[8, 1, 0.065, true]], "#VALUE! joints = row 1: is no joint: material = TRUE: must be one of "],
  [[[8, 46_024, 0.065]], "#VALUE! joints = row 1: is no joint: od = 46024: "],
  [
    [[8, 25.4, 1.65]],
    "#VALUE! joints = row 1: is no joint: od = 25.4 in: no tube of this trade has such an outside diameter",
  ],
  [
    [[8, 1]],
    "#VALUE! joints = 2 columns: must be 3 or 4 columns: quantity, od, wall and, if you like, material",
  ],
  [[[null, "", null]], "#VALUE! joints = blank: needs rows of quantity, od, wall and, if you like, material"],
])("%j is refused, never passed over", (rows, sentence) => {
  expect(refusal("SETUP_COUNT", rows).startsWith(sentence)).toBe(true);
});

test("two hundred thousand lines, all of a kind of their own, answer", () => {
  const list = Array.from({ length: 200_000 }, (_, i) => [1, 1 + i * 1e-6, 0.065]);
  expect(bead("SETUP_COUNT", list)).toEqual([[199_999, 199_999]]);
});
