/** The page of sources: every work of the bibliography, a table for each kind. */

import type { Source } from "../../src/source";
import { KINDS } from "../../src/source";
import { SOURCES } from "../../src/sources";

const HEADINGS: Record<Source["standing"], string> = {
  standard: "Standards and codes",
  paper: "Papers",
  report: "Reports",
  handbook: "Handbooks",
  textbook: "Textbooks",
  "reference library": "Reference libraries",
  "producer sheet": "Producers' sheets",
  "web page": "Web pages",
  "common practice": "Common practice",
};

/** How much of a work was read. */
const READ: Record<Source["access"], string> = {
  copy: "in a copy",
  "second-hand": "second-hand",
  memory: "no, from memory",
};

/** The page in Markdown. */
export function sourcesPage(): string {
  const works: [key: string, work: Source][] = Object.entries(SOURCES);
  return [
    "# Sources",
    "Every work that a number, an equation or a check is taken from. “Read” says how the passage used is known: in a copy of the work, second-hand where another work quotes it, or from memory. A value that is only remembered is never called published.",
    ...KINDS.flatMap((kind) =>
      section(
        HEADINGS[kind],
        works.filter(([, { standing }]) => standing === kind),
      ),
    ),
    "",
  ].join("\n\n");
}

function section(heading: string, works: [key: string, work: Source][]): string[] {
  if (works.length === 0) return [];
  const rows = [...works].sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, work]) => row(key, work));
  return [`## ${heading}`, `| Cited as | Work | Read | Key |\n| --- | --- | --- | --- |\n${rows.join("\n")}`];
}

function row(key: string, { short, author, title, where, edition, access, note }: Source): string {
  const work = `${author === undefined ? "" : `${author}: `}*${title}*. ${where}. ${edition}.`;
  const read = `${READ[access]}${note === undefined ? "" : `. ${note}`}`;
  return `| ${[short, work, read, `\`${key}\``].map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
}
