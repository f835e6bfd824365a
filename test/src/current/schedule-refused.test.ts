/** What SCHEDULE refuses: by the tube, or by the choice that stands in the way, and never by a value nobody typed. */

import type { Arguments } from "../../schedule-rows";
import { refusalOf, rowOf } from "../../schedule-rows";

test("what it cannot answer it refuses by an argument that the user gave", () => {
  expect(refusalOf({ od: 1, wall: 0.3 })).toBe(
    "#VALUE! wall = 0.3 in: arc voltage is estimated only for a wall of 0.0193701 in to 0.21622 in",
  );
  // AMPS_WALL of copper: 1.65/0.0254 · (339·1063)/(28.387·1430) A.
  expect(refusalOf({ od: 25.4, wall: 1.65, material: "C12200", units: "SI" })).toBe(
    "#N/A wall = 1.65 mm: calls for 576.67 A, which no standard electrode is listed for",
  );
  expect(refusalOf({ od: 1, wall: 0.065, style: "fast" })).toBe(
    '#VALUE! style = "fast": must be one of pulsed, steady',
  );
  expect(refusalOf({ od: 1, wall: 0.5 })).toBe("#VALUE! wall = 0.5 in: must be less than half of od, 0.5 in");
});

describe("where nobody typed a dwell or a speed the size of the tube is refused", () => {
  const steady = { style: "steady", units: "SI" };

  test("a thick little ring melts before the head turns, or ahead of the arc", () => {
    expect(refusalOf({ ...steady, od: 1.11, wall: 0.516, material: "C12200" })).toMatch(
      /^#N\/A od = 1\.11 mm: has no suggested schedule with this wall; suggested dwell = [\d.]+ s: shorten the dwell; would melt the full circumference before rotation$/,
    );
    expect(refusalOf({ ...steady, od: 3.45, wall: 1.696, material: "304L" })).toMatch(
      /^#N\/A od = 3\.45 mm: has no suggested schedule with this wall; suggested speed = [\d.]+ mm\/min: the tube's own heat melts it ahead of the arc \d+° into the rotation; increase travel speed, reduce overlap or target a narrower bead$/,
    );
  });

  test("a ring so large that its heat never comes round is beyond the range of speeds", () => {
    expect(refusalOf({ ...steady, od: 200_000, wall: 2, material: "C12200" })).toMatch(
      /^#N\/A od = 200000 mm: has no suggested schedule with this wall; suggested speed = [\d.]+ mm\/min: must be between /,
    );
  });

  test("a ring that takes less than the background of its pulse is welded steady", () => {
    expect(refusalOf({ od: 4.64, wall: 2.31, units: "SI" })).toMatch(
      /^#N\/A od = 4\.64 mm: the first sector needs a mean of [\d.]+ A, which no pulse between [\d.]+ A and [\d.]+ A gives; ask for "steady"$/,
    );
  });
});

describe("a refusal names the choice that stands in the way", () => {
  test.each<[Arguments, string | RegExp]>([
    [{ volts: 0 }, "#VALUE! volts = 0 V: must be above 0"],
    [{ volts: 1001 }, "#VALUE! volts = 1001 V: must be between 1 V and 1000 V"],
    [{ efficiency: 0 }, "#VALUE! efficiency = 0: must be above 0 and at most 1"],
    [{ efficiency: 1.01 }, "#VALUE! efficiency = 1.01: must be above 0 and at most 1"],
    [{ speed: 0 }, "#VALUE! speed = 0 in/min: must be above 0"],
    [{ beadWidth: 0 }, "#VALUE! beadWidth = 0 in: must be above 0"],
    [{ overlap: -1 }, "#VALUE! overlap = -1°: must be 0 or more"],
    [{ overlap: 1081 }, "#VALUE! overlap = 1081°: must be between 0° and 1080°"],
    [{ dwell: -1 }, "#VALUE! dwell = -1 s: must be 0 or more"],
    [{ dwell: 3601 }, "#VALUE! dwell = 3601 s: must be between 0 s and 3600 s"],
    [{ peak: 0 }, "#VALUE! peak = 0 A: must be above 0"],
    [{ background: -0.01 }, "#VALUE! background = -0.01: must be between 0 and 1"],
    [{ background: 1.01 }, "#VALUE! background = 1.01: must be between 0 and 1"],
    [{ style: "steady", peak: -1 }, "#VALUE! peak = -1 A: must be above 0"],
    [{ style: "steady", background: 1.01 }, "#VALUE! background = 1.01: must be between 0 and 1"],
  ])("%p cannot be", (choice, sentence) => {
    expect(refusalOf({ od: 1, wall: 0.065, ...choice })).toBe(sentence);
  });

  const NO_PULSE =
    /: the first sector needs a mean of [\d.]+ A, which no pulse between [\d.]+ A and [\d.]+ A gives; ask for "steady"$/;
  test.each<[Arguments, string]>([
    [{ volts: 1 }, "volts = 1 V"],
    [{ efficiency: 0.1 }, "efficiency = 0.1"],
    [{ speed: 50 }, "speed = 50 in/min"],
    [{ peak: 20 }, "peak = 20 A"],
    [{ peak: 400 }, "peak = 400 A"],
    [{ background: 1 }, "background = 1"],
    // Without the background 60 A would do; without the peak 52 A of background would still be too much.
    [{ peak: 60, background: 0.8 }, "background = 0.8"],
    // Neither alone is to blame.
    [{ peak: 200, background: 0.9 }, "od = 1 in"],
  ])("%p leaves no pulse", (choice, start) => {
    const said = refusalOf({ od: 1, wall: 0.065, ...choice });
    expect(said.startsWith(`#N/A ${start}: `)).toBe(true);
    expect(said).toMatch(NO_PULSE);
  });

  test("a current that no electrode carries", () => {
    expect(refusalOf({ od: 1, wall: 0.065, style: "steady", volts: 0.9 })).toBe(
      "#VALUE! volts = 0.9 V: must be between 1 V and 1000 V",
    );
    expect(refusalOf({ od: 1, wall: 0.065, style: "steady", efficiency: 0.05 })).toMatch(
      /^#N\/A efficiency = 0\.05: calls for [\d.]+ A, which no standard electrode is listed for$/,
    );
    expect(refusalOf({ od: 1, wall: 0.065, peak: 600, background: 0 })).toBe(
      "#N/A peak = 600 A: calls for 600 A, which no standard electrode is listed for",
    );
  });

  test("a value that follows from a choice is named beside it", () => {
    expect(refusalOf({ od: 1, wall: 0.065, beadWidth: 0.000_01 })).toMatch(
      /^#N\/A beadWidth = 0\.00001 in: suggested speed = [\d.]+ in\/min: must be between [\d.]+ in\/min and [\d.]+ in\/min$/,
    );
    expect(refusalOf({ od: 1, wall: 0.065, speed: 0.1 })).toMatch(
      /^#N\/A speed = 0\.1 in\/min: suggested dwell = [\d.]+ s: must be between 0 s and 3600 s$/,
    );
    expect(refusalOf({ od: 1, wall: 0.065, beadWidth: 3 })).toMatch(
      /^#N\/A beadWidth = 3 in: suggested dwell = [\d.]+ s: shorten the dwell; would melt the full circumference before rotation$/,
    );
  });

  test("a choice that melts the tube is named, and the tube where no one choice is to blame", () => {
    expect(refusalOf({ od: 1, wall: 0.065, dwell: 3000 })).toBe(
      "#N/A dwell = 3000 s: shorten the dwell; would melt the full circumference before rotation",
    );
    const small = { od: 3.45, wall: 1.696, material: "304L", style: "steady", units: "SI" };
    expect(refusalOf({ ...small, speed: 300 })).toMatch(
      /^#N\/A speed = 300 mm\/min: the tube's own heat melts it ahead of the arc \d+° into the rotation; /,
    );
    expect(refusalOf({ ...small, volts: 10 })).toMatch(/^#N\/A od = 3\.45 mm: has no suggested schedule /);
    // A narrower bead is one way to weld it, as the sentence says.
    expect(rowOf({ ...small, beadWidth: 2 })("Bead width")).toBe(2);
  });
});
