/** What a list of joints takes, worked out by hand. */

import { expectNear, expectPrinted } from "../bead";
import { BY_HAND, evidence } from "../evidence";
import {
  ARC_GAS,
  GAS,
  GOOD,
  JOINTS,
  MACHINE,
  PURGE,
  PURGE_GAS,
  refusedBy,
  REMARK,
  SPEED,
  takeoff,
  TIME,
} from "./takeoff-rows";

describe(evidence("TAKEOFF", BY_HAND, "two lines and their sums; the dwell by a slow quadrature"), () => {
  // Handling 300 s, torch 10 L/min, bore 5 L/min from 60 s before, overlap 36°.
  // The dwell alone comes from a computation, that of test/standing-arc.ts; TAKEOFF's own is good to some 1e-5.
  const { lines, sums } = takeoff(
    [
      [8, 50.8, 1.651, "316L"],
      [25, 25.4, 2.1, 2205],
    ],
    { handlingSeconds: 300, torchFlow: 10, purgeFlow: 5, purgeSeconds: 60, overlap: 36, units: "SI" },
  );

  test("8 joints of 50.8 × 1.651 mm, 316L", () => {
    // b = 1 + 2·1.651 = 4.302 mm; v = 1.6·5.848/4.302 = 2.17498838 mm/s = 130.499303 mm/min.
    // dwell 3.51046; turn 1.1·π·50.8/v = 80.71409; downslope 3·4.302/v = 5.93382 s.
    // machine 30 + 3.51046 + 80.71409 + 5.93382 + 15 = 135.15837 s; 8·435.15837/3600 = 0.9670186 h.
    // arc gas 8·10·135.15837/60 = 180.2112 L; purge gas 8·5·195.15837/60 = 130.1056 L; together 310.3167 L.
    const row = lines[0] ?? [];
    expect(row[JOINTS]).toBe(8);
    expectPrinted(row[SPEED] as number, "130.499303");
    expectPrinted(row[MACHINE] as number, "135.158");
    expect(row[PURGE]).toBe(60);
    expectPrinted(row[TIME] as number, "0.967019");
    expectPrinted(row[ARC_GAS] as number, "180.211");
    expectPrinted(row[PURGE_GAS] as number, "130.106");
    expectPrinted(row[GAS] as number, "310.317");
    expect(row[REMARK]).toBe("");
  });

  test("25 joints of 25.4 × 2.1 mm, 2205 as a cell's number", () => {
    // b = 5.2 mm; v = 1.6·5.933/5.2 = 1.82553846 mm/s; dwell 5.09572;
    // turn 1.1·π·25.4/v = 48.08231; downslope 15.6/v = 8.54542; machine 106.72345 s; 25·406.72345/3600 = 2.8244684 h.
    // arc gas 25·10·106.72345/60 = 444.6811 L; purge gas 25·5·166.72345/60 = 347.3405 L; together 792.0216 L.
    const row = lines[1] ?? [];
    expect(row[JOINTS]).toBe(25);
    expectPrinted(row[SPEED] as number, "109.53231");
    expectPrinted(row[MACHINE] as number, "106.723");
    expectPrinted(row[TIME] as number, "2.82447");
    expectPrinted(row[ARC_GAS] as number, "444.68");
    expectPrinted(row[PURGE_GAS] as number, "347.34");
    expectPrinted(row[GAS] as number, "792.02");
    expect(row[REMARK]).toBe("");
  });

  test("the sums: 33 joints, 0.967019 + 2.824468 h, 310.317 + 792.022 L", () => {
    expect([sums[JOINTS], sums[SPEED], sums[MACHINE], sums[PURGE]]).toEqual([33, "", "", ""]);
    expectPrinted(sums[TIME] as number, "3.79149");
    expectPrinted(sums[ARC_GAS] as number, "624.89");
    expectPrinted(sums[PURGE_GAS] as number, "477.45");
    expectPrinted(sums[GAS] as number, "1102.34");
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

  test("no shorter than purgeAtLeast, however it comes about", () => {
    const line = [[2, 50.8, 1.651]];
    // The sweep of 540.538 s itself, more than it, and more than typed seconds.
    const sweep = takeoff(line, purged).lines[0]?.[PURGE];
    expect(takeoff(line, { ...purged, purgeAtLeast: 540 }).lines[0]?.[PURGE]).toBe(sweep);
    expect(takeoff(line, { ...purged, purgeAtLeast: 600 }).lines[0]?.[PURGE]).toBe(600);
    expect(takeoff(line, { ...purged, purgeSeconds: 90, purgeAtLeast: 120 }).lines[0]?.[PURGE]).toBe(120);
    // Without dams or seconds there is no sweep, and the least is purged.
    const [row = []] = takeoff(line, { purgeFlow: 10, purgeAtLeast: 60, units: "SI" }).lines;
    expect(row[PURGE]).toBe(60);
    expectNear(row[PURGE_GAS] as number, (2 * 10 * (60 + (row[MACHINE] as number))) / 60);
  });

  test("what is waited for of the purge counts in the hours, and in no gas", () => {
    const line = [[8, 50.8, 1.651]];
    const none = takeoff(line, { ...purged, handlingSeconds: 300 }).lines[0] ?? [];
    const half = takeoff(line, { ...purged, handlingSeconds: 300, purgeWaited: 0.5 }).lines[0] ?? [];
    const all = takeoff(line, { ...purged, handlingSeconds: 300, purgeWaited: 1 }).lines[0] ?? [];
    const [machine, purge] = [none[MACHINE] as number, none[PURGE] as number];
    expectNear(none[TIME] as number, (8 * (machine + 300)) / 3600);
    expectNear(half[TIME] as number, (8 * (machine + 300 + purge / 2)) / 3600);
    expectNear(all[TIME] as number, (8 * (machine + 300 + purge)) / 3600);
    expect([half[GAS], all[GAS]]).toEqual([none[GAS], none[GAS]]);
  });

  test("seconds that are typed overrule the dams, 0 too; no flow takes no time", () => {
    const line = [[2, 50.8, 1.651]];
    expect(takeoff(line, { ...purged, purgeSeconds: 90 }).lines[0]?.[PURGE]).toBe(90);
    expect(takeoff(line, { ...purged, purgeSeconds: 0 }).lines[0]?.[PURGE]).toBe(0);
    expect(takeoff(line, { ...purged, purgeFlow: 0 }).lines[0]?.[PURGE]).toBe(0);
    expect(takeoff(line, { purgeFlow: 10, units: "SI" }).lines[0]?.[PURGE]).toBe(0);
  });
});

test("a purge is waited for in whole at most", () => {
  expect(refusedBy([GOOD], { purgeWaited: 1.005 })).toBe(
    "#VALUE! purgeWaited = 1.005: must be between 0 and 1",
  );
  expect(takeoff([GOOD], { purgeWaited: 1 }).lines).toHaveLength(1);
});
