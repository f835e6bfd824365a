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
    String.raw`I = 1\ \text{A}\cdot\frac{t}{0.001\ \text{in}}\cdot\frac{k\,\theta}{k_{\text{316L}}\,\theta_{\text{316L}}}`,
    String.raw`\theta = \text{liquidus} - 20\ \text{°C}`,
  ],
  where: {
    I: "current, A",
    t: "wall thickness (wall)",
    k: "thermal conductivity of the metal near 1200 K (material)",
    θ: "rise from 20 °C to the liquidus",
    k_316L: "conductivity of 316L near 1200 K",
    θ_316L: "rise of 316L",
    liquidus: "temperature at which the last solid melts",
  },
  validity: "A first guess for ordinary speeds; shops run 0.8 to 1.8 A per 0.001 in",
  assumptions:
    "Another metal takes current in proportion to hot conductivity × rise to the liquidus, as the heat-flow model gives for the same bead width at the same v·b/α",
  source: "Common practice for 316L; AMPS_MELT's model for the proportion of the other metals",
  unconfirmed: "No outside source confirms that proportion for other metals",
  related: ["AMPS_MELT", "SCHEDULE", "MATERIALS"],
  synonyms: ["rule of thumb", "amps per thousandth", "amp per thou", "welding current"],
  example: { args: [0.065], gives: "65" },
  calc: ({ wall, material }) => ampsByWall(wall, material),
});

export const AMPERAGE = family("Current", [AMPS_WALL, ...PULSE]);
