/** The rows that describe a tube, the same on every sheet that has one. */

import { DESIGNATIONS } from "../../src/metal/material";
import { LENGTH } from "../../src/quantity";
import { quote } from "./guards";
import type { Row } from "./layout";
import { choice, typed } from "./typed";

export const TUBE: readonly Row[] = [
  typed({
    label: "Outside diameter",
    name: "od",
    content: { US: 1, SI: 25.4 },
    quantity: LENGTH,
    range: { US: [0.06, 20], SI: [1.5, 508] },
  }),
  typed({
    label: "Wall",
    name: "wall",
    content: { US: 0.065, SI: 1.65 },
    quantity: LENGTH,
    range: { US: [0.005, 0.5], SI: [0.127, 12.7] },
  }),
  choice("Material", "material", "316L", DESIGNATIONS, { otherNames: true }),
];

/** No tube of the trade has a wall so thin for its diameter: one of the two was read in the other system's unit. */
const THINNEST_WALL = 200;

/** A tube whose diameter and wall, as numbers, do not belong together. */
export function oddTube(od: string, wall: string): string {
  return `IF(COUNT(${od},${wall})<2,"",IF(AND(${wall}>0,${od}>${String(THINNEST_WALL)}*${wall}),${quote("outside diameter and wall do not belong together: check the units of both")},""))`;
}

/** The same of the one tube of a sheet. */
export const ODD_TUBE = oddTube("{od_read}", "{wall_read}");
