/**
 * Says in the title of a test, or of a group of tests, which formulas it checks and against what. The records of a
 * run become docs/how-the-numbers-are-checked.md, so that page names nothing that did not run.
 *
 *   describe(evidence("PURGE_VENT PURGE_PRESSURE", PUBLISHED, "geankoplis-transport", "example 3.2-2"), …)
 */

import { HELP } from "../functions/help";
import type { Source } from "../src/source";
import type { SourceKey } from "../src/sources";
import { citation, SOURCES, withCitations } from "../src/sources";

/** A published value that was compared with a copy of its source. */
export const PUBLISHED = "published";
/** The same equation or table as a general reference library has it. */
export const REFERENCE_LIBRARY = "reference library";
/** A worked example of a public page that names no author. */
export const WEB_PAGE = "web page";
/** A published value or equation recalled, not compared with a copy. */
export const MEMORY = "from memory";
/**
 * A property or a special function that the formula is fed with, compared with its source: it says nothing of the
 * formula's own result.
 */
export const INPUT_DATA = "input data";
/** A fact of the trade without a source of its own. */
export const COMMON_PRACTICE = "common practice";
/** Arithmetic written out beside the check, from the equation alone. */
export const BY_HAND = "worked out by hand";
/** Another way to the same answer, programmed for the test: it shows an equation solved right, not that it is right. */
export const INDEPENDENT = "independent method";

/** What is held against a work of the bibliography. */
export type FromWork =
  typeof PUBLISHED | typeof REFERENCE_LIBRARY | typeof WEB_PAGE | typeof MEMORY | typeof INPUT_DATA;
export type WithoutWork = typeof COMMON_PRACTICE | typeof BY_HAND | typeof INDEPENDENT;

/** The title: formulas, standing, source in words, and the work's key in brackets where one is held against. */
export function evidence(formulas: string, standing: FromWork, key: SourceKey, detail?: string): string;
export function evidence(formulas: string, standing: WithoutWork, words: string): string;
export function evidence(
  formulas: string,
  standing: FromWork | WithoutWork,
  told: string,
  detail?: string,
): string {
  const ids = formulas.split(" ");
  const unknown = ids.filter((id) => !HELP.some((about) => about.id === id));
  if (unknown.length > 0) throw new Error(`no formula ${unknown.join(", ")}`);
  const source = isFromWork(standing) ? workSource(standing, told, detail) : withCitations(told);
  if (source === "" || source.includes("|")) throw new Error(`no source: "${source}"`);
  return `${ids.join(" ")} | ${standing} | ${source}`;
}

function isFromWork(standing: FromWork | WithoutWork): standing is FromWork {
  return standing !== COMMON_PRACTICE && standing !== BY_HAND && standing !== INDEPENDENT;
}

function workSource(standing: FromWork, told: string, detail = ""): string {
  if (!isKey(told)) throw new Error(`no source ${told}`);
  const work: Source = SOURCES[told];
  if (!bears(work, standing)) throw new Error(`${told} (${work.standing}) cannot be ${standing}`);
  return `${citation(told)}${detail === "" ? "" : `, ${withCitations(detail)}`} [${told}]`;
}

function isKey(told: string): told is SourceKey {
  return Object.hasOwn(SOURCES, told);
}

/** Whether a work can stand behind a check of that standing. */
function bears({ standing: kind, access }: Source, standing: FromWork): boolean {
  switch (standing) {
    case PUBLISHED:
      return access !== "memory" && kind !== "web page" && kind !== "common practice";
    case REFERENCE_LIBRARY:
      return kind === "reference library";
    case WEB_PAGE:
      return kind === "web page";
    case MEMORY:
    case INPUT_DATA:
      return true;
  }
}
