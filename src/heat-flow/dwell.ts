/** How long the arc stands still at the start of a bead. */

import type { Length, Time } from "../quantity";
import { si, TIME } from "../quantity";
import { powerOfMean, readyPlate } from "./melt";
import type { Weld } from "./plate";
import { fusedWidth, plateOf, riseToMelt } from "./plate";
import { startDwell } from "./start-dwell";

/**
 * Seconds until the standing arc, at the current of the bead on a cold plate, has melted out to the bead's width. The
 * temperature before welding does not change it: the current falls in the same proportion as the rise to melting.
 */
export function dwellOf(weld: Weld, beadWidth: Length): Time {
  const plate = plateOf(weld);
  const width = fusedWidth("beadWidth", beadWidth, plate);
  const rise = riseToMelt(weld.material);
  return si(startDwell(plate, rise, powerOfMean(readyPlate(plate), rise, width), width), TIME);
}
