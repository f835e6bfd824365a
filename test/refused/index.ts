/** What is refused, and in which words: the tests run every call, and docs/refusals.md shows them. */

import { ABOUT } from "./about";
import { AIR } from "./air";
import { CELLS, REFUSED_CELLS } from "./cells";
import { CURRENT } from "./current";
import { GAP } from "./gap";
import { GAS } from "./gas";
import { HEAT_FLOW } from "./heat-flow";
import { INSPECTION } from "./inspection";
import { METAL } from "./metal";
import { PLANNING } from "./planning";
import { PURGE } from "./purge";
import { QUALIFICATION } from "./qualification";
import { TABLES } from "./tables";
import { TRAVEL } from "./travel";
import type { Example, Refused } from "./example";
import { REMARKED } from "./remarked";

export { NOT_SHOWN } from "./not-shown";

/** Calls as typed, with the code and sentence of their refusal. */
export const REFUSED: readonly Refused[] = [
  ...GAP,
  ...TRAVEL,
  ...CURRENT,
  ...HEAT_FLOW,
  ...PURGE,
  ...GAS,
  ...AIR,
  ...PLANNING,
  ...INSPECTION,
  ...QUALIFICATION,
  ...TABLES,
  ...METAL,
  ...ABOUT,
  ...CELLS,
];

/** All of them, as the page shows them. */
export const EXAMPLES: readonly Example[] = [
  ...REFUSED.map(([call, says]) => ({ call, says })),
  ...REFUSED_CELLS.map(([call, cells, says]) => ({ call, cells, says })),
  ...REMARKED.map(([call, says]) => ({ call, says })),
];
