/** Moisture of gas, and oxygen of rooms. */

import type { Source } from "../source";
import { NOT_NOTED } from "../source";

export const AIR_SOURCES = {
  "dew-point-page": {
    short: "a public table of frost points",
    title: "Frost point and water vapor in parts per million by volume",
    where: "a public page, pressures over 1013 hPa",
    edition: NOT_NOTED,
    standing: "web page",
    access: "copy",
  },
  "fermilab-2013": {
    short: "Fermilab 2013",
    author: "Fermi National Accelerator Laboratory",
    title: "Oxygen deficiency hazards",
    where: "news of the laboratory",
    edition: "2013",
    standing: "web page",
    access: "copy",
  },
  "murphy-koop-2005": {
    short: "Murphy & Koop 2005",
    author: "D. M. Murphy and T. Koop",
    title: "Review of the vapour pressures of ice and supercooled water for atmospheric applications",
    where: "Quarterly Journal of the Royal Meteorological Society 131, 1539",
    edition: "2005",
    standing: "paper",
    access: "second-hand",
    note: "Its Table 1 was read where a public code quotes it; the equations, from memory, reproduce every digit of it.",
  },
  "odh-model": {
    short: "oxygen deficiency model of national laboratories",
    title: "Oxygen deficiency hazard analysis: a mixed room with a steady release and fresh air",
    where: "safety manuals of national laboratories",
    edition: NOT_NOTED,
    standing: "handbook",
    access: "memory",
    note: "That the laboratories use it was read; its equation is from memory.",
  },
} as const satisfies Record<string, Source>;
