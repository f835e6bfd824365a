/** What a formula refuses is one of its own arguments, however far a number of its example is off. */

import { HELP } from "../../functions/help";
import { exampleCells, refusal } from "../bead";

const FACTORS = [1e-12, 1e-6, 1e-3, 0.1, 10, 1e3, 1e6, 1e12, -1, 0];

function replaced<Item>(list: readonly Item[], place: number, item: Item): Item[] {
  return list.map((one, i) => (i === place ? item : one));
}

/** The example with one number of it multiplied; numbers in a range too. */
function* changed(cells: readonly unknown[]): Generator<unknown[]> {
  for (const [i, cell] of cells.entries()) {
    for (const factor of FACTORS) {
      if (typeof cell === "number") yield replaced(cells, i, cell * factor);
      if (!Array.isArray(cell)) continue;
      const rows = cell as unknown[][];
      for (const [r, row] of rows.entries())
        for (const [c, inside] of row.entries())
          if (typeof inside === "number")
            yield replaced<unknown>(cells, i, replaced(rows, r, replaced<unknown>(row, c, inside * factor)));
    }
  }
}

test.each(HELP.map((about) => [about.id, about] as const))("%s", (id, about) => {
  const names = about.parameters.map(({ name }) => name);
  const others = new Set<string>();
  for (const cells of changed(exampleCells(about))) {
    const sentence = refusal(id, ...cells);
    const argument = /^#\S+ (\w+) = /.exec(sentence)?.[1];
    if (argument !== undefined && !names.includes(argument)) others.add(sentence);
  }
  expect([...others]).toEqual([]);
});
