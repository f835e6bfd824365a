/** Formulas as sheets have them, as an add-in under development has them, and as Excel stores them. */

import { Naming } from "../../taskpane/hosts/excel/naming";

const usual = new Naming();
const development = new Naming("BEADDEV");

test.each([
  ["=BEAD.X(1)", "=BEADDEV.X(1)"],
  ["=1+bead.x(BEAD.Y(2))", "=1+BEADDEV.x(BEADDEV.Y(2))"],
  ['="BEAD.X(1)"&BEAD.Y(1)', '="BEAD.X(1)"&BEADDEV.Y(1)'],
  ['="a ""BEAD.X(1)"" b"&BEAD.Y(1)', '="a ""BEAD.X(1)"" b"&BEADDEV.Y(1)'],
  ["BEAD.X(1)", "BEAD.X(1)"],
  ["BEAD.X(1)=", "BEAD.X(1)="],
])("%s is %s under development, and a text is nothing else", (planned, there) => {
  expect(development.toExcel(planned)).toBe(there);
  expect(usual.toExcel(planned)).toBe(planned);
  expect(development.toPlan(there)).toBe(planned.replace("bead.", "BEAD."));
});

test.each([
  ["=BEAD.X(1)", true],
  ["=1+bead.x (1)", true],
  ["=_xldudf_BEAD_X(1)", true],
  ["BEAD.X(1)", false],
  ["=MYBEAD.X(1)", false],
  ["=BEAD.X", false],
  ['="BEAD.X(1)"', false],
  ['="""BEAD.X(1)"', false],
  [1, false],
  [["=BEAD.X(1)"], false],
])("%j is ours: %p", (content, isOurs) => {
  expect(usual.isOurs(content)).toBe(isOurs);
  expect(development.isOurs(content)).toBe(false);
});

test.each([
  ["=_xldudf_BEAD_standoff(1)", "=BEAD.STANDOFF(1)"],
  ["=X.XLL!_xldudf_BEAD_X(1)+[2]!BEAD.Y(2)", "=BEAD.X(1)+BEAD.Y(2)"],
  ["='C:\\it''s\\X.xla'!BEAD.X (1)", "=BEAD.X (1)"],
  ['="X!BEAD.X(1)"&X!BEAD.Y(2)', '="X!BEAD.X(1)"&BEAD.Y(2)'],
  ["=BEAD.X(Sheet1!A1)", "=BEAD.X(Sheet1!A1)"],
])("%s is repaired to %s", (stored, typed) => {
  expect(usual.repaired(stored)).toBe(typed);
});
