/** What a programmed schedule melts, sector by sector. */

import { above0, atLeast0, between } from "../limits";
import { itemAt } from "../numerics/item";
import type { Angle, Current, Length, Temperature, TemperatureRise, Time } from "../quantity";
import { ANGLE, COUNT, CURRENT, LENGTH, si, TEMPERATURE_RISE, TIME } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import { coldestRise } from "./coldest";
import type { MeltSection } from "./melt";
import type { MovingArc } from "./moving-arc";
import { movingArc, riseAt } from "./moving-arc";
import type { Weld } from "./plate";
import { riseToMelt } from "./plate";
import type { ReadyPass } from "./ring-bead";
import { readyPass, ringSection } from "./ring-bead";
import { ringRise } from "./ring-rise";
import { LONGEST_DWELL, MOST_OVERLAP, MOST_SECTORS, refuseAllRound, ringOf, sectorEnds } from "./ring-weld";
import type { SectorPlan } from "./sectors";
import { plannedPass } from "./sectors";

export interface Program extends Weld {
  readonly od: Length;
  /** One a sector. */
  readonly amps: readonly Current[];
  /** Past the full turn; that of the last sector where it is omitted. */
  readonly overlapAmps?: Current | undefined;
  readonly dwell: Time;
  /** During the dwell; that of the first sector where it is omitted. */
  readonly dwellAmps: Current | undefined;
  readonly overlap: Angle;
  readonly preheat: Temperature;
  /** W into the tube per A. */
  readonly watts: number;
}

export interface BeadAt {
  readonly from: Angle;
  readonly to: Angle;
  readonly amps: Current;
  /** Fused widths at the sector's end, where they are widest; 0 where nothing melts. */
  readonly face: Length;
  readonly root: Length;
  /** How much warmer the tube's own heat has made it there, K. */
  readonly warmth: TemperatureRise;
}

const MOST_AMPS = si(10_000, CURRENT);

/** Currents of so many sectors as a turn may have, each within reach of the heat flow; refused by the argument's name. */
export function sectorCurrents(argument: string, currents: readonly Current[]): readonly Current[] {
  if (currents.length > MOST_SECTORS) {
    throw new Refusal(
      argument,
      String(currents.length),
      rule`sectors are too many; at most ${amount(MOST_SECTORS, COUNT)}`,
    );
  }
  for (const one of currents) between(argument, above0(argument, one, CURRENT), CURRENT, 0, MOST_AMPS);
  return currents;
}

/** Face, root and warmth at the end of each sector, the overlap as one more when there is any. */
export function ringBead(program: Program): BeadAt[] {
  const { overlap, dwell, dwellAmps, watts } = program;
  const amps = sectorCurrents("amps", program.amps);
  if (dwellAmps !== undefined) {
    between("dwellAmps", atLeast0("dwellAmps", dwellAmps, CURRENT), CURRENT, 0, MOST_AMPS);
  }
  between("dwell", atLeast0("dwell", dwell, TIME), TIME, 0, LONGEST_DWELL);
  between("overlap", atLeast0("overlap", overlap, ANGLE), ANGLE, 0, MOST_OVERLAP);
  const rise = riseToMelt(program.material, program.preheat);
  const { plate, circumference } = ringOf(program.od, program);
  const ends = sectorEnds(amps.length, overlap);
  const last = program.overlapAmps ?? itemAt(amps, amps.length - 1);
  const all = ends.map((_, i) => amps[i] ?? last);
  const powers = all.map((one) => one * watts);
  const plan = { plate, circumference, width: 0, rise, dwell, ends };
  const pass = readyPass(plannedPass(plan, (dwellAmps ?? itemAt(all, 0)) * watts, powers));
  refuseAllRound(program.od, coldestRise(pass.history.pass) / rise);
  const arc = movingArc(plate);
  const sections = sectionsAtEnds(pass, plan);
  return ends.map((end, i) => {
    const { face, root } = itemAt(sections, i);
    return {
      from: si(360 * (ends[i - 1] ?? 0), ANGLE),
      to: si(360 * end, ANGLE),
      amps: itemAt(all, i),
      face,
      root,
      warmth: si(warmthAt(pass, arc, itemAt(powers, i), end), TEMPERATURE_RISE),
    };
  });
}

/** Walls and spreads before the end: of the places tried, the one whose widths were nearest to those of the runs there. */
const LAG = 1;

/** Fused widths at the end of each sector: so little before it that most of its melting is still done with its current. */
export function sectionsAtEnds(
  pass: ReadyPass,
  { plate, circumference, rise, ends }: Pick<SectorPlan, "plate" | "circumference" | "rise" | "ends">,
): readonly { readonly face: Length; readonly root: Length }[] {
  let section: MeltSection | undefined;
  return ends.map((end) => {
    const travel = circumference * end;
    const lag = Math.min(LAG * (plate.spread + plate.wall), travel / 2);
    section = ringSection(pass, rise, travel - lag, section);
    return { face: si(section.face, LENGTH), root: si(section.root, LENGTH) };
  });
}

/** What the tube has at the arc beyond what the arc gives a cold plate, K. */
function warmthAt({ history }: ReadyPass, arc: MovingArc, power: number, end: number): number {
  const { circumference, dwell, plate } = history.pass;
  const travel = circumference * end;
  const all = ringRise(history, history.mean, travel, 0, dwell + travel / plate.speed).value;
  return Math.max(0, all - power * riseAt(arc, arc.mean, 0, 0).value);
}
