/** The page for the first person with a real Excel does what it says: its examples run, its labels and its counts are true. */

import { existsSync, readFileSync } from "node:fs";

import { printedPages } from "../../taskpane/files/pages";
import { snapshotOf } from "../../taskpane/hosts/browser/engine-sheet";
import { procedure } from "../../taskpane/sheets/procedure";
import { VERSION } from "../../taskpane/pane/help";
import { bead } from "../bead";
import { openSheet } from "../taskpane/open-sheet";

const PAGE = readFileSync("docs/first-ten-minutes.md", "utf8");
const STEPS = PAGE.split(/^\d+\. /m).slice(1);
const words = (file: string): string => readFileSync(file, "utf8").replace(/\s+/g, " ");

test("ten steps, each with what to see and what to write down; README leads there", () => {
  expect(STEPS).toHaveLength(10);
  for (const step of STEPS) {
    expect(step).toMatch(/You should see /);
    expect(step).toMatch(/If not: /);
  }
  expect(words("README.md")).toContain("(docs/first-ten-minutes.md)");
  expect(words("DEVELOPERS.md")).toContain("`docs/first-ten-minutes.md`");
});

test.each([
  ["registration", /seconds pass/],
  ["a formula", /`=BEAD\.STANDOFF\(0\.065\)` → `0\.0425`/],
  ["a refusal", /“wall = -0\.065 in: must be above 0”/],
  ["insert", /press \*Insert\*/],
  ["undo", /once\./],
  ["protect", /\*Protect the computed cells\*/],
  ["close and open", /open it again/],
  ["a file without repair", /without an offer to repair/],
  ["the @", /`=@BEAD\.`/],
  ["print preview", /print preview/i],
])("asks about %s", (_, asked) => {
  expect(PAGE).toMatch(asked);
});

test("the formulas give what it says", () => {
  expect(bead("STANDOFF", 0.065)).toBeCloseTo(0.0425, 12);
  expect(() => bead("STANDOFF", -0.065)).toThrow("wall = -0.065 in: must be above 0");
  expect(PAGE).toContain(`such as ${VERSION}`);
});

test("the pane has every label that it names", () => {
  const pane = ["pane", "trouble", "explain"].map((name) => words(`taskpane/pane/${name}.ts`)).join(" ");
  for (const label of [
    "Insert a sheet",
    "Insert",
    "Repair formulas",
    "Convert this sheet",
    "Selected cell",
    "Protect the computed cells",
  ]) {
    expect(PAGE).toContain(`*${label}*`);
    expect(pane).toContain(label);
  }
});

test("the sheet says what it says, and is stored on as many pages", async () => {
  const open = await openSheet(procedure, "US");
  const { model } = open;
  expect(String(open.value("summary"))).toContain("All 16 checks hold");
  const starts = printedPages(snapshotOf(model, model.getters.getActiveSheetId()))?.starts ?? [];
  expect(starts.length + 1).toBe(3);
  expect(PAGE).toContain("on three pages");
  expect(PAGE).toMatch(/nothing here is a weld procedure/);
});

describe("the help and DEVELOPERS tell what was learned of real Excels", () => {
  const trouble = words("docs/help/trouble.html");
  const administrators = words("docs/help/administrators.html");
  test.each([
    [
      "repair before recalculation",
      trouble,
      /press “Repair formulas” in the pane first, and only then “Recalculate/,
    ],
    ["the pane kept open", trouble, /Keep the pane open while you work/],
    [
      "the browser's permission",
      trouble,
      /Chrome and Edge ask once .* local network\. .*“Local network access”/,
    ],
    ["#CALC!", trouble, /<dt>A cell shows #CALC!<\/dt>/],
    ["#CONNECT!", trouble, /#CONNECT!<\/dt>/],
    ["other add-ins' names and the @", trouble, /X\.XLL!_xldudf_BEAD_…, \[2\]!_xldudf_BEAD_… or =@BEAD\.…/],
    [
      "the header that formulas need",
      administrators,
      /Access-Control-Allow-Origin: \*<\/code> the pane opens and no formula/,
    ],
    ["the check of a host", administrators, /npm run check -- https:\/\/addins\.example\/ringbead/],
    [
      "the same in README",
      words("README.md"),
      /without the header `Access-Control-Allow-Origin` opens the pane and answers no formula/,
    ],
    [
      "why Office's script is not served by us",
      words("DEVELOPERS.md"),
      /Office's script comes from its own network and is never served by us/,
    ],
  ])("%s", (_, page, told) => {
    expect(page).toMatch(told);
  });

  test("and the files that the build writes for hosts are named as they are", () => {
    for (const name of ["_headers", "web.config", "nginx.conf"]) expect(administrators).toContain(name);
    expect(existsSync("tools/dev/check.ts")).toBe(true);
  });
});
