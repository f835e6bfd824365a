/** Oxygen that no purging takes away, and the color it leaves. */

import { leakOxygen } from "../../src/purge/purge";
import { ANY_FLOW, COUNT, OXYGEN, plainNumber } from "../../src/quantity";
import { MOST_SAMPLED, tintSample } from "../../src/tables/tint";
import { number } from "../argument";
import { formula } from "../formula";
import { scalar } from "../gives";

export const PURGE_LEAK = formula({
  id: "PURGE_LEAK",
  meaning: "Oxygen that a steady air leak leaves in the bore however long it is purged",
  args: {
    flow: number("Purge flow, any unit", ANY_FLOW),
    leak: number("Air leaking in, same unit as flow", ANY_FLOW),
  },
  gives: scalar(OXYGEN),
  tex: [String.raw`C = 209\,500\ \text{ppm}\cdot\frac{q}{Q + q}`],
  where: {
    C: "oxygen that stays in the bore",
    Q: "purge flow (flow)",
    q: "air leaking in, same unit (leak)",
  },
  validity: "flow above 0, leak 0 or more",
  assumptions: "Fully mixed, a steady leak of dry air, no oxygen in the purge gas itself",
  source: "Steady dilution, as in [de-nevers], example 3.8",
  related: ["PURGE_CHANGES", "PURGE_OXYGEN", "PURGE_TINT"],
  synonyms: ["air leak", "leaking hose", "dam leak", "leak", "leak rate", "air ingress", "oxygen stays high"],
  example: { args: [10, 0.05], gives: "1042.2886" },
  calc: ({ flow, leak }) => leakOxygen(flow, leak),
});

export const PURGE_TINT = formula({
  id: "PURGE_TINT",
  meaning: "Color sample of AWS D18.2 to expect at an oxygen level in the purge gas, 1 to 10",
  args: { ppm: number("Oxygen in the purge gas", OXYGEN) },
  gives: scalar(COUNT),
  equation:
    "Sample of the smallest listed level that is not under ppm: 10, 25, 50, 100, 200, 500, 1000, 5000, 12 500, 25 000 ppm",
  validity: `0 to ${plainNumber(MOST_SAMPLED)} ppm; #N/A above. Moisture, heat and surface shift the color.`,
  assumptions: "A tube as in the samples, which are of 316L",
  source: "[aws-d18.2]",
  related: ["PURGE_OXYGEN", "PURGE_CHANGES", "PURGE_LEAK"],
  synonyms: [
    "heat tint",
    "discoloration",
    "color",
    "oxidation",
    "sugaring",
    "colour",
    "discolouration",
    "oxidized",
    "temper color",
    "straw",
    "blue root",
    "black root",
    "rainbow",
  ],
  example: { args: [50], gives: "3" },
  calc: ({ ppm }) => tintSample(ppm),
});
