/** Whose work is in a build, told beside it: as a page, and as a text beside the script that holds it. */

import { VERSION } from "../../functions/catalogue";
import { page } from "../docs/html-page";
import type { Shipped } from "./shipped";
import { installed, shippedWith, sourceOf } from "./shipped";

/** A bundle by the words of the page, and the packages that webpack put into it. */
export interface Bundled {
  readonly title: string;
  readonly packages: readonly string[];
}

const ENGINE = "@odoo/o-spreadsheet";
const FRAMEWORK = "@odoo/owl";

export function noticesPage(bundled: readonly Bundled[]): string {
  const body = [
    `<p><a href="help.html">Ringbead help</a></p>`,
    `<h1>Licenses and notices</h1>`,
    `<p>Ringbead ${VERSION} is under the MIT license: <a href="licence.txt">its text</a>. ${usesLibraries()}</p>`,
    ...bundled.map(section),
    REBUILD,
  ];
  return page("Ringbead: licenses and notices", body.join("\n"));
}

/** The same beside a script, for whoever opens its folder; `kept` is what the packages say in the script itself. */
export function noticesText({ packages }: Bundled, kept: string): string {
  const rows = shippedWith(packages).map((one) =>
    [
      `${nameOf(one)} ${installed(one.name).version}`,
      `  License: ${installed(one.name).license}, ${one.copy.replace("sheet/", "")}`,
      `  Source:  ${sourceOf(one)}`,
    ].join("\n"),
  );
  return [
    `Ringbead ${VERSION} (MIT license, ../licence.txt). ${usesLibraries()}`,
    "How to build it with another version of them: ../notices.html#rebuild",
    ...rows,
    kept.trim(),
    "",
  ].join("\n\n");
}

/** The prominent notice that the LGPL asks for. */
function usesLibraries(): string {
  const [engine, framework] = [ENGINE, FRAMEWORK].map((name) => {
    const { version, author } = installed(name);
    return `${name} ${version} (copyright ${String(author)})`;
  });
  return `Its browser sheet uses the libraries ${String(engine)} and ${String(framework)}, which are covered by the GNU Lesser General Public License, version 3.`;
}

function section({ title, packages }: Bundled): string {
  const shipped = shippedWith(packages);
  if (shipped.length === 0)
    return `<section><h2>${title}</h2><p>No package is in it; all of it is Ringbead’s own.</p></section>`;
  const heads = ["Package", "Version", "License", "Source"].map((head) => `<th>${head}</th>`).join("");
  return `<section><h2>${title}</h2>\n<div class="table"><table>\n<tr>${heads}</tr>\n${shipped.map(row).join("\n")}\n</table></div></section>`;
}

function row(one: Shipped): string {
  const { version, license } = installed(one.name);
  const source = sourceOf(one);
  const cells = [
    nameOf(one),
    version,
    `<a href="${one.copy}">${license}</a>`,
    `<a href="${source}">${source}</a>`,
  ];
  return `<tr>${cells.map((cell) => `<td>${cell}</td>`).join("")}</tr>`;
}

function nameOf({ name, inside, part }: Shipped): string {
  if (part !== undefined) return `${name}, ${part}`;
  return inside === undefined ? name : `${name}, inside ${inside}`;
}

const REBUILD = `<section id="rebuild"><h2>Another version of the engine</h2>
<p>The libraries under the LGPL are bundled unchanged, as the npm packages of the name and version above. You may replace
them by another version or by one that you have changed, and build the browser sheet again. You need
<a href="https://nodejs.org">Node.js</a> 20.19 or newer and the source of Ringbead, from where this copy came from.</p>
<ol>
<li>Another version: in <code>package.json</code>, set the version of <code>${ENGINE}</code>, and that of
<code>${FRAMEWORK}</code> to what it asks for; then run <code>npm install --ignore-scripts</code>.</li>
<li>A changed one: run <code>npm ci --ignore-scripts</code>, build the library from its source, and put
<code>o_spreadsheet.esm.js</code>, <code>o_spreadsheet.xml</code> and <code>o_spreadsheet.css</code> in place of those in
<code>node_modules/${ENGINE}/dist/</code>; for Owl, the files of <code>node_modules/${FRAMEWORK}/dist/</code>.</li>
<li>Delete the folder <code>.cache/webpack</code>, which remembers packages by their version.</li>
<li>Run <code>npm start</code>: it builds <code>dist/</code> and opens the sheet. <code>npm run build</code> only builds.</li>
</ol>
<p>The licenses of the libraries allow you to change them, and to take the build apart in order to find faults in what you
changed; nothing in Ringbead’s license forbids it.</p></section>`;
