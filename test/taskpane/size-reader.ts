/** Reads sizes as a shop writes them, for tests of conversion alone: a number or a fraction, with its unit or without. */

import type { Length, Units } from "../../src/quantity";
import { LENGTH, toBase } from "../../src/quantity";

export function sizeOf(text: string, units: Units): Length | { readonly why: string } {
  const [, whole, over, under, unit] =
    /^(\d*\.?\d+)??[- ]?(?:(\d+)\/(\d+))?\s*(in|mm)?$/.exec(text.trim()) ?? [];
  if (whole === undefined && over === undefined) return { why: "must be a size" };
  const system = unit === undefined ? units : unit === "mm" ? "SI" : "US";
  return toBase(Number(whole ?? 0) + Number(over ?? 0) / Number(under ?? 1), LENGTH, system);
}
