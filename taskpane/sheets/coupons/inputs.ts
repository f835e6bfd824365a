/** What is typed of the coupons together, and the coupons. The list is invented. */

import type { Units } from "../../../src/quantity";
import { DESIGNATIONS } from "../../../src/metal/material";
import { LENGTH, SHARE } from "../../../src/quantity";
import type { Row } from "../layout";
import { choice, optional, words } from "../typed";

export const SHOP: Row[] = [
  words("Shop", "shop", "Invented shop"),
  words("Head, power source", "equipment", "Invented head 1"),
];

export const TERMS: Row[] = [
  choice("Material", "material", "316L", DESIGNATIONS, { otherNames: true }),
  optional({
    label: "Arc spot (blank: of the wall)",
    name: "arc_spot",
    quantity: LENGTH,
    range: { US: [0.04, 0.4], SI: [1, 10] },
  }),
  optional({
    label: "Confidence (blank: 0.95)",
    name: "confidence",
    quantity: SHARE,
    range: [0.5, 0.9999],
  }),
];

type Written = Readonly<Record<Units, string>>;
type Measured = Readonly<Record<Units, number>>;

interface CouponLine {
  readonly heats: string;
  readonly od: Written;
  readonly wall: Written;
  readonly amps: number;
  readonly volts: number;
  readonly travel: Measured;
  readonly face: Measured;
  readonly root: Measured;
}

const TUBE = { od: { US: "1", SI: "25.4" }, wall: { US: "0.065", SI: "1.65" } } as const;
const TRAVEL = { US: 5.1, SI: 129.5 } as const;

function coupon(amps: number, volts: number, face: Measured, root: Measured): CouponLine {
  return { heats: "invented", ...TUBE, amps, volts, travel: TRAVEL, face, root };
}

/** Invented coupons: no weld stands behind them. */
export const COUPONS: readonly CouponLine[] = [
  coupon(46, 9.4, { US: 0.18, SI: 4.57 }, { US: 0.15, SI: 3.81 }),
  coupon(48, 9.4, { US: 0.183, SI: 4.65 }, { US: 0.158, SI: 4.01 }),
  coupon(50, 9.5, { US: 0.195, SI: 4.95 }, { US: 0.172, SI: 4.37 }),
  coupon(52, 9.4, { US: 0.203, SI: 5.16 }, { US: 0.182, SI: 4.62 }),
  coupon(54, 9.5, { US: 0.212, SI: 5.38 }, { US: 0.193, SI: 4.9 }),
  coupon(56, 9.4, { US: 0.218, SI: 5.54 }, { US: 0.202, SI: 5.13 }),
];
/** Lines of the list, blank ones included. */
export const LINES = 40;
