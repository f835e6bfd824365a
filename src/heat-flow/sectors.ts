/** Current sector by sector around a tube that heats up as it is welded. */

import { itemAt } from "../numerics/item";
import { above0, atLeast0, between, tube, wholeFrom1 } from "../limits";
import type { Angle, Count, Length, Share, Speed, TemperatureRise, Time } from "../quantity";
import { ANGLE, COUNT, LENGTH, SHARE, si, SPEED, TEMPERATURE_RISE, TIME } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import { dimensionlessWidth, meltPower, meltResistance } from "./melt-power";
import type { Plate } from "./plate";
import { arcSpeed } from "./plate";
import type { Course } from "./ring";
import { meanPower, powerAt, ringCourse } from "./ring";

export interface RingPass {
  readonly od: Length;
  readonly speed: Speed;
  readonly beadWidth: Length;
  /** Arc on before the head turns, s. */
  readonly dwell: Time;
  readonly sectors: Count;
  /** Degrees past the full turn. */
  readonly overlap: Angle;
}

export interface Sector {
  /** Degrees of rotation. */
  readonly from: Angle;
  readonly to: Angle;
  /** Mean power into the tube, W. */
  readonly power: number;
  /** Power over that of the first sector. */
  readonly share: Share;
  /** How much warmer the tube is ahead of the arc than at the start, at the sector's end, K. */
  readonly rise: TemperatureRise;
}

/** Quarters of the full turn, as shops set them. */
export const COMMON_SECTORS = si(4, COUNT);
export const MOST_SECTORS = si(360, COUNT);
export const MOST_OVERLAP = si(1080, ANGLE);
const LONGEST_DWELL = 3600;
/** v·C/(4α): from a ring that soaks as fast as the arc moves to one whose heat never catches up. */
const PECLETS = [0.02, 10_000] as const;

/**
 * Sectors of equal length, the overlap as one more when there is any. The power is that of the bead, lowered in the
 * proportion in which the ring's own heat (dwell included) has already heated the metal ahead of the arc.
 */
export function ringSectors(plate: Plate, pass: RingPass): Sector[] {
  const { sectors, overlap } = pass;
  wholeFrom1("sectors", sectors, MOST_SECTORS);
  between("overlap", atLeast0("overlap", overlap, ANGLE), ANGLE, 0, MOST_OVERLAP);
  const power = meltPower(plate, pass.speed, pass.beadWidth);
  const course = courseOf(plate, pass);
  const ends = Array.from({ length: sectors }, (_, i) => (i + 1) / sectors);
  if (overlap > 0) ends.push(1 + overlap / 360);
  const means = ends.map((end, i) => meanPower(course, ends[i - 1] ?? 0, end));
  return ends.map((end, i) => ({
    from: si(360 * (ends[i - 1] ?? 0), ANGLE),
    to: si(360 * end, ANGLE),
    power: power * itemAt(means, i),
    share: si(itemAt(means, i) / itemAt(means, 0), SHARE),
    rise: si(Math.max(0, plate.meltingRise * (1 - powerAt(course, end))), TEMPERATURE_RISE),
  }));
}

function courseOf(plate: Plate, { od, speed, beadWidth, dwell, overlap }: RingPass): Course {
  tube(od, plate.wall);
  const circumference = Math.PI * (above0("od", od, LENGTH) - plate.wall);
  const atPeclet = (peclet: number): number => (4 * plate.diffusivity * peclet) / circumference;
  between("speed", arcSpeed(speed), SPEED, atPeclet(PECLETS[0]), atPeclet(PECLETS[1]));
  between("dwell", atLeast0("dwell", dwell, TIME), TIME, 0, LONGEST_DWELL);
  const turns = 1 + overlap / 360;
  const course = ringCourse({
    peclet: (speed * circumference) / (4 * plate.diffusivity),
    resistance: meltResistance(dimensionlessWidth(plate, speed, beadWidth)),
    dwell: (dwell * speed) / circumference,
    turns,
  });
  refuseMolten(course, turns, dwell, speed);
  return course;
}

/** Where the tube's own heat alone would melt it there is no current that keeps the bead. */
function refuseMolten(course: Course, turns: number, dwell: Time, speed: Speed): void {
  const first = course.powers.findIndex((power) => power <= 0) * course.step;
  const molten = first < 0 || first > turns ? turns : first;
  if (powerAt(course, molten) > 0) return;
  if (molten === 0) {
    throw new Refusal(
      "dwell",
      amount(dwell, TIME),
      rule`shorten the dwell; would melt the full circumference before rotation`,
      "unanswerable",
    );
  }
  throw new Refusal(
    "speed",
    amount(speed, SPEED),
    rule`the tube's own heat melts it ahead of the arc ${amount(Math.round(360 * molten), ANGLE)} into the rotation; increase travel speed, reduce overlap or target a narrower bead`,
    "unanswerable",
  );
}
