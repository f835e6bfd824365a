/** Markdown as the add-in's pages show it: equations as MathML, links and anchors of the pages, figures beside them. */

import path from "node:path";

import { Marked } from "marked";
import temml from "temml";

import { HOW_TO, howToFile } from "./how-to";

/** Where the Markdown files of docs/ are found among the built pages. */
const PAGES: Readonly<Record<string, string>> = {
  "reference.md": "help.html",
  "how-the-numbers-are-checked.md": "checks.html",
  "how-near-the-amps-are.md": "how-near.html",
  ...Object.fromEntries(HOW_TO.map((name) => [`${name}.md`, howToFile(name)])),
};

/** One display line of an equation as MathML. */
export function mathml(latex: string): string {
  const math = temml.renderToString(latex, { displayMode: true, throwOnError: true });
  // The pages' policy allows no style written into them, and browsers set the equations well without.
  return math.replace(/ style="[^"]*"/g, "");
}

/** The anchor of a formula is its own name. */
export function html(markdown: string, isFormula: (id: string) => boolean): string {
  const anchorOf = (anchor: string): string =>
    isFormula(anchor.toUpperCase()) ? anchor.toUpperCase() : anchor;
  const marked = new Marked({
    renderer: {
      code({ text, lang }) {
        return lang === "math" ? `<div class="equation" tabindex="0">${mathml(text)}</div>\n` : false;
      },
      heading({ tokens, depth, text }) {
        const id = anchorOf(text.toLowerCase().replace(/[^\w]+/g, "-"));
        return `<h${String(depth)} id="${id}">${this.parser.parseInline(tokens)}</h${String(depth)}>\n`;
      },
      image({ href, text }) {
        return `<img class="figure" src="figures/${path.posix.basename(href)}" alt="${attribute(text)}">`;
      },
      link({ href, tokens }) {
        return `<a href="${attribute(addressOf(href, anchorOf))}">${this.parser.parseInline(tokens)}</a>`;
      },
      // Nothing of ours is written as HTML, so whatever looks like it is text.
      html({ text }) {
        return attribute(text);
      },
      table(table) {
        const row = (cells: typeof table.header, tag: "th" | "td"): string =>
          `<tr>${cells.map(({ tokens }) => `<${tag}>${this.parser.parseInline(tokens)}</${tag}>`).join("")}</tr>`;
        const body = table.rows.map((cells) => row(cells, "td")).join("\n");
        return `<div class="table"><table><thead>${row(table.header, "th")}</thead><tbody>\n${body}\n</tbody></table></div>\n`;
      },
    },
  });
  return marked.parse(markdown, { async: false });
}

function addressOf(href: string, anchorOf: (anchor: string) => string): string {
  const [file = "", anchor] = href.split("#");
  const page = file === "" ? "" : (PAGES[path.posix.basename(file)] ?? file);
  return anchor === undefined ? page : `${page}#${anchorOf(anchor)}`;
}

function attribute(plain: string): string {
  return plain
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
