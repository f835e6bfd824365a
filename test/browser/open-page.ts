/** Opens the built browser sheet in Chromium and works in it as a person does: pointer, keyboard, eyes. */

import type { Browser, Page } from "playwright-core";
import { chromium } from "playwright-core";

import { serve } from "../../tools/dev/serve";

const SETTINGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-component-update",
];

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
  /** The same on the cell some columns and rows from a named one. */
  editBeside(name: string, columns: number, rows: number, typed: string): Promise<void>;
  /** Click on a named cell. */
  select(name: string): Promise<void>;
  /** Middle of a named cell on the screen, or of the one some columns and rows from it. */
  pointOf(name: string, columns?: number, rows?: number): Promise<{ x: number; y: number }>;
  /** Right click on the head of a row, some rows below a named cell, and an item of its menu. */
  rowMenu(name: string, rows: number, item: string | RegExp): Promise<void>;
  close(): Promise<void>;
}

export interface Look {
  readonly width?: number;
  readonly height?: number;
  readonly colorScheme?: "light" | "dark";
  readonly forcedColors?: "active" | "none";
  /** Runs in the page before its own scripts. */
  readonly before?: () => void;
}

export async function openPage(look: Look = {}): Promise<OpenPage> {
  const server = await serve(4280);
  const executablePath = process.env.RINGBEAD_CHROMIUM;
  const browser: Browser = await chromium.launch({
    args: SETTINGS,
    ...(executablePath === undefined ? {} : { executablePath }),
  });
  const context = await browser.newContext({
    viewport: { width: look.width ?? 1400, height: look.height ?? 1400 },
    colorScheme: look.colorScheme ?? "light",
    forcedColors: look.forcedColors ?? "none",
  });
  const page = await context.newPage();
  const foreign: string[] = [];
  const errors: string[] = [];
  page.on("request", (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(server.address))
      foreign.push(request.url());
  });
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  if (look.before !== undefined) await page.addInitScript(look.before);
  await page.goto(`${server.address}/sheet/`);
  await page.waitForSelector("html[data-ready]");

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
  const editBeside = async (name: string, columns: number, rows: number, typed: string): Promise<void> => {
    const { x, y } = await pointOf(name, columns, rows);
    await page.mouse.dblclick(x, y);
    // On a busy machine the editor opens after the next key, which would go to the sheet.
    await page.waitForFunction(isEditing);
    await page.evaluate(twoFrames);
    await page.keyboard.press("Control+A");
    await page.keyboard.type(typed);
    await page.keyboard.press("Enter");
  };
  return {
    page,
    foreign,
    errors,
    pointOf,
    value: (name) => page.evaluate(valueOf, name),
    edit: (name, typed) => editBeside(name, 0, 0, typed),
    editBeside,
    select: async (name) => {
      const { x, y } = await pointOf(name);
      await page.mouse.click(x, y);
    },
    rowMenu: async (name, rows, item) => {
      const { y } = await pointOf(name, 0, rows);
      const grid = await page.locator(".o-grid-overlay").boundingBox();
      await page.mouse.click((grid?.x ?? 0) - 15, y, { button: "right" });
      await page.locator(".o-menu-item").filter({ hasText: item }).first().click();
      await page.evaluate(twoFrames);
    },
    close: async () => {
      await browser.close();
      await server.close();
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
      readonly getters: {
        getActiveSheetId(): string;
        getNamedRanges(): { name: string; range: { sheetId: string; zone: Zone } }[];
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
