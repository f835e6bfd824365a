/**
 * test/mutation/answers.txt: whether a test noticed each change that was asked about, so that a later run, in any clone,
 * asks only about what is new. A line a kind of change and file, a letter a change, in the order in which they are made:
 *
 *     mutators src/gap/electrode.ts 51f0a6be9d27 nnnunntn-
 *
 * n: noticed; t: a test no longer ended; u: unnoticed by every test that runs it; s: unnoticed by those for which the
 * time sufficed; b: broken; -: not asked. The digits stand for the source and its changes: where they differ, the
 * letters are those of other code, and nothing was asked.
 */

import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { root } from "../../build/project";
import type { Kind, Mutant } from "../../docs/mutation";
import type { Edit } from "./edit";

const PLACE = path.join(root, "test", "mutation", "answers.txt");
const DIGITS = 12;

type Told = Pick<Mutant, "status" | "askedAll">;
const TOLD: Readonly<Record<string, Told>> = {
  n: { status: "Killed" },
  t: { status: "Timeout" },
  u: { status: "Survived", askedAll: true },
  s: { status: "Survived", askedAll: false },
  b: { status: "RuntimeError" },
  "-": { status: "Pending" },
};
export const UNASKED = "-";
export const NOTICED = "nt";
export const LEFT = "us";

interface Line {
  readonly code: string;
  readonly letters: string;
}

export class Answers {
  readonly #lines = new Map<string, Line>();

  /** Throws where a line is none. */
  constructor(text: string) {
    for (const line of text.split("\n").filter((one) => one !== "")) {
      const [, of, code = "", letters = ""] = /^(\w+ \S+) ([0-9a-f]+) ([ntusb-]+)$/.exec(line) ?? [];
      if (of === undefined) throw new Error(`${path.relative(root, PLACE)}: no answers: ${line}`);
      this.#lines.set(of, { code, letters });
    }
  }

  static kept(): Answers {
    return new Answers(readFileSync(PLACE, "utf8"));
  }

  /** A letter for each change of a file; none of them is asked where its code reads otherwise by now. */
  of(kind: Kind, file: string, source: string, edits: readonly Edit[]): string {
    const line = this.#lines.get(`${kind} ${file}`);
    return line?.code === codeOf(source, edits) ? line.letters : UNASKED.repeat(edits.length);
  }

  put(kind: Kind, file: string, source: string, edits: readonly Edit[], letters: string): void {
    this.#lines.set(`${kind} ${file}`, { code: codeOf(source, edits), letters });
  }

  /** Only of files that are there still. */
  text(files: readonly string[]): string {
    return [...this.#lines]
      .filter(([of]) => files.includes(of.split(" ")[1] ?? ""))
      .map(([of, { code, letters }]) => `${of} ${code} ${letters}\n`)
      .sort()
      .join("");
  }

  keep(files: readonly string[]): void {
    writeFileSync(PLACE, this.text(files));
  }
}

function codeOf(source: string, edits: readonly Edit[]): string {
  const all = edits.map(({ start, end, becomes }) => [start, end, becomes]);
  return createHash("sha256")
    .update(JSON.stringify([source, all]))
    .digest("hex")
    .slice(0, DIGITS);
}

export function letterOf(status: string, askedAll: boolean): string {
  if (status === "Survived") return askedAll ? "u" : "s";
  if (status === "Killed") return "n";
  return status === "Timeout" ? "t" : "b";
}

export function toldBy(letter: string): Told {
  const told = TOLD[letter];
  if (told === undefined) throw new Error(`${letter} is no answer`);
  return told;
}
