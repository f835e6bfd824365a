/** What a schedule says beside its values where they are less sure than elsewhere. */

import { ARC_VOLTS_WALLS } from "../heat-flow/arc";
import type { Length } from "../quantity";
import { LENGTH, plainNumber, si } from "../quantity";
import type { Rule } from "../refusal";
import { amount, Refusal, rule } from "../refusal";

/** About 1/8 in: what one pass without filler is known to penetrate ([asm-handbook-6]: typically 3 mm). */
const KNOWN_TO_PENETRATE = si(0.0032, LENGTH);
/** From this part of the rise to melting on, all round the ring, there is a warning. */
const NEARLY_MOLTEN = 0.8;

const NOT_KNOWN =
  "one pass without filler is not known to penetrate it (ASM Handbook 6: typically 3 mm, 1/8 in)";

/** Walls beyond the estimate of arc voltage are far beyond what one pass penetrates, too. */
export function refuseThick(wall: Length): void {
  if (wall <= ARC_VOLTS_WALLS[1]) return;
  throw new Refusal(
    "wall",
    amount(wall, LENGTH),
    [`${NOT_KNOWN}; prepare the edges and use filler`],
    "unanswerable",
  );
}

export function remarksOn(wall: Length, coldest: number, typedVolts: boolean): Rule[] {
  const remarks: Rule[] = [];
  if (wall > KNOWN_TO_PENETRATE) remarks.push([`Thick wall: ${NOT_KNOWN}.`]);
  if (wall < ARC_VOLTS_WALLS[0] && !typedVolts) {
    remarks.push(
      rule`Thin wall: volts are those of the minimum gap that they are estimated for, that of a wall of ${amount(ARC_VOLTS_WALLS[0], LENGTH)}.`,
    );
  }
  if (coldest >= NEARLY_MOLTEN) {
    remarks.push([
      `Small tube: the coldest place of the whole ring reaches ${plainNumber(100 * coldest, 2)} % of the rise to melting.`,
    ]);
  }
  return remarks;
}
