/** docs/how-near-the-amps-are.md: the heat-flow model beside an independent solution, and what a measured weld needs. */

import type { Bound, Compared, Nearness } from "../../test/nearness";
import {
  FACE_BOUNDS,
  faceError,
  PLATE_POWER_BOUND,
  RING_POWER_BOUND,
  ROOT_BOUNDS,
  rootError,
  THROUGH_POWER_BOUND,
  within,
} from "../../test/nearness";
import { ALIKE, percentile95, STAINLESS } from "../../test/src/heat-flow/tube-runs";
import { ARC_EFFICIENCY } from "../../src/heat-flow/arc";
import { withCitations } from "../../src/sources";
import { SHOWS } from "./nearness-figure";
import { text } from "./words";

/** Outside diameters of the table, mm. */
const SIZES = [
  [0, 8],
  [8, 12],
  [12, 20],
  [20, Infinity],
] as const;
/** A 95th percentile of fewer places is their maximum. */
const FEWEST = 20;

/** What was published on the fraction of the arc's power that reaches the work, electrode negative. */
const EFFICIENCIES = [
  ["[stenbacka-2012], review of published values", "0.78, 95 % range 0.73 to 0.82"],
  ["[stenbacka-2013], the same review as printed in a journal", "about 0.77"],
  ["[dupont-marder-1995], calorimeter", "0.67"],
  ["[smartt-1985], calorimeter", "about 0.75"],
  ["[giedt-1989], calorimeter, edge welds of 304", "0.75 to 0.85"],
] as const;

/** What someone who has welded and cut a joint would have to tell. */
const FORM = [
  ["metal, sulfur if known", ""],
  ["outside diameter, wall", "as measured"],
  ["amps by sector", "peak, background and their times if pulsed; where each sector ends"],
  ["volts, and where they were read", "at the head, or at the power source with so much lead"],
  ["travel at the outside", "and the dwell before it"],
  ["electrode and gap", "diameter, tip angle, gap as set"],
  ["gas", "torch and bore"],
  ["tube when the arc started", "cold, or how warm"],
  ["face width at four places", "clock positions, or degrees from the start"],
  ["root width at the same places", "0 where it is not through"],
] as const;

export function nearnessPage({ places, ringPower, platePower, throughPower }: Nearness): string {
  return [
    "# How near the amps are",
    "**No measured weld stands beside these formulas yet.** No full-penetration weld was found in print that tells its amps, volts, speed, wall and both widths. What is compared here is computed: it says how well the model stands for its own physics, not how well that physics stands for your weld. Prove every current on a coupon.",
    `Beside \`MELT_SECTION\`, \`RING_BEAD\`, \`AMPS_MELT\`, \`AMPS_SECTORS\` and \`AMPS_THROUGH\` stands an independent nonlinear 3-D solution of tube welds: enthalpy with latent heat, conductivity and heat capacity that change with temperature, a Gaussian arc, losses by radiation and convection, steady current. Some constants of the model were fitted to runs of that solution, so it is not a blind test. Counted are ${String(places.length)} places up to 320° around, with a bead of 0.7 to 1.4 × (1 mm + 2 walls) and a root of at least 0.7 walls. Neither knows pool flow, sulfur or evaporation, and both are told the power that reaches the tube: what the arc loses on the way comes on top.`,
    `![${SHOWS}](help/figures/nearness.svg)`,
    "## What the tests hold it to",
    "In 95 of 100 places the error is smaller than:",
    table(
      ["What", "Metals", "Outside diameter", "Places", "95 of 100 within", "Bound"],
      [
        ...FACE_BOUNDS.map((bound) => bounded("face width", bound, places, faceError, percent)),
        ...ROOT_BOUNDS.map((bound) => bounded("root width", bound, places, rootError, millimeters)),
        ofPower(
          "amps for a wanted mean width, by place around the ring",
          "all",
          "12 mm or more",
          ringPower,
          RING_POWER_BOUND,
        ),
        ofPower(
          "the same in a flat plate, first quarter",
          "all",
          "20 mm or more",
          platePower,
          PLATE_POWER_BOUND,
        ),
        ofPower("minimum amps through", "316L", "12.7 to 50.8 mm", throughPower, THROUGH_POWER_BOUND),
      ],
    ),
    "Near the minimum current that melts through, the root is steep in everything: there the amps are compared, not the width.",
    "## By metal and size",
    `Face and root as 95th percentiles; of fewer than ${String(FEWEST)} places their maximum, in brackets. The last two metals are made up: one conducts 4.5 times as well at its liquidus as cold, much as titanium, the other less than half as well, much as carbon steel.`,
    table(
      ["Metal", "Outside diameter", "Places", "Face", "Root"],
      [...STAINLESS, ...ALIKE].flatMap((metal) =>
        SIZES.flatMap(([from, below]) => {
          const found = within(places, { metals: [metal], from, below });
          if (found.length === 0) return [];
          const shown = (value: string): string => (found.length < FEWEST ? `(${value})` : value);
          return [
            [
              metal,
              sizes(from, below),
              String(found.length),
              shown(percent(percentile95(found.map(faceError)))),
              shown(millimeters(percentile95(found.map(rootError)))),
            ],
          ];
        }),
      ),
    ),
    "Small tubes are the hard ones: little is steady there, and the whole tube is warm before the arc is around. 304L by itself, with a few runs only, is farther off than both steels together.",
    "## The arc's part",
    `A current follows from the power that reaches the tube: amps × volts × efficiency. The formulas take ${String(ARC_EFFICIENCY)} unless told. An efficiency of 0.73 in place of 0.78 asks for 7 % more current, one of 0.82 for 5 % less: more than the errors of the amps above.`,
    table(
      ["Work", "Fraction of the arc's power that reaches the work"],
      EFFICIENCIES.map(([work, value]) => [text(withCitations(work)), value]),
    ),
    `Read the volts at the head: leads add their own drop, and \`ARC_VOLTS\` is an estimate. It gives 9.3 V where ${text(withCitations("[kraus-1987]"))} measured 7.5 to 8.5 V on 1.5 mm sheet at a gap that was not noted. With volts and widths of a coupon of your own the efficiency can be set so that \`MELT_SECTION\` gives that coupon; what remains then is how it changes from there.`,
    "## What would change the first sentence",
    "One sectioned weld with these numbers, in any units, sent to the maintainers, would say more than all of the above:",
    table(
      ["What", "How", ""],
      FORM.map(([what, how]) => [what, how, "…"]),
    ),
    "",
  ].join("\n\n");
}

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [line(heads), line(heads.map(() => "---")), ...rows.map(line)].join("\n");
}

function bounded(
  what: string,
  bound: Bound,
  places: readonly Compared[],
  error: (place: Compared) => number,
  told: (size: number) => string,
): string[] {
  const found = within(places, bound);
  const { metals, from, below } = bound;
  return [
    what,
    metals.join(", "),
    sizes(from, below),
    String(found.length),
    told(percentile95(found.map(error))),
    told(bound.within),
  ];
}

function ofPower(
  what: string,
  metals: string,
  size: string,
  errors: readonly number[],
  bound: number,
): string[] {
  return [what, metals, size, String(errors.length), percent(percentile95(errors)), percent(bound)];
}

function sizes(from: number, below: number): string {
  if (from === 0) return `under ${String(below)} mm`;
  return below === Infinity ? `${String(from)} mm or more` : `${String(from)} to ${String(below)} mm`;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

function millimeters(length: number): string {
  return `${length.toFixed(2)} mm`;
}
