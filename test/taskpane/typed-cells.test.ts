import type { SmallSheet } from "./small-form";
import { openSmall } from "./small-form";

/** January 2, 2026 as a date serial: day 1 is January 1, 1900, and a day that never was, February 29, 1900, counts. */

let sheet: SmallSheet;
beforeEach(async () => {
  jest.useFakeTimers({ now: new Date(2026, 5, 1) });
  sheet = await openSmall();
});
afterEach(() => {
  jest.useRealTimers();
});

function paste(text: string, at: string): void {
  const { col, row } = sheet.position(at);
  const { isSuccessful } = sheet.model.dispatch("PASTE_FROM_OS_CLIPBOARD", {
    target: [{ left: col, right: col, top: row, bottom: row }],
    clipboardContent: { text },
  });
  expect(isSuccessful).toBe(true);
}

function select(at: string): void {
  const { col, row } = sheet.position(at);
  sheet.model.selection.selectCell(col, row);
}

describe("a cell kept as text", () => {
  test.each(["1/2", "1-1/2", "1 1/2 in", "5-3", "0:30", "5 %", "0.50", "1e3"])(
    "keeps %s as typed",
    (content) => {
      sheet.type("B10", content);
      expect([sheet.value("B10"), sheet.shown("B10"), sheet.format("B10")]).toEqual([content, content, "@"]);
    },
  );

  test.each([
    ["'1/2", "1/2"],
    ["'0.065", "0.065"],
  ])("takes the apostrophe of %s as the sign that a text follows", (content, kept) => {
    sheet.type("B10", content);
    expect([sheet.value("B10"), sheet.format("B10")]).toEqual([kept, "@"]);
  });

  test("keeps what is pasted and filled", () => {
    paste("1/2\n3/4", "B10");
    expect([sheet.value("B10"), sheet.value("B11"), sheet.format("B11")]).toEqual(["1/2", "3/4", "@"]);
    select("B11");
    sheet.model.dispatch("COPY");
    const { col, row } = sheet.position("B12");
    sheet.model.dispatch("PASTE", { target: [{ left: col, right: col, top: row, bottom: row }] });
    expect([sheet.value("B12"), sheet.format("B12")]).toEqual(["3/4", "@"]);
  });
});

describe("a cell with a number format", () => {
  test.each([
    ["5 %", undefined, 0.05],
    ["$0.07", undefined, 0.07],
  ])("keeps it when %s is typed, and for the next number", (content, detected, value) => {
    sheet.type("B5", content, detected);
    expect(sheet.value("B5")).toBeCloseTo(value, 12);
    expect([sheet.format("B5"), sheet.shown("B5")]).toEqual(["0.0000", value.toFixed(4)]);
    sheet.type("B5", "2");
    expect([sheet.format("B5"), sheet.shown("B5")]).toEqual(["0.0000", "2.0000"]);
  });

  // A formula reads a size as it is written, and the sheet's checks tell what is none: a date would be neither.
  test.each([
    ["1/2", "m/d"],
    ["0:30", "hh:mm:ss"],
  ])("keeps it when %s is typed, which stays as written", (content, detected) => {
    sheet.type("B5", content, detected);
    expect([sheet.value("B5"), sheet.format("B5")]).toEqual([content, "0.0000"]);
    sheet.type("B5", "2");
    expect([sheet.format("B5"), sheet.shown("B5")]).toEqual(["0.0000", "2.0000"]);
  });

  test("keeps it, and its look, when text from elsewhere or another cell is pasted", () => {
    const style = sheet.model.getters.getCellStyle(sheet.position("B5"));
    paste("1/2", "B5");
    expect(sheet.shown("B5")).toBe("1/2");
    sheet.type("F1", "5 %");
    expect(sheet.format("F1")).toBe("0%");
    select("F1");
    sheet.model.dispatch("COPY");
    const { col, row } = sheet.position("B5");
    sheet.model.dispatch("PASTE", { target: [{ left: col, right: col, top: row, bottom: row }] });
    expect([sheet.format("B5"), sheet.shown("B5")]).toEqual(["0.0000", "0.0500"]);
    expect(sheet.model.getters.getCellStyle(sheet.position("B5"))).toEqual(style);
  });

  test("takes a size copied from a cell of text as that text, not as a date", () => {
    sheet.type("B10", "1/2");
    select("B10");
    sheet.model.dispatch("COPY");
    const { col, row } = sheet.position("B5");
    sheet.model.dispatch("PASTE", { target: [{ left: col, right: col, top: row, bottom: row }] });
    expect([sheet.value("B5"), sheet.format("B5")]).toEqual(["1/2", "0.0000"]);
  });

  test("keeps it when a percentage is filled into it", () => {
    sheet.type("C9", "5 %");
    select("C9");
    const { col, row } = sheet.position("C10");
    sheet.model.dispatch("AUTOFILL_SELECT", { col, row });
    sheet.model.dispatch("AUTOFILL");
    expect(typeof sheet.value("C10")).toBe("number");
    expect(sheet.format("C10")).toBe("0.0");
  });

  test("one step of undo takes the content back", () => {
    sheet.type("B5", "1/2", "m/d");
    sheet.model.dispatch("REQUEST_UNDO");
    expect([sheet.value("B5"), sheet.format("B5")]).toEqual([0.065, "0.0000"]);
    sheet.model.dispatch("REQUEST_REDO");
    expect([sheet.value("B5"), sheet.format("B5")]).toEqual(["1/2", "0.0000"]);
  });

  test("a person may still choose another format", () => {
    const { sheetId, col, row } = sheet.position("B5");
    sheet.model.dispatch("SET_FORMATTING", {
      sheetId,
      target: [{ left: col, right: col, top: row, bottom: row }],
      format: "0.00",
    });
    sheet.type("B5", "0.5");
    expect(sheet.shown("B5")).toBe("0.50");
  });

  test("an inserted row is typed into as the others are", () => {
    const { sheetId, row } = sheet.position("C11");
    sheet.model.dispatch("ADD_COLUMNS_ROWS", {
      sheetId,
      sheetName: sheet.model.getters.getSheetName(sheetId),
      dimension: "ROW",
      base: row,
      quantity: 1,
      position: "before",
    });
    sheet.type("C11", "5 %");
    sheet.type("B11", "1/2");
    expect([sheet.format("C11"), sheet.shown("C11"), sheet.value("B11")]).toEqual(["0.0", "0.1", "1/2"]);
  });
});

describe("a cell without a format", () => {
  test.each([
    ["1/2", "m/d", "1/2"],
    ["5 %", undefined, 0.05],
  ])("holds %s without a format of its own", (content, detected, value) => {
    sheet.type("B6", content, detected);
    expect([sheet.value("B6"), sheet.format("B6")]).toEqual([value, undefined]);
    sheet.type("B6", "2");
    expect([sheet.shown("B6"), sheet.format("B6")]).toEqual(["2", undefined]);
  });

  test("of words keeps a date as written, and a number as a number", () => {
    sheet.type("B7", "5-3", "m-d");
    expect([sheet.value("B7"), sheet.format("B7")]).toEqual(["5-3", undefined]);
    sheet.type("B7", "304");
    expect(sheet.value("B7")).toBe(304);
  });

  test("a formula stays a formula, and a cell that is not typed in is the engine's", () => {
    sheet.type("B6", "=1/2");
    expect(sheet.value("B6")).toBe(0.5);
    sheet.type("F1", "1/2", "m/d");
    expect(sheet.format("F1")).toBe("m/d");
  });
});
