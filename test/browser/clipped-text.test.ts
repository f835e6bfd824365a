/**
 * Every text of every ready sheet can be read whole: as the engine paints it, each text is held against the rectangle
 * that it is cut to, which ends at the cell or, where the neighbors are blank, behind them.
 */

import { TEMPLATES } from "../../taskpane/sheets";
import type { OpenPage } from "./open-page";
import { openPage, storesNothing } from "./open-page";
import { insert, removeSheet } from "./working";

/** All of a sheet at once, so that nothing is cut off by the edge of the screen. */
const WHOLE = { width: 3000, height: 4000 };

interface Painted {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  /** Pixels of it that are cut off at the left, right, top and bottom. */
  readonly cut: readonly number[];
}

let open: OpenPage;
beforeAll(async () => {
  // Storing after each change would take longer than what is looked at.
  open = await openPage({ ...WHOLE, before: storesNothing });
});
afterAll(async () => {
  await open.close();
});

/**
 * Paints the sheet being shown anew until it stands still, and tells every text that was painted: as text, since a
 * thousand objects take a second on their way out of the page. Runs in the page.
 */
async function paint(): Promise<string> {
  const { model } = (globalThis as unknown as { ringbead: { model: { trigger(event: string): void } } })
    .ringbead;
  const painted: Painted[] = [];
  interface Rectangle {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  }
  const all: Rectangle = { x: -1e6, y: -1e6, width: 2e6, height: 2e6 };
  const states = new WeakMap<
    CanvasRenderingContext2D,
    { now: Rectangle; last: Rectangle; before: Rectangle[] }
  >();
  const stateOf = (
    context: CanvasRenderingContext2D,
  ): { now: Rectangle; last: Rectangle; before: Rectangle[] } => {
    const state = states.get(context) ?? { now: all, last: all, before: [] };
    states.set(context, state);
    return state;
  };
  const isGrid = ({ canvas }: CanvasRenderingContext2D): boolean =>
    canvas.closest(".o-grid") !== null && canvas.closest(".o-figure, .o-figure-wrapper") === null;
  type Method = (this: CanvasRenderingContext2D, ...given: unknown[]) => unknown;
  const own = CanvasRenderingContext2D.prototype as unknown as Record<string, Method | undefined>;
  const kept = new Map<string, Method>();
  const watch = (name: string, look: (context: CanvasRenderingContext2D, given: unknown[]) => void): void => {
    const method = own[name];
    if (method === undefined) throw new Error(`a canvas has no ${name}`);
    kept.set(name, method);
    own[name] = function (...given) {
      look(this, given);
      // Nobody looks at the letters themselves.
      return name === "fillText" ? undefined : method.apply(this, given);
    };
  };
  watch("rect", (context, given) => {
    const [x, y, width, height] = given as [number, number, number, number];
    stateOf(context).last = { x, y, width, height };
  });
  watch("clip", (context) => {
    const state = stateOf(context);
    state.now = state.last;
  });
  watch("save", (context) => {
    const state = stateOf(context);
    state.before.push(state.now);
  });
  watch("restore", (context) => {
    const state = stateOf(context);
    state.now = state.before.pop() ?? all;
  });
  watch("fillText", (context, given) => {
    if (!isGrid(context)) return;
    const [text, x, y] = given as [string, number, number];
    const { now } = stateOf(context);
    const box = context.measureText(text);
    const cut = [
      now.x - (x - box.actualBoundingBoxLeft),
      x + box.actualBoundingBoxRight - (now.x + now.width),
      now.y - (y - box.actualBoundingBoxAscent),
      y + box.actualBoundingBoxDescent - (now.y + now.height),
    ];
    painted.push({ text, x, y, cut });
  });
  // It stands when it is painted twice in the same place.
  let before = "";
  for (;;) {
    painted.length = 0;
    model.trigger("update");
    for (let frames = 0; frames < 3; frames += 1)
      await new Promise((resolve) => requestAnimationFrame(resolve));
    const now = JSON.stringify(painted);
    if (painted.length > 0 && now === before) break;
    before = now;
  }
  for (const [name, method] of kept) own[name] = method;
  return before;
}

/**
 * Makes every column narrower by a twentieth, which is as if the letters were wider: another computer has other fonts,
 * and a typed value may have a digit more. Runs in the page.
 */
function narrow(): void {
  interface Engine {
    readonly getters: {
      getActiveSheetId(): string;
      getNumberCols(sheetId: string): number;
      getColSize(sheetId: string, column: number): number;
    };
    dispatch(type: string, payload: object): void;
  }
  const { model } = (globalThis as unknown as { ringbead: { model: Engine } }).ringbead;
  const { getters } = model;
  const sheetId = getters.getActiveSheetId();
  for (let column = 0; column < getters.getNumberCols(sheetId); column += 1) {
    const size = Math.floor(getters.getColSize(sheetId, column) * 0.95);
    model.dispatch("RESIZE_COLUMNS_ROWS", { sheetId, dimension: "COL", elements: [column], size });
  }
}

/** Where the page that is printed ends; below it stands what the checks work with, and nobody reads. Runs in the page. */
function endOfPage(): { right: number; bottom: number } {
  interface Zone {
    readonly right: number;
    readonly bottom: number;
  }
  interface Getters {
    getActiveSheetId(): string;
    getNamedRanges(): { name: string; range: { sheetId: string; zone: Zone } }[];
    getVisibleRect(zone: Zone): { x: number; y: number; width: number; height: number };
  }
  const { getters } = (globalThis as unknown as { ringbead: { model: { getters: Getters } } }).ringbead.model;
  const page = getters
    .getNamedRanges()
    .find(({ name, range }) => range.sheetId === getters.getActiveSheetId() && name.startsWith("print_"));
  if (page === undefined) throw new Error("the sheet has no page");
  const { x, y, width, height } = getters.getVisibleRect(page.range.zone);
  return { right: x + width, bottom: y + height };
}

/** Every word of every cell of the sheet being shown. Runs in the page. */
function wordsOfCells(): string[] {
  interface Getters {
    getActiveSheetId(): string;
    getNumberCols(sheetId: string): number;
    getNumberRows(sheetId: string): number;
    getEvaluatedCell(position: object): { formattedValue: string };
  }
  const { getters } = (globalThis as unknown as { ringbead: { model: { getters: Getters } } }).ringbead.model;
  const sheetId = getters.getActiveSheetId();
  const words = new Set<string>();
  for (let row = 0; row < getters.getNumberRows(sheetId); row += 1)
    for (let col = 0; col < getters.getNumberCols(sheetId); col += 1) {
      const { formattedValue } = getters.getEvaluatedCell({ sheetId, col, row });
      for (const word of formattedValue.split(/\s+/)) words.add(word);
    }
  return [...words];
}

/** Less than a pixel is the soft edge of a letter. */
const SOFT_EDGE = 1;

async function expectWhole(fewest: number): Promise<void> {
  const painted = JSON.parse(await open.page.evaluate(paint)) as Painted[];
  expect(painted.length).toBeGreaterThan(fewest);
  const { right, bottom } = await open.page.evaluate(endOfPage);
  const read = painted.filter(({ x, y }) => y < bottom || x > right);
  const clipped = read.filter(({ cut }) => cut.some((pixels) => pixels > SOFT_EDGE));
  expect(
    clipped.map(({ text, cut }) => `${text}: ${cut.map((pixels) => pixels.toFixed(0)).join(" ")}`),
  ).toEqual([]);
  // A narrow column breaks a long word where it ends; the letters and numbers of columns and rows are no words.
  const words = new Set(await open.page.evaluate(wordsOfCells));
  const broken = read.filter(
    ({ text }) => !HEADER.test(text) && text.split(/\s+/).some((word) => !words.has(word)),
  );
  expect(broken.map(({ text }) => text)).toEqual([]);
}

const HEADER = /^(?:[A-Z]{1,2}|\d+)$/;

/** Values that make other texts appear: [sheet, what, name of a cell, typed in US, typed in SI]. */
const TYPED: readonly (readonly [
  string,
  string,
  readonly (readonly [name: string, us: string, si: string])[],
])[] = [
  [
    "Procedure sheet",
    "four feeler leaves",
    [
      ["od", "3", "76.2"],
      ["wall", "0.24", "6.1"],
    ],
  ],
  [
    "Procedure sheet",
    "more leaves than have room",
    [
      ["od", "6", "152.4"],
      ["wall", "0.4", "10.2"],
    ],
  ],
  ["Procedure sheet", "a heat input over the maximum", [["heat_most", "1", "0.04"]]],
  ["Procedure sheet", "no maximum to judge by", [["heat_most", "", ""]]],
  ["Procedure sheet", "a wall that is none", [["wall", "0", "0"]]],
  ["Procedure sheet", "text where a number belongs", [["wall", "thin", "thin"]]],
  [
    "Procedure sheet",
    "a large thin tube",
    [
      ["od", "12", "304.8"],
      ["wall", "0.12", "3.05"],
    ],
  ],
  ["Procedure sheet", "a steady arc", [["style", "steady", "steady"]]],
  ["Procedure sheet", "a metal nobody knows", [["material", "unknown", "unknown"]]],
  ["Cycle plan", "a wall that is none", [["wall", "0", "0"]]],
  ["Cycle plan", "text where a number belongs", [["wall", "thin", "thin"]]],
  ["Gas estimate", "text where a number belongs", [["torch_flow", "much", "much"]]],
];

const UNITS = ["US", "SI"] as const;
const SHEETS = TEMPLATES.flatMap(({ title }) => UNITS.map((units) => ({ title, units })));

describe.each(SHEETS)("$title, $units", ({ title, units }) => {
  beforeAll(async () => {
    await insert(open, title, units);
  });
  // Each sheet goes when it has been read: all that is done in a workbook takes longer with each sheet that is in it.
  afterAll(async () => {
    await removeSheet(open);
  });

  const mine = TYPED.filter(([sheet]) => sheet === title);
  for (const [, what, edits] of mine)
    test(`${what}: no text is cut off`, async () => {
      const before: (readonly [name: string, content: string])[] = [];
      for (const [name, us, si] of edits) {
        const typed = units === "US" ? us : si;
        before.push([name, await open.put(name, typed)]);
        // That the cell takes it: a blank one has null.
        expect(String(await open.value(name))).toBe(typed === "" ? "null" : typed);
      }
      await expectWhole(100);
      for (const [name, content] of before) await open.put(name, content);
    });

  test("no text is cut off, nor in letters a twentieth wider", async () => {
    await expectWhole(100);
    await open.page.evaluate(narrow);
    await expectWhole(100);
  });
});

test("the measurement sees a text that is cut off", async () => {
  await insert(open, "Procedure sheet");
  await open.page.getByRole("button", { name: "Unlock this sheet" }).click();
  await open.editBeside("wall", 5, 0, "a text that is far wider than the cell it is in");
  await open.editBeside("wall", 6, 0, "its neighbor");
  await expect(expectWhole(100)).rejects.toThrow("a text that is far wider");
});
