/**
 * npm run build: dist/ from the sources. Fails on anything wrong with the formulas' comments, an example that does not
 * run, an id that functions.js does not associate, and a manifest that Excel would refuse.
 *   npm run build -- --env url=https://addins.example/ringbead
 */

import { copyFileSync, existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";

import { builtErrors } from "./built.mjs";
import { nameByContent } from "./content-names.mjs";
import { generate } from "./generate.mjs";
import { committedRecords, factsOf, figures } from "./help/facts.mjs";
import { helpPages } from "./help/page.mjs";
import { filledIn, manifestErrors, writeManifest } from "./manifest.mjs";
import { DEVELOPMENT_URL, dist, root } from "./project.mjs";
import { LICENCE_COPIES, licenceErrors } from "./shipped.mjs";
import { bundle } from "./webpack.mjs";

/** Files that go into dist/ as they are. */
const COPIES = {
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

/** @param {string} url @param {(line: string) => void} say */
export async function build(url = DEVELOPMENT_URL, say = console.log) {
  say("reading the formulas' comments");
  const { functionsJson, help } = await generate(url);
  rmSync(dist, { recursive: true, force: true });
  mkdirSync(path.join(dist, "sheet"), { recursive: true });
  await bundle(say);
  write("functions.json", `${JSON.stringify(functionsJson, null, 1)}\n`);
  write("help.json", `${JSON.stringify(help, null, 1)}\n`);
  for (const [file, page] of helpPages(await factsOf(committedRecords()))) write(file, page);
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
    ...builtErrors(dist),
    ...licenceErrors(dist),
    ...manifestErrors(manifest, url, (file) => existsSync(path.join(dist, file))),
  ];
  if (errors.length > 0) throw new Error(`The build is not right:\n  ${errors.join("\n  ")}`);
}

/** @param {string} file @param {string} text */
function write(file, text) {
  writeFileSync(path.join(dist, file), text);
}

/** @param {string[]} settings such as url=https://… @returns {string} */
function urlFrom(settings) {
  const given = settings.find((setting) => setting.startsWith("url="))?.slice("url=".length);
  if (given === undefined) return DEVELOPMENT_URL;
  if (!/^https:\/\/[^\s?#]+$/.test(given))
    throw new Error(`url=${given}: Excel loads add-ins from https addresses only`);
  return given.replace(/\/$/, "");
}

if (process.argv[1] === import.meta.filename) {
  const { values } = parseArgs({ options: { env: { type: "string", multiple: true } } });
  try {
    await build(urlFrom(values.env ?? []));
    console.log(`built ${path.relative(process.cwd(), dist) || "."}`);
  } catch (problem) {
    console.error(problem instanceof Error ? problem.message : problem);
    process.exitCode = 1;
  }
}
