/** The purge curve: oxygen in the bore over time, on a scale of powers of ten, and the target. */

import { OXYGEN, TIME } from "../../src/quantity";
import type { Joint, Measure } from "./joint";
import type { Picture } from "./picture";
import { notDrawn } from "./picture";
import { purgeFigure } from "./purge-figure";
import { grouped } from "./shape";

export interface Sample {
  readonly seconds: number;
  readonly ppm: number;
}

export interface Purge {
  /** In the order of time. */
  readonly samples: readonly Sample[];
  readonly target: Measure;
  readonly reached: Measure;
}

const PPM = { least: 0.1, most: 999_999 };
const SECONDS = { least: 0, most: 1e7 };

export function purgePicture(joint: Joint): Picture {
  const name = "Purge curve";
  const target = joint.measure("target_ppm", "oxygen to reach", OXYGEN, PPM);
  const reached = joint.measure("purge_time", "purge time", TIME, SECONDS);
  const curve = samplesOf(joint);
  if (joint.missing !== undefined || target === undefined || reached === undefined) {
    return notDrawn("purge", name, joint.missing ?? { what: ["oxygen by time"], why: "" });
  }
  const title =
    reached.value === 0
      ? `The bore has no more than ${target.shown} from the start`
      : `Down to ${target.shown} after ${reached.shown}, if gas and air mix`;
  const samples = [...curve, { seconds: reached.value, ppm: target.value }].sort(
    (one, other) => one.seconds - other.seconds || other.ppm - one.ppm,
  );
  const says = `${title}. Oxygen in the bore, ppm, on a scale of powers of ten, over the purge time, s: ${curve
    .map(({ seconds, ppm }) => `${grouped(ppm)} ppm at ${String(Math.round(seconds * 10) / 10)} s`)
    .join(", ")}. The target is a level line.`;
  return {
    id: "purge",
    title,
    notes: ["An oxygen meter, not the clock, says when a bore is ready."],
    drawing: purgeFigure({ samples, target, reached }, says),
  };
}

/** Rows with both numbers; where the purge gas itself has more oxygen, the sheet leaves the rest of them blank. */
function samplesOf(joint: Joint): Sample[] {
  const samples = joint.rows("levels").flatMap(([time, level]) => {
    if (time === undefined || level === undefined) return [];
    const seconds = joint.of(time, "a time of the curve", TIME, SECONDS);
    const ppm = joint.of(level, "a level of the curve", OXYGEN, PPM);
    return seconds === undefined || ppm === undefined ? [] : [{ seconds: seconds.value, ppm: ppm.value }];
  });
  if (samples.length < 2) joint.miss("oxygen by time");
  const falls = samples.every(
    ({ seconds, ppm }, i) =>
      i === 0 || (seconds >= (samples[i - 1]?.seconds ?? 0) && ppm < (samples[i - 1]?.ppm ?? 0)),
  );
  if (!falls) joint.miss("oxygen that falls with time");
  return samples;
}
