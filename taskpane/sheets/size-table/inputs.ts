/** What a planner types once for all sizes, and the sizes. The list is invented. */

import { SHARE } from "../../../src/quantity";
import type { Row } from "../layout";
import { choice, optional, words } from "../typed";

export const JOB: Row[] = [
  words("Job", "job", "Invented creamery"),
  words("Procedure", "procedure", "Invented procedure 1"),
];

export const TERMS: Row[] = [
  choice("Current", "style", "pulsed", ["pulsed", "steady"], { columns: 2 }),
  optional({
    label: "Arc efficiency (blank: 0.78)",
    name: "efficiency",
    quantity: SHARE,
    range: [0.4, 0.95],
  }),
];

/** Outside diameter and wall in each system, material. */
type Size = readonly [od: { US: string; SI: string }, wall: { US: string; SI: string }, material: string];

/** An invented list of sizes, as people write them; blank lines are for more. */
export const SIZES: readonly Size[] = [
  [{ US: "1/2", SI: "12.7" }, { US: "0.049", SI: "1.25" }, "316L"],
  [{ US: "3/4", SI: "19.05" }, { US: "0.065", SI: "1.65" }, "316L"],
  [{ US: "1", SI: "25.4" }, { US: "0.065", SI: "1.65" }, "316L"],
  [{ US: "1-1/2", SI: "38.1" }, { US: "0.065", SI: "1.65" }, "316L"],
  [{ US: "2", SI: "50.8" }, { US: "0.065", SI: "1.65" }, "316L"],
  [{ US: "3", SI: "76.2" }, { US: "0.065", SI: "1.65" }, "304L"],
  [{ US: "4", SI: "101.6" }, { US: "0.083", SI: "2.11" }, "304L"],
];
/** Lines of the list, blank ones included. */
export const LINES = 120;
