/** How near the special functions come to values that mpmath gave to 25 digits. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { roundRing } from "../../src/heat-flow/ring-images";
import { throughWall } from "../../src/heat-flow/through-wall";
import { betaQuantile, betaRegularized } from "../../src/numerics/beta";
import { poissonTail } from "../../src/numerics/poisson-tail";
import { tQuantile } from "../../src/numerics/student-t";
import { root } from "../build/project";

/** Arguments and the value in digits. */
type Value = readonly [...args: number[], digits: string];

/** `least` is the value, 1 for a bell or a rise, under which an error counts by it and not by the value itself. */
export const SPECIAL = {
  poissonTail: {
    what: "chance of fewer than n events where x are expected, Q(n, x)",
    args: ["n", "x"],
    use: "bores purged in mixed cells",
    of: poissonTail,
    least: 0,
  },
  throughWall: {
    what: "heat through an insulated wall, 1 + 2Σcos(nπz)·exp(−n²π²f)",
    args: ["f", "z"],
    use: "face and root of every heat-flow formula",
    of: throughWall,
    least: 1,
  },
  roundRing: {
    what: "a bell around a ring, Σexp(−(x + n)²/2s²)",
    args: ["x", "s²"],
    use: "heat that comes around the tube",
    of: (x: number, variance: number): number => {
      const into = new Float64Array(3);
      roundRing(1, x, 0, variance, into);
      return into[0] ?? NaN;
    },
    least: 1,
  },
  betaRegularized: {
    what: "chance that a beta variable is at most x, Iₓ(a, b)",
    args: ["a", "b", "x"],
    use: "odds and intervals",
    of: betaRegularized,
    least: 0,
  },
  betaQuantile: {
    what: "x at which that chance is p",
    args: ["p", "a", "b"],
    use: "intervals of a share",
    of: betaQuantile,
    least: 0,
  },
  tQuantile: {
    what: "Student's t below which p lies, ν degrees of freedom",
    args: ["p", "ν"],
    use: "intervals from a shop's own coupons",
    of: tQuantile,
    least: 0,
  },
} as const;

export type SpecialName = keyof typeof SPECIAL;

export interface Miss {
  readonly args: readonly number[];
  /** From the nearest double to the exact value, in units of its last place. */
  readonly ulps: number;
}

const VALUES = path.join(root, "test/src/numerics/special-values.json");

/** All misses of a function. */
export function missesOf(name: SpecialName): Miss[] {
  const all = JSON.parse(readFileSync(VALUES, "utf8")) as Record<SpecialName, Value[]>;
  const of: (...args: number[]) => number = SPECIAL[name].of;
  return all[name].map((row) => {
    const args = row.slice(0, -1).map(Number);
    const exact = Number(row[row.length - 1]);
    return { args, ulps: Math.abs(of(...args) - exact) / ulpOf(Math.max(exact, SPECIAL[name].least)) };
  });
}

/** The distance from a positive number to the next. */
function ulpOf(value: number): number {
  return 2 ** (Math.floor(Math.log2(value)) - 52);
}

/** The page in Markdown. */
export function ulpsPage(): string {
  const rows = (Object.keys(SPECIAL) as SpecialName[]).map((name) => {
    const { what, args, use } = SPECIAL[name];
    const misses = [...missesOf(name)].sort((a, b) => a.ulps - b.ulps);
    const [middle, worst] = [misses[Math.floor(misses.length / 2)], misses[misses.length - 1]];
    if (middle === undefined || worst === undefined) throw new Error(`no values of ${name}`);
    const where = args.map((arg, i) => `${arg} = ${String(worst.args[i])}`).join(", ");
    const cells = [
      `\`${name}\`: ${what}`,
      use,
      String(misses.length),
      rounded(middle.ulps),
      rounded(worst.ulps),
    ];
    return `| ${[...cells, where].join(" | ")} |`;
  });
  return [
    "# How accurate the special functions are",
    "Each function beside values that mpmath 1.3.0 gave to 25 digits (`test/src/numerics/special_values.py` writes them). Errors are in ulps, units in the last place of a double: 1 ulp is 1.1e-16 to 2.2e-16 of the value; of `throughWall` and `roundRing`, of 1 where the value is smaller.",
    [
      "| Function | Used for | Values | Median, ulps | Maximum, ulps | Maximum at |",
      "| --- | --- | ---: | ---: | ---: | --- |",
      ...rows,
    ].join("\n"),
    "`throughWall` and `roundRing` leave out terms below 1e-10 on purpose: a temperature needs no more, and the sums over them are the innermost loops.",
    "",
  ].join("\n\n");
}

function rounded(ulps: number): string {
  return String(Number(ulps.toPrecision(2)));
}
