/** A list of joints: what each line takes of time and gas, the reason where a line cannot be counted, and the sums. */

import { commonBeadWidth } from "../travel/bead";
import { COMMON_POSTPURGE, COMMON_PREPURGE, commonDownslope, cycleTime } from "./cycle";
import { jointGas } from "../gas/gas-supply";
import { dwellNumber } from "../heat-flow/start-dwell";
import { atLeast0, atMost, between, tube, wholeFrom1 } from "../limits";
import type { Material } from "../metal/material";
import { ANGLE, FLOW, LENGTH, TIME } from "../quantity";
import { orRefusal, Refusal } from "../refusal";
import { SUGGESTED_PECLET, suggestedSpeed } from "../travel/travel";

/** So many joints of one tube. */
export interface Line {
  readonly quantity: number;
  readonly od: number;
  readonly wall: number;
  readonly material: Material;
}

/** What all lines have in common. */
export interface Terms {
  /** Unload, load and set up, s a joint. */
  readonly handling: number;
  readonly torchFlow: number;
  readonly purgeFlow: number;
  /** The bore is purged so long before the cycle starts, and on through it. */
  readonly purgeSeconds: number;
  /** Degrees past the full turn. */
  readonly overlap: number;
}

export interface Counted {
  /** Suggested travel, m/s. */
  readonly speed: number;
  /** One joint from prepurge to postpurge, s. */
  readonly machine: number;
  /** The whole line, handling included, s. */
  readonly seconds: number;
  /** The whole line, m³. */
  readonly gas: number;
}

/** Far beyond any list or tube; inside, no line can grow so large that it spoils the sums of the others. */
const MOST_JOINTS = 1e9;
const LARGEST_OD = 10;
/** Within the walls and beads that the heat flow answers. */
const WALLS = [1e-6, 0.1] as const;

/**
 * A list counted line by line. A line's machine time is prepurge 30 s, dwell, turn with overlap at the suggested speed,
 * downslope, postpurge 15 s; its gas quantity × (torch flow × machine time + purge flow × (purge time + machine time)).
 */
export class Takeoff {
  /** Sums of the lines counted, s and m³. */
  seconds = 0;
  gas = 0;
  counted = 0;
  leftOut = 0;
  readonly #terms: Terms;
  /**
   * Dwell in units of b²/α. It is slow to find, but the suggested speed is that of one v·b/(4α), and so the same for
   * every line.
   */
  readonly #dwell = dwellNumber(SUGGESTED_PECLET);

  constructor(terms: Terms) {
    atLeast0("handlingSeconds", terms.handling, TIME);
    atLeast0("torchFlow", terms.torchFlow, FLOW);
    atLeast0("purgeFlow", terms.purgeFlow, FLOW);
    atLeast0("purgeSeconds", terms.purgeSeconds, TIME);
    atLeast0("overlap", terms.overlap, ANGLE);
    this.#terms = terms;
  }

  /** Adds a line to the sums, or leaves out one that cannot be read or counted and says why: no line is lost unseen. */
  add(readLine: () => Line): Counted | Refusal {
    const line = orRefusal(() => count(readLine(), this.#terms, this.#dwell));
    if (line instanceof Refusal) {
      this.leftOut += 1;
    } else {
      this.counted += 1;
      this.seconds += line.seconds;
      this.gas += line.gas;
    }
    return line;
  }
}

function count({ quantity, od, wall, material }: Line, terms: Terms, dwell: number): Counted {
  wholeFrom1("quantity", quantity, MOST_JOINTS);
  atMost("od", od, LENGTH, LARGEST_OD);
  tube(od, wall);
  between("wall", wall, LENGTH, ...WALLS);
  const beadWidth = commonBeadWidth(wall);
  const speed = suggestedSpeed(beadWidth, material);
  const machine = cycleTime({
    od,
    speed,
    prepurge: COMMON_PREPURGE,
    dwell: (dwell * beadWidth * beadWidth) / material.hotDiffusivity.value,
    overlap: terms.overlap,
    downslope: commonDownslope(beadWidth, speed),
    postpurge: COMMON_POSTPURGE,
    handling: 0,
  });
  const gas = jointGas(terms.torchFlow, machine, terms.purgeFlow, terms.purgeSeconds + machine);
  return { speed, machine, seconds: quantity * (machine + terms.handling), gas: quantity * gas };
}
