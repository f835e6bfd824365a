/**
 * What a formula rests on, the weakest first: derived from the works its record cites and from what it says is common
 * practice, an estimate, from memory or confirmed by nothing outside.
 */

import { DESIGNATIONS, MATERIALS } from "../src/metal/material";
import type { Material } from "../src/metal/material";
import type { Sourced } from "../src/sourced";
import { keysCited, SOURCES, withCitations } from "../src/sources";
import type { Source } from "../src/source";
import type { Formula } from "./formula";

/** Weakest first. `exact`: arithmetic, geometry or a definition, which needs no source. */
export const STANDINGS = ["estimate", "from memory", "common practice", "published", "exact"] as const;
export type Standing = (typeof STANDINGS)[number];

export interface Rest {
  readonly standing: Standing;
  /** What has this standing, a work or the record's own words. */
  readonly what: string;
}

/** `all`: the formulas that one record may refer to by name. Empty for a formula that gives no number. */
export function restsOn(formula: Formula, all: readonly Formula[]): readonly Rest[] {
  const { source, unconfirmed = "", assumptions = "" } = formula;
  const told = [
    ...clauses(source).flatMap(ofSource),
    ...clauses(unconfirmed).flatMap(ofUnconfirmed),
    ...clauses(assumptions).flatMap(ofEstimate),
    ...works(source),
    ...metals(formula),
    ...named(formula, all),
  ];
  // A record that cites nothing and names nothing weaker is arithmetic.
  const isNumber = formula.gives.type === "number" || formula.gives.type === "numbers";
  const rests = told.length > 0 || !isNumber ? told : [{ standing: "exact" as const, what: source }];
  return STANDINGS.flatMap((standing) => unique(rests.filter((one) => one.standing === standing)));
}

/** The weakest of a formula that the source of this one names. */
function named({ id, source }: Formula, all: readonly Formula[]): Rest[] {
  return all
    .filter(
      (other) =>
        other.id !== id && other.id !== TABLE_OF_METALS && new RegExp(`\\b${other.id}\\b(?!_)`).test(source),
    )
    .flatMap((other) =>
      restsOn(other, [])
        .slice(0, 1)
        .map(({ standing, what }) => ({ standing, what: `${other.id}: ${what}` })),
    );
}

function clauses(text: string): string[] {
  return text
    .split(/;\s|\.\s(?=\p{L})/u)
    .map((clause) => withCitations(clause.trim().replace(/\.$/, "")))
    .filter((clause) => clause !== "");
}

function ofSource(clause: string): Rest[] {
  if (/\bestimates?\b/i.test(clause)) return [{ standing: "estimate", what: clause }];
  if (/from memory/i.test(clause)) return [{ standing: "from memory", what: clause }];
  if (/common practice/i.test(clause)) return [{ standing: "common practice", what: clause }];
  const isExact = /^(geometry|arithmetic|definition|exact|sum |flow ×)/i.test(clause);
  return isExact ? [{ standing: "exact", what: clause }] : [];
}

/** What a record calls unconfirmed is from memory where it says so; else what it says nothing confirms is an estimate. */
function ofUnconfirmed(clause: string): Rest[] {
  if (clause.includes("memory")) return [{ standing: "from memory", what: clause }];
  const said = clause.replace(/no measurement|"[^"]*"/g, "");
  const isWeak = /\bestimates?\b|\b(no|not|nothing|only|none)\b/i.test(said);
  return isWeak ? [{ standing: "estimate", what: clause }] : [];
}

function ofEstimate(clause: string): Rest[] {
  return /\bestimates?\b/i.test(clause) ? [{ standing: "estimate", what: clause }] : [];
}

function works(source: string): Rest[] {
  return keysCited(source).map((key) => {
    const { short, standing, access }: Source = SOURCES[key];
    if (standing === "common practice") return { standing, what: short };
    if (access === "memory") return { standing: "from memory", what: `${short} (${standing}, no copy read)` };
    const how = access === "copy" ? "" : ", as another work quotes it";
    return { standing: "published", what: `${short} (${standing}${how})` };
  });
}

const WORDS: Readonly<Record<Sourced["standing"], Standing>> = {
  estimate: "estimate",
  memory: "from memory",
  published: "published",
};

/** It says of each number by itself what that stands on. */
const TABLE_OF_METALS = "MATERIALS";

/** The metals whose weakest number has a standing, where a metal is taken or told. */
function metals({ id, args }: Formula): Rest[] {
  if (!("material" in args) && id !== TABLE_OF_METALS) return [];
  const weakest = DESIGNATIONS.map((designation) => ({
    designation,
    standing: weakestOf(MATERIALS[designation], id === "PURGE_CEILING"),
  }));
  return STANDINGS.flatMap((standing) => {
    const names = weakest.filter((one) => one.standing === standing).map(({ designation }) => designation);
    const what = `Weakest value of the metal for ${names.join(", ")} (MATERIALS tells the source of each)`;
    return names.length === 0 ? [] : [{ standing, what }];
  });
}

/** Only the blow-out of the pool takes the surface tension, and it takes nothing else. */
function weakestOf(material: Material, isTension: boolean): Standing | undefined {
  const { surfaceTension, ...thermal } = material;
  const found = (isTension ? [surfaceTension] : Object.values<Sourced>(thermal)).map(
    ({ standing }) => WORDS[standing],
  );
  return STANDINGS.find((standing) => found.includes(standing));
}

function unique(rests: readonly Rest[]): Rest[] {
  return rests.filter(({ what }, i) => rests.findIndex((one) => one.what === what) === i);
}
