/** npm run dev: serves the browser sheet from the sources; a change in them shows in the open page a moment later. */

import { spawn } from "node:child_process";
import { mkdirSync, watch, writeFileSync } from "node:fs";
import path from "node:path";

import webpack from "webpack";

import { generate } from "../build/generate";
import { noticesPage } from "../build/notices";
import { generated, root } from "../build/project";
import { SHIPPED } from "../build/shipped";
import { bundles } from "../build/webpack";
import { committedRecords, factsOf } from "../docs/facts";
import { helpPages } from "../docs/page";
import { openInBrowser } from "./desktop";
import { livePages, PAGE } from "./live-pages";
import { serveOptions } from "./options";
import { serve } from "./serve";

const FOLDER = path.join(root, ".cache", "dev");
/** A burst of saves is one change. */
const PAUSE_MS = 30;
const PANE_STYLES = path.join(root, "taskpane/pane/pane.css");

const { port, open } = serveOptions();
console.log("reading the records");
await generate();
mkdirSync(FOLDER, { recursive: true });
for (const [file, text] of helpPages(factsOf(committedRecords())))
  writeFileSync(path.join(FOLDER, file), text);
// Webpack has not told yet what it bundles; the list is what a build holds it to.
const packages = SHIPPED.map(({ name }) => name);
writeFileSync(path.join(FOLDER, "notices.html"), noticesPage([{ title: "In the browser sheet", packages }]));

const pages = livePages();
const { address } = await serve(port, console.log, { folder: FOLDER, first: pages.answer });
const { functions, sheet } = bundles("development", FOLDER);
let opened = false;

webpack([functions, sheet]).watch({ aggregateTimeout: PAUSE_MS }, (problem, stats) => {
  if (problem !== null) throw problem;
  if (stats === undefined) return;
  if (stats.hasErrors()) {
    console.error(stats.toString({ all: false, errors: true }));
    return;
  }
  const took = Math.max(...stats.stats.map((one) => one.endTime - one.startTime));
  console.log(`bundled in ${String(took)} ms`);
  reload();
  if (opened) return;
  opened = true;
  console.log(`\nRingbead's browser sheet: ${address}/sheet/\nStop it with Ctrl+C.`);
  if (open) openInBrowser(`${address}/sheet/`);
});

function reload(): void {
  if (pages.reload() > 0) console.log("the open page loads anew");
}

/** In a process of its own, since this one has the records loaded as they were. */
let records: ReturnType<typeof spawn> | undefined;
function readRecords(): void {
  records?.kill();
  records = spawn(process.execPath, [path.join(root, "tools", "run.mjs"), "records"], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
  });
}

afterChange([path.join(root, "functions"), path.join(root, "src")], readRecords);
afterChange([PAGE, PANE_STYLES, path.join(generated, "functions.json")], reload);

function afterChange(places: readonly string[], act: () => void): void {
  let waiting: NodeJS.Timeout | undefined;
  for (const place of places) {
    watch(place, { recursive: true }, () => {
      clearTimeout(waiting);
      waiting = setTimeout(act, PAUSE_MS);
    });
  }
}
