/** The engine's blocks of cells as addresses. */

import { addressOf } from "../../sheets/addresses";

export interface Zone {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function rangeOf({ left, right, top, bottom }: Zone): string {
  const start = addressOf({ column: left, row: top });
  const end = addressOf({ column: right, row: bottom });
  return start === end ? start : `${start}:${end}`;
}
