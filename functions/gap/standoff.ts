/** The arc gap: how wide, how far off it may be, and how it is gauged. */

import { arcVolts, standoff, standoffSpread } from "../../src/gap/electrode";
import { COMMON_LEAVES, COMMON_TOLERANCE, feelerStack } from "../../src/gap/feeler";
import { CURRENT, LENGTH, si, VOLTAGE } from "../../src/quantity";
import { number, numbers, orBySystem, orComputed, orDefault } from "../argument";
import { ALLOWANCE, STANDOFF as STANDOFF_ARGUMENT, WALL } from "../arguments";
import { family, formula } from "../formula";
import { column, row, scalar, table, typedColumn } from "../gives";

const STANDOFF = formula({
  id: "STANDOFF",
  meaning: "Arc gap between electrode tip and tube",
  detail: "half the wall plus an allowance",
  args: { wall: WALL, allowance: ALLOWANCE },
  gives: scalar(LENGTH),
  tex: [String.raw`g = \frac{t}{2} + a`],
  where: { g: "arc gap", t: "wall thickness (wall)", a: "addition to half the wall (allowance)" },
  validity: "wall above 0, allowance 0 or more",
  source: "Common practice: half the wall plus ten thousandths of an inch, set by feeler gauge",
  related: ["STANDOFF_SPREAD", "FEELER_STACK", "ELECTRODE_LENGTH", "ARC_VOLTS"],
  synonyms: [
    "arc gap",
    "arc length",
    "electrode gap",
    "stand-off",
    "gap",
    "electrode to work",
    "tip to work",
    "standoff distance",
  ],
  figure: "standoff",
  example: { args: [0.065], gives: "0.0425" },
  calc: ({ wall, allowance }) => standoff(wall, allowance),
});

const STANDOFF_SPREAD = formula({
  id: "STANDOFF_SPREAD",
  meaning: "Minimum and maximum arc gap around a tube that is off size and runs out",
  args: {
    standoff: number("Arc gap as set", LENGTH),
    odTolerance: number("Tolerance on the outside diameter, the ± figure", LENGTH),
    runout: orDefault(
      number("Runout of the tube under the electrode, total indicator reading", LENGTH),
      si(0, LENGTH),
    ),
  },
  gives: row({ min: column("minimum gap", LENGTH), max: column("maximum gap", LENGTH) }),
  tex: [String.raw`g \mp \left(\frac{\Delta d}{2} + \frac{r}{2}\right)`],
  where: {
    g: "arc gap as set (standoff)",
    Δd: "tolerance on the outside diameter, the ± figure (odTolerance)",
    r: "runout, total indicator reading (runout)",
  },
  validity: "Refused where the electrode could touch the tube (minimum gap 0 or less)",
  assumptions:
    "The gap is set on a tube of nominal size; size and runout are off by all they may be at once, and each moves the surface by half its amount",
  source: "Geometry",
  unchecked: "Geometry alone: the check is its arithmetic worked out by hand",
  related: ["STANDOFF", "ELECTRODE_LENGTH", "ARC_VOLTS"],
  synonyms: [
    "ovality",
    "out of round",
    "runout",
    "TIR",
    "oval tube",
    "roundness",
    "eccentricity",
    "concentricity",
    "wobble",
  ],
  figure: "off-size",
  example: { args: [0.0425, 0.005, 0.002], gives: "0.039, 0.046" },
  calc: ({ standoff: gap, odTolerance, runout }) => {
    const [min, max] = standoffSpread(gap, odTolerance, runout);
    return { min, max };
  },
});

const FEELER_STACK = formula({
  id: "FEELER_STACK",
  meaning: "Feeler leaves to stack for an arc gap, thickest first",
  args: {
    gap: number("Arc gap to gauge", LENGTH),
    leaves: numbers(
      "Leaf thicknesses you own (a range)",
      LENGTH,
      "a common 32-leaf inch or 0.05–1.00 mm set",
    ),
    tolerance: orBySystem(number("How far the stack may be off", LENGTH), COMMON_TOLERANCE),
  },
  gives: table({ leaf: typedColumn("leaf", LENGTH) }, { lead: "A column of leaves" }),
  equation:
    "Fewest leaves with |Σ − gap| ≤ tolerance, then the nearest sum, then the thickest first leaf; no leaf twice",
  tex: [String.raw`\left|\sum t_i - g\right| \le \text{tolerance}`],
  where: {
    tᵢ: "thicknesses of the leaves in the stack (leaves)",
    g: "arc gap to gauge (gap)",
    tolerance: "how far the stack may be off",
  },
  validity:
    "Gap up to 10 mm, tolerance up to 1 mm, at most 100 leaves, told apart to 0.1 µm. #N/A if no stack fits. The default set and tolerance follow the units.",
  source: "Exact search; the default sets are common practice",
  unconfirmed: "The default sets are from memory",
  related: ["STANDOFF", "STANDOFF_SPREAD"],
  synonyms: ["feeler gauge", "thickness gauge", "shim", "feeler blades", "gap gauge", "set the gap"],
  example: { args: [0.0425], gives: "0.035; 0.008" },
  calc: ({ gap, leaves, tolerance }, units) => {
    const own = leaves?.map(({ base }) => base) ?? COMMON_LEAVES[units];
    const typed = new Map(leaves?.map((leaf) => [leaf.base, leaf.typed]));
    return feelerStack(gap, own, tolerance).map((base) => ({ leaf: { base, typed: typed.get(base) } }));
  },
});

const ARC_VOLTS = formula({
  id: "ARC_VOLTS",
  meaning: "Arc voltage for a gap in argon",
  args: {
    standoff: STANDOFF_ARGUMENT,
    amps: orComputed(number("Current", CURRENT), "the level of 100 A"),
  },
  gives: scalar(VOLTAGE),
  tex: [
    String.raw`U = 8.5\ \text{V} + 0.8\ \tfrac{\text{V}}{\text{mm}}\cdot g + 0.031\ \tfrac{\text{V}}{\text{A}}\,(I - 100\ \text{A})`,
  ],
  where: { U: "arc voltage", g: "arc gap (standoff)", I: "current (amps)" },
  validity:
    "Argon, electrode negative, amps 30 to 150, gap 0.5 to 3 mm (0.0197 to 0.118 in); a gap outside is refused. Measure at the head: leads add their own drop.",
  assumptions:
    "The slope of 0.031 V per A is the same at every gap and metal. Amps for a bead go inversely with volts: 10 % too many volts ask for 9 % too few amps.",
  source:
    "Level and slope by gap: an estimate from common practice. Slope by amps: the three arcs of [kraus-1987] on 1.5 mm (0.06 in) 304, 38 A 7.5 V, 50 A 8.0 V and 70 A 8.5 V",
  unconfirmed:
    "No published table confirms the level. At the usual gap of that wall the estimate without amps lies 9 to 24 % above those three arcs, whose gap is not known; measure the volts of your own arc.",
  related: ["STANDOFF", "AMPS_MELT", "HEAT_INPUT"],
  synonyms: ["arc voltage", "volts", "voltage", "AVC", "potential"],
  figure: "standoff",
  example: { args: [0.0425], gives: "9.3636" },
  calc: ({ standoff: gap, amps }) => arcVolts(gap, amps),
});

export const ARC_GAP = family("Arc gap", [STANDOFF, STANDOFF_SPREAD, FEELER_STACK, ARC_VOLTS]);
