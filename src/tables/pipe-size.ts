/** Nominal pipe sizes and schedules as people type them. */

import { itemAt } from "../numerics/item";
import { quotedText } from "../quoted-text";
import { Refusal } from "../refusal";
import { spelled, wholeAndFraction } from "../sizes";

/** No size takes more to write. */
const LONGEST = 40;
/** Day numbers of the calendars that spreadsheets keep, for the years 1998 to 2201: no pipe is that large. */
const DAY_NUMBERS = [36_000, 110_000] as const;
const WRITTEN_DATE =
  /JAN|FEB|MAR|APR|MAY|JUN|JUL|AUG|SEP|OCT|NOV|DEC|^\d+\/\d+\/\d+$|^\d+\.\d+\.\d+$|^\d{4}-\d+-\d+/;

/** DN of the metric designation beside each NPS, [asme-b36.10m]. */
const NPS_OF_DN: Readonly<Record<string, string>> = {
  "6": "1/8",
  "8": "1/4",
  "10": "3/8",
  "15": "1/2",
  "20": "3/4",
  "25": "1",
  "32": "1-1/4",
  "40": "1-1/2",
  "50": "2",
  "65": "2-1/2",
  "80": "3",
  "90": "3-1/2",
  "100": "4",
  "125": "5",
  "150": "6",
  "200": "8",
  "250": "10",
  "300": "12",
};

/** The number behind a nominal size: `1-1/2`, `1 1/2`, `1½`, `1.5`, `1.5 in`, `1½"`, `NPS 1-1/2`. */
export function nominalSize(typed: string): number {
  const plain = spelled(typed.slice(0, LONGEST + 1)).toUpperCase();
  const metric = /^DN\s*(\d+)$/.exec(plain);
  if (metric !== null) throw refused(typed, dnHint(itemAt(metric, 1)));
  const size = sizeOf(plain.replace(/^NPS\s*/, "").replace(/\s*(IN|INCH|INCHES|IN\.|"|'')$/, ""));
  if (WRITTEN_DATE.test(plain) || (size >= DAY_NUMBERS[0] && size <= DAY_NUMBERS[1])) {
    throw refused(typed, "is a date that a spreadsheet made of a fraction; type '1/2 as text, or 0.5");
  }
  if (size > 0 && Number.isFinite(size)) return size;
  throw refused(typed, "must be a nominal size such as 1/2, 1-1/2 or 2");
}

/** A schedule with its blanks and the word for it taken off: `sch 40s` is `40S`. */
export function scheduleName(typed: string): string {
  return typed
    .toUpperCase()
    .replace(/\s+/g, "")
    .replace(/^(SCHEDULE|SCH)\.?/, "");
}

/** Whether a size says itself that it is a nominal one, `NPS 1-1/2`: a bare number in a list is an outside diameter. */
export function isNominal(typed: string): boolean {
  return /^\s*(NPS|DN)(?![A-Z])/i.test(typed);
}

/** Whether a wall says itself that it is a schedule, `sch 10` or `10S`: a bare number in a list is a wall. */
export function isSchedule(typed: string): boolean {
  return /^\s*(SCH(EDULE)?\.?\s*\d+\s*S?|\d+\s*S)\s*$/i.test(typed.slice(0, LONGEST + 1));
}

/** NaN for anything that is not `2`, `1.5`, `1/2`, `1-1/2` or `1 1/2`. */
function sizeOf(plain: string): number {
  if (/^(\d+\.?\d*|\.\d+)$/.test(plain)) return Number(plain);
  const parts = wholeAndFraction(plain);
  return parts === undefined ? NaN : parts.whole + parts.above / parts.below;
}

function dnHint(dn: string): string {
  const nps = NPS_OF_DN[dn];
  return nps === undefined
    ? "DN sizes are not read; give the nominal pipe size in inches"
    : `DN sizes are not read; DN ${dn} is NPS ${nps}`;
}

function refused(typed: string, why: string): Refusal {
  return new Refusal("nps", quotedText(typed), [why]);
}
