/** Finds formulas by the words that people of the trade use, in American and British spelling, the likeliest first. */

import type { FormulaHelp } from "./help";
import { FORMULAS } from "./help";

export interface Found {
  readonly formulas: readonly FormulaHelp[];
  /** What to say of them, or instead of them; "" where their number says it all. */
  readonly remark: string;
}

/** How much a word counts where it is found; its beginning alone counts less, and a part of a word least. */
const WEIGHTS = { id: 100, synonym: 60, meaning: 40, argument: 20, description: 5 };
const BEGINNING = 0.7;
const PART = 0.3;
/** The name, or a synonym, is just what was typed. */
const EXACT = 100;
const SHORTEST_PART = 3;

/** Words of a question that say nothing about the formula. */
const FILLERS = new Set(
  "a an and are at can do does for how i in is it many much my of on or the to what which with bead".split(
    " ",
  ),
);

/** British spellings and how the other side of the ocean writes them; both what is typed and what is found is read so. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/colour/g, "color"],
  [/labour/g, "labor"],
  [/litre/g, "liter"],
  [/metre/g, "meter"],
  [/centre/g, "center"],
  [/gage/g, "gauge"],
  [/programme/g, "program"],
  [/mould/g, "mold"],
  [/is(ed|ation|ing)\b/g, "iz$1"],
];

/** Work of other welds that someone may look for here. */
const NOT_COVERED = /^(fillets?|socket|filler|wires?|bevels?|grooves?|stick|smaw|mig|gmaw|fcaw|laser)$/;
const COVERED =
  "Ringbead plans butt welds of tube to tube, melted by the arc alone: no fillet or socket welds, no filler metal, no other process.";

interface Entry {
  readonly formula: FormulaHelp;
  /** Its name and its synonyms. */
  readonly names: readonly string[];
  readonly texts: readonly (readonly [weight: number, words: readonly string[]])[];
}

const ENTRIES: readonly Entry[] = FORMULAS.map((formula) => ({
  formula,
  names: [formula.id, ...formula.synonyms].map((name) => wordsOf(name).join(" ")),
  texts: [
    [WEIGHTS.id, wordsOf(formula.id)],
    [WEIGHTS.synonym, formula.synonyms.flatMap(wordsOf)],
    [WEIGHTS.meaning, wordsOf(`${formula.meaning} ${formula.family}`)],
    [WEIGHTS.argument, formula.parameters.flatMap(({ name }) => wordsOf(name))],
    [WEIGHTS.description, formula.parameters.flatMap(({ description }) => wordsOf(description))],
  ],
}));

/** Every id has it in front in a cell. */
const OF_NAMESPACE = /^=?bead\./i;

/** All formulas in the order of the job where nothing is typed. */
export function search(asTyped: string): Found {
  const typed = asTyped.trim().replace(OF_NAMESPACE, "");
  const words = asked(typed);
  if (words.length === 0) return { formulas: FORMULAS, remark: "" };
  const remark = words.some((word) => NOT_COVERED.test(word)) ? COVERED : "";
  const scored = ENTRIES.map((entry) => ({ entry, scores: words.map((word) => scoreOf(entry, word)) }));
  const withAll = scored.filter(({ scores }) => scores.every((score) => score > 0));
  // A person who says more than a formula is about still finds those that are about most of it.
  const found =
    withAll.length > 0 ? withAll : scored.filter(({ scores }) => scores.some((score) => score > 0));
  const partly =
    withAll.length === 0 && found.length > 0 ? "None has all of these words; the nearest first." : "";
  return {
    formulas: found
      .map(({ entry, scores }) => ({
        formula: entry.formula,
        score: total(entry, [words.join(" "), wordsOf(typed).join(" ")], scores),
      }))
      .sort((a, b) => b.score - a.score)
      .map(({ formula }) => formula),
    remark: [remark, partly].filter((text) => text !== "").join(" "),
  };
}

/** Each word that is met counts more than any place where it is. */
function total({ names }: Entry, said: readonly string[], scores: readonly number[]): number {
  const met = scores.filter((score) => score > 0).length;
  const exact = EXACT * said.filter((words) => names.includes(words)).length;
  return met * 1000 + exact + scores.reduce((sum, score) => sum + score, 0);
}

/** The best place of the word, and a little for each other place. */
function scoreOf({ texts }: Entry, word: string): number {
  const places = texts.map(
    ([weight, words]) => weight * Math.max(0, ...words.map((one) => likeness(one, word))),
  );
  const best = Math.max(...places);
  return best + (places.reduce((sum, place) => sum + place, 0) - best) / 10;
}

function likeness(word: string, typed: string): number {
  if (word === typed) return 1;
  if (word.startsWith(typed)) return BEGINNING;
  return typed.length >= SHORTEST_PART && word.includes(typed) ? PART : 0;
}

function asked(typed: string): string[] {
  const words = wordsOf(typed);
  const telling = words.filter((word) => !FILLERS.has(word));
  return telling.length > 0 ? telling : words.filter((word) => word !== "bead");
}

/** Words as they are compared: small letters, one spelling, no hyphens, no plural. */
function wordsOf(text: string): string[] {
  const spelled = SPELLINGS.reduce((so, [from, to]) => so.replace(from, to), text.toLowerCase());
  return spelled
    .replace(/[-‐‑’']/g, "")
    .split(/[\s.,;:?!()[\]{}“”"=_|]+/)
    .filter((word) => word !== "")
    .map((word) => (/[a-z]{3,}[^s]s$/.test(word) ? word.slice(0, -1) : word));
}
