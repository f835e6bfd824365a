/** How often a list of joints asks for another set-up. */

import { COUNT, plainNumber } from "../../src/quantity";
import { aJoint, setUpChanges } from "../../src/planning/setups";
import { MOST_JOINTS } from "../../src/planning/takeoff";
import { family, formula } from "../formula";
import { column, row } from "../gives";
import { JOINTS, linesOf } from "./joints";

const SETUP_COUNT = formula({
  id: "SETUP_COUNT",
  meaning: "Changes of set-up over a list of joints: in the order of the list, and with like joints grouped",
  args: { joints: JOINTS },
  gives: row({
    asListed: column("changes as listed", COUNT),
    grouped: column("changes when grouped", COUNT),
  }),
  equation: "A change where od, wall or material differ from the line before; grouped: kinds of joint − 1",
  validity: `Quantity a whole number, 1 to ${plainNumber(MOST_JOINTS)}; wall less than half of od. Pipe is NPS 1-1/2 for od and sch 10S for wall, by ASME B36.19M and B36.10M. A line that cannot be read is refused by its number, counted from the first row given; header and blank lines count as rows, not as joints.`,
  assumptions:
    "The first set-up is no change; every other size or material takes one, though a shop may find that two share a collet",
  source: "A count",
  unchecked: "A count of the lines of a list: the check is the count by hand",
  related: ["TAKEOFF", "CREW_OUTPUT", "LEARN_TOTAL"],
  synonyms: ["changeover", "collet", "head change", "setup", "sequence", "batching", "changeovers"],
  example: {
    args: [
      [
        ["joints", "od", "wall"],
        [40, 1, 0.065],
        [10, 2, 0.065],
        [25, 1, 0.065],
      ],
    ],
    gives: "2, 1",
  },
  calc: ({ joints }, units) => setUpChanges(linesOf(joints, units, aJoint)),
});

export const SETUPS = family("Set-ups", [SETUP_COUNT]);
