/** A procedure sheet's cells as pictures read them, without a sheet: invented numbers, any of which a test may change. */

import type { ShownCell, ShownForm } from "../../../taskpane/pictures/cells";
import { shownCell } from "../../../taskpane/pictures/cells";
import type { Picture } from "../../../taskpane/pictures/picture";
import { picturesOf } from "../../../taskpane/pictures";
import type { Shape } from "../../../taskpane/pictures/shape";

type Content = number | string;
/** By name, the rows of its block. */
export type Joint = Readonly<Record<string, readonly (readonly Content[])[]>>;

/** Air to 10 ppm at 2 s a power of ten: a straight line on a scale of powers of ten. */
const LEVELS = [200_000, 100_000, 50_000, 20_000, 10_000, 5000, 2000, 1000, 500, 200, 100, 50, 20, 10];
export const secondsTo = (ppm: number): number => 2 * Math.log10(200_000 / ppm);

export const JOINT: Joint = {
  sheet_units: [["US"]],
  wall: [[0.065]],
  standoff: [[0.0425]],
  electrode: [[0.04]],
  faces: [[0.18], [0.181], [0.182], [0.183], [0.181]],
  roots: [[0.15], [0.151], [0.152], [0.153], [0.151]],
  means: [
    [0, 90, 50, 0],
    [90, 180, 49, 5],
    [180, 270, 47, 100],
    [270, 360, 43.5, 250],
    [360, 380, 41, 300],
  ],
  peaks: [[65], [64], [62], [57], [54]],
  backs: [[19.5], [19.2], [18.6], [17.1], [16.2]],
  style: [["pulsed"]],
  overlap: [[20]],
  rpm: [[1.635]],
  levels: LEVELS.map((ppm) => [secondsTo(ppm), ppm]),
  target_ppm: [[50]],
  purge_time: [[secondsTo(50)]],
  check_tube: [["✓ holds"]],
};

function cellOf(content: Content): ShownCell {
  const shown = typeof content === "number" ? String(Number(content.toPrecision(4))) : content;
  return shownCell(content, shown, /^#[A-Z]/.test(shown));
}

export function formOf(joint: Joint): ShownForm {
  const cells = Object.entries(joint).map(
    ([name, rows]) => [name, rows.map((row) => row.map(cellOf))] as const,
  );
  return { template: "procedure", cells: new Map(cells) };
}

export function pictureOf(id: Picture["id"], joint: Joint): Picture {
  const picture = picturesOf(formOf(joint))?.find((one) => one.id === id);
  if (picture === undefined) throw new Error(`no picture ${id}`);
  return picture;
}

/** Every element of a drawing. */
export function all(shape: Shape | undefined): Shape[] {
  if (shape === undefined) return [];
  return [shape, ...shape.children.flatMap((child) => (typeof child === "string" ? [] : all(child)))];
}

export function partOf(picture: Picture, part: string): Shape {
  const found = all(picture.drawing).find(({ attributes }) => attributes["data-part"] === part);
  if (found === undefined) throw new Error(`the picture has no ${part}`);
  return found;
}

export function length(picture: Picture, part: string, name: string): number {
  return Number(partOf(picture, part).attributes[name]);
}

/** All that is written in a drawing. */
export function textsIn(picture: Picture): string[] {
  return all(picture.drawing).flatMap(({ children }) =>
    children.filter((child) => typeof child === "string"),
  );
}

export function spoken(picture: Picture): string {
  return picture.drawing?.attributes["aria-label"] ?? "";
}
