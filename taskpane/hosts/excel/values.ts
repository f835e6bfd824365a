/** Small readings of what Excel hands over: always tables, even of one cell. */

export type Content = string | number | boolean;

export function firstOf(values: unknown): Content {
  const [row] = values as Content[][];
  return row?.[0] ?? "";
}

/** An address without its sheet. */
export function bareAddress(address: string): string {
  return address.replace(/^.*!/, "");
}

/** Whether the first cell, or another one, shows an error, in whatever language it is written. */
export function isError(range: Excel.Range, row = 0, column = 0): boolean {
  return String(range.valueTypes[row]?.[column]) === "Error";
}
