import type { Units } from "../../src/quantity";
import { addressOf, placeOf } from "../../taskpane/sheets/addresses";
import { TEMPLATES } from "../../taskpane/sheets";
import type { SheetPlan } from "../../taskpane/sheets/sheet";

const PLANS: [string, SheetPlan][] = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as Units[]).map((units): [string, SheetPlan] => [
    `${template.id} ${units}`,
    template.plan(units),
  ]),
);
/**
 * Excel makes people wait about half a second for each of our formulas that waits for another. A result waits for the
 * schedule, for what is made of it and for one more; a check then asks one formula for its reason.
 */
const LONGEST_CHAIN = { result: 3, check: 4 };
/** As many as the cycle plan has, which asks for four scenarios with twelve numbers of heads each. */
const MOST_FORMULAS = 260;

/** Every address a formula speaks of, ranges spelled out. */
function references(formula: string): string[] {
  const bare = formula.replace(/"[^"]*"/g, "");
  return [...bare.matchAll(/\$?([A-Z]{1,2})\$?(\d+)(?::\$?([A-Z]{1,2})\$?(\d+))?/g)].flatMap((match) => {
    const from = placeOf(`${match[1] ?? ""}${match[2] ?? ""}`);
    const to = match[3] === undefined ? from : placeOf(`${match[3]}${match[4] ?? ""}`);
    const cells: string[] = [];
    for (let row = from.row; row <= to.row; row += 1) {
      for (let column = from.column; column <= to.column; column += 1) cells.push(addressOf({ column, row }));
    }
    return cells;
  });
}

function formulas(plan: SheetPlan): Map<string, string> {
  return new Map(
    plan.cells.flatMap(({ at, content }) =>
      typeof content === "string" && content.startsWith("=") ? [[at, content] as const] : [],
    ),
  );
}

function ours(formula: string): number {
  return formula.match(/BEAD\./g)?.length ?? 0;
}

/** How many of our formulas stand inside one another in a formula: each waits for the one within. */
function nested(formula: string): number {
  const open: boolean[] = [];
  let deepest = 0;
  for (const [token] of formula.replace(/"[^"]*"/g, "").matchAll(/(BEAD\.\w+)?\(|\)/g)) {
    if (token === ")") open.pop();
    else open.push(token.startsWith("BEAD."));
    deepest = Math.max(deepest, open.filter(Boolean).length);
  }
  return deepest;
}

test("the counting of formulas inside one another counts", () => {
  expect(nested('=IF(A1="(",BEAD.A(1),BEAD.B(2))')).toBe(1);
  expect(nested("=BEAD.A(MAX(BEAD.B(1),2))")).toBe(2);
  expect(nested("=A1+1")).toBe(0);
});

describe.each(PLANS)("template %s", (_, plan) => {
  const all = formulas(plan);

  test("no result waits for more than three of our formulas in a row, no check for more than four", () => {
    const known = new Map<string, number>();
    const depth = (at: string, path: readonly string[]): number => {
      if (path.includes(at)) throw new Error(`circle: ${[...path, at].join(" → ")}`);
      const found = known.get(at);
      if (found !== undefined) return found;
      const formula = all.get(at);
      if (formula === undefined) return 0;
      const waited = references(formula).map((other) => depth(other, [...path, at]));
      const longest = waited.reduce((most, one) => Math.max(most, one), 0) + nested(formula);
      known.set(at, longest);
      return longest;
    };
    const results = new Set(plan.cells.filter(({ look }) => look === "result").map(({ at }) => at));
    for (const at of all.keys()) {
      const longest = results.has(at) ? LONGEST_CHAIN.result : LONGEST_CHAIN.check;
      expect([at, depth(at, []) <= longest]).toEqual([at, true]);
    }
  });

  test("holds a bounded number of our formulas, and only what both hosts know", () => {
    const text = [...all.values()].join("\n");
    expect(ours(text)).toBeGreaterThan(0);
    expect(ours(text)).toBeLessThanOrEqual(MOST_FORMULAS);
    expect(text).not.toMatch(/\b(LET|LAMBDA|TODAY|NOW|OFFSET|INDIRECT|RAND|ERROR\.TYPE)\(/);
    expect(text).not.toMatch(/[A-Z]\d+#|\b[A-Z]+:[A-Z]+\b/);
    for (const { at } of plan.names) expect(at).toMatch(/^[A-Z]\d+(:[A-Z]\d+)?$/);
  });

  test("places every cell once, what is typed on the page or on the workbench beside it", () => {
    const places = plan.cells.map(({ at }) => at);
    expect(new Set(places).size).toBe(places.length);
    const [, last = ""] = plan.print.area.split(":");
    const behind = plan.cells.find(({ content }) => String(content).startsWith("Behind the page: "));
    // Of the bid only a part of the page prints.
    const corner = { column: placeOf(last).column, row: placeOf(behind?.at ?? "").row };
    // Below the page stands what the checks work with: nothing there is typed.
    for (const { at, look } of plan.cells) {
      const { column, row } = placeOf(at);
      const onPage = column > corner.column || row <= corner.row;
      expect([at, onPage || (look !== "input" && look !== "inputText")]).toEqual([at, true]);
    }
  });

  test("names each cell once, and lists fit the 255 characters a host takes", () => {
    const names = plan.names.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[a-z][a-z_]*$/);
    for (const { allowed } of plan.lists) expect(allowed.join(",").length).toBeLessThanOrEqual(255);
  });

  test("says that its example is invented and that the qualified procedure governs", () => {
    const text = plan.cells.map(({ content }) => String(content)).join("\n");
    expect(text).toMatch(/invented/i);
    expect(text).toMatch(/qualified procedure/);
    expect(text).toMatch(/starting values: prove on a test coupon/i);
    expect(text).toMatch(/confined space/);
  });
});
