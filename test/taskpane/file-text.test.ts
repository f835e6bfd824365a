/**
 * Text that a file has to spell out. ECMA-376 Part 1, 22.9.2.19 (ST_Xstring): a character that XML cannot hold is written
 * _xHHHH_, and an underscore that would begin such a number by itself is written _x005F_.
 */

import { read } from "@e965/xlsx";
import { strFromU8, unzipSync } from "fflate";

import { readFile } from "../../taskpane/files/read";
import type { Snapshot, SnapshotCell } from "../../taskpane/files/sheet-state";
import { storedCellText, storedText } from "../../taskpane/files/text";
import { writeFile } from "../../taskpane/files/write";

const SHEET: Snapshot = {
  name: "Sheet",
  widths: [10],
  heights: [15],
  cells: [],
  merges: [],
  names: [],
  lists: [],
  ranges: [],
  signs: [],
  charts: [],
  grayed: [],
  frozenRows: 0,
  frozenColumns: 0,
  gridLines: true,
};

async function written(sheet: Partial<Snapshot>): Promise<{ bytes: Uint8Array; parts: Map<string, string> }> {
  const bytes = await writeFile([{ ...SHEET, ...sheet }], () => false);
  return {
    bytes,
    parts: new Map(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)])),
  };
}

/** Whatever is no Char of XML 1.0, 2.2. */
const NO_XML = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/u;

function expectXml(parts: ReadonlyMap<string, string>): void {
  for (const [path, text] of parts) {
    expect([path, NO_XML.test(text)]).toEqual([path, false]);
  }
}

const HALF = "\uD83D";

test.each([
  ["the standard's own example", "_x0041_", "_x005F_x0041_"],
  ["two in a row", "_x0041_x0042_", "_x005F_x0041_x005F_x0042_"],
  ["one that is spelled out already", "_x005F_", "_x005F_x005F_"],
  ["small letters", "_xabcd_", "_x005F_xabcd_"],
  ["too few or other digits", "_x041_ _x00G1_ x0041_", "_x041_ _x00G1_ x0041_"],
  ["no character of Unicode", "a\uFFFFb\uFFFE", "a_xFFFF_b_xFFFE_"],
  ["half a pair", `a${HALF}b\uDE00`, "a_xD83D_b_xDE00_"],
  ["a whole pair", "😀", "😀"],
])("%s", (_, text, stored) => {
  expect(storedText(text)).toBe(stored);
});

test("a cell takes 32 767 characters, and is cut before a character that would be halved", () => {
  expect(storedCellText("x".repeat(32_767))).toHaveLength(32_767);
  expect(storedCellText("x".repeat(32_768))).toBe("x".repeat(32_767));
  expect(storedCellText(`${"x".repeat(32_766)}😀`)).toBe("x".repeat(32_766));
  expect(storedCellText(`${"x".repeat(32_765)}😀`)).toBe(`${"x".repeat(32_765)}😀`);
  // What counts is what the cell shows, not how it is spelled.
  expect(storedCellText(`${"x".repeat(32_760)}_x0041_`)).toBe(`${"x".repeat(32_760)}_x005F_x0041_`);
});

const TEXTS = ["_x0041_", "a\uFFFFb", "a\u0001b", "line\r\nbreak", `${"x".repeat(32_767)}tail`, " _x000D_ "];

test("in a file: typed, as an answer and inside a formula; XML takes it and two readers find the text again", async () => {
  const cells = TEXTS.flatMap((value, i): SnapshotCell[] => [
    { at: `A${String(i + 1)}`, value, style: {} },
    { at: `B${String(i + 1)}`, value, formula: `=BEAD.ABOUT(A${String(i + 1)})`, style: {} },
  ]);
  const inside: SnapshotCell = { at: "C1", value: 1, formula: '=LEN("_x0041_")', style: {} };
  const { bytes, parts } = await written({ cells: [...cells, inside] });
  expectXml(parts);
  const expected = TEXTS.map((text) => text.slice(0, 32_767));
  const again = (await readFile(bytes)).sheets[0]?.cells ?? [];
  const other = read(bytes, { type: "array" }).Sheets.Sheet ?? {};
  expected.forEach((text, i) => {
    for (const column of ["A", "B"]) {
      const at = `${column}${String(i + 1)}`;
      expect([at, again.find((cell) => cell.at === at)?.value]).toEqual([at, text]);
    }
    // The other reader takes line ends as one sign.
    const held = String((other[`A${String(i + 1)}`] as { v?: unknown } | undefined)?.v);
    expect(held.replaceAll("\r\n", "\n")).toBe(text.replaceAll("\r\n", "\n"));
  });
  expect(parts.get("xl/worksheets/sheet1.xml")).toContain('<f>LEN("_x005F_x0041_")</f>');
  expect(again.find(({ at }) => at === "C1")?.formula).toBe('=LEN("_x0041_")');
});

test("a formula longer than 8192 letters is kept as its value, with a word on it", async () => {
  const sum = (terms: number): string => `=${Array.from({ length: terms }, () => "1").join("+")}`;
  const { parts } = await written({
    cells: [
      { at: "A1", value: 4096, formula: sum(4096), style: {} },
      { at: "A2", value: 4097, formula: sum(4097), style: {} },
    ],
  });
  const xml = parts.get("xl/worksheets/sheet1.xml") ?? "";
  // 4096 ones and 4095 signs are 8191 letters; one more of both are 8193.
  expect(xml.match(/<f>/g)?.length).toBe(1);
  expect(xml).toContain("<v>4097</v>");
  expect([...parts.values()].some((text) => text.includes("The value when this file was saved"))).toBe(true);
});

test("names of sheets, titles and messages, and lists that are too long for a file", async () => {
  const { bytes, parts } = await written({
    name: "Job\uFFFF _x0041_",
    names: [{ name: "wall", spoken: "wall__1", range: "A1" }],
    lists: [
      { range: "A1", allowed: ["_x0041_", "b\uFFFF"] },
      { range: "A2", allowed: ["y".repeat(254), "zz"] },
    ],
    ranges: [
      {
        range: "A3",
        least: 0,
        most: 1,
        title: "t\uFFFE".repeat(20),
        message: `${"m".repeat(255)}more`,
        isText: false,
      },
    ],
  });
  expectXml(parts);
  const [sheet] = (await readFile(bytes)).sheets;
  expect(sheet?.name).toBe("Job -x0041_");
  expect(sheet?.names).toEqual([{ name: "wall", spoken: "wall__1", range: "A1" }]);
  expect(sheet?.lists.map(({ range }) => range)).toEqual(["A1"]);
  expect(sheet?.ranges[0]?.message).toBe("m".repeat(255));
});
