/** Refusals of moisture and of the air of a room. */

import type { Refused } from "./example";

export const AIR: readonly Refused[] = [
  ["=BEAD.MOISTURE_PPM(-200)", "#VALUE! dewPoint = -200 °F: must be between -148 °F and 122 °F"],
  ['=BEAD.MOISTURE_PPM(60, "SI")', "#VALUE! dewPoint = 60 °C: must be between -100 °C and 50 °C"],
  ["=BEAD.DEW_POINT(0)", "#VALUE! ppm = 0 ppm: must be between 0.0138791 ppm and 121905 ppm"],
  ["=BEAD.ROOM_OXYGEN(0, 20, 1)", "#VALUE! volume = 0 ft³: must be above 0"],
  ["=BEAD.ROOM_OXYGEN(1000, -20, 1)", "#VALUE! flow = -20 ft³/h: must be 0 or more"],
  ["=BEAD.ROOM_OXYGEN(1000, 20, -1)", "#VALUE! airChanges = -1 per hour: must be 0 or more"],
  ["=BEAD.ROOM_OXYGEN(1000, 20, 0, -1)", "#VALUE! hours = -1 h: must be 0 or more"],
  [
    "=BEAD.ROOM_OXYGEN(1000, 20)",
    "#VALUE! hours = blank: needs a number (h) where airChanges is 0: without fresh air the oxygen never stops falling",
  ],
];
