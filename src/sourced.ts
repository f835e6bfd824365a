/** A number of a property table and where it comes from. */

import type { SourceKey } from "./sources";
import { citation, withCitations } from "./sources";

/**
 * `published`: compared with a copy of the source. `memory`: recalled from the source, not compared.
 * `estimate`: reasoned from neighboring facts; nothing outside confirms it.
 */
export type Standing = "published" | "memory" | "estimate";

export interface Sourced {
  readonly value: number;
  readonly standing: Standing;
  /** The work it is taken from; an estimate has none. */
  readonly key?: SourceKey;
  /** Work and place, or how the estimate was made, in words. */
  readonly source: string;
}

export function published(value: number, key: SourceKey, detail: string): Sourced {
  return { value, standing: "published", key, source: sourceText(key, detail) };
}

export function memory(value: number, key: SourceKey, detail: string): Sourced {
  return { value, standing: "memory", key, source: sourceText(key, detail) };
}

/** The reason may cite works: "copper's value ([iida-guthrie-1988])". */
export function estimate(value: number, reason: string): Sourced {
  return { value, standing: "estimate", source: withCitations(reason) };
}

function sourceText(key: SourceKey, detail: string): string {
  return `${citation(key)}, ${withCitations(detail)}`;
}
