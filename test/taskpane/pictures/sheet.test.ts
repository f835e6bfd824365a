import { picturesOf } from "../../../taskpane/pictures";
import { BLOCKS } from "../../../taskpane/pictures/joint";
import type { Picture } from "../../../taskpane/pictures/picture";
import { gas } from "../../../taskpane/sheets/gas";
import { procedure } from "../../../taskpane/sheets/procedure";
import type { OpenSheet } from "../open-sheet";
import { openSheet } from "../open-sheet";
import { length, partOf, textsIn } from "./shown-joint";

async function pictures(sheet: OpenSheet): Promise<Record<Picture["id"], Picture>> {
  const [section, ring, purge] = picturesOf(await sheet.host.namedCells(BLOCKS)) ?? [];
  if (section === undefined || ring === undefined || purge === undefined) throw new Error("no pictures");
  return { section, ring, purge };
}

test.each([
  ["US", "in", 4, "°F"],
  ["SI", "mm", 3, "°C"],
] as const)(
  "%s: every number of the pictures is the sheet's, as it shows it",
  async (units, unit, decimals, rise) => {
    const sheet = await openSheet(procedure, units);
    const { section, ring, purge } = await pictures(sheet);
    const shown = (name: string, digits: number, row = 0): string =>
      Number(sheet.beside(name, 0, row)).toFixed(digits);
    const texts = textsIn(section);
    for (const name of ["wall", "standoff"]) expect(texts).toContain(`${shown(name, decimals)} ${unit}`);
    expect(texts).toContain(`electrode ${shown("electrode", decimals)} ${unit}`);
    const roots = [0, 1, 2, 3, 4].map((row) => Number(sheet.beside("roots", 0, row)));
    const narrowest = roots.indexOf(Math.min(...roots));
    expect(section.title).toContain(`${shown("roots", decimals, narrowest)} ${unit}`);
    const face = length(section, "face", "x2") - length(section, "face", "x1");
    expect(length(section, "wall", "height") / face).toBeCloseTo(
      Number(sheet.value("wall")) / Number(sheet.beside("faces", 0, narrowest)),
      3,
    );
    for (const row of [0, 1, 2, 3]) {
      expect(textsIn(ring)).toContain(`${shown("means", 1, row)} A`);
      expect(textsIn(ring)).toContain(`${shown("peaks", 1, row)}/${shown("backs", 1, row)} A`);
      expect(textsIn(ring)).toContain(`+${Number(sheet.beside("means", 1, row)).toFixed(0)} ${rise}`);
    }
    const percent = 100 * (1 - Number(sheet.beside("means", 0, 3)) / Number(sheet.beside("means", 0, 0)));
    expect(ring.title).toBe(`The last quarter needs ${percent.toFixed(0)} % less current than the first`);
    expect(textsIn(purge)).toContain(`${shown("purge_time", 1)} s`);
    expect(purge.title).toContain("50 ppm");
  },
);

test("the pictures follow what is typed, a conversion, and rows that a person inserts", async () => {
  const sheet = await openSheet(procedure, "US");
  const before = await pictures(sheet);
  sheet.insertRow("sectors", 2);
  sheet.insertRow("bead_table", 2);
  const moved = await pictures(sheet);
  expect(moved.ring).toEqual(before.ring);
  expect(moved.section).toEqual(before.section);
  sheet.type("wall", "1/16");
  expect(textsIn((await pictures(sheet)).section)).toContain("1/16 in");
  sheet.type("wall", "0.083");
  const thicker = (await pictures(sheet)).section;
  expect(textsIn(thicker)).toContain("0.0830 in");
  await sheet.convert();
  const metric = (await pictures(sheet)).section;
  expect(textsIn(metric)).toContain("2.108 mm");
  expect(length(metric, "wall", "height")).toBeCloseTo(length(thicker, "wall", "height"), 1);
});

test("a steady arc has one current a sector", async () => {
  const sheet = await openSheet(procedure, "US");
  sheet.type("style", "steady");
  const texts = textsIn((await pictures(sheet)).ring);
  expect(texts).toContain(`${Number(sheet.value("mean_first")).toFixed(1)} A`);
  expect(texts.join()).not.toContain("/");
});

test("a refused wall: no picture of the bead or the ring, and the check's words for why", async () => {
  const sheet = await openSheet(procedure, "US");
  sheet.type("wall", "-0.065");
  const { section, ring } = await pictures(sheet);
  for (const { drawing, missing } of [section, ring]) {
    expect(drawing).toBeUndefined();
    expect(missing?.why).toBe(sheet.value("check_tube"));
  }
  expect(section.missing?.what).toContain("standoff");
  expect(ring.missing?.what).toContain("current of sector 1");
  sheet.type("wall", "0.065");
  expect(partOf((await pictures(sheet)).section, "bead").tag).toBe("path");
});

test("purge gas that already has more oxygen than the target: the purge is not drawn", async () => {
  const sheet = await openSheet(procedure, "US");
  sheet.type("supply_ppm", "80");
  const { purge } = await pictures(sheet);
  expect(purge.drawing).toBeUndefined();
  expect(purge.missing).toEqual({ what: ["purge time"], why: sheet.value("check_purge") });
});

test("a gas estimate has no joint to draw", async () => {
  const sheet = await openSheet(gas, "US");
  expect(picturesOf(await sheet.host.namedCells(BLOCKS))).toBeUndefined();
});
