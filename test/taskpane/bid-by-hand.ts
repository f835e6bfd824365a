/** The bid worked by hand: its invented list and prices, from the time of a joint to the price. */

import type { HandLine, HandTerms } from "./gas-by-hand";
import { worked } from "./gas-by-hand";

/** What the sheet comes with; times in s, prices in money. */
export const USUAL = {
  handling: 600,
  purgeLeast: 60,
  purgeWaited: 1,
  reject: 0.02,
  setUpMinutes: 30,
  periodHours: 8,
  perPeriod: 3,
  couponMinutes: 30,
  couponPrice: 12,
  rate: 85,
  rejectPrice: 15,
  perElectrode: 25,
  electrodePrice: 6,
  other: 1200,
  margin: 0.2,
  waste: 0.1,
  containerPrice: 95,
};
export type HandBid = typeof USUAL;

/** Hours and gas of a line; od and wall in mm. */
export function lineOf(line: HandLine, terms: HandTerms, bid: HandBid): { hours: number; gas: number } {
  const [joints, od, wall] = line;
  const { cycle } = worked(line, terms);
  // 50 ppm with 5 ppm in the gas: ln((209 500 − 5)/(50 − 5)) = 8.4457 changes of the bore between its dams.
  const bore = ((Math.PI / 4) * (od - 2 * wall) ** 2 * terms.spacing) / terms.volume;
  const sweep = (Math.log((209_500 - 5) / (50 - 5)) * bore) / terms.purge;
  const purge = Math.max(sweep, bid.purgeLeast);
  return {
    hours: (joints * (cycle + bid.handling + bid.purgeWaited * purge)) / 3600,
    gas: joints * (terms.torch * cycle + terms.purge * (purge + cycle)),
  };
}

/** Whole pieces. */
export const whole = (exact: number): number => Math.ceil(exact - 1e-9);

/**
 * The price of a list. `start`: joints to start. `usable`: gas of a container. With `round` the identity everything
 * counts exactly, as in the worth of an assumption.
 */
export function bidByHand(
  { joints, hours, gas }: { joints: number; hours: number; gas: number },
  { start, changes, usable }: { start: number; changes: number; usable: number },
  bid: HandBid = USUAL,
  round: (exact: number) => number = whole,
): Record<"work" | "coupons" | "time" | "electrodes" | "bought" | "containers" | "cost" | "exact", number> {
  const work = hours * (start / joints) + (changes * bid.setUpMinutes) / 60;
  const coupons = round(work / bid.periodHours) * bid.perPeriod;
  const time = work + (coupons * bid.couponMinutes) / 60;
  const electrodes = round((start + coupons) / bid.perElectrode);
  const bought = (gas * ((start + coupons) / joints)) / (1 - bid.waste);
  const containers = round(bought / usable);
  const cost =
    time * bid.rate +
    containers * bid.containerPrice +
    electrodes * bid.electrodePrice +
    coupons * bid.couponPrice +
    (start - joints) * bid.rejectPrice +
    bid.other;
  return { work, coupons, time, electrodes, bought, containers, cost, exact: cost / (1 - bid.margin) };
}
