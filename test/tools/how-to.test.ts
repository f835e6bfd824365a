/** The how-to pages do what they say: their examples run, their labels exist, their invented jobs give their tables. */

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import { FORMULAS } from "../../taskpane/pane/help";
import { TEMPLATES } from "../../taskpane/sheets";
import { bid } from "../../taskpane/sheets/bid";
import { coupons } from "../../taskpane/sheets/coupons";
import { cycle } from "../../taskpane/sheets/cycle";
import { gas } from "../../taskpane/sheets/gas";
import { procedure } from "../../taskpane/sheets/procedure";
import type { Template } from "../../taskpane/sheets/sheet";
import { sizeTable } from "../../taskpane/sheets/size-table";
import { weldLog } from "../../taskpane/sheets/weld-log";
import { HOW_TO } from "../../tools/docs/how-to";
import { disagreement } from "../../tools/docs/stated-result";
import { typedCall } from "../../tools/docs/typed-call";
import { bead, typedCells } from "../bead";
import { workThrough } from "./work-through";

const FOLDER = "docs/how-to";
const IDS = new Set(FORMULAS.map(({ id }) => id));

/** Each page, the sheet it works in, and the cautions it may not be without. */
const PAGES: readonly (readonly [page: string, template: Template, cautions: readonly RegExp[]])[] = [
  ["bid.md", bid, [/cylinders secured/i, /shock/, /Arc rays/]],
  ["coupons.md", coupons, [/Arc rays/, /shock/, /cylinders secured/i]],
  ["gas.md", gas, [/cylinders secured/, /a purged bore, vessel or pit[^.]*confined space/]],
  ["heat-input.md", procedure, [/shock/, /Arc rays/, /licensed to sign govern/, /cylinders secured/]],
  ["log.md", weldLog, [/Arc rays/, /shock/, /19\.5/, /hexavalent chromium/]],
  ["procedure.md", procedure, [/test coupon/, /Arc rays/, /shock/, /cylinders secured/, /never enter alone/]],
  ["program.md", procedure, [/test coupon/, /Arc rays/, /shock/, /cylinders secured/i]],
  ["shift.md", cycle, [/arc rays/, /shock/, /cylinders secured/, /never work there alone/]],
  ["sizes.md", sizeTable, [/test coupon/, /Arc rays/, /shock/, /cylinders secured/i]],
];
const EVERYWHERE = [
  /qualified procedure/,
  /argon displaces air/i,
  /confined space/,
  /vent [^.]*at the top/i,
  /keep the vent open/,
  /Invented example: /,
];

function read(page: string): string {
  return readFileSync(path.join(FOLDER, page), "utf8");
}

/** What stands between the pairs of a mark. */
function between(text: string, pattern: RegExp): string[] {
  return [...text.matchAll(pattern)].map(([, found = ""]) => found);
}

interface Example {
  readonly formula: string;
  readonly result: string;
}

/** Every code span followed by an arrow and a second code span. */
function examplesIn(text: string): Example[] {
  return [...text.matchAll(/`(=[^`]*)` → `([^`]*)`/g)].map(([, formula = "", result = ""]) => ({
    formula,
    result,
  }));
}

/** What an example gets wrong, or undefined. A formula that refuses throws. */
function wrong({ formula, result }: Example): string | undefined {
  const call = typedCall(formula);
  const { id } = call;
  const about = FORMULAS.find((one) => one.id === id);
  if (about === undefined) throw new Error(`no formula ${id}`);
  return disagreement(bead(id, ...typedCells(about, call)), result);
}

/** Where the words of the browser sheet's bar and card are. */
const BAR = ["bar.ts", "actions-menu.ts", "lock-toggle.ts", "bench-card/views.ts"];

/** Words that a person can see and press or read: those of the pane, of the browser sheet's bar, and of one sheet. */
function labels(template: Template): Set<string> {
  const pane = readdirSync("taskpane/pane")
    .filter((file) => file.endsWith(".ts"))
    .flatMap((file) => between(readFileSync(path.join("taskpane/pane", file), "utf8"), /"([^"\n]+)"/g));
  const bar = BAR.flatMap((file) =>
    between(readFileSync(path.join("taskpane/hosts/browser", file), "utf8"), /"([^"\n]+)"/g),
  );
  const titles = TEMPLATES.map(({ title }) => title);
  const { cells } = template.plan("US");
  const words = cells.map(({ content }) => String(content)).filter((content) => !content.startsWith("="));
  // A label that follows the sheet is a formula: "Travel speed", or "Travel speed, typed".
  const following = cells.flatMap(({ look, content }) =>
    look === "label" && String(content).startsWith("=")
      ? between(String(content).replaceAll(`""`, ""), /"([^"]+)"/g)
      : [],
  );
  return new Set([...pane, ...bar, ...titles, ...words, ...following]);
}

/** All that stands in the cells of a sheet, the sentences inside their formulas too. */
function sentences(template: Template): string {
  return template
    .plan("US")
    .cells.map(({ content }) => String(content))
    .join("\n");
}

test("there is a check for every page, and each is in the help and in README", () => {
  const files = readdirSync(FOLDER).sort();
  expect(files).toEqual(PAGES.map(([page]) => page));
  expect(HOW_TO.map((name) => `${name}.md`).sort()).toEqual(files);
  const readme = readFileSync("README.md", "utf8");
  expect(files.filter((file) => !readme.includes(`(docs/how-to/${file})`))).toEqual([]);
});

describe.each(PAGES)("%s", (page, template, cautions) => {
  const text = read(page);

  test("each arrowed example gives what it says, and no other arrow stands behind code", () => {
    const examples = examplesIn(text);
    expect(examples.length).toBeGreaterThanOrEqual(5);
    expect(examples.flatMap((example) => wrong(example) ?? [])).toEqual([]);
    expect(text.match(/`\s*→/g)).toHaveLength(examples.length);
    expect(between(text, /`(=[^`]*)`/g).every((code) => /\(.*\)$/.test(code))).toBe(true);
  });

  test("names formulas that there are, and links to the place of each", () => {
    const named = between(text, /BEAD\.([A-Z0-9_]+)/g);
    expect(named.filter((id) => !IDS.has(id))).toEqual([]);
    const links = [...text.matchAll(/\[BEAD\.([A-Z0-9_]+)\]\(([^)]*)\)/g)];
    expect(links.length).toBeGreaterThanOrEqual(3);
    for (const [, id = "", target] of links) expect(target).toBe(`../reference.md#${id.toLowerCase()}`);
    expect(text.match(/\]\(/g)).toHaveLength(links.length);
  });

  test("sets in bold what stands in the pane or in its sheet, word for word", () => {
    const known = labels(template);
    const bold = between(text, /\*\*([^*]+)\*\*/g);
    expect(bold.length).toBeGreaterThanOrEqual(10);
    expect(bold.filter((label) => !known.has(label))).toEqual([]);
  });

  test("quotes what the sheet can say", () => {
    const said = sentences(template);
    // What a table quotes is read off the sheet below.
    const prose = text.replace(/^\|.*$/gm, "");
    expect(between(prose, /“([^”]+)”/g).filter((quoted) => !said.includes(quoted))).toEqual([]);
  });

  test("its invented example, typed into the sheet, shows what its tables say", async () => {
    const { read: rows, wrong: problems } = await workThrough(text, template);
    expect(problems).toEqual([]);
    expect(rows).toBeGreaterThanOrEqual(5);
  });

  test("is plain CommonMark with its cautions", () => {
    expect(text).not.toMatch(/<\/?[a-z][^>]*>/i);
    const [, section = ""] = text.split("\n## Cautions\n");
    for (const caution of cautions) expect(section).toMatch(caution);
    for (const caution of EVERYWHERE) expect(text).toMatch(caution);
  });
});

describe("these checks can fail", () => {
  test("on a result, a refusal and a label that are wrong", () => {
    expect(wrong({ formula: "=BEAD.STANDOFF(0.065)", result: "0.0426" })).toMatch(/says 0\.0426/);
    expect(() => wrong({ formula: "=BEAD.STANDOFF(-0.065)", result: "0.0425" })).toThrow(
      "wall = -0.065 in: must be above 0",
    );
    expect(labels(procedure).has("Purge time, quick")).toBe(false);
    expect(labels(gas).has("Standoff")).toBe(false);
  });

  test("on a table that reads otherwise, and on a row that is not there", async () => {
    const page = read("procedure.md");
    const other = page.replace("0.0425 in |", "0.0515 in |");
    expect((await workThrough(other, procedure)).wrong).toEqual([
      "Standoff: says 0.0515 in, shows 0.0425 in",
    ]);
    await expect(workThrough(page.replace("**Rotor speed**", "**Rotor**"), procedure)).rejects.toThrow(
      "no computed row says Rotor",
    );
  });
});
