/** The ring seen from the end: sectors with their amps, where heat has come around, lap and start, direction of travel. */

import { ANGLE, CURRENT, ROTATION, TEMPERATURE_RISE } from "../../src/quantity";
import { SECTORS } from "../sheets/procedure/sectors";
import { currentFinding, heatFinding } from "./compare";
import type { ShownCell } from "./cells";
import { BLANK } from "./cells";
import type { Joint, Measure } from "./joint";
import type { Picture } from "./picture";
import { notDrawn } from "./picture";
import { ringFigure } from "./ring-figure";

export interface Sector {
  readonly label: string;
  /** Where it begins and ends, ° from the start. */
  readonly from: number;
  readonly to: number;
  readonly mean: Measure;
  /** Peak and background of a pulsed arc. */
  readonly pulse?: string;
  readonly rise: Measure;
}

export interface Ring {
  /** Of the full turn, and what comes after it over its beginning. */
  readonly sectors: readonly Sector[];
  readonly lap: Sector;
  readonly overlap: Measure;
  readonly rotor: Measure;
}

const AMPS = { least: 0.01, most: 1e5 };
const RISES = { least: 0, most: 1e5 };
/** Two turns at most: the sheet laps no further. */
const ANGLES = { least: 0, most: 720 };
const ROTORS = { least: 1e-4, most: 1e4 };

export function ringPicture(joint: Joint): Picture {
  const name = "Ring seen from the end";
  const overlap = joint.measure("overlap", "overlap", ANGLE, { least: 0, most: 360 });
  const rotor = joint.measure("rpm", "rotor speed", ROTATION, ROTORS);
  const all = SECTORS.flatMap((_, i) => sectorOf(joint, i) ?? []);
  for (const [i, sector] of all.entries()) {
    const before = all[i - 1]?.to ?? 0;
    if (Math.abs(sector.from - before) > 1e-6 || sector.to <= sector.from) {
      joint.miss(
        `a turn in order: ${sector.label.toLowerCase()} goes from ${String(sector.from)}° to ${String(sector.to)}°`,
      );
    }
  }
  if (joint.missing !== undefined) return notDrawn("ring", name, joint.missing);
  const [lap, sectors] = [all.at(-1), all.slice(0, -1)];
  const [first, last] = [sectors[0], sectors.at(-1)];
  if ([overlap, rotor, lap, first, last].includes(undefined)) {
    return notDrawn("ring", name, { what: ["sectors of the turn"], why: "" });
  }
  return drawn({ sectors, lap, overlap, rotor } as Ring);
}

function drawn(ring: Ring): Picture {
  const { sectors, lap, overlap, rotor } = ring;
  const title = currentFinding(sectors);
  const isPulsed = sectors.some(({ pulse }) => pulse !== undefined);
  const spoken = [...sectors, lap].map(
    ({ label, from, to, mean, pulse, rise }) =>
      `${label}, ${String(from)} to ${degrees(to)}: ${mean.shown} mean${pulse === undefined ? "" : `, ${pulse} peak/background`}, tube ${rise.shown} warmer ahead of the arc`,
  );
  const says = `${title}. ${heatFinding(sectors)} ${spoken.join("; ")}. Overlap ${overlap.shown}, rotor ${rotor.shown}.`;
  return {
    id: "ring",
    title,
    notes: [
      heatFinding(sectors),
      isPulsed ? "Mean, then peak/background, then rise ahead." : "Steady current, then rise ahead.",
      "Wall not to scale; start and direction are examples.",
    ],
    drawing: ringFigure(ring, says),
  };
}

function degrees(angle: number): string {
  return `${String(Math.round(angle * 10) / 10)}°`;
}

/** One row of the sheet's table; undefined where a number is missing, which is told. */
function sectorOf(joint: Joint, i: number): Sector | undefined {
  const label = SECTORS[i]?.[0] ?? "";
  const named = label.toLowerCase();
  const row = joint.rows("means")[i] ?? [];
  const at = (column: number): ShownCell => row[column] ?? BLANK;
  const from = joint.of(at(0), `beginning of ${named}`, ANGLE, ANGLES);
  const to = joint.of(at(1), `end of ${named}`, ANGLE, ANGLES);
  const mean = joint.of(at(2), `current of ${named}`, CURRENT, AMPS);
  const rise = joint.of(at(3), `rise ahead of the arc, ${named}`, TEMPERATURE_RISE, RISES);
  const pulse = pulseOf(joint, i, named);
  if (from === undefined || to === undefined || mean === undefined || rise === undefined) return undefined;
  return {
    label,
    from: from.value,
    to: to.value,
    mean,
    rise,
    ...(pulse === undefined ? {} : { pulse }),
  };
}

function pulseOf(joint: Joint, i: number, named: string): string | undefined {
  if (joint.cell("style").text.toLowerCase() === "steady") return undefined;
  const [peak, back] = ["peaks", "backs"].map((name) =>
    joint.of(
      joint.rows(name)[i]?.[0] ?? BLANK,
      `${name === "peaks" ? "peak" : "background"} of ${named}`,
      CURRENT,
      AMPS,
    ),
  );
  if (peak === undefined || back === undefined) return undefined;
  return `${peak.shown.replace(/ A$/, "")}/${back.shown}`;
}
