/** What a person does with a sheet and with the list on it, the same in every test. */

import type { OpenPage } from "./open-page";

export type Columns = readonly [first: number, last: number];

/** Chooses a sheet in the pane and inserts it; resolves when it is shown. */
export async function insert(open: OpenPage, title: string, units: "US" | "SI" = "US"): Promise<void> {
  const pane = open.page.locator("#pane");
  await pane.getByLabel("Sheet", { exact: true }).selectOption({ label: title });
  await pane.getByLabel(new RegExp(`^${units}:`)).check();
  await pane.getByRole("button", { name: "Insert", exact: true }).click();
  await pane
    .locator(".status")
    .filter({ hasText: new RegExp(`^Inserted “${title}( \\d+)?” in ${units} units`) })
    .waitFor();
}

/** Drags from one cell to another, each as many columns and rows from a named one. */
export async function dragOver(
  open: OpenPage,
  name: string,
  [first, last]: Columns,
  [top, bottom]: readonly [top: number, bottom: number],
): Promise<void> {
  const from = await open.pointOf(name, first, top);
  const to = await open.pointOf(name, last, bottom);
  await open.page.mouse.move(from.x, from.y);
  await open.page.mouse.down();
  await open.page.mouse.move(to.x, to.y, { steps: 4 });
  await open.page.mouse.up();
}

/** Drags over the first lines of a list, below the named cell in its heading, and presses Delete. */
export async function clearLines(
  open: OpenPage,
  name: string,
  columns: Columns,
  lines: number,
): Promise<void> {
  await dragOver(open, name, columns, [1, lines]);
  await open.page.keyboard.press("Delete");
}

/** Copies the text elsewhere, clicks on a line of a list, the first if none is told, and pastes. */
export async function pasteLines(
  open: OpenPage,
  name: string,
  column: number,
  lines: readonly string[],
  at = 1,
): Promise<void> {
  await open.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await open.page.evaluate((copied) => navigator.clipboard.writeText(copied), lines.join("\n"));
  const { x, y } = await open.pointOf(name, column, at);
  await open.page.mouse.click(x, y);
  await open.page.keyboard.press("Control+V");
}

/** Types the first line into a list, cell by cell with Tab, and pastes the others below it. */
export async function fillLines(
  open: OpenPage,
  name: string,
  column: number,
  [first = [], ...others]: readonly (readonly string[])[],
): Promise<void> {
  const { x, y } = await open.pointOf(name, column, 1);
  await open.page.mouse.click(x, y);
  for (const cell of first) {
    await open.page.keyboard.type(cell);
    await open.page.keyboard.press("Tab");
  }
  const copied = others.map((cells) => cells.join("	"));
  await pasteLines(open, name, column, copied, 2);
}

/** Shows the sheet of exactly this name, by its tab. */
export async function showSheet(open: OpenPage, name: string): Promise<void> {
  await open.page.locator(".o-sheet", { hasText: new RegExp(`^\\s*${name}\\s*$`) }).click();
}

/** On a phone: taps for the grid, types into a named cell, taps for the card. */
export async function editBehindTheCard(open: OpenPage, name: string, typed: string): Promise<void> {
  await open.page.locator("#bar").getByRole("button", { name: "Show the sheet" }).click();
  await open.edit(name, typed);
  await open.page.getByRole("button", { name: "Show the card" }).click();
}

/** Converts the sheet being shown, by the pane's button. */
export async function convert(open: OpenPage, to: "US" | "SI"): Promise<void> {
  const pane = open.page.locator("#pane");
  await pane.getByRole("button", { name: "Convert this sheet" }).click();
  await pane
    .locator(".status")
    .filter({ hasText: new RegExp(`^Converted to ${to}`) })
    .waitFor();
}

/** Deletes the sheet being shown, without the question that the engine asks. */
export function removeSheet(open: OpenPage): Promise<void> {
  return open.page.evaluate(takeOut);
}

/** Runs in the page; stands alone. */
function takeOut(): void {
  interface Engine {
    readonly getters: { getActiveSheetId(): string; getSheetName(sheetId: string): string };
    dispatch(type: string, payload: object): { readonly isSuccessful: boolean };
  }
  const { model } = (globalThis as unknown as { ringbead: { model: Engine } }).ringbead;
  const sheetId = model.getters.getActiveSheetId();
  const sheetName = model.getters.getSheetName(sheetId);
  const { isSuccessful } = model.dispatch("DELETE_SHEET", { sheetId, sheetName });
  if (!isSuccessful) throw new Error(`“${sheetName}” could not be deleted`);
}
