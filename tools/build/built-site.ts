/** dist/: the bundles, the pages, the manifest and what they load, checked. */

import { copyFileSync, existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";

import { FORMULAS } from "../../functions/catalogue";
import { committedRecords, factsOf, figures } from "../docs/facts";
import { helpPages } from "../docs/page";
import { builtErrors } from "./built";
import { bundle } from "./bundle";
import { nameByContent } from "./content-names";
import { generate } from "./generate";
import { filledIn, writeManifest } from "./manifest";
import { manifestErrors } from "./manifest-errors";
import { DEVELOPMENT_URL, dist, root } from "./project";
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
  for (const configuration of [functions, pane, sheet]) {
    say(`bundling the ${configuration.name ?? ""}`);
    await bundle(configuration);
  }
  write("functions.json", `${JSON.stringify(functionsJson, null, 1)}\n`);
  write("help.json", `${JSON.stringify(help, null, 1)}\n`);
  for (const [file, page] of helpPages(factsOf(committedRecords()))) write(file, page);
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
  for (const [from, to] of Object.entries(COPIES)) copyFileSync(path.join(root, from), path.join(dist, to));
  nameByContent(dist);

  say("checking what was built");
  const errors = [
    ...builtErrors(dist, FORMULAS),
    ...licenceErrors(dist),
    ...manifestErrors(manifest, url, (file) => existsSync(path.join(dist, file))),
  ];
  if (errors.length > 0) throw new Error(`The build is not right:\n  ${errors.join("\n  ")}`);
}

function write(file: string, text: string): void {
  writeFileSync(path.join(dist, file), text);
}
