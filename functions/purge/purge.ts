/** Purging the bore: its volume, and how oxygen falls as gas sweeps it. */

import {
  COMMON_TARGET_PPM,
  MOST_CELLS,
  purgeChanges,
  purgeFlow,
  purgeOxygen,
  purgeTime,
  purgeVolume,
  sweepTime,
} from "../../src/purge/purge";
import { COUNT, FLOW, LENGTH, OXYGEN, plainNumber, si, TIME, VOLUME } from "../../src/quantity";
import { number, orComputed, orDefault } from "../argument";
import { BORE, FLOW_OF_PURGE } from "../arguments";
import { family, formula } from "../formula";
import { scalar } from "../gives";
import { PURGE_LEAK, PURGE_TINT } from "./oxygen";

const PURGED_LENGTH = number("Purged length, dam to dam", LENGTH);
/** What every formula of the sweep ends with. */
const SWEEP = {
  supplyPpm: orDefault(number("Oxygen in the purge gas", OXYGEN), si(0, OXYGEN)),
  cells: orDefault(
    number("Mixed cells in series", COUNT, "1 is fully mixed and safe, more is nearer to plain displacement"),
    si(1, COUNT),
  ),
};
const TO_TARGET = { ppm: orDefault(number("Oxygen to reach", OXYGEN), COMMON_TARGET_PPM), ...SWEEP };
const SWEEP_WHERE = {
  Cₛ: "oxygen in the purge gas (supplyPpm)",
  "C₀": "oxygen in dry air",
  N: "mixed cells in series (cells)",
  n: "volume changes",
  k: "index of the sum",
};
const CELLS_ALLOWED = `cells 1 to ${plainNumber(MOST_CELLS)}`;
const SOURCE = "Sweep-through dilution of [nfpa-69] for one cell; tanks in series for more";

const PURGE_VOLUME = formula({
  id: "PURGE_VOLUME",
  meaning: "Gas volume of the purged length of bore",
  args: { bore: BORE, length: PURGED_LENGTH },
  gives: scalar(VOLUME),
  tex: [String.raw`V = \frac{\pi}{4}\,d^2 L`],
  where: { V: "gas volume", d: "inside diameter (bore)", L: "purged length (length)" },
  validity: "bore and length above 0; add hoses and fittings",
  assumptions: "A round bore",
  source: "Geometry",
  unchecked: "Geometry alone: the check is its arithmetic worked out by hand",
  related: ["PURGE_TIME", "PURGE_FLOW", "PURGE_CHANGES"],
  synonyms: ["bore volume", "pipe volume", "cubic feet", "litres", "volume of the pipe"],
  example: { args: [47.498, 6096, "SI"], gives: "10.801535" },
  calc: ({ bore, length }) => purgeVolume(bore, length),
});

const PURGE_CHANGES = formula({
  id: "PURGE_CHANGES",
  meaning: "Volume changes that bring air down to an oxygen level",
  args: TO_TARGET,
  gives: scalar(COUNT),
  tex: [
    String.raw`C = C_s + (C_0 - C_s)\,\exp(-Nn)\sum_{k=0}^{N-1}\frac{(Nn)^k}{k!}`,
    String.raw`C_0 = 209\,500\ \text{ppm}`,
  ],
  where: {
    C: "oxygen to reach (ppm)",
    ...SWEEP_WHERE,
  },
  validity: `${CELLS_ALLOWED}; #N/A if ppm is not above supplyPpm. Leaks and dead legs need more: an oxygen meter decides.`,
  assumptions:
    "The bore starts full of dry air, flow is steady and every cell fully mixed; no leak, no dead leg",
  source: SOURCE,
  related: ["PURGE_TIME", "PURGE_FLOW", "PURGE_OXYGEN", "PURGE_LEAK", "PURGE_TINT"],
  synonyms: [
    "air changes",
    "dilution",
    "oxygen level",
    "ppm",
    "volume changes",
    "exchanges",
    "swept volumes",
    "number of purges",
  ],
  figure: "cells",
  example: { args: [50], gives: "8.3405" },
  calc: ({ ppm, supplyPpm, cells }) => purgeChanges(ppm, supplyPpm, cells),
});

const PURGE_TIME = formula({
  id: "PURGE_TIME",
  meaning: "Time to purge a bore down to an oxygen level",
  args: {
    bore: BORE,
    length: PURGED_LENGTH,
    flow: FLOW_OF_PURGE,
    ...TO_TARGET,
    changes: orComputed(number("Volume changes to purge with instead", COUNT), "PURGE_CHANGES"),
  },
  gives: scalar(TIME),
  tex: [String.raw`t = \frac{n V}{Q}`],
  where: {
    t: "time to purge",
    n: "volume changes (changes), or those of PURGE_CHANGES",
    V: "volume of the bore, of PURGE_VOLUME",
    Q: "purge flow (flow)",
  },
  validity:
    "As PURGE_CHANGES; with changes given, the oxygen that they reach is for PURGE_OXYGEN to tell. An oxygen meter at the vent decides.",
  assumptions: "As PURGE_CHANGES; a tight volume vented at the top",
  source: SOURCE,
  related: ["PURGE_CHANGES", "PURGE_VOLUME", "PURGE_FLOW", "PURGE_OXYGEN", "PURGE_LAMINAR"],
  synonyms: [
    "purge duration",
    "backing gas",
    "oxygen level",
    "ppm",
    "purge",
    "how long to purge",
    "prepurge",
    "back purge",
    "backing",
    "argon purge",
  ],
  figure: "cells",
  example: { args: [47.498, 6096, 10, 50, 0, 1, null, "SI"], gives: "540.538" },
  calc: ({ bore, length, flow, ppm, supplyPpm, cells, changes }) =>
    changes === undefined
      ? purgeTime(bore, length, flow, ppm, supplyPpm, cells)
      : sweepTime(bore, length, flow, changes),
});

const PURGE_FLOW = formula({
  id: "PURGE_FLOW",
  meaning: "Purge flow that reaches an oxygen level in a given time",
  args: {
    bore: BORE,
    length: PURGED_LENGTH,
    seconds: number("Time available for the purge", TIME),
    ...TO_TARGET,
  },
  gives: scalar(FLOW),
  tex: [String.raw`Q = \frac{n V}{t}`],
  where: {
    Q: "purge flow",
    n: "volume changes, of PURGE_CHANGES",
    V: "volume of the bore, of PURGE_VOLUME",
    t: "time available for the purge (seconds)",
  },
  validity: "As PURGE_CHANGES. The vent must pass this flow without raising the bore pressure.",
  assumptions: "As PURGE_CHANGES",
  source: SOURCE,
  related: ["PURGE_CHANGES", "PURGE_TIME", "PURGE_VENT", "PURGE_LAMINAR"],
  synonyms: ["cfh", "L/min", "flow rate", "scfh", "lpm", "purge rate", "back purge flow", "backing gas flow"],
  figure: "cells",
  example: { args: [47.498, 6096, 540.538, 50, 0, 1, "SI"], gives: "10" },
  calc: ({ bore, length, seconds, ppm, supplyPpm, cells }) =>
    purgeFlow(bore, length, seconds, ppm, supplyPpm, cells),
});

const PURGE_OXYGEN = formula({
  id: "PURGE_OXYGEN",
  meaning: "Oxygen in the bore after a time of purging",
  args: {
    bore: BORE,
    length: PURGED_LENGTH,
    flow: FLOW_OF_PURGE,
    seconds: number("Time purged", TIME),
    ...SWEEP,
  },
  gives: scalar(OXYGEN),
  tex: [
    String.raw`C = C_s + (C_0 - C_s)\,\exp(-Nn)\sum_{k=0}^{N-1}\frac{(Nn)^k}{k!}`,
    String.raw`n = \frac{Q t}{V},\quad C_0 = 209\,500\ \text{ppm}`,
  ],
  where: {
    C: "oxygen in the bore",
    ...SWEEP_WHERE,
    Q: "purge flow (flow)",
    t: "time purged (seconds)",
    V: "volume of the bore, of PURGE_VOLUME",
  },
  validity: `${CELLS_ALLOWED}. Never a substitute for an oxygen meter.`,
  assumptions: "As PURGE_CHANGES: no leak",
  source: SOURCE,
  related: ["PURGE_CHANGES", "PURGE_TIME", "PURGE_LEAK", "PURGE_TINT"],
  synonyms: [
    "oxygen level",
    "ppm",
    "residual oxygen",
    "oxygen",
    "O2",
    "oxygen meter",
    "purge monitor",
    "sugaring",
  ],
  figure: "cells",
  example: { args: [47.498, 6096, 10, 540.538, 0, 1, "SI"], gives: "50.000" },
  calc: ({ bore, length, flow, seconds, supplyPpm, cells }) =>
    purgeOxygen(bore, length, flow, seconds, supplyPpm, cells),
});

export const PURGE = family("Purge", [
  PURGE_VOLUME,
  PURGE_CHANGES,
  PURGE_TIME,
  PURGE_FLOW,
  PURGE_OXYGEN,
  PURGE_LEAK,
  PURGE_TINT,
]);
