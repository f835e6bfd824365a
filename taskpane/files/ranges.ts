/** Ranges as a file names them, and their corners. */

import type { Place } from "../sheets/addresses";
import { addressOf, placeOf } from "../sheets/addresses";
import { quoted } from "./stored";

export function cornersOf(range: string): { start: Place; end: Place } {
  const [first = "", last = first] = range.split(":");
  return { start: placeOf(first), end: placeOf(last) };
}

/** A1:B2 as 'Sheet'!$A$1:$B$2. */
export function onSheet(sheet: string, range: string): string {
  return `${quoted(sheet)}!${absolute(range)}`;
}

function absolute(range: string): string {
  return range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
}

/** "'Sheet'!$A$1:$B$2" as A1:B2; undefined for anything else, such as a range of whole columns or several. */
export function plainRange(range: string): string | undefined {
  const plain = range.replace(/^(?:'(?:[^']|'')+'|[^!'",]+)!/, "").replaceAll("$", "");
  return /^[A-Z]{1,3}\d+(?::[A-Z]{1,3}\d+)?$/.test(plain) ? plain : undefined;
}

export function rangeFrom(start: Place, end: Place): string {
  return addressOf(start) === addressOf(end) ? addressOf(start) : `${addressOf(start)}:${addressOf(end)}`;
}
