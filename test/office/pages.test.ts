/** On paper a form breaks where it is told to and nowhere else: as many pages as the file has parts. */

import { fileOf } from "../../taskpane/hosts/browser/save";
import { cycle } from "../../taskpane/sheets/cycle";
import { procedure } from "../../taskpane/sheets/procedure";
import { openSheet } from "../taskpane/open-sheet";
import { printed } from "./open-file";

test("the procedure sheet is printed on three pages, the cycle plan on two", async () => {
  const files = new Map<string, Uint8Array>();
  for (const template of [procedure, cycle]) {
    files.set(template.id, await fileOf((await openSheet(template, "US")).model));
  }
  expect([...printed(files)].map(([name, { pages }]) => [name, pages])).toEqual([
    ["procedure", 3],
    ["cycle", 2],
  ]);
});
