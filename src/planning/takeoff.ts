/** A list of joints: what each line takes of time and gas, the reason where a line cannot be counted, and the sums. */

import { commonBeadWidth } from "../travel/bead";
import { COMMON_POSTPURGE, COMMON_PREPURGE, commonDownslope, cycleTime } from "./cycle";
import { jointGas } from "../gas/gas-supply";
import { dwellNumber } from "../heat-flow/start-dwell";
import { atLeast0, atMost, between, tube, wholeFrom1 } from "../limits";
import type { Material } from "../metal/material";
import type { Angle, Count, Duration, Flow, Length, Speed, Time, Volume } from "../quantity";
import { ANGLE, COUNT, DURATION, FLOW, LENGTH, si, TIME, VOLUME } from "../quantity";
import { orRefusal, Refusal } from "../refusal";
import { SUGGESTED_PECLET, suggestedSpeed } from "../travel/travel";

/** So many joints of one tube. */
export interface Line {
  readonly quantity: Count;
  readonly od: Length;
  readonly wall: Length;
  readonly material: Material;
}

/** What all lines have in common. */
export interface Terms {
  /** Unload, load and set up, s a joint. */
  readonly handling: Time;
  readonly torchFlow: Flow;
  readonly purgeFlow: Flow;
  /** The bore is purged so long before the cycle starts, and on through it. */
  readonly purgeSeconds: Time;
  /** Degrees past the full turn. */
  readonly overlap: Angle;
}

export interface Counted {
  /** Suggested travel, m/s. */
  readonly speed: Speed;
  /** One joint from prepurge to postpurge, s. */
  readonly machine: Time;
  /** The whole line, handling included, s. */
  readonly seconds: Duration;
  /** The whole line, m³. */
  readonly gas: Volume;
}

/** Far beyond any list or tube; inside, no line can grow so large that it spoils the sums of the others. */
export const MOST_JOINTS = si(1e9, COUNT);
export const LARGEST_OD = si(10, LENGTH);
/** Within the walls and beads that the heat flow answers. */
export const WALLS = [si(1e-6, LENGTH), si(0.1, LENGTH)] as const;

/**
 * A list counted line by line. A line's machine time is prepurge 30 s, dwell, turn with overlap at the suggested speed,
 * downslope, postpurge 15 s; its gas quantity × (torch flow × machine time + purge flow × (purge time + machine time)).
 */
export class Takeoff {
  /** Sums of the lines counted, s and m³. */
  seconds = si(0, DURATION);
  gas = si(0, VOLUME);
  counted = 0;
  omitted = 0;
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

  /** Adds a line to the sums, or omits one that cannot be read or counted and says why: no line is lost unseen. */
  add(readLine: () => Line): Counted | Refusal {
    const line = orRefusal(() => count(readLine(), this.#terms, this.#dwell));
    if (line instanceof Refusal) {
      this.omitted += 1;
    } else {
      this.counted += 1;
      this.seconds = si(this.seconds + line.seconds, DURATION);
      this.gas = si(this.gas + line.gas, VOLUME);
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
    dwell: si((dwell * beadWidth * beadWidth) / material.hotDiffusivity.value, TIME),
    overlap: terms.overlap,
    downslope: commonDownslope(beadWidth, speed),
    postpurge: COMMON_POSTPURGE,
    handling: si(0, TIME),
  });
  const gas = jointGas(terms.torchFlow, machine, terms.purgeFlow, si(terms.purgeSeconds + machine, TIME));
  return {
    speed,
    machine,
    seconds: si(quantity * (machine + terms.handling), DURATION),
    gas: si(quantity * gas, VOLUME),
  };
}
