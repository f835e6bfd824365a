/** What the bench card says of a procedure sheet, as data: cells as shown, and why a number is not there. */

import { CURRENT } from "../../../../src/quantity";
import { SECTORS } from "../../../sheets/procedure/sectors";
import { SIGNS } from "../../../sheets/sheet";
import type { ShownSheet } from "./shown-sheet";
import { joined } from "./shown-sheet";

export interface Fact {
  readonly label: string;
  /** The number in large type, and what stands behind it in small type. */
  readonly large: string;
  readonly unit: string;
  readonly details: readonly string[];
  /** What the sheet's checks find wrong with it, in their words. */
  readonly remarks: readonly string[];
  /** More than half a line's worth of words. */
  readonly isWide: boolean;
  /** Sectors after the one in large type. */
  readonly later: readonly SectorFact[];
}

export interface SectorFact {
  readonly label: string;
  readonly amps: string;
}

export interface PhaseFact {
  readonly label: string;
  readonly lasts: string;
  readonly seconds: number;
  readonly hasArc: boolean;
}

/** Numbers that the sheet refuses, and the words of its check. */
export interface Refused {
  readonly what: readonly string[];
  readonly why: string;
}

export interface ProcedureFacts {
  readonly tube: string;
  readonly joint: string;
  readonly summary: string;
  readonly refused: readonly Refused[];
  readonly facts: readonly Fact[];
  readonly phases: readonly PhaseFact[];
}

/** What every number of the weld depends on. */
const TUBE_CHECK = "check_tube";
/** The first of these that does not hold speaks where a number's own checks do. */
const ANY_CHECK = [TUBE_CHECK, "check_computed", "check_units", "check_typed"];
/** A sheet that was changed so much that no check sees it, or one without the names that the card reads. */
const UNEXPLAINED = `${SIGNS.attention}the sheet has no such number: undo what was changed, or insert the sheet again`;
const PHASES = 7;
/** The phase away from the head. */
const AWAY = "Handling";

export function procedureFacts(sheet: ShownSheet): ProcedureFacts {
  const reading = new Reading(sheet);
  const facts = [
    gap(reading),
    electrode(reading),
    travel(reading),
    heat(reading),
    current(reading),
    purge(reading),
  ];
  const { phases } = reading;
  return {
    tube: `${sheet.text("od") ?? "–"} × ${joined(sheet.text("wall") ?? "–", sheet.unit("wall"))}  ${sheet.text("material") ?? ""}`.trim(),
    joint: [sheet.text("joint"), sheet.text("procedure_no")]
      .filter((words) => words !== undefined)
      .join(" · "),
    summary: sheet.text("summary") ?? "",
    refused: reading.refused,
    facts: facts.filter((fact) => fact !== undefined),
    phases,
  };
}

/** Amps by sector: peak and background of a pulsed arc, or the one current of a steady arc; none while one is missing. */
export function sectorsOf(sheet: ShownSheet): SectorFact[] {
  const [means, peaks, backs] = ["means", "peaks", "backs"].map((name) => sheet.column(name));
  const complete = (numbers: readonly string[] | undefined): numbers is readonly string[] =>
    numbers?.length === SECTORS.length;
  if (!complete(means)) return [];
  if (isSteady(sheet)) return SECTORS.map(([label], i) => ({ label, amps: means[i] ?? "" }));
  if (!complete(peaks) || !complete(backs)) return [];
  return SECTORS.map(([label], i) => ({ label, amps: `${peaks[i] ?? ""}/${backs[i] ?? ""}` }));
}

export function isSteady(sheet: ShownSheet): boolean {
  return sheet.text("style")?.toLowerCase() === "steady";
}

/** The sign of a check, without its words. */
export function signOf(sheet: ShownSheet, check: string): string {
  const verdict = sheet.text(check) ?? "";
  return Object.values(SIGNS).find((sign) => verdict.startsWith(sign)) ?? "";
}

/** A check's words where it does not hold. */
function complaint(sheet: ShownSheet, check: string): string | undefined {
  const verdict = sheet.text(check);
  return verdict?.startsWith(SIGNS.attention) === true ? verdict : undefined;
}

/** Reads number by number, and keeps account of those that are not there. */
class Reading {
  readonly #missing = new Map<string, string[]>();
  readonly sectors: readonly SectorFact[];

  constructor(readonly sheet: ShownSheet) {
    this.sectors = sectorsOf(sheet);
  }

  get refused(): Refused[] {
    return [...this.#missing].map(([why, what]) => ({ what, why }));
  }

  get phases(): PhaseFact[] {
    const all = Array.from({ length: PHASES }, (_, row) => ({
      label: this.sheet.text("phases", 0, row) ?? "",
      lasts: this.sheet.number("phases", 2, row) ?? "",
      seconds: Number(this.sheet.value("phases", 2, row)),
      hasArc: this.sheet.value("phases", 3, row) === true,
    }));
    if (all.some(({ label, lasts }) => label === "" || lasts === "")) {
      this.tell("times of the cycle", undefined, ["check_cycle"]);
      return [];
    }
    return all.filter(({ label, seconds }) => label !== AWAY && seconds > 0);
  }

  number(name: string, what: string, checks: readonly string[]): string | undefined {
    return this.tell(what, this.sheet.number(name), checks);
  }

  withUnit(name: string, what: string, checks: readonly string[]): string | undefined {
    return this.tell(what, this.sheet.withUnit(name), checks);
  }

  /** Hands on what was read; what is missing is told with the words of the first check that does not hold. */
  tell(what: string, shown: string | undefined, checks: readonly string[]): string | undefined {
    if (shown !== undefined) return shown;
    const why =
      [TUBE_CHECK, ...checks, ...ANY_CHECK]
        .map((check) => complaint(this.sheet, check))
        .find((words) => words !== undefined) ?? UNEXPLAINED;
    this.#missing.set(why, [...(this.#missing.get(why) ?? []), what]);
    return undefined;
  }

  /** A fact with what its own checks find wrong; none without its number, which is told as missing. */
  fact(
    label: string,
    large: string | undefined,
    unit: string,
    more: {
      readonly details: readonly (string | undefined)[];
      readonly checks?: readonly string[];
      readonly isWide?: boolean;
      readonly later?: readonly SectorFact[];
    },
  ): Fact | undefined {
    if (large === undefined) return undefined;
    const { checks = [], isWide = false, later = [] } = more;
    const details = more.details.filter(isThere);
    // Where there is no tube to judge, every other check says that it has nothing to judge.
    const own = complaint(this.sheet, TUBE_CHECK) === undefined ? checks : [];
    const remarks = own.map((check) => complaint(this.sheet, check)).filter(isThere);
    return { label, large, unit, details, remarks, isWide, later };
  }
}

function isThere(words: string | undefined): words is string {
  return words !== undefined && words !== "";
}

function phrase(before: string, shown: string | undefined, after = ""): string | undefined {
  return shown === undefined ? undefined : `${before}${shown}${after}`;
}

function together(...parts: readonly (string | undefined)[]): string {
  return parts.filter(isThere).join(" · ");
}

function gap(reading: Reading): Fact | undefined {
  const { sheet } = reading;
  const checks = ["check_gap"];
  const standoff = reading.number("standoff", "standoff", checks);
  const leaves = reading.tell("feeler leaves", sheet.text("feeler"), checks);
  return reading.fact("Standoff", standoff, sheet.unit("standoff"), {
    details: [phrase("leaves ", leaves)],
    checks,
  });
}

function electrode(reading: Reading): Fact | undefined {
  const { sheet } = reading;
  const checks = ["check_gap"];
  const length = reading.number("electrode_length", "electrode length", checks);
  const diameter = reading.withUnit("electrode", "electrode diameter", checks);
  return reading.fact("Electrode length", length, sheet.unit("electrode_length"), {
    details: [phrase("diameter ", diameter)],
  });
}

function travel(reading: Reading): Fact | undefined {
  const { sheet } = reading;
  const checks = ["check_sectors"];
  const rpm = reading.number("rpm", "rotor speed", checks);
  const dwell = reading.withUnit("dwell", "start dwell", checks);
  const overlap = reading.withUnit("overlap", "overlap", checks);
  return reading.fact("Rotor", rpm, sheet.unit("rpm"), {
    details: [phrase("start dwell ", dwell), phrase("overlap ", overlap)],
  });
}

function heat(reading: Reading): Fact | undefined {
  const { sheet } = reading;
  const checks = ["check_heat"];
  const input = reading.number("heat", "heat input", checks);
  const most = reading.number("heat_most", "maximum heat input", checks);
  return reading.fact("Heat input", input, sheet.unit("heat"), {
    details: [phrase(`${signOf(sheet, "check_heat")}maximum `, most)],
    checks,
  });
}

function current(reading: Reading): Fact | undefined {
  const { sheet, sectors } = reading;
  const checks = ["check_sectors", "check_bead"];
  const [first, ...later] = sectors;
  const amps = reading.tell("current by sector", first?.amps, checks);
  const common = { checks, isWide: true, later };
  if (isSteady(sheet))
    return reading.fact("Current, steady, sector 1", amps, CURRENT.US.unit, { details: [], ...common });
  const rate = reading.withUnit("pulse_rate", "pulse rate", checks);
  const share = reading.number("pulse_share", "peak share of the pulse", checks);
  return reading.fact("Peak/background, sector 1", amps, CURRENT.US.unit, {
    details: [together(phrase("pulse ", rate), phrase("peak share ", share))],
    ...common,
  });
}

function purge(reading: Reading): Fact | undefined {
  const { sheet } = reading;
  const flow = reading.number("purge_flow", "purge flow", ["check_flow"]);
  const time = reading.withUnit("purge_time", "purge time", ["check_purge"]);
  const target = reading.withUnit("target_ppm", "oxygen to reach", ["check_purge"]);
  const untilReady = [phrase("at least ", time), phrase("until the meter shows ", target)];
  return reading.fact("Purge", flow, sheet.unit("purge_flow"), {
    details: [untilReady.filter(isThere).join(", then ")],
    checks: ["check_purge", "check_flow"],
    isWide: true,
  });
}
