/** Labels and formulas of a form are guarded, a copy of a form is a form. By a person's actions. */

import { pagesOf } from "./on-paper";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { convert, showSheet } from "./working";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage();
});
beforeEach(async () => {
  await open.newWorkbook();
});
afterAll(async () => {
  await open.close();
});

function said(words: string | RegExp): Promise<void> {
  return open.page.locator("#notice").getByText(words).waitFor();
}

test("typed cells, and cells beside the form, are free", async () => {
  await open.edit("wall", "0.083");
  expect(await open.value("wall")).toBe(0.083);
  await open.editBeside("wall", 0, 9, "a note");
  expect(await open.page.locator("#notice").isVisible()).toBe(false);
});

test("a formula and a label are not typed over, and are when the sheet is unlocked", async () => {
  const standoff = await open.value("standoff");
  await open.edit("standoff", "1");
  await said(
    /^B\d+ is a label or a formula of this sheet: type into the tinted cells, or unlock the sheet\.$/,
  );
  expect(await open.value("standoff")).toBe(standoff);
  await open.select("standoff");
  await open.page.keyboard.press("Delete");
  expect(await open.value("standoff")).toBe(standoff);
  await open.page.getByRole("button", { name: "Unlock this sheet" }).click();
  await open.edit("standoff", "1");
  expect(await open.value("standoff")).toBe(1);
  // What was typed over still shows in the checks.
  expect(await open.value("summary")).toMatch(/^▲/);
  await open.page.getByRole("button", { name: "Lock this sheet" }).click();
  await open.edit("heat", "1");
  await said(/is a label or a formula/);
});

test("a row of the two-column form is not deleted", async () => {
  const before = [await open.value("wall"), await open.value("standoff")];
  await open.rowMenu("wall", 0, /^\s*Delete row/);
  await said(/^Rows of this sheet can be deleted only inside a list/);
  expect([await open.value("wall"), await open.value("standoff")]).toEqual(before);
});

test("a copy of a sheet converts, has names and checks of its own, and leaves the first as it is", async () => {
  await open.edit("wall", "0.083");
  await open.page.locator(".o-sheet", { hasText: "Procedure sheet" }).click({ button: "right" });
  await open.page
    .locator(".o-menu-item")
    .filter({ hasText: /^\s*Duplicate\s*$/ })
    .click();
  await open.page.locator(".o-sheet", { hasText: /Copy of Procedure sheet|Procedure sheet.*copy/i }).click();
  expect(await open.value("wall")).toBe(0.083);
  await convert(open, "SI");
  expect(await open.value("wall")).toBeCloseTo(2.1082, 9);
  await open.edit("wall", "-1");
  expect(await open.value("summary")).toMatch(/^▲.*tube/i);
  expect(await pagesOf(open.page, "Letter")).toBe(3);
  await showSheet(open, "Procedure sheet");
  expect([await open.value("sheet_units"), await open.value("wall")]).toEqual(["US", 0.083]);
  expect(open.errors).toEqual([]);
});
