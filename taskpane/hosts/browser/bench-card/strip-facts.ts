/** The key numbers of a form in one line, as data; the same reading as the card's. */

import { CURRENT } from "../../../../src/quantity";
import { SIGNS } from "../../../sheets/sheet";
import { sectorsOf, signOf } from "./procedure-facts";
import type { ShownSheet } from "./shown-sheet";
import { joined } from "./shown-sheet";

export interface StripItem {
  readonly label: string;
  readonly text: string;
}

export interface StripFacts {
  /** The summary as far as it counts: what needs attention is said on the sheet. */
  readonly summary: string;
  readonly holds: boolean;
  readonly items: readonly StripItem[];
}

/** In the place of a number that the sheet refuses. */
const NONE = "—";

/** Undefined where the sheet is no form. */
export function stripFacts(sheet: ShownSheet): StripFacts | undefined {
  if (sheet.template === undefined) return undefined;
  const items = { procedure, gas, bid, cycle, sizes, coupons, log }[sheet.template](sheet);
  const summary = sheet.text("summary") ?? "";
  return {
    summary: summary.replace(/^(.*? (?:checks hold|need attention))\b.*$/s, "$1"),
    holds: summary.startsWith(SIGNS.holds),
    items,
  };
}

function item(label: string, text: string | undefined): StripItem {
  return { label, text: text ?? NONE };
}

function procedure(sheet: ShownSheet): StripItem[] {
  const sectors = sectorsOf(sheet);
  const [first, last] = [sectors[0], sectors.at(-1)];
  const amps = (shown: string | undefined): string | undefined =>
    shown === undefined ? undefined : joined(shown, CURRENT.US.unit);
  const heat = sheet.withUnit("heat");
  return [
    item("Standoff", sheet.withUnit("standoff")),
    item("Rotor", sheet.withUnit("rpm")),
    item(first?.label ?? "Sector 1", amps(first?.amps)),
    item(last?.label ?? "Overlap", amps(last?.amps)),
    item("Heat input", heat === undefined ? undefined : signOf(sheet, "check_heat") + heat),
  ];
}

function gas(sheet: ShownSheet): StripItem[] {
  return [
    item("Gas to buy", sheet.withUnit("gas_bought")),
    item("Containers", sheet.number("containers")),
    item("Gas cost", sheet.withUnit("cost")),
  ];
}

function bid(sheet: ShownSheet): StripItem[] {
  return [
    item("Price", sheet.withUnit("price")),
    item("Cost", sheet.withUnit("cost")),
    item("Time", sheet.withUnit("hours")),
  ];
}

function cycle(sheet: ShownSheet): StripItem[] {
  return [
    item("Joints a shift, steady", sheet.number("shift_steady")),
    item("Bottleneck", sheet.text("bottleneck")),
  ];
}

function sizes(sheet: ShownSheet): StripItem[] {
  return [
    item("Sizes with a schedule", sheet.text("sizes")),
    item("Largest mean current", sheet.withUnit("largest_mean")),
    item("Largest heat input", sheet.withUnit("largest_heat")),
  ];
}

function coupons(sheet: ShownSheet): StripItem[] {
  return [
    item("Arc efficiency", sheet.number("shop_efficiency")),
    item("Next weld, low", sheet.number("next_low")),
    item("Next weld, high", sheet.number("next_high")),
    item("Coupons counted", sheet.text("coupons")),
  ];
}

function log(sheet: ShownSheet): StripItem[] {
  return [
    item("Joints logged", sheet.number("logged")),
    item("Rejected", sheet.number("rejected")),
    item("To check", sheet.number("to_check")),
    item("Coupons due", sheet.number("coupons_due")),
  ];
}
