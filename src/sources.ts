/** The bibliography: every work that a number, an equation or a check comes from, by the key it is cited with. */

import type { Source } from "./source";
import { AIR_SOURCES } from "./sources/air";
import { FLUID_SOURCES } from "./sources/fluids";
import { HEAT_FLOW_SOURCES } from "./sources/heat-flow";
import { INSPECTION_SOURCES } from "./sources/inspection";
import { METAL_SOURCES } from "./sources/metals";
import { MILL_SOURCES } from "./sources/mill";
import { CODES } from "./sources/codes";
import { STANDARDS } from "./sources/standards";
import { STATISTICS_SOURCES } from "./sources/statistics";
import { PLANNING_SOURCES, WELDING_SOURCES } from "./sources/welding";

export const SOURCES = {
  ...STANDARDS,
  ...CODES,
  ...WELDING_SOURCES,
  ...HEAT_FLOW_SOURCES,
  ...METAL_SOURCES,
  ...MILL_SOURCES,
  ...FLUID_SOURCES,
  ...PLANNING_SOURCES,
  ...INSPECTION_SOURCES,
  ...AIR_SOURCES,
  ...STATISTICS_SOURCES,
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;

export const SOURCE_KEYS = Object.keys(SOURCES) as SourceKey[];

/** A key in a text: "[rosenthal-1946]". Every key has a hyphen, so that no other brackets are taken for one. */
const CITED = /\[([a-z][a-z0-9]+(?:-[a-z0-9.]+)+)\]/g;

/** The work cited by a key, in its short form: "Rosenthal 1946". */
export function citation(key: SourceKey): string {
  return SOURCES[key].short;
}

/** A text whose "[rosenthal-1946]" reads "Rosenthal 1946". Throws on a key that no work has. */
export function withCitations(text: string): string {
  return text.replace(CITED, (_, key: string) => citation(known(key)));
}

/** The keys cited in a text. Throws on one that no work has. */
export function keysCited(text: string): SourceKey[] {
  return [...text.matchAll(CITED)].map((found) => known(String(found[1])));
}

function known(key: string): SourceKey {
  if (Object.hasOwn(SOURCES, key)) return key as SourceKey;
  throw new Error(`no source [${key}]`);
}
