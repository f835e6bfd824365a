/** A line of a weld log, judged against limits that are given: what is left blank on either side is not judged. */

import { heatInput } from "../current/heat-input";
import { atLeast0, isAbove, isBelow, wholeFrom1 } from "../limits";
import type { Count, Current, HeatInput, Length, Oxygen, Share, Speed, Voltage } from "../quantity";
import { COUNT, CURRENT, HEAT_INPUT, LENGTH, OXYGEN, PERCENT, SHARE, si, SPEED, VOLTAGE } from "../quantity";
import type { Quantity } from "../quantity";
import { amount, orRefusal, Refusal, rule } from "../refusal";

export const RESULTS = ["accept", "reject"] as const;
export type Result = (typeof RESULTS)[number];

/** What was measured and seen of one joint; undefined where the cell is blank. */
export interface Measured {
  readonly setAmps: Current | undefined;
  readonly amps: Current | undefined;
  readonly volts: Voltage | undefined;
  readonly travel: Speed | undefined;
  readonly ppm: Oxygen | undefined;
  readonly color: Count | undefined;
  readonly concavity: Length | undefined;
  readonly convexity: Length | undefined;
  readonly misalignment: Length | undefined;
}

export const MEASURED = [
  "setAmps",
  "amps",
  "volts",
  "travel",
  "ppm",
  "color",
  "concavity",
  "convexity",
  "misalignment",
] as const satisfies readonly (keyof Measured)[];

export interface LogLimits {
  /** How far the actual amps may be off those set, and the travel off the planned one, as a fraction. */
  readonly ampsOff: Share | undefined;
  readonly travelOff: Share | undefined;
  readonly travel: Speed | undefined;
  readonly voltsLeast: Voltage | undefined;
  readonly voltsMost: Voltage | undefined;
  readonly heatLeast: HeatInput | undefined;
  readonly heatMost: HeatInput | undefined;
  readonly ppm: Oxygen | undefined;
  readonly color: Count | undefined;
  readonly concavity: Length | undefined;
  readonly convexity: Length | undefined;
  readonly misalignment: Length | undefined;
}

const KINDS: Readonly<Record<keyof LogLimits, Quantity>> = {
  ampsOff: SHARE,
  travelOff: SHARE,
  travel: SPEED,
  voltsLeast: VOLTAGE,
  voltsMost: VOLTAGE,
  heatLeast: HEAT_INPUT,
  heatMost: HEAT_INPUT,
  ppm: OXYGEN,
  color: COUNT,
  concavity: LENGTH,
  convexity: LENGTH,
  misalignment: LENGTH,
};

/** The limits, none of which can be less than 0. */
export function checkedLimits(limits: LogLimits): LogLimits {
  for (const [name, of] of Object.entries(KINDS) as [keyof LogLimits, Quantity][]) {
    const value = limits[name];
    if (value !== undefined) atLeast0(name, value, of);
  }
  return limits;
}

export interface Judged {
  /** Heat input without an efficiency, J/m; undefined where amps, volts or travel are blank or cannot be. */
  readonly heat: HeatInput | undefined;
  readonly problems: readonly Refusal[];
}

/** The last of the color samples of [aws-d18.2]. */
const LAST_SAMPLE = 10;

/** Heat input of the line, and all that is out of its limits. */
export function judged(line: Measured, limits: LogLimits): Judged {
  const { setAmps, amps, volts, travel, ppm, color, concavity, convexity, misalignment } = line;
  const heat =
    amps === undefined || volts === undefined || travel === undefined
      ? undefined
      : orRefusal(() => heatInput(volts, amps, travel, si(1, SHARE)));
  const known = heat instanceof Refusal ? undefined : heat;
  const all = [
    notAbove0("setAmps", setAmps, CURRENT),
    notAbove0("amps", amps, CURRENT),
    notAbove0("volts", volts, VOLTAGE),
    notAbove0("travel", travel, SPEED),
    off("amps", amps, setAmps, limits.ampsOff, CURRENT),
    off("travel", travel, limits.travel, limits.travelOff, SPEED),
    outside("volts", volts, VOLTAGE, limits.voltsLeast, limits.voltsMost),
    outside("heat input", known, HEAT_INPUT, limits.heatLeast, limits.heatMost),
    outside("ppm", ppm, OXYGEN, 0, limits.ppm),
    noSample(color),
    outside("color", color, COUNT, undefined, limits.color),
    outside("concavity", concavity, LENGTH, 0, limits.concavity),
    outside("convexity", convexity, LENGTH, 0, limits.convexity),
    outside("misalignment", misalignment, LENGTH, 0, limits.misalignment),
  ].filter((problem) => problem !== undefined);
  // What a value is at all comes before its limit, and one sentence a cell is enough.
  const first = all.filter(({ argument }, i) => all.findIndex((one) => one.argument === argument) === i);
  return { heat: known, problems: first };
}

function notAbove0(argument: string, value: number | undefined, of: Quantity): Refusal | undefined {
  if (value === undefined || value > 0) return undefined;
  return new Refusal(argument, amount(value, of), rule`must be above 0`);
}

function off(
  argument: string,
  value: number | undefined,
  planned: number | undefined,
  share: number | undefined,
  of: Quantity,
): Refusal | undefined {
  if (value === undefined || planned === undefined || share === undefined) return undefined;
  if (!isAbove(Math.abs(value - planned), share * planned)) return undefined;
  return new Refusal(
    argument,
    amount(value, of),
    rule`must be within ${amount(100 * share, PERCENT)} of ${amount(planned, of)}`,
  );
}

function outside(
  argument: string,
  value: number | undefined,
  of: Quantity,
  least: number | undefined,
  most: number | undefined,
): Refusal | undefined {
  if (value === undefined) return undefined;
  if (least !== undefined && isBelow(value, least)) {
    return new Refusal(argument, amount(value, of), rule`must be at least ${amount(least, of)}`);
  }
  if (most === undefined || !isAbove(value, most)) return undefined;
  return new Refusal(argument, amount(value, of), rule`must be at most ${amount(most, of)}`);
}

function noSample(color: Count | undefined): Refusal | undefined {
  if (color === undefined) return undefined;
  const found = orRefusal(() => wholeFrom1("color", color, LAST_SAMPLE));
  return found instanceof Refusal ? found : undefined;
}
