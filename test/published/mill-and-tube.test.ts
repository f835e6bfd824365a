/** Mill certificates and tolerances of tube. */

import { bead, expectNear, expectPrinted, refusal, table } from "../bead";
import { BY_HAND, evidence, MEMORY, PUBLISHED } from "../evidence";

/** Cr, Ni, Mo, Mn, Si, C, N, Cu, Nb. */
type Heat = readonly number[];

function equivalents(heat: Heat, method?: string): number[] {
  return (table("MILL_RATIO", ...heat, method)[0] ?? []).map(Number);
}

const BASE: Heat = [18, 12, 0, 0, 0, 0, 0, 0, 0];

/** What a hundredth of a percent more of an element, in the order of the arguments, adds to either equivalent. */
function weights(method: string): [chromium: number, nickel: number][] {
  const [cr = 0, ni = 0] = equivalents(BASE, method);
  return BASE.map((_, i) => {
    const more = BASE.map((percent, j) => (i === j ? percent + 1 : percent));
    const [moreCr = 0, moreNi = 0] = equivalents(more, method);
    return [moreCr - cr, moreNi - ni];
  });
}

function expectWeights(method: string, chromium: readonly number[], nickel: readonly number[]): void {
  weights(method).forEach(([cr, ni], i) => {
    expect(cr).toBeCloseTo(chromium[i] ?? NaN, 12);
    expect(ni).toBeCloseTo(nickel[i] ?? NaN, 12);
  });
}

describe(evidence("MILL_RATIO", PUBLISHED, "kotecki-siewert-1992", "weights of the elements"), () => {
  test("Cr + Mo + 0.7 Nb; Ni + 35 C + 20 N + 0.25 Cu", () => {
    expectWeights("WRC-1992", [1, 0, 1, 0, 0, 0, 0, 0, 0.7], [0, 1, 0, 0, 0, 35, 20, 0.25, 0]);
  });
});

describe(evidence("MILL_RATIO", MEMORY, "schaeffler-1949", "weights of the elements"), () => {
  test("Cr + Mo + 1.5 Si + 0.5 Nb; Ni + 30 C + 0.5 Mn", () => {
    expectWeights("Schaeffler", [1, 0, 1, 0, 1.5, 0, 0, 0, 0.5], [0, 1, 0, 0.5, 0, 30, 0, 0, 0]);
  });
});

describe(evidence("MILL_RATIO", MEMORY, "hammar-svensson-1979", "weights of the elements"), () => {
  test("Cr + 1.37 Mo + 1.5 Si + 2 Nb; Ni + 0.31 Mn + 22 C + 14.2 N + Cu", () => {
    const nickel = [0, 1, 0, 0.31, 0, 22, 14.2, 1, 0];
    expectWeights("Hammar-Svensson", [1, 0, 1.37, 0, 1.5, 0, 0, 0, 2], nickel);
  });
});

describe(
  evidence("MILL_RATIO", BY_HAND, "two heats of 316L, an invented one and one of a demonstration"),
  () => {
    const INVENTED = [16.6, 10.3, 2.1, 1.6, 0.4, 0.015, 0.04, 0.3, 0];
    const SHOWN = [17, 12, 2.5, 2, 1, 0.03, 0, 0, 0];
    test.each<[string, Heat, string, string, string]>([
      ["WRC-1992", INVENTED, "18.70", "11.70", "1.598291"],
      ["Schaeffler", INVENTED, "19.30", "11.55", "1.670996"],
      ["Hammar-Svensson", INVENTED, "20.077", "11.994", "1.673920"],
      ["WRC-1992", SHOWN, "19.5", "13.05", "1.494253"],
      ["Schaeffler", SHOWN, "21.0", "13.9", "1.510791"],
    ])("%s of %p: %s, %s, %s", (method, heat, chromium, nickel, ratio) => {
      const [cr = 0, ni = 0, found = 0] = equivalents(heat, method);
      expectPrinted(cr, chromium);
      expectPrinted(ni, nickel);
      expectPrinted(found, ratio);
    });
  },
);

test("the elements of a heat sum to 100 % at most", () => {
  // 17 + 10 + 73 = 100.
  expect(equivalents([17, 10, 73, 0, 0, 0, 0, 0, 0])).toHaveLength(3);
  expect(refusal("MILL_RATIO", 17, 10, 73.1)).toBe(
    "#VALUE! mo = 73.1 %: is too much: the elements sum to more than 100 %; ppm are divided by 10000",
  );
});

describe("MILL_SULFUR", () => {
  const told = (one: number, other: number): string => String(bead("MILL_SULFUR", one, other));
  test("0.005 and 0.017 % are inside, just beyond is not", () => {
    expect(told(0.005, 0.017)).toBe("0.005 % is inside 0.005 to 0.017 %; 0.017 % is inside 0.005 to 0.017 %");
    expect(told(0.0049, 0.0049)).toMatch(/^both sides: 0.0049 % is below 0.005 to 0.017 %: expect a wide/);
    expect(told(0.0171, 0.0171)).toMatch(/^both sides: 0.0171 % is above 0.005 to 0.017 %: expect more risk/);
  });
  test("unequal: one side alone is below, whichever it is", () => {
    expect(told(0.002, 0.012)).toMatch(/shift toward the 0.002 % side$/);
    expect(told(0.02, 0.003)).toMatch(/shift toward the 0.003 % side$/);
    expect(told(0.002, 0.003)).not.toMatch(/unequal/);
    expect(told(0.006, 0.02)).not.toMatch(/unequal/);
  });
});

type Tolerance = readonly [od: number, inches: string, millimeters: string, share: number];

function expectTolerance(standard: string, rows: readonly Tolerance[]): void {
  test.each(rows)(`${standard}: %d in ± %s in, ± %s mm, wall %d`, (od, inches, millimeters, share) => {
    const [us = []] = table("TUBE_TOLERANCE", od, 0.05, standard);
    const [si = []] = table("TUBE_TOLERANCE", od * 25.4, 1.27, standard, "SI");
    // A tolerance is what the standard prints, not what rounds to it.
    for (const i of [0, 1]) {
      expectNear(Number(us[i]), Number(inches));
      expectNear(Number(si[i]), Number(millimeters));
    }
    for (const i of [2, 3]) {
      expectNear(Number(us[i]), share * 0.05);
      expectNear(Number(si[i]), share * 1.27);
    }
  });
}

describe(evidence("TUBE_TOLERANCE", PUBLISHED, "astm-a270-2002", "Table 2; the wall from memory"), () => {
  expectTolerance("A270", [
    [0.25, "0.005", "0.13", 0.125],
    [1, "0.005", "0.13", 0.125],
    [1.5, "0.008", "0.20", 0.125],
    [2, "0.008", "0.20", 0.125],
    [2.5, "0.010", "0.25", 0.125],
    [3, "0.010", "0.25", 0.125],
    [3.01, "0.015", "0.38", 0.125],
    [4, "0.015", "0.38", 0.125],
    [5.49, "0.015", "0.38", 0.125],
    [5.5, "0.030", "0.76", 0.125],
    [7.99, "0.030", "0.76", 0.125],
    [8, "0.050", "1.27", 0.125],
    [9.9, "0.050", "1.27", 0.125],
  ]);
  test.each([1.01, 1.25, 1.49, 2.01, 2.49, 12.1])("no row for %d in", (od) => {
    expect(refusal("TUBE_TOLERANCE", od, 0.065)).toMatch(/^#N\/A od = .* A270 has no row/);
  });
  test("12 in is the last", () => {
    expectPrinted(Number(table("TUBE_TOLERANCE", 12, 0.109)[0]?.[0]), "0.050");
  });
});

describe(evidence("TUBE_TOLERANCE", PUBLISHED, "astm-a269", "millimeters; inches from memory"), () => {
  expectTolerance("A269", [
    [0.25, "0.005", "0.13", 0.15],
    [0.49, "0.005", "0.13", 0.15],
    [0.5, "0.005", "0.13", 0.1],
    [1.49, "0.005", "0.13", 0.1],
    [1.5, "0.010", "0.25", 0.1],
    [3.49, "0.010", "0.25", 0.1],
    [3.5, "0.015", "0.38", 0.1],
    [5.5, "0.030", "0.76", 0.1],
    [8, "0.030", "0.76", 0.1],
  ]);
  test("no row above 8 in", () => {
    expect(refusal("TUBE_TOLERANCE", 8.1, 0.109, "A269")).toMatch(/^#N\/A od = .* A269 has no row/);
  });
});

describe(
  evidence("TUBE_TOLERANCE", PUBLISHED, "astm-a1016", "millimeters, with the wall of [astm-a249]"),
  () => {
    expectTolerance("A1016", [
      [0.99, "0.004", "0.10", 0.1],
      [1, "0.006", "0.15", 0.1],
      [1.5, "0.006", "0.15", 0.1],
      [1.51, "0.008", "0.20", 0.1],
      [2, "0.010", "0.25", 0.1],
      [2.5, "0.012", "0.30", 0.1],
      [3, "0.015", "0.38", 0.1],
      [4, "0.015", "0.38", 0.1],
    ]);
    test("no row above 4 in", () => {
      expect(refusal("TUBE_TOLERANCE", 4.1, 0.109, "A1016")).toMatch(/^#N\/A od = .* A1016 has no row/);
    });
  },
);
