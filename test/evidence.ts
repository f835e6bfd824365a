/**
 * Says in the title of a test, or of a group of tests, which formulas it checks and against what. The records of a
 * run become the page "How the numbers are checked" (tools/docs/checks.ts), so the page names nothing that did not run.
 *
 *   describe(evidence("PURGE_VENT PURGE_PRESSURE", PUBLISHED, "Geankoplis, Transport Processes, example 3.2-2"), …)
 */

import { HELP } from "../functions/help";

/** A published value that was compared with a copy of its source. */
export const PUBLISHED = "published";
/** The same equation as a general reference library evaluates it. */
export const REFERENCE_LIBRARY = "reference library";
/** A published value or equation recalled, not compared with a copy. */
export const MEMORY = "from memory";
/** A fact of the trade without a source of its own. */
export const COMMON_PRACTICE = "common practice";
/** Arithmetic written out beside the check, from the equation alone. */
export const BY_HAND = "worked out by hand";
/** Another way to the same answer, programmed for the test: it shows an equation solved right, not that it is right. */
export const INDEPENDENT = "independent method";

export type Standing =
  | typeof PUBLISHED
  | typeof REFERENCE_LIBRARY
  | typeof MEMORY
  | typeof COMMON_PRACTICE
  | typeof BY_HAND
  | typeof INDEPENDENT;

/** The title: formulas, standing and source. */
export function evidence(formulas: string, standing: Standing, source: string): string {
  const ids = formulas.split(" ");
  const unknown = ids.filter((id) => !HELP.some((about) => about.id === id));
  if (unknown.length > 0) throw new Error(`no formula ${unknown.join(", ")}`);
  if (source === "" || source.includes("|")) throw new Error(`no source: "${source}"`);
  return `${ids.join(" ")} | ${standing} | ${source}`;
}
