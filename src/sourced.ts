/** A number of a property table and where it comes from. */

/**
 * `published`: compared with a copy of the source. `memory`: recalled from the source, not compared.
 * `estimate`: reasoned from neighboring facts; nothing outside confirms it.
 */
export type Standing = "published" | "memory" | "estimate";

export interface Sourced {
  readonly value: number;
  readonly standing: Standing;
  readonly source: string;
}

export function published(value: number, source: string): Sourced {
  return { value, standing: "published", source };
}

export function memory(value: number, source: string): Sourced {
  return { value, standing: "memory", source };
}

export function estimate(value: number, source: string): Sourced {
  return { value, standing: "estimate", source };
}
