/** MATERIALS shows the surface tension that PURGE_CEILING takes, and where it comes from. */

import { number, table } from "../bead";
import { INPUT_DATA, evidence } from "../evidence";

const SURFACE_TENSION = 6;
const SOURCES = 13;
const rows = table("MATERIALS");

test("ten metals, fourteen columns, the sources last", () => {
  expect(rows).toHaveLength(10);
  rows.forEach((row) => {
    expect(row).toHaveLength(14);
    expect(typeof row[SOURCES]).toBe("string");
  });
});

test.each(rows.map((row) => [String(row[0]), row] as const))("%s", (metal, row) => {
  // A root 2 mm wide holds σ·1000 Pa = σ·10 mbar.
  expect(number("PURGE_CEILING", 2, metal, "SI") / 10).toBeCloseTo(Number(row[SURFACE_TENSION]), 10);
  expect(row[SOURCES]).toMatch(/; surface tension: \S+/);
});

// Paradis 2002, pure titanium; Mills 2002, Ti-6Al-4V; Iida & Guthrie 1988, nickel 1.778 N/m less a twentieth: from memory.
test.each([
  ["TI-2", 1.557],
  ["TI-6-4", 1.52],
  ["625", 0.95 * 1.778],
  ["C-276", 0.95 * 1.778],
])("%s: %d N/m", (metal, tension) => {
  const told = Number(rows.find(([name]) => name === metal)?.[SURFACE_TENSION]);
  expect(Math.abs(told - tension)).toBeLessThan(0.005);
});

describe(
  evidence(
    "MATERIALS",
    INPUT_DATA,
    "iida-guthrie-1988",
    "liquid metals of this kind hold 1.2 to 1.9 N/m, from memory",
  ),
  () => {
    test.each(rows.map((row) => [String(row[0]), row] as const))("%s", (_, row) => {
      expect(row[SURFACE_TENSION]).toBeGreaterThan(1.2);
      expect(row[SURFACE_TENSION]).toBeLessThan(1.9);
    });
  },
);
