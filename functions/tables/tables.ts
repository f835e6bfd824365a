/** Published tables: pipe by nominal size, limits of form for hygienic tube welds. */

import { itemAt } from "../../src/numerics/item";
import { LENGTH } from "../../src/quantity";
import { EXCEPTIONS, weldLimits } from "../../src/tables/acceptance";
import { NOMINAL_SIZES, pipeOd, pipeWall } from "../../src/tables/pipe";
import { text, toldInBoth } from "../argument";
import { NOMINAL_WALL, OD } from "../arguments";
import { family, formula } from "../formula";
import { column, printed, row } from "../gives";
import { TUBE_TOLERANCE } from "./tube";

const NPS = text('Nominal pipe size as text or number: "1/2", "1-1/2", "1 1/2", 1.5, "2 in"');
const NPS_ALLOWED = `NPS ${itemAt(NOMINAL_SIZES, 0)} to ${itemAt(NOMINAL_SIZES, NOMINAL_SIZES.length - 1)}`;
const AS_PRINTED = "Table: inches as printed | millimeters as printed, which are rounded from the inches";
const FROM_MEMORY = "The inches are from memory; each rounds to its millimeters";

const PIPE_OD = formula({
  id: "PIPE_OD",
  meaning: "Outside diameter of a nominal pipe size",
  args: { nps: NPS },
  gives: printed(LENGTH),
  equation: AS_PRINTED,
  validity: `${NPS_ALLOWED}; #N/A for other sizes. Pipe, not tube: NPS 2 is 2.375 in outside. B36.10M prints 273.0 and 323.8 mm for NPS 10 and 12.`,
  source: "[asme-b36.19m] and [asme-b36.10m]; millimeters compared with [fluids-1.3.1]",
  unconfirmed: FROM_MEMORY,
  related: ["PIPE_WALL", "ACCEPT_LIMITS", "SCHEDULE"],
  synonyms: [
    "NPS",
    "nominal pipe size",
    "NB",
    "pipe chart",
    "pipe size",
    "DN",
    "IPS",
    "iron pipe size",
    "outside diameter",
  ],
  example: { args: ["1-1/2", "SI"], gives: "48.3" },
  calc: ({ nps }, units) => pipeOd(nps, units),
});

const PIPE_WALL = formula({
  id: "PIPE_WALL",
  meaning: "Nominal wall of a pipe size and schedule",
  args: {
    nps: NPS,
    schedule: text('Schedule as text or number: "5S", "10S", "40S", "80S", 5, 10, 40 or 80'),
  },
  gives: printed(LENGTH),
  equation: AS_PRINTED,
  validity: `${NPS_ALLOWED}; #N/A if the standard has no such wall. 40 and 40S differ at NPS 12, 80 and 80S from NPS 10 up. Mill tolerance, commonly 12.5 %, is not included.`,
  source: "[asme-b36.19m] (with S) and [asme-b36.10m] (without); millimeters compared with [fluids-1.3.1]",
  unconfirmed: FROM_MEMORY,
  related: ["PIPE_OD", "ACCEPT_LIMITS", "SCHEDULE"],
  synonyms: [
    "pipe schedule",
    "wall thickness",
    "Sch 10S",
    "pipe chart",
    "schedule",
    "sch 40",
    "Sch 5S",
    "thickness",
  ],
  example: { args: [2, "10S"], gives: "0.109" },
  calc: ({ nps, schedule }, units) => pipeWall(nps, schedule, units),
});

const SIZES_TAKEN = EXCEPTIONS.map(
  ({ od, misalignment }) => `± ${toldInBoth(misalignment, LENGTH)} of ${toldInBoth(od, LENGTH)}`,
).join(" or ");

const ACCEPT_LIMITS = formula({
  id: "ACCEPT_LIMITS",
  meaning: "Maximum concavity, convexity and misalignment of a hygienic tube butt weld",
  args: { od: OD, wall: NOMINAL_WALL },
  gives: row({
    concavity: column("concavity", LENGTH),
    convexity: column("convexity", LENGTH),
    misalignment: column("misalignment on the outside", LENGTH),
  }),
  tex: [
    String.raw`\text{concavity} \le 10\,\%\cdot t,\quad \text{convexity} \le 10\,\%\cdot t`,
    String.raw`\text{misalignment} \le \begin{cases} 0.015\ \text{in} & \text{for a 4 in tube} \\ 0.030\ \text{in} & \text{for a 6 in tube} \\ 15\,\%\cdot t & \text{otherwise} \end{cases}`,
  ],
  where: { t: "nominal wall (wall)", misalignment: "of the two surfaces on the outside" },
  validity: `Wall less than half of od. Inside misalignment is 15 % of wall for every size. Inside and outside concavity together may not thin the wall below its minimum. A tube within ${SIZES_TAKEN} counts as that size. The edition of the contract governs.`,
  source: "[asme-bpe-2012], Table MJ-8.4-1",
  related: ["PIPE_OD", "PIPE_WALL", "SCHEDULE"],
  synonyms: [
    "acceptance criteria",
    "sanitary weld",
    "hi-lo",
    "mismatch",
    "suck-back",
    "reinforcement",
    "inspection",
    "visual",
    "misalignment",
    "high-low",
    "concavity",
    "convexity",
    "offset",
    "BPE",
  ],
  example: { args: [50.8, 1.65, "SI"], gives: "0.165, 0.165, 0.2475" },
  calc: ({ od, wall }) => weldLimits(od, wall),
});

export const TABLES = family("Tables", [PIPE_OD, PIPE_WALL, TUBE_TOLERANCE, ACCEPT_LIMITS]);
