/**
 * The limits that recur. Each takes base SI, gives the value back when it is allowed and refuses it otherwise,
 * so that a calculation states its domain in its first lines.
 */

import type { Length, Quantity } from "./quantity";
import { COUNT, LENGTH, SHARE, TEMPERATURE } from "./quantity";
import { amount, Refusal, rule } from "./refusal";

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
  if (value <= most) return value;
  throw new Refusal(argument, amount(value, of), rule`must be at most ${amount(most, of)}`);
}

export function between<Value extends number>(
  argument: string,
  value: Value,
  of: Quantity,
  least: number,
  most: number,
): Value {
  if (value >= least && value <= most) return value;
  throw new Refusal(
    argument,
    amount(value, of),
    rule`must be between ${amount(least, of)} and ${amount(most, of)}`,
  );
}

/** A fraction that cannot be nothing: above 0, at most 1. */
export function shareAbove0<Value extends number>(argument: string, value: Value): Value {
  if (value > 0 && value <= 1) return value;
  throw new Refusal(argument, amount(value, SHARE), rule`must be above 0 and at most 1`);
}

export function wholeFrom1<Value extends number>(argument: string, value: Value, most: number): Value {
  if (Number.isInteger(value) && value >= 1 && value <= most) return value;
  throw new Refusal(
    argument,
    amount(value, COUNT),
    rule`must be a whole number from 1 to ${amount(most, COUNT)}`,
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
  if (wall < od / 2) return;
  throw new Refusal(
    "wall",
    amount(wall, LENGTH),
    rule`must be less than half of od, ${amount(od / 2, LENGTH)}`,
  );
}
