/** Rectangles of cells that can be written in one call. A blank cell is in none, so that a spilling formula finds room. */

import type { CellPlan } from "../../sheets/sheet";
import { addressOf, placeOf, spread } from "../../sheets/addresses";

export interface Block {
  readonly address: string;
  /** Row by row, as the host takes it. */
  readonly cells: readonly (readonly CellPlan[])[];
}

interface Run {
  readonly key: string;
  readonly column: number;
  readonly row: number;
  readonly cells: CellPlan[];
}

/** Neighbors with the same key, side by side and then below each other; cells without a key are omitted. */
export function blocksOf(cells: readonly CellPlan[], keyOf: (cell: CellPlan) => string | undefined): Block[] {
  const open: { last: Run; readonly rows: CellPlan[][]; readonly first: Run }[] = [];
  for (const run of runsOf(cells, keyOf)) {
    const above = open.find(
      ({ last }) =>
        last.row === run.row - 1 &&
        last.column === run.column &&
        last.cells.length === run.cells.length &&
        last.key === run.key,
    );
    if (above === undefined) open.push({ first: run, last: run, rows: [run.cells] });
    else {
      above.last = run;
      above.rows.push(run.cells);
    }
  }
  return open.map(({ first, rows }) => ({
    address: spread(addressOf(first), first.cells.length, rows.length),
    cells: rows,
  }));
}

/** Neighbors on one line with the same key, line by line from the left. */
function runsOf(cells: readonly CellPlan[], keyOf: (cell: CellPlan) => string | undefined): Run[] {
  const placed = cells
    .map((cell) => ({ cell, key: keyOf(cell), ...placeOf(cell.at) }))
    .sort((a, b) => a.row - b.row || a.column - b.column);
  const runs: Run[] = [];
  for (const { cell, key, column, row } of placed) {
    if (key === undefined) continue;
    const last = runs.at(-1);
    if (last?.row === row && last.key === key && last.column + last.cells.length === column) {
      last.cells.push(cell);
    } else runs.push({ key, column, row, cells: [cell] });
  }
  return runs;
}
