/**
 * The scripts for other spreadsheets, called as their hosts call them: every example, every refusal, and what else may stand
 * in a cell. Run here under each host's calling convention; not the hosts themselves.
 */

import { FORMULAS } from "../../functions/catalogue";
import type { Formula } from "../../functions/formula";
import { disagreement } from "../../tools/docs/stated-result";
import { typedCall } from "../../tools/docs/typed-call";
import { ANSWERED, exampleCells, said } from "../bead";
import { EXAMPLES } from "../refused";
import { builtScripts } from "../tools/built-scripts";
import type { Given, Open, ScriptHost, Shown } from "../tools/script-hosts";
import { BLANK, googleSheets, javascriptMacros } from "../tools/script-hosts";

const built = builtScripts();
const HOSTS: readonly (readonly [string, ScriptHost])[] = [
  ["Google Sheets", googleSheets(built["google-sheets.js"])],
  ["JavaScript macros", javascriptMacros(built["javascript-macros.js"])],
];
const OPEN: readonly Open[] = [undefined, null, "" as const].flatMap((omitted) =>
  [undefined, null, "" as const].map((blank) => ({ omitted, blank })),
);
/** The code that our refusals have in front, which a host of scripts has no place for. */
const CODE = /^#[A-Z/0]+[!?]? /;
type Said = ReturnType<typeof said>;
const USUAL: Open = { omitted: undefined, blank: "" };
const ROWS: Open = { ...USUAL, oneCellAsRows: true };

/** As the formulas of a script speak of each other. */
function renamed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(renamed);
  return typeof value === "string" ? value.replace(/\bBEAD\.(?=[A-Z])/g, "BEAD_") : value;
}

/** The answer in one cell or many, numbers to 1e-12. */
function expectSame(shown: Shown, expected: unknown): void {
  if ("error" in shown) throw new Error(`refused: ${shown.message}`);
  const [got, wanted] = [shown.value, renamed(expected)].map((one) =>
    Array.isArray(one) ? (one as unknown[][]) : [[one]],
  );
  expect(got?.map(({ length }) => length)).toEqual(wanted?.map(({ length }) => length));
  wanted?.forEach((row, r) => {
    row.forEach((cell, c) => {
      const there = got?.[r]?.[c];
      if (typeof cell !== "number" || typeof there !== "number") expect(there).toBe(cell);
      else expect(Math.abs(there - cell)).toBeLessThanOrEqual(1e-12 * Math.abs(cell));
    });
  });
}

/** The arguments of an example as they stand in a formula. */
function asGiven(cells: readonly unknown[], open: typeof BLANK | undefined): Given[] {
  return cells.map((cell) => {
    if (cell === null || cell === undefined) return open;
    if (!Array.isArray(cell)) return cell;
    return (cell as unknown[][]).map((row) => row.map((one) => (one ?? BLANK) as string));
  });
}

describe.each(HOSTS)("%s", (_, host) => {
  test("offers every formula under its name in a script, and nothing else", () => {
    expect(host.names).toEqual(FORMULAS.map(({ id }) => `BEAD_${id}`));
  });

  test.each(FORMULAS.map((record) => [record.id, record] as const))(
    "%s gives what its example says",
    (id, record) => {
      const { answer } = said(id, ...exampleCells(record));
      for (const open of OPEN) {
        for (const omitted of [undefined, BLANK] as const) {
          const shown = host.call(`BEAD_${id}`, asGiven(record.example.args, omitted), open);
          expectSame(shown, answer);
          if ("value" in shown) expect(disagreement(shown.value, record.example.gives)).toBeUndefined();
        }
      }
    },
  );

  test.each(EXAMPLES.map((example) => [example.call, example] as const))(
    "%s is refused in the same words",
    (call, example) => {
      const id = /^=BEAD\.([A-Z0-9_]+)\(/.exec(call)?.[1] ?? "";
      const given = asGiven(example.cells ?? typedCall(call).args, undefined);
      const shown = host.call(`BEAD_${id}`, given, USUAL);
      const words = "error" in shown ? shown.message : lastOfFirst(shown.value);
      expect(words).toBe(example.says.replace(CODE, ""));
    },
  );
});

describe.each(HOSTS)("%s: unkind cells", (_, host) => {
  /** The example with one argument changed, in the script and in the formula itself. */
  const both = (
    record: Formula,
    place: number,
    cell: unknown,
    known = cell,
    open = USUAL,
  ): readonly [Shown, Said] => {
    const changed = (cells: readonly unknown[], to: unknown): unknown[] =>
      Array.from({ length: Math.max(cells.length, place + 1) }, (__, i) => (i === place ? to : cells[i]));
    const given = asGiven(changed(record.example.args, cell), undefined);
    return [
      host.call(`BEAD_${record.id}`, given, open),
      said(record.id, ...changed(exampleCells(record), known)),
    ];
  };
  const expectAlike = ([shown, { refused, answer }]: readonly [Shown, Said]): void => {
    if (refused === ANSWERED) expectSame(shown, answer);
    else expect("error" in shown && shown.message).toBe(refused.replace(CODE, ""));
  };
  const PLACES = FORMULAS.flatMap((record) =>
    Object.values(record.args).flatMap(({ takes }, place) =>
      takes === "rest" ? [] : [[`${record.id} ${String(place)}`, record, place] as const],
    ),
  );

  test.each(PLACES)("%s holds an error, a truth value or a linked thing", (__, record, place) => {
    for (const name of ["#N/A", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#NULL!", "#ERROR!"])
      expectAlike(both(record, place, name, { code: name }));
    for (const cell of [true, false, { linked: "thing" }, "# 1", "#N/A or not"])
      expectAlike(both(record, place, cell));
  });

  test.each(PLACES)("%s holds a date, which is no number of anything", (__, record, place) => {
    const outcome = both(record, place, new Date(2026, 0, 2));
    expectAlike(outcome);
    const argument = Object.values(record.args)[place];
    if (argument?.takes === "cell") expect(outcome[1].refused).toMatch(/^#\S+ \w+ = a date: /);
  });

  test.each(PLACES)("%s holds one cell as a range of one", (__, record, place) => {
    const cell: unknown = record.example.args[place] ?? null;
    const rows = Array.isArray(cell)
      ? (cell as unknown[][]).slice(0, 1).map((row) => row.slice(0, 1))
      : [[cell]];
    for (const open of [USUAL, ROWS]) expectAlike(both(record, place, rows, rows, open));
  });

  test("an argument too many is refused and not lost", () => {
    for (const { id, args, takesUnits } of FORMULAS) {
      if (Object.values(args).some(({ takes }) => takes === "rest")) continue;
      const count = Object.keys(args).length + (takesUnits ? 1 : 0);
      const shown = host.call(
        `BEAD_${id}`,
        Array.from({ length: count + 1 }, () => 1),
        USUAL,
      );
      expect("error" in shown && shown.message).toMatch(
        /^BEAD_\w+ takes \d+ arguments?, not \d+$|^too many arguments$/,
      );
    }
  });

  test("a formula asked for by its name in a script is found", () => {
    const shown = host.call("BEAD_REASON", ["BEAD_STANDOFF", -0.065], USUAL);
    expect("value" in shown && shown.value).toBe("wall = -0.065 in: must be above 0");
    const about = host.call("BEAD_ABOUT", ["BEAD_STANDOFF"], USUAL);
    expect(JSON.stringify("value" in about && about.value)).toContain("=BEAD_STANDOFF(0.065)");
  });
});

/** A remark stands in the last column of a list; a text is one. */
function lastOfFirst(value: unknown): unknown {
  return Array.isArray(value) ? (value as unknown[][])[0]?.at(-1) : value;
}
