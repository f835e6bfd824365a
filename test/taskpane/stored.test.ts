import type { SnapshotCell } from "../../taskpane/files/sheet-state";
import type { Stored } from "../../taskpane/files/stored";
import { storedFormula } from "../../taskpane/files/stored";

const VOCABULARY = {
  names: new Map([
    ["wall__3", "wall"],
    ["wall__4", "'Line 2'!wall"],
  ]),
  sheets: new Map([
    ["Gas", "Gas"],
    ["A line's name that is too long for a file", "A line's name"],
  ]),
  givesTable: (id: string): boolean => id === "TABLE",
};

function stored(formula: string, more: Partial<SnapshotCell> = {}): Stored | undefined {
  return storedFormula({ at: "C5", value: 1, formula, style: {}, ...more }, VOCABULARY);
}

test.each([
  ["=bead.standoff(B4, , $C$2)", "_xldudf_BEAD_STANDOFF(B4,,$C$2)"],
  ['=IF(A1="BEAD.X(""a"")",sum(A1:A3),1.5E-3)', 'IF(A1="BEAD.X(""a"")",SUM(A1:A3),1.5E-3)'],
  ["=BEAD.A(wall__3)*2", "_xldudf_BEAD_A(wall)*2"],
  ["=SWITCH(A1,1,TRUE)", "_xlfn.SWITCH(A1,1,TRUE)"],
  ["=MAX(BEAD.TABLE(1))", "MAX(_xldudf_BEAD_TABLE(1))"],
  ["=SUMPRODUCT(A1:A3*B1:B3)", "SUMPRODUCT(A1:A3*B1:B3)"],
  ["=wall__4/2", "'Line 2'!wall/2"],
  ["=Gas!B4+SUM('Gas'!$A$1:a3)", "'Gas'!B4+SUM('Gas'!$A$1:A3)"],
  ["=BEAD.A('A line''s name that is too long for a file'!A1)", "_xldudf_BEAD_A('A line''s name'!A1)"],
])("%s is stored as %s", (formula, expected) => {
  expect(stored(formula)).toMatchObject({ formula: expected, array: false });
});

/** The functions of future versions in [MS-XLSX] 2.2.2, from memory: those that the sheets or people here may use. */
test.each([
  "CONCAT(A1:A3)",
  "IFS(A1>0,1)",
  "ISFORMULA(A1)",
  'MAXIFS(A1:A3,B1:B3,"x")',
  'MINIFS(A1:A3,B1:B3,"x")',
  "SWITCH(A1,1,2)",
  'TEXTJOIN(",",TRUE,A1:A3)',
  "XLOOKUP(A1,B1:B3,C1:C3)",
])("a function younger than the file format carries the prefix: %s", (call) => {
  expect(stored(`=${call}`)).toEqual({ formula: `_xlfn.${call}`, array: false, ours: false });
});

test.each(["SUM(A1:A3)", "IFERROR(A1,0)", "SUMIF(A1:A3,1)", "CEILING(A1,2)"])(
  "an older one does not: %s",
  (call) => {
    expect(stored(`=${call}`)?.formula).toBe(call);
  },
);

test.each([
  ["another sheet", "=Scratch!A1"],
  ["a name that is not of this sheet", "=depth+1"],
  ["a function that files are not known to hold", "=PIVOT(1)"],
  ["a table of ours taken cell by cell", "=ROUND(BEAD.TABLE(1),2)"],
  ["a range of ours taken cell by cell", "=BEAD.A(1)*A1:A3"],
])("%s cannot be stored", (_, formula) => {
  expect(stored(formula)).toBeUndefined();
});

test("a range taken cell by cell makes an array of one cell, beside an answer of its own lines a plain formula", () => {
  const formula = '=IF(ISNUMBER(A5:A7),1*A5:A7,"")';
  const spill = { formula, from: { column: 2, row: 4 }, columns: 1, rows: 3 };
  expect(stored(formula)?.array).toBe(true);
  expect(stored(formula, { spill })?.array).toBe(false);
  expect(stored(formula, { spill: { ...spill, from: { column: 2, row: 5 } } })).toBeUndefined();
  expect(stored(formula, { spill: { ...spill, columns: 2 } })).toBeUndefined();
});

test("a cell of a table looks up its own row and column", () => {
  const spill = { formula: "=BEAD.TABLE($A$1)", from: { column: 27, row: 9 }, columns: 3, rows: 4 };
  const cell = { at: "AD12", value: 1, style: {}, spill };
  expect(storedFormula(cell, VOCABULARY)?.formula).toBe("INDEX(_xldudf_BEAD_TABLE($A$1),ROWS(AB$10:AB12),3)");
});
