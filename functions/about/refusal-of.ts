/** Why a formula refuses its arguments: it is called as a host would call it. */

import { isBlank } from "../cells";
import type { Formula } from "../formula";

/** The sentence of the refusal; nothing where the formula answers. Every argument is handed in as rows of cells. */
export function refusalOf(asked: Formula, given: readonly unknown[][][]): string | undefined {
  const own = Object.values(asked.args).map(({ takes }) => takes);
  const places = asked.takesUnits ? [...own, "cell" as const] : own;
  if (!places.includes("rest") && given.length > places.length) {
    const most = places.length;
    return `${asked.id} takes ${String(most)} argument${most === 1 ? "" : "s"}, not ${String(given.length)}`;
  }
  const cells = places.map((takes, i) => {
    if (takes === "rest") return given.slice(i);
    const rows = given[i];
    return takes === "range" || rows === undefined ? rows : asCell(rows);
  });
  try {
    asked.call(...cells);
    return undefined;
  } catch (problem) {
    return (problem as CustomFunctions.Error).message;
  }
}

/** One cell for itself; more stay rows, which the formula then refuses as a range. */
function asCell(rows: unknown[][]): unknown {
  const cell = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
  return isBlank(cell) ? undefined : cell;
}
