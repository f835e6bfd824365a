/**
 * The limits that recur. Each takes base SI, gives the value back when it is allowed and refuses it otherwise,
 * so that a calculation states its domain in its first lines. A value that is a limit but for rounding is that limit.
 */

import type { Length, Quantity } from "./quantity";
import { COUNT, LENGTH, SHARE, TEMPERATURE } from "./quantity";
import { amount, Refusal, rule } from "./refusal";

/**
 * How far, relative, a value may be off a limit by rounding alone: what a change of units and a few formulas in a row
 * leave, and less than anything that is measured.
 */
const ROUNDING = 1e-9;

/** Whether a value is a limit but for rounding; 0 is 0 only. */
export function isAt(value: number, limit: number): boolean {
  return Math.abs(value - limit) <= ROUNDING * Math.abs(limit);
}

export function isAbove(value: number, limit: number): boolean {
  return value > limit && !isAt(value, limit);
}

export function isBelow(value: number, limit: number): boolean {
  return value < limit && !isAt(value, limit);
}

/** The next whole number down, or the one that the value is but for rounding. */
export function wholeDown(value: number): number {
  return Math.floor(value * (1 + ROUNDING));
}

/** The next whole number up, or the one that the value is but for rounding. */
export function wholeUp(value: number): number {
  return Math.ceil(value * (1 - ROUNDING));
}

/** The value held between two limits. */
function held<Value extends number>(value: Value, least: number, most: number): Value {
  return Math.min(Math.max(value, least), most) as Value;
}

export function above0<Value extends number>(argument: string, value: Value, of: Quantity): Value {
  if (value > 0) return value;
  throw new Refusal(argument, amount(value, of), rule`must be above 0`);
}

export function atLeast0<Value extends number>(argument: string, value: Value, of: Quantity): Value {
  if (value >= 0) return value;
  throw new Refusal(argument, amount(value, of), rule`must be 0 or more`);
}

export function atMost<Value extends number>(
  argument: string,
  value: Value,
  of: Quantity,
  most: number,
): Value {
  if (value <= most || isAt(value, most)) return held(value, -Infinity, most);
  throw new Refusal(argument, amount(value, of), rule`must be at most ${amount(most, of)}`);
}

export function between<Value extends number>(
  argument: string,
  value: Value,
  of: Quantity,
  least: number,
  most: number,
): Value {
  if ((value >= least && value <= most) || isAt(value, least) || isAt(value, most)) {
    return held(value, least, most);
  }
  throw new Refusal(
    argument,
    amount(value, of),
    rule`must be between ${amount(least, of)} and ${amount(most, of)}`,
  );
}

/** A fraction that cannot be nothing: above 0, at most 1. */
export function shareAbove0<Value extends number>(argument: string, value: Value): Value {
  if (value > 0 && !isAbove(value, 1)) return held(value, 0, 1);
  throw new Refusal(argument, amount(value, SHARE), rule`must be above 0 and at most ${amount(1, SHARE)}`);
}

/** A fraction that leaves something on both sides: above 0 and less than 1. */
export function shareInside<Value extends number>(argument: string, value: Value): Value {
  if (value > 0 && value < 1) return value;
  throw new Refusal(argument, amount(value, SHARE), rule`must be above 0 and less than ${amount(1, SHARE)}`);
}

/** What is a whole number but for rounding, as three tenths over a tenth is, is that number. */
export function wholeFrom1<Value extends number>(argument: string, value: Value, most: number): Value {
  return wholeFrom(argument, value, 1, most);
}

export function wholeFrom<Value extends number>(
  argument: string,
  value: Value,
  least: number,
  most: number,
): Value {
  const whole = Math.round(value) as Value;
  if (isAt(value, whole) && whole >= least && whole <= most) return whole;
  throw new Refusal(
    argument,
    amount(value, COUNT),
    rule`must be a whole number from ${amount(least, COUNT)} to ${amount(most, COUNT)}`,
  );
}

/** A temperature that can be, K. */
export function temperature<Value extends number>(argument: string, value: Value): Value {
  if (value > 0) return value;
  throw new Refusal(
    argument,
    amount(value, TEMPERATURE),
    rule`must be above absolute zero, ${amount(0, TEMPERATURE)}`,
  );
}

/** A tube has a bore: its wall is less than half of its outside diameter. */
export function tube(od: Length, wall: Length): void {
  above0("od", od, LENGTH);
  above0("wall", wall, LENGTH);
  if (isBelow(wall, od / 2)) return;
  throw new Refusal(
    "wall",
    amount(wall, LENGTH),
    rule`must be less than half of od, ${amount(od / 2, LENGTH)}`,
  );
}
