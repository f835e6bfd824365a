/** A picture of the joint: its finding, how to read it, and the drawing, or in its place what is missing for it. */

import type { Missing } from "./joint";
import type { Shape } from "./shape";

export interface Picture {
  readonly id: "section" | "ring" | "purge";
  /** What the numbers say; where there is no drawing, what the picture is of. */
  readonly title: string;
  /** How to read it: scale, and what the lines mean. */
  readonly notes: readonly string[];
  readonly drawing?: Shape;
  readonly missing?: Missing;
}

export function notDrawn(id: Picture["id"], title: string, missing: Missing): Picture {
  return { id, title, notes: [], missing };
}

/** What stands in the place of a drawing, line by line. */
export function missingWords({ what, why }: Missing): string[] {
  return [`Not drawn. Missing: ${what.join(", ")}.`, ...(why === "" ? [] : [why])];
}
