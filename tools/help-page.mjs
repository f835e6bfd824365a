/** The help page: one section a formula, from the same help.json that ABOUT and the pane show. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { root } from "./project.mjs";

/** Pages that are written by hand, in their order. */
const PAGES = ["windows", "mac", "web", "trouble", "administrators"];

/** @param {{ namespace: string, version: string, formulas: import("./metadata.mjs").FormulaHelp[] }} help */
export function helpPage({ namespace, version, formulas }) {
  const families = [...new Set(formulas.map(({ family }) => family))];
  const contents = families.map((family) => {
    const links = formulas
      .filter((formula) => formula.family === family)
      .map(({ id }) => `<a href="#${id}">${id}</a>`);
    return `<li><strong>${escaped(title(family))}</strong>: ${links.join(", ")}</li>`;
  });
  const sections = formulas.map((formula) => section(formula, namespace));
  const pages = PAGES.map((page) =>
    readFileSync(path.join(root, "taskpane", "help", `${page}.html`), "utf8"),
  );
  const guides = pages.map((page) => {
    const [, id = "", heading = ""] = /<section id="([^"]+)">\s*<h2>([^<]+)<\/h2>/.exec(page) ?? [];
    return `<li><a href="#${id}">${heading}</a></li>`;
  });
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Ringbead help</title>
<link rel="stylesheet" href="help.css">
</head>
<body>
<main>
<h1>Ringbead ${escaped(version)}: every formula</h1>
<p>Formulas for planning orbital TIG (GTAW) tube welds. The numbers are starting values: prove them on a test coupon. The qualified procedure, local codes and licensed practice govern.</p>
<p><code>units</code> is the last argument wherever a unit differs between the systems: <code>"US"</code> (default) or <code>"SI"</code>. An optional argument left out or blank takes its default; zero is a number. A refusal is <code>#VALUE!</code> (an argument that cannot be) or <code>#N/A</code> (no answer), with a sentence that <code>${namespace}.REASON</code> gives in full.</p>
<ul class="contents">
${guides.join("\n")}
${contents.join("\n")}
</ul>
${pages.join("\n")}
${sections.join("\n")}
</main>
</body>
</html>
`;
}

/** @param {import("./metadata.mjs").FormulaHelp} formula @param {string} namespace */
function section(formula, namespace) {
  const names = formula.parameters.map(({ name, optional, repeating }) =>
    repeating ? `[${name}…]` : optional ? `[${name}]` : name,
  );
  const parameters = formula.parameters.map(
    ({ name, description }) =>
      `<tr><th scope="row"><code>${escaped(name)}</code></th><td>${escaped(description)}</td></tr>`,
  );
  const rows = [
    ["Returns", formula.returns],
    ["Equation", formula.equation],
    ["Valid for", formula.validity],
    ["Source", formula.source],
  ];
  return `<section id="${formula.id}">
<h2>${namespace}.${formula.id}</h2>
<p>${escaped(formula.meaning)}</p>
<p><code>${namespace}.${formula.id}(${names.map(escaped).join(", ")})</code></p>
${parameters.length > 0 ? `<table><caption>Arguments</caption><tbody>${parameters.join("")}</tbody></table>` : ""}
<dl>
${rows
  .filter(([, text]) => text !== "")
  .map(([label, text]) => `<dt>${label}</dt><dd>${escaped(text ?? "")}</dd>`)
  .join("\n")}
<dt>Example</dt><dd><code>${escaped(formula.example)}</code> gives ${escaped(formula.result)}</dd>
</dl>
</section>`;
}

/** @param {string} family */
function title(family) {
  return `${family.charAt(0).toUpperCase()}${family.slice(1).replaceAll("-", " ")}`;
}

/** @param {string} text */
function escaped(text) {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
