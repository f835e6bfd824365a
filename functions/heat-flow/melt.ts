/** The current that melts a bead through the wall, and the bead that a current melts. */

import { commonArcVolts, wattsPerAmp } from "../../src/heat-flow/arc";
import type { Melt } from "../../src/heat-flow/plate-melt";
import { ampsOfWidth, ampsThrough, sectionOfAmps, widthOfAmps } from "../../src/heat-flow/plate-melt";
import type { Material } from "../../src/metal/material";
import type { Length, Share, Speed, Temperature, Voltage } from "../../src/quantity";
import { CURRENT, LENGTH, si } from "../../src/quantity";
import { commonBeadWidth } from "../../src/travel/bead";
import { number, orDefault } from "../argument";
import {
  ARC_SIZE,
  BEAD_WIDTH,
  EFFICIENCY,
  MATERIAL,
  MEAN_AMPS,
  SPEED_OF_TRAVEL,
  TUBE_TEMPERATURE,
  VOLTS_OF_WALL,
  WALL,
} from "../arguments";
import { formula } from "../formula";
import { column, row, scalar } from "../gives";
import {
  LEFT_OUT,
  MEAN_TEX,
  MEAN_WHERE,
  MODEL_SOURCE,
  MODEL_TEX,
  MODEL_WHERE,
  NEARNESS,
  SECTION_TEX,
} from "./told";

/** What every formula of one place of a weld is told. */
const PLACE = {
  material: MATERIAL,
  volts: VOLTS_OF_WALL,
  efficiency: EFFICIENCY,
  preheat: TUBE_TEMPERATURE,
  arcSize: ARC_SIZE,
};

interface Place {
  readonly wall: Length;
  readonly speed: Speed;
  readonly material: Material;
  readonly volts: Voltage | undefined;
  readonly efficiency: Share;
  readonly preheat: Temperature;
  readonly arcSize: Length | undefined;
}

function meltOf({ volts, efficiency, ...weld }: Place): Melt {
  return { ...weld, watts: wattsPerAmp(volts ?? commonArcVolts(weld.wall), efficiency) };
}

const PLATE = "A flat plate: no heat comes around, so a tube under 3/4 in (20 mm) takes less; AMPS_SECTORS.";

const AMPS_MELT = formula({
  id: "AMPS_MELT",
  meaning: "Mean current that melts a bead of a given width through the wall, from heat flow",
  args: { wall: WALL, speed: SPEED_OF_TRAVEL, beadWidth: BEAD_WIDTH, ...PLACE },
  gives: scalar(CURRENT),
  tex: [MEAN_TEX, ...MODEL_TEX],
  where: { ...MODEL_WHERE, ...MEAN_WHERE, b: "target mean of face and root (beadWidth)" },
  validity:
    "Autogenous single passes with v·b/4α up to 3; prove on a coupon. MELT_SECTION says whether the bead has a root.",
  assumptions: `${PLATE} ${LEFT_OUT}`,
  source: MODEL_SOURCE,
  unconfirmed: `${NEARNESS} A handbook table (from memory) butt-welds 1/8 and 3/16 in with a gap and filler at currents that do not melt a solid wall through here. Default width, voltage and arc spot are estimates from common practice.`,
  unchecked:
    "No full-penetration weld with amps, volts, speed, wall and a measured width was found; published solutions are limits of the model",
  related: ["MELT_WIDTH", "MELT_SECTION", "AMPS_WINDOW", "AMPS_SECTORS", "START_DWELL"],
  synonyms: [
    "welding current",
    "amps for full penetration",
    "penetration",
    "preheat",
    "amps",
    "amperage",
    "current",
    "how many amps",
  ],
  figure: "bead-section",
  example: { args: [0.065, 5], gives: "49.5405" },
  calc: ({ beadWidth, ...place }) => ampsOfWidth(meltOf(place), beadWidth ?? commonBeadWidth(place.wall)),
});

const MELT_WIDTH = formula({
  id: "MELT_WIDTH",
  meaning: "Fused width that a current melts, mean of face and root, from heat flow",
  detail: "the inverse of AMPS_MELT",
  args: { wall: WALL, amps: MEAN_AMPS, speed: SPEED_OF_TRAVEL, ...PLACE },
  gives: scalar(LENGTH),
  tex: [MEAN_TEX, ...MODEL_TEX],
  where: { ...MODEL_WHERE, ...MEAN_WHERE, I: "mean current, A (amps)" },
  validity:
    "As AMPS_MELT; #N/A where nothing melts. Half the face where the wall is not melted through: MELT_SECTION tells face and root apart.",
  assumptions: `${PLATE} ${LEFT_OUT}`,
  source: MODEL_SOURCE,
  unconfirmed: NEARNESS,
  related: ["AMPS_MELT", "MELT_SECTION", "AMPS_SECTORS", "PULSE_RATE", "TRAVEL_SUGGEST"],
  synonyms: [
    "bead width",
    "weld width",
    "fusion zone",
    "penetration",
    "bead size",
    "puddle width",
    "pool width",
  ],
  figure: "bead-section",
  example: { args: [0.065, 45, 5], gives: "0.14309" },
  calc: ({ amps, ...place }) => widthOfAmps(meltOf(place), amps),
});

const MELT_SECTION = formula({
  id: "MELT_SECTION",
  meaning: "What a current melts of the wall: face, root and depth, from heat flow",
  args: { wall: WALL, amps: MEAN_AMPS, speed: SPEED_OF_TRAVEL, ...PLACE },
  gives: row({
    face: column("face width", LENGTH),
    root: column("root width, 0 when not through,", LENGTH),
    depth: column("depth melted under the arc", LENGTH),
  }),
  tex: [SECTION_TEX, ...MODEL_TEX],
  where: {
    ...MODEL_WHERE,
    b_z: "fused width at depth z, of the face at 0 and of the root at h",
    p: "depth melted under the arc, h when through",
    θ: MEAN_WHERE.θ,
    I: "mean current, A (amps)",
  },
  validity: "As AMPS_MELT; #N/A where nothing melts",
  assumptions: `${PLATE} ${LEFT_OUT} Sulfur outside 0.005–0.017 % and pool flow change depth and root more than width.`,
  source: MODEL_SOURCE,
  unconfirmed: NEARNESS,
  unchecked: "No full-penetration weld with amps, volts, speed, wall and both measured widths was found",
  related: ["MELT_WIDTH", "AMPS_THROUGH", "AMPS_WINDOW", "RING_BEAD", "AMPS_MELT"],
  synonyms: [
    "face width",
    "root width",
    "bead profile",
    "depth of penetration",
    "underbead",
    "root bead",
    "inside bead",
    "ID bead",
    "OD bead",
    "crown",
    "cap width",
  ],
  figure: "bead-section",
  example: { args: [0.065, 50, 5], gives: "0.183605, 0.160089, 0.065" },
  calc: ({ amps, ...place }) => sectionOfAmps(meltOf(place), amps),
});

const AMPS_THROUGH = formula({
  id: "AMPS_THROUGH",
  meaning: "Minimum mean current that melts through the wall, from heat flow",
  args: {
    wall: WALL,
    speed: SPEED_OF_TRAVEL,
    rootWidth: orDefault(number("Root width wanted", LENGTH), si(0, LENGTH)),
    ...PLACE,
  },
  gives: scalar(CURRENT),
  tex: [String.raw`b_h = 2\,y\ \text{where}\ \max_\xi T(\xi, y, h) = \theta`, ...MODEL_TEX],
  where: { ...MODEL_WHERE, bₕ: "root width (rootWidth)", θ: MEAN_WHERE.θ },
  validity: "As AMPS_MELT. Near this current the root changes fast with everything: weld above it.",
  assumptions: `${PLATE} ${LEFT_OUT}`,
  source: MODEL_SOURCE,
  unconfirmed: `${NEARNESS} Minimum amps through: within 4 % of that solution on three tubes, on the high side.`,
  unchecked:
    "No published minimum current of a full-penetration weld with its volts, speed and wall was found",
  related: ["AMPS_MELT", "MELT_SECTION", "AMPS_WINDOW", "SCHEDULE"],
  synonyms: [
    "full penetration",
    "lack of penetration",
    "minimum amps",
    "keyhole",
    "melt through",
    "incomplete penetration",
    "cold weld",
    "lack of fusion",
    "penetration",
  ],
  figure: "bead-section",
  example: { args: [0.065, 5], gives: "37.6777" },
  calc: ({ rootWidth, ...place }) => ampsThrough(meltOf(place), rootWidth),
});

export const MELT = [AMPS_MELT, MELT_WIDTH, MELT_SECTION, AMPS_THROUGH] as const;
