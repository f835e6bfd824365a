/** Addresses of cells that are watched together: a block spelled out, and single cells joined to blocks. */

const BLOCK = /^([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?$/;

/** The cells of one cell or block, "B2:C3". Columns go no further than Z. */
export function addressesIn(block: string): string[] {
  const [, from = "", top = "", to = from, bottom = top] = BLOCK.exec(block) ?? [];
  const columns = lettersFrom(from, to);
  const rows = Array.from({ length: Number(bottom) - Number(top) + 1 }, (_, i) => Number(top) + i);
  return rows.flatMap((row) => columns.map((column) => `${column}${String(row)}`));
}

function lettersFrom(from: string, to: string): string[] {
  const [first, last] = [from.charCodeAt(0), to.charCodeAt(0)];
  return Array.from({ length: last - first + 1 }, (_, i) => String.fromCharCode(first + i));
}

/** Single cells as few blocks: what lies below each other in a column is one. */
export function joined(addresses: readonly string[]): string[] {
  const places = addresses.map((at) => ({
    column: at.replace(/\d+/, ""),
    row: Number(at.replace(/\D+/, "")),
  }));
  places.sort((a, b) => (a.column === b.column ? a.row - b.row : a.column < b.column ? -1 : 1));
  const blocks: { column: string; top: number; bottom: number }[] = [];
  for (const { column, row } of places) {
    const above = blocks.at(-1);
    if (above?.column === column && above.bottom === row - 1) above.bottom = row;
    else blocks.push({ column, top: row, bottom: row });
  }
  return blocks.map(({ column, top, bottom }) =>
    top === bottom ? `$${column}$${String(top)}` : `$${column}$${String(top)}:$${column}$${String(bottom)}`,
  );
}
