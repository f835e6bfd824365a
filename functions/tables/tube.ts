/** Tolerances of tube. */

import { LENGTH } from "../../src/quantity";
import { TUBE_STANDARDS, tubeTolerance } from "../../src/tables/tube";
import { word } from "../argument";
import { NOMINAL_WALL, OD } from "../arguments";
import { formula } from "../formula";
import { column, row } from "../gives";

export const TUBE_TOLERANCE = formula({
  id: "TUBE_TOLERANCE",
  meaning: "Tolerances of a tube's outside diameter and wall",
  args: {
    od: { ...OD, what: "Nominal outside diameter" },
    wall: NOMINAL_WALL,
    standard: word('"A270" (default), "A269" or "A1016"', TUBE_STANDARDS, "A270"),
  },
  gives: row({
    odOver: column("OD over", LENGTH),
    odUnder: column("OD under", LENGTH),
    wallOver: column("wall over", LENGTH),
    wallUnder: column("wall under", LENGTH),
  }),
  equation: "Table: diameter in inches as printed | millimeters as printed; wall a share of it",
  validity:
    "Wall less than half of od; #N/A where the standard has no row: A270 between 1 and 1 1/2 in, between 2 and 2 1/2 in and above 12 in, A269 above 8 in, A1016 above 4 in. A270 is the edition of 2002; A1016 with the wall of A249, welded tube. As read from the standards; the edition of the order governs.",
  source: "[astm-a270-2002], Table 2; [astm-a269]; [astm-a1016] and [astm-a249]",
  unconfirmed:
    "The wall of A270 (12.5 %; a copy of another edition says 10 %), the inches of A269 and A1016, and which row has a size between two are from memory.",
  related: ["PIPE_OD", "PIPE_WALL", "ACCEPT_LIMITS"],
  synonyms: [
    "tube tolerance",
    "OD tolerance",
    "wall tolerance",
    "sanitary tube",
    "A249",
    "A213",
    "tubing",
    "mill tolerance",
    "fit-up",
    "ovality",
  ],
  example: { args: [50.8, 1.65, "A270", "SI"], gives: "0.2, 0.2, 0.20625, 0.20625" },
  calc: ({ od, wall, standard }, units) => tubeTolerance(od, wall, standard, units),
});
