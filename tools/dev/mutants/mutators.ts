/** StrykerJS's mutators: which changes they make to a source file, and the file with calls that tell what is reached. */

import { existsSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

import { root } from "../../build/project";
import { run } from "../program";
import type { Edit } from "./edit";
import { CALLED } from "./edit";

interface Found {
  readonly id: string;
  /** "Ignored" where its mutator is excluded: it has a number, but no place in the code. */
  readonly status?: string;
  readonly replacement: string;
  readonly location: Record<"start" | "end", { readonly line: number; readonly column: number }>;
}
interface Instrumenter {
  instrument(
    files: readonly { readonly name: string; readonly content: string; readonly mutate: true }[],
    options: object,
  ): Promise<{ readonly files: readonly { readonly content: string }[]; readonly mutants: readonly Found[] }>;
}

const FOLDER = path.join("tools", "mutation");
const PACKAGE = path.join(root, FOLDER, "node_modules", "@stryker-mutator", "instrumenter");
const SILENT = {
  debug: () => undefined,
  info: () => undefined,
  warn: () => undefined,
  isDebugEnabled: () => false,
};

/** The mutators' own switch between right and wrong, and their own count of what is reached. */
const SWITCH = /stryMutAct_9fa48\("\d+"\)/g;
const COVER = /stryCov_9fa48\(((?:"\d+"(?:, )?)+)\)/g;

let instrumenter: Instrumenter | undefined;

/** The mutators have a folder and a lock file of their own, and are installed there by the first run. */
async function installed(): Promise<Instrumenter> {
  if (!existsSync(PACKAGE))
    run("npm", ["ci", "--prefix", FOLDER, "--ignore-scripts", "--no-audit", "--no-fund", "--loglevel=error"]);
  const { Instrumenter: Made } = (await import(
    pathToFileURL(path.join(PACKAGE, "dist", "src", "instrumenter.js")).href
  )) as { readonly Instrumenter: new (log: typeof SILENT) => Instrumenter };
  return new Made(SILENT);
}

/** The changes to one file, and the file that tells which of them it reaches, numbered from `from`. */
export async function mutationsOf(
  name: string,
  content: string,
  excluded: readonly string[],
  from: number,
): Promise<{ readonly edits: readonly Edit[]; readonly telling: string }> {
  instrumenter ??= await installed();
  const { files, mutants } = await instrumenter.instrument([{ name, content, mutate: true }], {
    ignorers: [],
    excludedMutations: excluded,
    plugins: null,
  });
  const made = mutants.filter(({ status }) => status !== "Ignored");
  const numbers = new Map(made.map(({ id }, i) => [id, String(from + i)]));
  const lines = content.split("\n");
  const starts = lines.map((_, line) => lines.slice(0, line).reduce((sum, one) => sum + one.length + 1, 0));
  const at = ({ line, column }: { readonly line: number; readonly column: number }): number =>
    (starts[line] ?? 0) + column;
  return {
    edits: made.map(({ replacement, location: { start, end } }) => ({
      start: at(start),
      end: at(end),
      becomes: replacement,
    })),
    telling: (files[0]?.content ?? content)
      .replace(SWITCH, "false")
      .replace(
        COVER,
        (_, ids: string) =>
          `globalThis.${CALLED}(${ids.replace(/"(\d+)"/g, (__, id: string) => numbers.get(id) ?? "")})`,
      ),
  };
}
