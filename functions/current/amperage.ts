/** Current: the rule of thumb, and the pulse that makes a mean. */

import { ampsByWall } from "../../src/current/amperage";
import { CURRENT } from "../../src/quantity";
import { MATERIAL, WALL } from "../arguments";
import { family, formula } from "../formula";
import { scalar } from "../gives";
import { PULSE } from "./pulse";

const AMPS_WALL = formula({
  id: "AMPS_WALL",
  meaning: "Current by the trade's rule, one ampere per thousandth of an inch of wall",
  args: { wall: WALL, material: MATERIAL },
  gives: scalar(CURRENT),
  tex: [
    String.raw`I = 1\ \text{A}\cdot\frac{t}{0.001\ \text{in}}\cdot\frac{I_{\text{melt}}}{I_{\text{316L}}}`,
  ],
  where: {
    I: "current, A",
    t: "wall thickness (wall)",
    Iₘₑₗₜ: "AMPS_MELT of the default bead at TRAVEL_SUGGEST in this metal (material)",
    I_316L: "the same in 316L",
  },
  validity: "A first guess for ordinary speeds; shops run 0.8 to 1.8 A per 0.001 in",
  assumptions:
    "Another metal takes current in the proportion of AMPS_MELT: same wall and bead, each metal at its own suggested travel",
  source: "Common practice for 316L; AMPS_MELT's model for the proportion of the other metals",
  unconfirmed: "No outside source confirms that proportion for other metals",
  related: ["AMPS_MELT", "SCHEDULE", "MATERIALS"],
  synonyms: [
    "rule of thumb",
    "amps per thousandth",
    "amp per thou",
    "welding current",
    "amps",
    "amperage",
    "current",
    "starting amps",
    "one amp per thou",
  ],
  example: { args: [0.065], gives: "65" },
  calc: ({ wall, material }) => ampsByWall(wall, material),
});

export const AMPERAGE = family("Current", [AMPS_WALL, ...PULSE]);
