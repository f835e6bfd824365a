/** The add-in's help as pages of HTML: the reference with the guides, the how-to pages, and the page of checks. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { VERSION } from "../../functions/catalogue";
import { HELP } from "../../functions/help";
import { root } from "../build/project";
import { checksPage } from "./checks";
import type { Facts } from "./facts";
import { HOW_TO, howToFile } from "./how-to";
import { page } from "./html-page";
import { html } from "./markdown";
import { referencePage } from "./reference";

/** Guides that stand in the help page itself, in their order. */
const GUIDES = ["windows", "mac", "web", "google-sheets", "javascript-macros", "trouble", "administrators"];
/** Shown by its script. */
const SEARCH = `<form id="search" role="search" hidden>
<label for="search-words">Find a formula</label>
<input id="search-words" type="search" autocomplete="off" placeholder="standoff, cfh, duty, root">
<ul id="search-found"></ul>
<p id="search-told" role="status"></p>
</form>`;

/** Pages by file name. */
export function helpPages(facts: Facts): Map<string, string> {
  const isFormula = (id: string): boolean => HELP.some((formula) => formula.id === id);
  const howTo = HOW_TO.map((name) => {
    const markdown = written("how-to", `${name}.md`);
    return { file: howToFile(name), markdown, heading: /^# (.+)$/m.exec(markdown)?.[1] ?? name };
  });
  const guides = GUIDES.map((name) => written("help", `${name}.html`));
  const links = [
    ...howTo.map(({ file, heading }) => [file, heading]),
    ...guides.map((guide) => {
      const [, id = "", heading = ""] = /<section id="([^"]+)">\s*<h2>([^<]+)<\/h2>/.exec(guide) ?? [];
      return [`#${id}`, heading];
    }),
    ["how-near.html", "How near the amps are"],
    ["checks.html", "How the numbers are checked"],
    ["notices.html", "Licenses and notices"],
  ].map(([href = "", heading = ""]) => `<li><a href="${href}">${heading}</a></li>`);
  const start = `<h1>Ringbead ${VERSION}</h1>\n<p>Formulas for planning orbital TIG (GTAW) tube welds.</p>\n<ul>\n${links.join("\n")}\n</ul>`;
  return new Map([
    [
      "help.html",
      page(
        "Ringbead help",
        `${start}\n${SEARCH}\n<article>\n${html(referencePage(facts), isFormula)}</article>\n${guides.join("\n")}`,
        "help-search.js",
      ),
    ],
    [
      "how-near.html",
      page("How near the amps are", home(html(written("how-near-the-amps-are.md"), isFormula))),
    ],
    ["checks.html", page("How the numbers are checked", home(html(checksPage(facts), isFormula)))],
    ...howTo.map(
      ({ file, markdown, heading }) => [file, page(heading, home(html(markdown, isFormula)))] as const,
    ),
  ]);
}

/** A file of docs/ as it stands. */
function written(...file: readonly string[]): string {
  return readFileSync(path.join(root, "docs", ...file), "utf8");
}

function home(body: string): string {
  return `<p><a href="help.html">Ringbead help</a></p>\n${body}`;
}
