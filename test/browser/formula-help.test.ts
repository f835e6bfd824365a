/** What a person reads of a formula in the pane and while typing it: columns, units, what it rests on. */

import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { insert } from "./working";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage();
});
beforeEach(async () => {
  await choose(/^US/);
});
afterEach(() => {
  expect(open.errors).toEqual([]);
});
afterAll(async () => {
  await open.close();
});

const LABEL = /Words, such as/;

/** Types into the search box and opens the first formula that is found. */
async function found(words: string): Promise<ReturnType<OpenPage["page"]["locator"]>> {
  const pane = open.page.locator("#pane");
  await pane.getByLabel(LABEL).fill(words);
  const first = pane.locator(".found details").first();
  await first.locator("summary").click();
  return first;
}

/** A form in the other system is inserted by the pane. */
async function choose(system: RegExp): Promise<void> {
  await open.page.locator("#pane").getByLabel(system).check();
}

/** In an empty cell of the form, which stays selected. */
async function enterFormula(): Promise<void> {
  await open.editBeside("wall", 6, 0, "=BEAD.STANDOFF(0.065)");
  const { x, y } = await open.pointOf("wall", 6, 0);
  await open.page.mouse.click(x, y);
}

test("everyday words find the formula, British ones too, and another weld is told to be none of ours", async () => {
  expect(await (await found("colour")).locator("summary").textContent()).toMatch(/^PURGE_TINT /);
  expect(await (await found("how many amps for this wall")).locator("summary").textContent()).toMatch(
    /^AMPS_WALL /,
  );
  const pane = open.page.locator("#pane");
  await pane.getByLabel(LABEL).fill("fillet");
  await pane.getByText("0 formulas", { exact: true }).waitFor();
  await pane
    .getByRole("status")
    .getByText(/plans butt welds of tube to tube/)
    .waitFor();
});

test("a table's columns are named by number, with the units of the system that is chosen", async () => {
  const us = await found("current taper");
  const columns = us.getByRole("list", { name: "Columns of AMPS_SECTORS" }).getByRole("listitem");
  expect(await columns.allTextContents()).toEqual([
    "from, °",
    "to, °",
    "mean current, A",
    "fraction of the first sector's current",
    "rise ahead of the arc at the sector's end, °F",
  ]);
  await us.getByText("Outside diameter, in", { exact: true }).waitFor();
  await choose(/^SI/);
  // What was open stays open.
  const other = open.page.locator("#pane .found details").first();
  const inMillimeters = other.getByRole("list", { name: "Columns of AMPS_SECTORS" }).getByRole("listitem");
  expect((await inMillimeters.allTextContents()).at(-1)).toBe(
    "rise ahead of the arc at the sector's end, °C",
  );
  await other.getByText("Outside diameter, mm", { exact: true }).waitFor();
  expect(await open.page.locator("#pane .found").textContent()).not.toContain("in | mm");
});

test("what a formula rests on, the weakest first", async () => {
  const formula = await found("AMPS_MELT");
  const rests = formula.getByRole("list", { name: "What AMPS_MELT rests on" }).getByRole("listitem");
  const words = await rests.locator("strong").allTextContents();
  expect(words).toEqual(["estimate", "from memory", "published"]);
  expect(await rests.first().textContent()).toContain("No measured weld stands beside it yet");
  expect(await rests.last().textContent()).toContain("Stenbacka");
});

test("the selected cell is told in the units of its own sheet, whatever is chosen for the next", async () => {
  await enterFormula();
  const pane = open.page.locator("#pane");
  const cell = pane
    .locator("section")
    .filter({ has: open.page.getByRole("heading", { name: "Selected cell" }) });
  await cell
    .getByText("Arc gap between electrode tip and tube, in: half the wall plus an allowance.")
    .waitFor();
  await cell.getByText("Rests on, weakest first").waitFor();
  await cell.getByRole("listitem").filter({ hasText: "common practice" }).waitFor();
  await choose(/^SI/);
  await cell
    .getByText("Arc gap between electrode tip and tube, in: half the wall plus an allowance.")
    .waitFor();
  await insert(open, "Procedure sheet", "SI");
  await enterFormula();
  await cell
    .getByText("Arc gap between electrode tip and tube, mm: half the wall plus an allowance.")
    .waitFor();
});

test("while a formula is typed, its columns and arguments are told in the units of the sheet", async () => {
  await open.newWorkbook();
  const typing = async (): Promise<string> => {
    const { x, y } = await open.pointOf("wall", 6, 0);
    await open.page.mouse.click(x, y);
    await open.page.keyboard.type("=bead.melt_section(0.065,");
    const assistant = open.page.locator(".o-formula-assistant");
    await assistant.waitFor();
    const text = (await assistant.textContent()) ?? "";
    await open.page.keyboard.press("Escape");
    await open.page.keyboard.press("Escape");
    return text;
  };
  const us = await typing();
  expect(us).toContain(
    "Columns: 1 face width, in; 2 root width, 0 when not through, in; 3 depth melted under the arc, in.",
  );
  expect(us).toContain("Wall thickness, in");
  expect(us).not.toContain("in | mm");
  await choose(/^SI/);
  await insert(open, "Procedure sheet", "SI");
  const other = await typing();
  expect(other).toContain("1 face width, mm;");
  expect(other).toContain("Wall thickness, mm");
});

test("advice that is for Excel alone is not given here", async () => {
  const text = await open.page.locator("#pane main").textContent();
  expect(text).toContain("Repair formulas");
  expect(text).not.toMatch(/_xldudf_|#BUSY!|Excel/);
});
