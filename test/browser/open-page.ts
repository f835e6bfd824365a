/** Opens the built browser sheet in Chromium and works in it as a person does: pointer, keyboard, eyes. */

import type { Browser, Page } from "playwright-core";

import type { Serving } from "../../tools/dev/serve";
import { serve } from "../../tools/dev/serve";
import { launch } from "./launch";

/** A turn of the wheel, how many bring any cell into sight, and how near to the edge a cell is not. Pixels. */
const TURN = 400;
const MOST_TURNS = 40;
const EDGE = 40;

export interface OpenPage {
  readonly page: Page;
  /** Requests that left the machine's own server. */
  readonly foreign: string[];
  /** Errors the page reported. */
  readonly errors: string[];
  /** What a named cell of the sheet being shown holds. */
  value(name: string): Promise<string | number | boolean>;
  /** Double click on a named cell, type, Enter. */
  edit(name: string, typed: string): Promise<void>;
  /**
   * Writes into a named cell, past pointer, keyboard and the list of words that it takes, where how it is typed is not what
   * is tested; gives what was in it.
   */
  put(name: string, content: string): Promise<string>;
  /** The same on the cell some columns and rows from a named one. */
  editBeside(name: string, columns: number, rows: number, typed: string): Promise<void>;
  /** Opens a named cell, or the one some columns and rows from it, by double click, with all that is in it chosen. */
  startEditing(name: string, columns?: number, rows?: number): Promise<void>;
  /** Click on a named cell. */
  select(name: string): Promise<void>;
  /** Middle of a named cell on the screen, or of the one some columns and rows from it. */
  pointOf(name: string, columns?: number, rows?: number): Promise<{ x: number; y: number }>;
  /** Right click on the head of a row, some rows below a named cell, and an item of its menu. */
  rowMenu(name: string, rows: number, item: string | RegExp): Promise<void>;
  /** Another workbook, as a newcomer has it, by the bar's menu: a third of what a new page costs. */
  newWorkbook(): Promise<void>;
  close(): Promise<void>;
}

export interface Look {
  readonly width?: number;
  readonly height?: number;
  readonly colorScheme?: "light" | "dark";
  readonly forcedColors?: "active" | "none";
  /** The page in place of the sheet's. */
  readonly path?: string;
  /** Runs in the page before its own scripts. */
  readonly before?: () => void;
}

/** A browser that keeps nothing for a page, for `before`. */
export function storesNothing(): void {
  Object.defineProperty(globalThis, "indexedDB", { value: undefined });
}

/** One browser and one server for all pages of a test file. */
let started: Promise<readonly [Browser, Serving]> | undefined;
/** A page that a test is done with; the next one begins in it, which spares half of a start. */
let idle: Page | undefined;
afterAll(async () => {
  if (started === undefined) return;
  const [browser, server] = await started;
  await browser.close();
  await server.close();
});

function start(): Promise<readonly [Browser, Serving]> {
  return Promise.all([launch(), serve(4280)]);
}

/** A page in a context of its own, of which nothing is remembered. */
async function newPage(browser: Browser, look: Look): Promise<Page> {
  const context = await browser.newContext({
    viewport: sizeOf(look),
    colorScheme: look.colorScheme ?? "light",
    forcedColors: look.forcedColors ?? "none",
  });
  return context.newPage();
}

/** The page as a new one has it: what the last test stored and granted, its other tabs and its media are gone. */
async function emptied(page: Page, look: Look, address: string): Promise<Page> {
  const context = page.context();
  for (const other of context.pages()) if (other !== page) await other.close();
  await context.clearPermissions();
  await page.mouse.move(0, 0);
  // Of the same origin, and without a script that could store anything.
  await page.goto(`${address}/icon-32.png`);
  await page.evaluate(forgetAll);
  await page.setViewportSize(sizeOf(look));
  await page.emulateMedia({
    media: null,
    colorScheme: look.colorScheme ?? "light",
    forcedColors: look.forcedColors ?? "none",
  });
  return page;
}

function sizeOf(look: Look): { width: number; height: number } {
  return { width: look.width ?? 1400, height: look.height ?? 1400 };
}

export async function openPage(look: Look = {}): Promise<OpenPage> {
  started ??= start();
  const [browser, server] = await started;
  const last = look.before === undefined && idle?.isClosed() === false ? idle : undefined;
  if (last !== undefined) idle = undefined;
  const page = last === undefined ? await newPage(browser, look) : await emptied(last, look, server.address);
  const context = page.context();
  const foreign: string[] = [];
  const errors: string[] = [];
  page.on("request", (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(server.address))
      foreign.push(request.url());
  });
  page.on("pageerror", (error) => errors.push(error.stack ?? error.message));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  if (look.before !== undefined) await page.addInitScript(look.before);
  await page.goto(server.address + (look.path ?? "/sheet/"));
  if (look.path === undefined) await page.waitForSelector("html[data-ready]");

  /** Turns the wheel until the cell is in sight. */
  const pointOf = async (name: string, columns = 0, rows = 0): Promise<{ x: number; y: number }> => {
    const grid = await page.locator(".o-grid-overlay").boundingBox();
    if (grid === null) throw new Error("the page shows no grid");
    const headers = await page.evaluate(headersOf);
    for (let turn = 0; turn < MOST_TURNS; turn += 1) {
      const middle = await page.evaluate(rectangleOf, { name, columns, rows });
      const at = { x: grid.x + middle.x - headers.width, y: grid.y + middle.y - headers.height };
      const away = middle.isVisible ? 0 : middle.isBelow ? TURN : -TURN;
      if (away === 0 && at.y < grid.y + grid.height - EDGE) return at;
      await page.mouse.move(grid.x + grid.width / 2, grid.y + grid.height / 2);
      await page.mouse.wheel(0, away === 0 ? TURN : away);
      await page.evaluate(twoFrames);
    }
    throw new Error(`${name} does not come into sight`);
  };
  const startEditing = async (name: string, columns = 0, rows = 0): Promise<void> => {
    const { x, y } = await pointOf(name, columns, rows);
    await page.mouse.dblclick(x, y);
    // On a busy machine the editor opens after the next key, which would go to the sheet.
    await page.waitForFunction(isEditing);
    await page.evaluate(twoFrames);
    await page.keyboard.press("Control+A");
  };
  const editBeside = async (name: string, columns: number, rows: number, typed: string): Promise<void> => {
    await startEditing(name, columns, rows);
    await page.keyboard.type(typed);
    await page.keyboard.press("Enter");
  };
  return {
    page,
    foreign,
    errors,
    pointOf,
    value: (name) => page.evaluate(valueOf, name),
    put: (name, content) => page.evaluate(putInto, { name, content }),
    edit: (name, typed) => editBeside(name, 0, 0, typed),
    editBeside,
    startEditing,
    select: async (name) => {
      const { x, y } = await pointOf(name);
      await page.mouse.click(x, y);
    },
    rowMenu: async (name, rows, item) => {
      const { y } = await pointOf(name, 0, rows);
      const grid = await page.locator(".o-grid-overlay").boundingBox();
      await page.mouse.click((grid?.x ?? 0) - 15, y, { button: "right" });
      await page.locator(".o-menu-item").filter({ hasText: item }).click();
      await page.evaluate(twoFrames);
    },
    newWorkbook: async () => {
      const name = page.locator("#workbook-name");
      const before = await name.textContent();
      await name.click();
      await page.locator("#workbooks").getByRole("button", { name: "New workbook", exact: true }).click();
      await page.waitForFunction(isNamedOtherwise, before);
    },
    close: async () => {
      for (const event of ["request", "pageerror", "console", "dialog"]) page.removeAllListeners(event);
      if (page.isClosed() || look.before !== undefined) await context.close();
      else idle = page;
    },
  };
}

interface Zone {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface Engine {
  readonly ringbead: {
    readonly model: {
      dispatch(type: string, payload: object): { readonly isSuccessful: boolean };
      readonly getters: {
        getActiveSheetId(): string;
        getNamedRanges(): { name: string; range: { sheetId: string; zone: Zone } }[];
        getCell(position: object): { content: string } | undefined;
        getEvaluatedCell(position: object): { value: string | number | boolean };
        getVisibleRect(zone: Zone): { x: number; y: number; width: number; height: number };
        getVisibleRectWithoutHeaders(zone: Zone): { x: number; y: number };
        expandZone(sheetId: string, zone: Zone): Zone;
        getActiveMainViewport(): Zone;
      };
    };
  };
}

// These run in the page; each stands alone, since nothing of this file is there.

function valueOf(name: string): string | number | boolean {
  const { getters } = (globalThis as unknown as Engine).ringbead.model;
  const sheetId = getters.getActiveSheetId();
  const zone = getters
    .getNamedRanges()
    .find((one) => one.range.sheetId === sheetId && one.name.split("__")[0] === name)?.range.zone;
  if (zone === undefined) throw new Error(`no cell is named ${name}`);
  return getters.getEvaluatedCell({ sheetId, col: zone.left, row: zone.top }).value;
}

function putInto({ name, content }: { name: string; content: string }): string {
  const { model } = (globalThis as unknown as Engine).ringbead;
  const sheetId = model.getters.getActiveSheetId();
  const zone = model.getters
    .getNamedRanges()
    .find((one) => one.range.sheetId === sheetId && one.name.split("__")[0] === name)?.range.zone;
  if (zone === undefined) throw new Error(`no cell is named ${name}`);
  const position = { sheetId, col: zone.left, row: zone.top };
  const before = model.getters.getCell(position)?.content ?? "";
  const { isSuccessful } = model.dispatch("UPDATE_CELL", { ...position, content });
  // What is there already is refused as no change.
  if (!isSuccessful && content !== before) throw new Error(`${name} refuses ${content}`);
  return before;
}

/** All that this origin has stored, but what its cache holds. */
async function forgetAll(): Promise<void> {
  localStorage.clear();
  sessionStorage.clear();
  for (const { name = "" } of await indexedDB.databases())
    await new Promise((resolve, reject) => {
      const request = indexedDB.deleteDatabase(name);
      request.onsuccess = resolve;
      request.onerror = reject;
    });
}

function isNamedOtherwise(name: string | null): boolean {
  return document.querySelector("#workbook-name")?.textContent !== name;
}

function isEditing(): boolean {
  return document.activeElement?.matches(".o-grid-composer *") === true;
}

/** What the editor begins with stands in it by then. */
function twoFrames(): Promise<unknown> {
  return new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
}

function rectangleOf(cell: { name: string; columns: number; rows: number }): {
  x: number;
  y: number;
  isVisible: boolean;
  isBelow: boolean;
} {
  const { getters } = (globalThis as unknown as Engine).ringbead.model;
  const sheetId = getters.getActiveSheetId();
  const zone = getters
    .getNamedRanges()
    .find((one) => one.range.sheetId === sheetId && one.name.split("__")[0] === cell.name)?.range.zone;
  if (zone === undefined) throw new Error(`no cell is named ${cell.name}`);
  const [column, row] = [zone.left + cell.columns, zone.top + cell.rows];
  const one = { left: column, right: column, top: row, bottom: row };
  const { x, y, width, height } = getters.getVisibleRect(getters.expandZone(sheetId, one));
  const isBelow = row > getters.getActiveMainViewport().top;
  return { x: x + width / 2, y: y + height / 2, isVisible: width > 0 && height > 0, isBelow };
}

function headersOf(): { width: number; height: number } {
  const { getters } = (globalThis as unknown as Engine).ringbead.model;
  const corner = { left: 0, right: 0, top: 0, bottom: 0 };
  const withHeaders = getters.getVisibleRect(corner);
  const without = getters.getVisibleRectWithoutHeaders(corner);
  return { width: withHeaders.x - without.x, height: withHeaders.y - without.y };
}
