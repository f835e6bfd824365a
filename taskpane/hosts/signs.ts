/** When a cell of a range begins with a sign, as a formula that Excel and other readers of its files take. */

/** Speaks of the first cell of the range, as such a formula does; without its =. */
export function beginsWith(range: string, sign: string): string {
  const [first = range] = range.split(":");
  return `LEFT(${first},${String(sign.length)})="${sign}"`;
}
