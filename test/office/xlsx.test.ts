/** The exported files in a spreadsheet that has no add-in: what it shows and holds is what was computed. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

import type { Units } from "../../src/quantity";
import { fileOf } from "../../taskpane/hosts/browser/save";
import { TEMPLATES } from "../../taskpane/sheets";
import { gas } from "../../taskpane/sheets/gas";
import { procedure } from "../../taskpane/sheets/procedure";
import { dist } from "../../tools/build/project";
import type { Computed } from "../taskpane/computed";
import { computed } from "../taskpane/computed";
import { openSheet } from "../taskpane/open-sheet";
import type { Opened } from "./open-file";
import { openFiles } from "./open-file";

const SHEETS = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as Units[]).map((units) => [`${template.id}-${units}`, template, units] as const),
);
const EDITED = "edited";
const REFUSED = "refused";
const NATIVE = "-native";

let opened: Map<string, Opened>;
let edited: Computed[];
let refused: Computed[];
beforeAll(async () => {
  const files = new Map(
    SHEETS.map(([name]) => [name, readFileSync(path.join(dist, "templates", `${name}.xlsx`))]),
  );
  const open = await openSheet(gas, "SI");
  open.typeBeside("takeoff", -4, 7, "25");
  open.typeBeside("takeoff", -3, 7, "48.3");
  open.typeBeside("takeoff", -2, 7, "40");
  open.insertRow("takeoff", 3);
  open.type("price", "41.5");
  edited = computed(open);
  const other = await openSheet(procedure, "US");
  other.type("wall", "-0.065");
  refused = computed(other);
  opened = openFiles(
    new Map<string, Uint8Array>([
      ...files,
      ...[...files].map(([name, bytes]) => [name + NATIVE, nativeOnly(bytes)] as const),
      [EDITED, await fileOf(open.model)],
      [REFUSED, await fileOf(other.model)],
    ]),
  );
});

/** The same file with formulas that say our answers, and without the answers of native formulas, which have to be computed. */
function nativeOnly(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const path = "xl/worksheets/sheet1.xml";
  const xml = strFromU8(parts[path] ?? new Uint8Array()).replace(
    /(<c [^>]*>)(<f(?: [^>]*)?>[^<]*<\/f>)(<v>([^<]*)<\/v>)/g,
    (_, cell: string, formula: string, answer: string, text: string) => {
      if (!formula.includes("_xldudf_BEAD_")) return cell + formula;
      // A formula still, since the sheet counts them.
      const isText = cell.includes(' t="str"');
      const told = text === "\u00a0" ? "" : text.replaceAll('"', '""');
      return `${cell}<f>${isText ? `"${told}"` : text}</f>${answer}`;
    },
  );
  return zipSync({ ...parts, [path]: strToU8(xml) });
}

function expectSame(name: string, cells: readonly Computed[]): void {
  const file = opened.get(name);
  expect(cells.filter(({ text }) => text !== "").length).toBeGreaterThan(150);
  for (const { at, value, text } of cells) {
    // Without the add-in an error may go by another name.
    if (text.startsWith("#")) {
      expect([at, /^(#|Err:)/.test(file?.shown(at) ?? "")]).toEqual([at, true]);
      continue;
    }
    // A blank answer of ours is kept as a space, which nobody sees; a number without a format has as many digits as fit.
    const general = typeof value === "number" && (file?.held(at)?.z ?? "General") === "General";
    if (!general) expect([at, file?.shown(at).trim()]).toEqual([at, text]);
    if (typeof value !== "number") continue;
    const held = Number(file?.held(at)?.v);
    expect([at, Math.abs(held - value) <= 1e-12 * Math.abs(value)]).toEqual([at, true]);
  }
}

test.each(SHEETS)("%s shows every text and number as computed", async (name, template, units) => {
  expectSame(name, computed(await openSheet(template, units)));
});

test.each(SHEETS)("%s has native formulas that compute the same", async (name, template, units) => {
  expectSame(name + NATIVE, computed(await openSheet(template, units)));
});

test("a sheet with typed values and an inserted row shows all as computed", () => {
  expectSame(EDITED, edited);
});

test("a refused wall: errors stay errors, sentences stay readable", () => {
  expectSame(REFUSED, refused);
  const sentence = "wall = -0.065 in: must be above 0";
  const told = refused.filter(({ text }) => text === sentence);
  expect(told.length).toBeGreaterThan(0);
});
