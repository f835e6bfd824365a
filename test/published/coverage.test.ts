/** What a test coupon covers, row by row. */

import { expectNear, expectPrinted, number, table } from "../bead";
import { evidence, MEMORY, PUBLISHED } from "../evidence";

type Range = readonly [coupon: number, least: string, most: string];

function expectRange(answer: readonly (number | string | boolean)[], least: string, most: string): void {
  expect(answer).toHaveLength(2);
  [least, most].forEach((printed, i) => {
    if (printed === "") expect(answer[i]).toBe("");
    else expectPrinted(Number(answer[i]), printed);
  });
}

describe(evidence("COVER_WALL", PUBLISHED, "asme-ix-2017", "QW-451.1"), () => {
  test.each<Range>([
    [0.035, "0.035", "0.070"],
    [0.0624, "0.0624", "0.1248"],
    [0.0625, "0.0625", "0.1250"],
    [0.065, "0.0625", "0.1300"],
    [0.375, "0.0625", "0.7500"],
    [0.376, "0.1875", "0.7520"],
    [0.75, "0.1875", "1.5000"],
    [1, "0.1875", "2.0000"],
  ])("%d in: %s to %s", (coupon, least, most) => {
    expectRange(table("COVER_WALL", coupon)[0] ?? [], least, most);
  });
  test.each<Range>([
    [1.49, "1.49", "2.98"],
    [1.5, "1.5", "3.00"],
    [1.65, "1.5", "3.30"],
    [0.89, "0.89", "1.78"],
    [2.77, "1.5", "5.54"],
    [10, "1.5", "20.00"],
    [10.1, "5.0", "20.20"],
    [19.1, "5.0", "38.20"],
  ])("%d mm: %s to %s", (coupon, least, most) => {
    expectRange(table("COVER_WALL", coupon, null, "SI")[0] ?? [], least, most);
  });
  test("1.55 mm is in another row in inches", () => {
    expect(Number(table("COVER_WALL", 1.55, null, "SI")[0]?.[0])).toBeCloseTo(1.5, 12);
    expectNear(Number(table("COVER_WALL", 1.55 / 25.4)[0]?.[0]), 1.55 / 25.4);
  });
});

describe(evidence("COVER_WALL", MEMORY, "iso-15614-1-2017", "level 2, single run"), () => {
  test.each<Range>([
    [1.65, "1.155", "2.145"],
    [3, "2.100", "3.900"],
    [3.1, "3.000", "4.030"],
    [8, "4.000", "10.400"],
    [12, "6.000", "15.600"],
    [13, "6.500", "14.300"],
  ])("%d mm: %s to %s", (coupon, least, most) => {
    expectRange(table("COVER_WALL", coupon, "ISO 15614-1", "SI")[0] ?? [], least, most);
  });
});

describe(evidence("COVER_WALL", PUBLISHED, "iso-9606-1-2013", "15 mm covers 3 mm and more"), () => {
  test("15 mm", () => {
    expectRange(table("COVER_WALL", 15, "ISO 9606-1", "SI")[0] ?? [], "3.0", "");
  });
});

describe(evidence("COVER_WALL", MEMORY, "iso-9606-1-2013", "thinner rows"), () => {
  test.each<Range>([
    [1, "1.0", "3.0"],
    [1.65, "1.65", "3.30"],
    [3, "3.0", "6.0"],
    [11.9, "3.0", "23.8"],
    [12, "3.0", ""],
  ])("%d mm: %s to %s", (coupon, least, most) => {
    expectRange(table("COVER_WALL", coupon, "ISO 9606-1", "SI")[0] ?? [], least, most);
  });
});

describe(evidence("COVER_OD", PUBLISHED, "asme-ix-diameters"), () => {
  test.each<Range>([
    [0.5, "0.5", ""],
    [0.999, "0.999", ""],
    [1, "1.000", ""],
    [2, "1.000", ""],
    [2.875, "1.000", ""],
    [3, "2.875", ""],
  ])("%d in: %s and more", (coupon, least, most) => {
    expectRange(table("COVER_OD", coupon)[0] ?? [], least, most);
  });
  test.each<Range>([
    [24.9, "24.9", ""],
    [25, "25.0", ""],
    [73, "25.0", ""],
    [73.1, "73.0", ""],
  ])("%d mm: %s and more", (coupon, least, most) => {
    expectRange(table("COVER_OD", coupon, null, "SI")[0] ?? [], least, most);
  });
});

describe(evidence("COVER_OD", PUBLISHED, "iso-9606-1-2013", "diameters of tube"), () => {
  test.each<Range>([
    [12.7, "12.7", "25.4"],
    [25, "25.0", "50.0"],
    [26, "25.0", ""],
    [60.3, "30.15", ""],
    [114.3, "57.15", ""],
  ])("%d mm: %s to %s", (coupon, least, most) => {
    expectRange(table("COVER_OD", coupon, "ISO 9606-1", "SI")[0] ?? [], least, most);
  });
});

describe(evidence("COVER_HEAT", PUBLISHED, "asme-ix-2010", "QW-409.1: no more than the coupon's"), () => {
  test("0.4 kJ/mm", () => {
    expectRange(table("COVER_HEAT", 0.4, null, "SI")[0] ?? [], "", "0.4");
  });
});

describe(evidence("COVER_HEAT", MEMORY, "iso-15614-1-2017", "25 % either way"), () => {
  test("0.4 kJ/mm: 0.3 to 0.5", () => {
    expectRange(table("COVER_HEAT", 0.4, "ISO 15614-1", "SI")[0] ?? [], "0.300", "0.500");
  });
  test("the heat input of the coupon is within", () => {
    const heat = number("HEAT_INPUT", 9, 60, 5);
    const [[least, most] = []] = table("COVER_HEAT", heat, "ISO 15614-1");
    expect(Number(least)).toBeLessThan(heat);
    expect(Number(most)).toBeGreaterThan(heat);
  });
});
