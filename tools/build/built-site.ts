/** dist/: the bundles, the pages, the manifest and what they load, checked. */

import { copyFileSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";

import { FORMULAS } from "../../functions/catalogue";
import { committedRecords, factsOf, figures } from "../docs/facts";
import { helpPages } from "../docs/page";
import { builtErrors } from "./built";
import { bundle } from "./bundle";
import { nameByContent } from "./content-names";
import { generate } from "./generate";
import { hostingFiles } from "./hosting";
import { filledIn, writeManifest } from "./manifest";
import { manifestErrors } from "./manifest-errors";
import { DEVELOPMENT_URL, dist, root } from "./project";
import type { Bundled } from "./notices";
import { noticesPage, noticesText } from "./notices";
import { scriptsErrors } from "./scripts/checked";
import { writeScripts } from "./scripts/written";
import { LICENCE_COPIES, licenceErrors } from "./shipped";
import { bundles } from "./webpack";

/** Files that go into dist/ as they are. */
const COPIES: Readonly<Record<string, string>> = {
  "taskpane/pane/pane.css": "pane.css",
  "docs/help/help.css": "help.css",
  "taskpane/hosts/browser/index.html": "sheet/index.html",
  "manifest/icon-16.png": "icon-16.png",
  "manifest/icon-32.png": "icon-32.png",
  "manifest/icon-64.png": "icon-64.png",
  "manifest/icon-80.png": "icon-80.png",
  LICENSE: "licence.txt",
  ...LICENCE_COPIES,
};

export async function build(url = DEVELOPMENT_URL, say: (line: string) => void = console.log): Promise<void> {
  say("reading the records");
  const { functionsJson, help } = await generate(url);
  rmSync(dist, { recursive: true, force: true });
  mkdirSync(path.join(dist, "sheet"), { recursive: true });
  const { functions, pane, sheet } = bundles("production");
  const bundled: Bundled[] = [];
  for (const configuration of [functions, pane, sheet]) {
    const title = configuration.name ?? "";
    say(`bundling the ${title}`);
    bundled.push({ title: `In the ${title}`, packages: await bundle(configuration) });
  }
  writeScripts(dist);
  write("functions.json", `${JSON.stringify(functionsJson, null, 1)}\n`);
  write("help.json", `${JSON.stringify(help, null, 1)}\n`);
  for (const [file, page] of helpPages(factsOf(committedRecords()))) write(file, page);
  write("notices.html", noticesPage(bundled));
  writeSheetNotices(bundled.at(-1));
  mkdirSync(path.join(dist, "figures"));
  for (const figure of figures().keys()) {
    copyFileSync(
      path.join(root, "docs", "help", "figures", `${figure}.svg`),
      path.join(dist, "figures", `${figure}.svg`),
    );
  }
  write("taskpane.html", filledIn("taskpane/hosts/excel/taskpane.html", url));
  const manifest = writeManifest(url);
  write("manifest.xml", manifest);
  for (const [file, text] of hostingFiles(url)) write(file, text);
  for (const [from, to] of Object.entries(COPIES)) copyFileSync(path.join(root, from), path.join(dist, to));
  nameByContent(dist);

  say("checking what was built");
  const errors = [
    ...builtErrors(dist, FORMULAS),
    ...scriptsErrors(dist, FORMULAS),
    ...licenceErrors(
      bundled.flatMap(({ packages }) => packages),
      (copy) => existsSync(path.join(dist, copy)),
    ),
    ...manifestErrors(manifest, url, (file) => existsSync(path.join(dist, file))),
  ];
  if (errors.length > 0) throw new Error(`The build is not right:\n  ${errors.join("\n  ")}`);
}

/** Webpack puts there what the packages say in the script itself, which not all of them do. */
function writeSheetNotices(sheet: Bundled | undefined): void {
  const file = path.join("sheet", "sheet.js.LICENSE.txt");
  if (sheet !== undefined) write(file, noticesText(sheet, readFileSync(path.join(dist, file), "utf8")));
}

function write(file: string, text: string): void {
  writeFileSync(path.join(dist, file), text);
}
