/** The electrode: its size and its length. */

import { electrodeDiameter, electrodeLength } from "../../src/gap/electrode";
import { CURRENT, LENGTH } from "../../src/quantity";
import { number } from "../argument";
import { OD, STANDOFF } from "../arguments";
import { family, formula } from "../formula";
import { printed, scalar } from "../gives";

const ELECTRODE_LENGTH = formula({
  id: "ELECTRODE_LENGTH",
  meaning: "Electrode length from its seat to the tip",
  args: {
    reach: number("From tube center to the electrode's seat in the rotor", LENGTH),
    od: OD,
    standoff: STANDOFF,
  },
  gives: scalar(LENGTH),
  tex: [String.raw`L = R - \frac{d}{2} - g`],
  where: {
    L: "electrode length from seat to tip",
    R: "reach from tube center to the seat (reach)",
    d: "outside diameter (od)",
    g: "arc gap (standoff)",
  },
  validity: "reach above od/2 + standoff",
  assumptions: "The electrode points straight at the tube's center",
  source: "Geometry",
  unchecked: "Geometry alone: the check is its arithmetic worked out by hand",
  related: ["STANDOFF", "STANDOFF_SPREAD", "ELECTRODE_DIAMETER"],
  synonyms: ["tungsten length", "stickout", "tungsten", "stick-out", "protrusion", "extension", "cut length"],
  figure: "electrode-length",
  example: { args: [1.5, 1, 0.0425], gives: "0.9575" },
  calc: ({ reach, od, standoff }) => electrodeLength(reach, od, standoff),
});

const ELECTRODE_DIAMETER = formula({
  id: "ELECTRODE_DIAMETER",
  meaning: "Smallest standard tungsten electrode that carries a current, nominal diameter",
  args: { amps: number("Current, direct, electrode negative, in argon", CURRENT) },
  gives: printed(LENGTH),
  equation:
    "Smallest of 0.5 (5–20 A), 1.0 (15–80), 1.6 (70–150), 2.4 (150–250), 3.2 (250–400), 4.0 mm (400–500)",
  validity: "5 to 500 A; #N/A outside. Nominal sizes of each series: 1/16 in in US, 1.6 mm in SI.",
  assumptions: "Direct current, electrode negative, in argon",
  source: "[aws-a5.12], current ranges for DCEN",
  unconfirmed: "The ranges are from memory, not compared with a copy of the standard",
  related: ["AMPS_WALL", "AMPS_MELT", "ELECTRODE_LENGTH", "SCHEDULE"],
  synonyms: [
    "tungsten size",
    "tungsten diameter",
    "tungsten",
    "electrode size",
    "thoriated",
    "ceriated",
    "lanthanated",
  ],
  example: { args: [65], gives: "0.04" },
  calc: ({ amps }, units) => electrodeDiameter(amps, units),
});

export const ELECTRODE = family("Electrode", [ELECTRODE_LENGTH, ELECTRODE_DIAMETER]);
