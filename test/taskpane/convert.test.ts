import { addressOf, placeOf } from "../../taskpane/sheets/addresses";
import type { Content, Edit, Form, FormCell } from "../../taskpane/sheets/convert";
import { convert } from "../../taskpane/sheets/convert";
import type { SheetPlan } from "../../taskpane/sheets/sheet";
import { SMALL, smallPlan } from "./small-form";

/** The small form in inches with some cells typed over. */
function form(typed: Record<string, Content> = {}, template = SMALL): Form {
  const plan = smallPlan("US");
  const contentAt = (at: string): Content =>
    typed[at] ?? plan.cells.find((cell) => cell.at === at)?.content ?? "";
  const cells = plan.names.map(({ name, at }): [string, FormCell[]] => {
    const [first = at, last = first] = at.split(":");
    const { column, row } = placeOf(first);
    const all = Array.from({ length: placeOf(last).row - row + 1 }, (_, i) => {
      const one = addressOf({ column, row: row + i });
      return { at: one, content: contentAt(one) };
    });
    return [name, all];
  });
  return { template, units: "US", cells: new Map(cells) };
}

function edits(of: Form): Map<string, Edit> {
  const conversion = convert(of);
  if ("problem" in conversion) throw new Error(conversion.problem);
  return new Map(conversion.edits.map((edit) => [edit.at, edit]));
}

function problem(of: Form): string {
  const conversion = convert(of);
  return "problem" in conversion ? conversion.problem : "no problem";
}

test("both cells with the system of units are rewritten", () => {
  const all = edits(form());
  expect([all.get("B2"), all.get("C2")]).toEqual([
    { at: "B2", content: "SI" },
    { at: "C2", content: "SI" },
  ]);
});

test("a units cell that was retyped is not converted from", () => {
  expect(problem(form({ C2: "SI" }))).toBe(
    "Nothing was changed. The system of units in B2 was retyped: the typed numbers are in SI. Type SI there, then convert.",
  );
});

// 1 in = 25.4 mm exactly (NIST SP 811).
test.each([
  ["1/2", "12.7"],
  ["1-1/2", "38.1"],
  ["1 1/2 in", "38.1"],
  ["38.1 mm", "38.1"],
  ["0.84", "21.336"],
  ["1-5/128", "26.3921875"],
])("a size written as %s becomes %s, still text", (text, converted) => {
  const all = edits(form({ B4: text, B11: text }));
  expect([all.get("B4")?.content, all.get("B11")?.content]).toEqual([converted, converted]);
  expect([all.get("B4")?.format, all.get("B11")?.format]).toEqual([undefined, undefined]);
});

test("a size written in a cell of numbers becomes a number, a blank stays blank", () => {
  const all = edits(form({ B5: "1/16" }));
  expect(all.get("B5")).toMatchObject({ content: 1.5875, format: "0.000" });
  expect(all.get("B12")?.content).toBeUndefined();
});

// 1 in = 25.4 mm exactly (NIST SP 811); 33.7/25.4 never ends: as many digits as a part in 10⁹ takes.
test.each([
  ["US", "0.8186", "20.79244"],
  ["US", "0.05411", "1.374394"],
  ["SI", "33.7", "1.326771654"],
  ["SI", "1.65", "0.0649606299"],
] as const)("a size written in %s as %s becomes %s, and comes back as it was", (units, text, converted) => {
  const other = units === "US" ? "SI" : "US";
  const of = (system: "US" | "SI", size: string): Form => ({
    ...form({ B2: system, C2: system, B4: size }),
    units: system,
  });
  expect(edits(of(units, text)).get("B4")?.content).toBe(converted);
  expect(edits(of(other, converted)).get("B4")?.content).toBe(text);
});

test("a blank of spaces is a blank: it holds nothing up, and stays", () => {
  const all = edits(form({ B12: "  ", C10: " " }));
  expect([all.get("B12")?.content, all.get("C10")?.content]).toEqual([undefined, undefined]);
  expect(all.get("B5")?.content).toBe(1.651);
});

test("what is no size, or a formula, is named and nothing is changed", () => {
  expect(problem(form({ B4: "ask Joe", B5: "=1/2", C10: "1/2" }))).toMatch(
    /^Nothing was changed\. .* formula or text.*: B4 \(od\), B5 \(wall\), C10 \(list_amps\)\./,
  );
});

test("ranges follow in the other units, each cell of a column; one that reads the same stays", () => {
  const all = edits(form());
  expect(all.get("B5")?.range).toEqual({
    at: "B5",
    least: 0.5,
    most: 12,
    title: "Wall",
    message: "Wall outside of 0.5 to 12 mm",
  });
  for (const at of ["B10", "B11", "B12"])
    expect(all.get(at)?.range).toMatchObject({ at, least: 6, most: 300 });
  expect(all.has("C10")).toBe(false);
});

test("a range without a name would be left in the old units: the plan is refused", () => {
  const nameless = (plan: SheetPlan): SheetPlan => ({
    ...plan,
    names: plan.names.filter(({ name }) => name !== "wall"),
  });
  const template = { ...SMALL, plan: (units: "US" | "SI") => nameless(smallPlan(units)) };
  expect(() => convert(form({}, template))).toThrow("the range of B5 has no name");
});
