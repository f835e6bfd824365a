/** What a person may set of a schedule, and which of it stands in the way where there is no schedule. */

import { COMMON_ALLOWANCE } from "../gap/electrode";
import { ARC_EFFICIENCY } from "../heat-flow/arc";
import type { Angle, Current, Length, Quantity, Share, Speed, Time, Voltage } from "../quantity";
import { ANGLE, CURRENT, LENGTH, SHARE, si, SPEED, TIME, VOLTAGE } from "../quantity";
import type { Rule } from "../refusal";
import { amount, orRefusal, Refusal } from "../refusal";

/** Common practice of pulsed tube welding: background over peak. */
export const COMMON_BACKGROUND = si(0.3, SHARE);

export const STYLES = ["pulsed", "steady"] as const;
export type Style = (typeof STYLES)[number];

/** What a person may set; the rest follows from tube and metal. */
export interface Choices {
  readonly style: Style;
  readonly volts: Voltage | undefined;
  readonly efficiency: Share;
  readonly speed: Speed | undefined;
  readonly beadWidth: Length | undefined;
  readonly overlap: Angle | undefined;
  readonly dwell: Time | undefined;
  /** Peak of the first sector. */
  readonly peak: Current | undefined;
  /** Background over peak. */
  readonly background: Share;
  /** Added to half the wall for the arc gap. */
  readonly allowance: Length;
  /** Width of the arc's spot. */
  readonly arcSize: Length | undefined;
}

type Name = Exclude<keyof Choices, "style">;

const OMITTED: Omit<Choices, "style"> = {
  volts: undefined,
  efficiency: ARC_EFFICIENCY,
  speed: undefined,
  beadWidth: undefined,
  overlap: undefined,
  dwell: undefined,
  peak: undefined,
  background: COMMON_BACKGROUND,
  allowance: COMMON_ALLOWANCE,
  arcSize: undefined,
};
const KINDS: Readonly<Record<Name, Quantity>> = {
  volts: VOLTAGE,
  efficiency: SHARE,
  speed: SPEED,
  beadWidth: LENGTH,
  overlap: ANGLE,
  dwell: TIME,
  peak: CURRENT,
  background: SHARE,
  allowance: LENGTH,
  arcSize: LENGTH,
};
const NAMES = Object.keys(KINDS) as Name[];

/**
 * What `make` gives. Where it refuses a value that nobody typed, or the tube for want of an answer, the refusal becomes
 * one of the first choice without which there is an answer, or else of the tube.
 */
export function byChoices<Result>(od: Length, choices: Choices, make: (choices: Choices) => Result): Result {
  const result = orRefusal(() => make(choices));
  if (!(result instanceof Refusal)) return result;
  const typed = NAMES.filter((name) => choices[name] !== OMITTED[name]);
  const suggested = NAMES.some((name) => name === result.argument && !typed.includes(name));
  if (!suggested && (result.kind === "impossible" || typed.some((name) => name === result.argument))) {
    throw result;
  }
  const why = suggested ? ofSuggested(result) : result.rule;
  const culprit = typed.find((name) => answers(() => make({ ...choices, [name]: OMITTED[name] })));
  if (culprit !== undefined) {
    throw new Refusal(culprit, amount(Number(choices[culprit]), KINDS[culprit]), why, "unanswerable");
  }
  if (!suggested) throw result;
  const whole = ["has no suggested schedule with this wall; ", ...why];
  throw new Refusal("od", amount(od, LENGTH), whole, "unanswerable");
}

function answers(make: () => unknown): boolean {
  return !(orRefusal(make) instanceof Refusal);
}

/** Says which value was suggested, in front of what is wrong with it. */
function ofSuggested({ argument, value, rule }: Refusal): Rule {
  return [`suggested ${argument} = `, value, ": ", ...rule];
}
