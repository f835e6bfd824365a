/** What a list of joints takes, worked out by hand. */

import { expectNear, expectPrinted } from "../bead";
import { BY_HAND, evidence } from "../evidence";
import {
  ARC_GAS,
  GAS,
  JOINTS,
  MACHINE,
  PURGE,
  PURGE_GAS,
  REMARK,
  SPEED,
  takeoff,
  TIME,
} from "./takeoff-rows";

describe(evidence("TAKEOFF", BY_HAND, "two lines and their sums; the dwell by [mpmath-1.3.0]"), () => {
  // Handling 300 s, torch 10 L/min, bore 5 L/min from 60 s before, overlap 36°.
  // The dwell alone comes from that library: x√(1 − (K₀/K₁)²) = 0.4 at x = 0.478435251,
  // 4πkhθ/q = 2·exp(x·K₀/K₁)·K₀ = 2.499311211 = E₁(0.048377105), so t = b²/(16α·0.048377105) = 1.291933459·b²/α.
  const { lines, sums } = takeoff(
    [
      [8, 50.8, 1.651, "316L"],
      [25, 25.4, 2.1, 2205],
    ],
    { handlingSeconds: 300, torchFlow: 10, purgeFlow: 5, purgeSeconds: 60, overlap: 36, units: "SI" },
  );

  test("8 joints of 50.8 × 1.651 mm, 316L", () => {
    // b = 1 + 2·1.651 = 4.302 mm; v = 1.6·5.848/4.302 = 2.17498838 mm/s = 130.499303 mm/min.
    // dwell 1.291933459·4.302²/5.848 = 4.08859; turn 1.1·π·50.8/v = 80.71409; downslope 3·4.302/v = 5.93382 s.
    // machine 30 + 4.08859 + 80.71409 + 5.93382 + 15 = 135.73650 s; 8·435.73650/3600 = 0.96830333 h.
    // arc gas 8·10·135.73650/60 = 180.98200 L; purge gas 8·5·195.73650/60 = 130.49100 L; together 311.47300 L.
    const row = lines[0] ?? [];
    expect(row[JOINTS]).toBe(8);
    expectPrinted(row[SPEED] as number, "130.499303");
    expectPrinted(row[MACHINE] as number, "135.73650");
    expect(row[PURGE]).toBe(60);
    expectPrinted(row[TIME] as number, "0.96830333");
    expectPrinted(row[ARC_GAS] as number, "180.98200");
    expectPrinted(row[PURGE_GAS] as number, "130.49100");
    expectPrinted(row[GAS] as number, "311.47300");
    expect(row[REMARK]).toBe("");
  });

  test("25 joints of 25.4 × 2.1 mm, 2205 as a cell's number", () => {
    // b = 5.2 mm; v = 1.6·5.933/5.2 = 1.82553846 mm/s; dwell 1.291933459·5.2²/5.933 = 5.88806;
    // turn 1.1·π·25.4/v = 48.08231; downslope 15.6/v = 8.54542; machine 107.51579 s; 25·407.51579/3600 = 2.8299708 h.
    // arc gas 25·10·107.51579/60 = 447.98246 L; purge gas 25·5·167.51579/60 = 348.99123 L; together 796.9737 L.
    const row = lines[1] ?? [];
    expect(row[JOINTS]).toBe(25);
    expectPrinted(row[SPEED] as number, "109.53231");
    expectPrinted(row[MACHINE] as number, "107.51579");
    expectPrinted(row[TIME] as number, "2.8299708");
    expectPrinted(row[ARC_GAS] as number, "447.9825");
    expectPrinted(row[PURGE_GAS] as number, "348.9912");
    expectPrinted(row[GAS] as number, "796.9737");
    expect(row[REMARK]).toBe("");
  });

  test("the sums: 33 joints, 0.9683033 + 2.8299708 h, 311.47300 + 796.9737 L", () => {
    expect([sums[JOINTS], sums[SPEED], sums[MACHINE], sums[PURGE]]).toEqual([33, "", "", ""]);
    expectPrinted(sums[TIME] as number, "3.798274");
    expectPrinted(sums[ARC_GAS] as number, "628.9645");
    expectPrinted(sums[PURGE_GAS] as number, "479.4822");
    expectPrinted(sums[GAS] as number, "1108.4467");
    expect(sums[REMARK]).toBe("2 of 2 lines counted");
  });
});

describe(evidence("TAKEOFF", BY_HAND, "the purge of a bore by its dams, ln(209 500/50) changes"), () => {
  const purged = { purgeFlow: 10, damSpacing: 6096, units: "SI" } as const;

  test("a bore of 47.498 mm between dams 6096 mm apart, 10 L/min: 540.538 s, and its gas", () => {
    // π/4·47.498²·6096 mm³ = 10.801535 L; ln(209 500/50) = 8.340456; 8.340456·10.801535/10 = 9.008973 min.
    const [row = []] = takeoff([[2, 50.8, 1.651]], purged).lines;
    expectPrinted((row[PURGE] as number) / 60, "9.008973");
    expectNear(row[PURGE_GAS] as number, (2 * 10 * ((row[PURGE] as number) + (row[MACHINE] as number))) / 60);
    expect(row[ARC_GAS]).toBe(0);
    expect(row[GAS]).toBe(row[PURGE_GAS]);
  });

  test("seconds that are typed overrule the dams, 0 too; no flow takes no time", () => {
    const line = [[2, 50.8, 1.651]];
    expect(takeoff(line, { ...purged, purgeSeconds: 90 }).lines[0]?.[PURGE]).toBe(90);
    expect(takeoff(line, { ...purged, purgeSeconds: 0 }).lines[0]?.[PURGE]).toBe(0);
    expect(takeoff(line, { ...purged, purgeFlow: 0 }).lines[0]?.[PURGE]).toBe(0);
    expect(takeoff(line, { purgeFlow: 10, units: "SI" }).lines[0]?.[PURGE]).toBe(0);
  });
});
