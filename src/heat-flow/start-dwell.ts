/** How long the arc stands still before it travels. */

import { itemAt } from "../numerics/item";
import { rootBetween } from "../numerics/root";
import type { ArcPlate } from "./arc-plate";
import { agingOf, strengthAt, varianceAt } from "./arc-plate";
import { logPanels, rootPanel } from "./gauss";
import { firstAge } from "./moving-arc";
import { throughWall } from "./through-wall";
import { squareWhere } from "./widest";

/** Width of a panel in ln τ. */
const LONGEST_PANEL = 1.2;
/** Between these, in units of the shortest time that counts and of the loss's own time, every width is reached. */
const SHORTEST = 1e-3;
const LONGEST = 40;

/** Mean of face and root that an arc of 1/`target` W per K melts out when it has stood still for `seconds`, m. */
export function standingWidth(plate: ArcPlate, target: number, seconds: number): number {
  const aging = agingOf(plate);
  const rate = plate.metal.diffusivity / (plate.wall * plate.wall);
  const precision: number[] = [];
  const face: number[] = [];
  const root: number[] = [];
  const each = (age: number, weight: number): void => {
    const variance = varianceAt(aging, age);
    const mean = (weight * strengthAt(aging, age)) / variance;
    precision.push(1 / variance);
    face.push(mean * throughWall(rate * age, 0));
    root.push(mean * throughWall(rate * age, 1));
  };
  const first = Math.min(firstAge(plate), seconds / 2);
  rootPanel(0, first, each);
  logPanels(first, seconds, LONGEST_PANEL, each);
  return (widthOf(precision, face, target) + widthOf(precision, root, target)) / 2;
}

/** Width of one side where ages of these 1/s² have these weights, m. */
function widthOf(precision: readonly number[], weights: readonly number[], target: number): number {
  const crestOf = (square: number): { value: number; bySquare: number } => {
    let value = 0;
    let bySquare = 0;
    for (let i = 0; i < weights.length; i += 1) {
      const p = itemAt(precision, i);
      const share = itemAt(weights, i) * Math.exp(-0.5 * p * square);
      value += share;
      bySquare -= 0.5 * p * share;
    }
    return { value, bySquare };
  };
  return 2 * Math.sqrt(squareWhere(crestOf, target));
}

/**
 * Seconds a standing arc of `power` W needs to melt out to `width` m, mean of face and root, with `rise` K from the
 * tube's first temperature to its liquidus: the moving arc's integral without the travel. An arc that makes this width
 * while it travels always does while it stands, for every instant's heat then stays where it is.
 */
export function startDwell(plate: ArcPlate, rise: number, power: number, width: number): number {
  const shortest = SHORTEST * firstAge(plate);
  const longest = LONGEST / agingOf(plate).decay;
  const miss = (log: number): number => standingWidth(plate, rise / power, Math.exp(log)) / width - 1;
  return Math.exp(rootBetween(miss, Math.log(shortest), Math.log(longest)));
}
