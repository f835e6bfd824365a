/**
 * Formulas about the formulas: what each means and why it refuses. They stand in the catalogue themselves, so they get
 * it handed in and look at it only when they are called.
 */

import { itemAt } from "../../src/numerics/item";
import type { Argument } from "../argument";
import { named, rest, text } from "../argument";
import { rowsOf } from "../cells";
import type { Family, Formula } from "../formula";
import { family, formula } from "../formula";
import { table, words, wordsColumn } from "../gives";
import type { Entry } from "./find";
import { find } from "./find";
import { refusalOf } from "./refusal-of";
import { textsOf } from "./told";

/** What stands in front of each text that ABOUT tells. */
const LABELS = ["meaning", "equation", "validity", "source", "example"];

type Id = Argument<Entry, false>;

/** Written out, so that the type of the catalogue does not depend on what is handed in. */
export type About = Family<
  readonly [
    Formula<"ABOUT", { readonly id: Id }>,
    Formula<"REASON", { readonly id: Id; readonly argument: Argument<unknown[][][], false> }>,
    Formula<"VERSION", Readonly<Record<string, never>>>,
  ]
>;

export function aboutFamily(version: string, families: () => readonly Family[]): About {
  const id: Id = named(text("Formula name, with or without BEAD."), (typed) => find(families(), typed));

  const ABOUT = formula({
    id: "ABOUT",
    meaning: "What a formula means: meaning, equation, validity, source and a worked example, one row each",
    args: { id },
    gives: table({ label: wordsColumn("label"), text: wordsColumn("text") }, { lead: "Five rows" }),
    validity: "#N/A for a name that is not one of these formulas",
    source: "The same help text that the pane and the help page show",
    unchecked: "It repeats what the records say",
    related: ["REASON", "VERSION"],
    synonyms: [
      "help",
      "explain",
      "equation",
      "documentation",
      "meaning",
      "source",
      "how it works",
      "what is",
    ],
    example: {
      args: ["STANDOFF"],
      gives:
        '"meaning", "Arc gap between electrode tip and tube, in | mm: half the wall plus an allowance."; "equation", "g = t/2 + a"; …',
    },
    calc: ({ id: found }) => textsOf(found).map((told, i) => ({ label: itemAt(LABELS, i), text: told })),
  });

  const REASON = formula({
    id: "REASON",
    meaning: 'Why a formula refuses its arguments, in full; "fine" if it answers',
    args: {
      id,
      argument: rest("The arguments as that formula has them, cells or ranges", (_reader, _name, given) =>
        rangesOf(given),
      ),
    },
    gives: words(),
    validity:
      "For hosts that hide the sentence behind an error. An argument that contains an error shows that error.",
    source: "The refusal sentence of the formula itself",
    unchecked: "It repeats the sentence of the formula itself",
    related: ["ABOUT", "VERSION"],
    synonyms: [
      "error",
      "#VALUE!",
      "#N/A",
      "why",
      "troubleshooting",
      "refused",
      "refusal",
      "not working",
      "problem",
    ],
    example: { args: ["STANDOFF", -0.065], gives: '"wall = -0.065 in: must be above 0"' },
    calc: ({ id: { formula: asked }, argument }) => refusalOf(asked, argument) ?? "fine",
  });

  const VERSION = formula({
    id: "VERSION",
    meaning: "Version of the functions that are running; the pane compares it with its own",
    args: {},
    gives: words(),
    validity: `Text such as ${version}`,
    source: "The project's change log",
    unchecked: "It repeats the version of the release",
    related: ["ABOUT", "REASON"],
    synonyms: ["release", "update", "build number", "which version"],
    example: { args: [], gives: `"${version}"` },
    calc: () => version,
  });

  return family("About", [ABOUT, REASON, VERSION]);
}

/** Each of the arguments arrives as rows of cells. */
function rangesOf(given: unknown): unknown[][][] {
  return Array.isArray(given) ? given.map(rowsOf) : [];
}
