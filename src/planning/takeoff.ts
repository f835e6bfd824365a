/** A list of joints: what each line takes of time and gas, the reason where a line cannot be counted, and the sums. */

import { commonBeadWidth } from "../travel/bead";
import { COMMON_POSTPURGE, COMMON_PREPURGE, commonDownslope, cycleTime } from "./cycle";
import { jointGas } from "../gas/gas-supply";
import { TABLE_WALLS, usualDwell } from "../heat-flow/dwell-table";
import { above0, atLeast0, atMost, between, tube, wholeFrom1 } from "../limits";
import type { Material } from "../metal/material";
import { purgeChanges, purgeVolume } from "../purge/purge";
import type { Angle, Count, Duration, Flow, Length, Oxygen, Share, Speed, Time, Volume } from "../quantity";
import { ANGLE, COUNT, DURATION, FLOW, LENGTH, OXYGEN, SHARE, si, TIME, VOLUME } from "../quantity";
import { Refusal } from "../refusal";
import { suggestedSpeed } from "../travel/travel";

/** So many joints of one tube. */
export interface Line {
  readonly quantity: Count;
  readonly od: Length;
  readonly wall: Length;
  readonly material: Material;
}

/** What all lines have in common. */
export interface Terms {
  /** Unload, load and set up, s a joint. */
  readonly handling: Time;
  readonly torchFlow: Flow;
  readonly purgeFlow: Flow;
  /** The bore is purged so long before the cycle starts, and on through it; undefined: as long as the sweep takes. */
  readonly purgeSeconds: Time | undefined;
  /** No bore is purged for less before the cycle starts. */
  readonly purgeAtLeast: Time;
  /** How much of that purge is waited for, so that it counts in the hours: 0 where another joint is worked on meanwhile. */
  readonly purgeWaited: Share;
  /** Length of bore between the dams and the oxygen to reach in it; no sweep without the length. */
  readonly damSpacing: Length | undefined;
  readonly ppm: Oxygen;
  readonly supplyPpm: Oxygen;
  /** Degrees past the full turn. */
  readonly overlap: Angle;
}

/** What a line takes, and the line itself. */
export interface Counted extends Line {
  /** Suggested travel, m/s. */
  readonly speed: Speed;
  /** One joint from prepurge to postpurge, s. */
  readonly machine: Time;
  /** Purge of one bore before the cycle starts, s. */
  readonly purge: Time;
  /** The whole line, handling included, s. */
  readonly seconds: Duration;
  /** Gas of the whole line through the torch and through the bore, m³. */
  readonly arcGas: Volume;
  readonly purgeGas: Volume;
}

/** Far beyond any list or tube; inside, no line can grow so large that it spoils the sums of the others. */
export const MOST_JOINTS = si(1e9, COUNT);
const LARGEST_OD = si(10, LENGTH);
/** Within the walls and beads that the heat flow answers. */
export const WALLS = TABLE_WALLS;

/**
 * A list counted line by line. A line's machine time is prepurge 30 s, dwell, turn with overlap at the suggested speed,
 * downslope, postpurge 15 s; its gas quantity × (torch flow × machine time + purge flow × (purge time + machine time)).
 * The purge runs while another joint is handled or welded: it costs gas, and hours only as far as it is waited for.
 */
export class Takeoff {
  /** Sums of the lines counted: joints, s and m³. */
  joints = si(0, COUNT);
  seconds = si(0, DURATION);
  arcGas = si(0, VOLUME);
  purgeGas = si(0, VOLUME);
  counted = 0;
  omitted = 0;
  private readonly terms: Terms;
  /** Volume changes of the sweep, the same for every bore. */
  private readonly changes: Count;

  constructor(terms: Terms) {
    atLeast0("handlingSeconds", terms.handling, TIME);
    atLeast0("torchFlow", terms.torchFlow, FLOW);
    atLeast0("purgeFlow", terms.purgeFlow, FLOW);
    if (terms.purgeSeconds !== undefined) atLeast0("purgeSeconds", terms.purgeSeconds, TIME);
    atLeast0("overlap", terms.overlap, ANGLE);
    atLeast0("purgeAtLeast", terms.purgeAtLeast, TIME);
    between("purgeWaited", terms.purgeWaited, SHARE, NONE, ALL);
    if (terms.damSpacing !== undefined) above0("damSpacing", terms.damSpacing, LENGTH);
    atLeast0("ppm", terms.ppm, OXYGEN);
    atLeast0("supplyPpm", terms.supplyPpm, OXYGEN);
    const sweeps = terms.damSpacing !== undefined && terms.purgeSeconds === undefined;
    this.changes = sweeps ? purgeChanges(terms.ppm, terms.supplyPpm, ONE_CELL) : si(0, COUNT);
    this.terms = terms;
  }

  /** Adds a line to the sums, or omits one that cannot be read or counted and says why: no line is lost unseen. */
  add(readLine: () => Line): Counted | Refusal {
    let line: Counted;
    try {
      line = count(readLine(), this.terms, this.changes);
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      this.omitted += 1;
      return problem;
    }
    this.counted += 1;
    this.joints = si(this.joints + line.quantity, COUNT);
    this.seconds = si(this.seconds + line.seconds, DURATION);
    this.arcGas = si(this.arcGas + line.arcGas, VOLUME);
    this.purgeGas = si(this.purgeGas + line.purgeGas, VOLUME);
    return line;
  }
}

function count(line: Line, terms: Terms, changes: Count): Counted {
  const { od, wall, material } = line;
  const quantity = wholeFrom1("quantity", line.quantity, MOST_JOINTS);
  atMost("od", od, LENGTH, LARGEST_OD);
  tube(od, wall);
  between("wall", wall, LENGTH, ...WALLS);
  const beadWidth = commonBeadWidth(wall);
  const speed = suggestedSpeed(beadWidth, material);
  const machine = machineTime(line, beadWidth, speed, terms.overlap);
  const purge = purgeOf(si(od - 2 * wall, LENGTH), terms, changes);
  return {
    quantity,
    od,
    wall,
    material,
    speed,
    machine,
    purge,
    seconds: si(quantity * (machine + terms.handling + terms.purgeWaited * purge), DURATION),
    arcGas: gasOf(quantity, terms.torchFlow, machine),
    purgeGas: gasOf(quantity, terms.purgeFlow, si(purge + machine, TIME)),
  };
}

/** A joint from prepurge to postpurge, s. */
function machineTime({ od, wall, material }: Line, beadWidth: Length, speed: Speed, overlap: Angle): Time {
  return cycleTime({
    od,
    speed,
    prepurge: COMMON_PREPURGE,
    dwell: usualDwell(wall, material),
    overlap,
    downslope: commonDownslope(beadWidth, speed),
    postpurge: COMMON_POSTPURGE,
    handling: NO_TIME,
  });
}

/** Gas of so many joints through one hose, m³. */
function gasOf(quantity: Count, flow: Flow, seconds: Time): Volume {
  return si(quantity * jointGas(flow, seconds, NO_FLOW, NO_TIME), VOLUME);
}

/** The purge of a bore, no shorter than the least that is typed. */
function purgeOf(bore: Length, terms: Terms, changes: Count): Time {
  return si(Math.max(sweepOf(bore, terms, changes), terms.purgeAtLeast), TIME);
}

/** The purge as typed, or as long as the sweep of the bore between its dams takes. */
function sweepOf(bore: Length, { purgeSeconds, damSpacing, purgeFlow }: Terms, changes: Count): Time {
  if (purgeSeconds !== undefined) return purgeSeconds;
  if (damSpacing === undefined || purgeFlow === 0) return NO_TIME;
  return si((changes * purgeVolume(bore, damSpacing)) / purgeFlow, TIME);
}

const ONE_CELL = si(1, COUNT);
const NO_FLOW = si(0, FLOW);
const NO_TIME = si(0, TIME);
const [NONE, ALL] = [si(0, SHARE), si(1, SHARE)];
