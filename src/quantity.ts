/**
 * The quantities a welder's sheet holds and the two systems of units they are written in.
 * Calculations work in base SI units only; a value is converted once on the way in and once on the way out.
 */

export type Units = "US" | "SI";

/** One unit of a quantity: base SI value = (written + offset) × times / over. Whole-number ratios keep the factors exact. */
interface Scale {
  readonly unit: string;
  readonly times: number;
  readonly over: number;
  readonly offset: number;
}

export interface Quantity {
  readonly US: Scale;
  readonly SI: Scale;
}

function scale(unit: string, times = 1, over = 1, offset = 0): Scale {
  return { unit, times, over, offset };
}

function quantity(us: Scale, si: Scale): Quantity {
  return { US: us, SI: si };
}

function sameInBoth(unit: string, times = 1, over = 1): Quantity {
  const only = scale(unit, times, over);
  return quantity(only, only);
}

/** The international foot and pound, exact by definition (NIST SP 811). */
const FOOT = 0.3048;
const POUND = 0.453_592_37;
/** Standard gravity, m/s², exact by definition (CGPM 1901). */
const STANDARD_GRAVITY = 9.806_65;
const CUBIC_FOOT = FOOT ** 3;
const PSI = (POUND * STANDARD_GRAVITY) / 0.0254 ** 2;
/** Conventional inch of water (1 g/cm³), Pa (NIST SP 811). */
const INCH_OF_WATER = 249.088_91;

/** Base unit m. */
export const LENGTH = quantity(scale("in", 254, 10_000), scale("mm", 1, 1000));
/** Surface speed of the arc, base unit m/s. */
export const SPEED = quantity(scale("in/min", 254, 600_000), scale("mm/min", 1, 60_000));
/** Base unit m³/s. */
export const FLOW = quantity(scale("ft³/h", CUBIC_FOOT, 3600), scale("L/min", 1, 60_000));
/** Base unit m³. */
export const VOLUME = quantity(scale("ft³", CUBIC_FOOT), scale("L", 1, 1000));
/** Pressure in the bore above the room, base unit Pa. */
export const BORE_PRESSURE = quantity(scale("inH₂O", INCH_OF_WATER), scale("mbar", 100));
/** Gauge pressure of a cylinder, base unit Pa. */
export const CYLINDER_PRESSURE = quantity(scale("psi", PSI), scale("bar", 100_000));
/** Base unit J/m. */
export const HEAT_INPUT = quantity(scale("kJ/in", 10_000_000, 254), scale("kJ/mm", 1_000_000));
/** Base unit K, on the absolute scale. */
export const TEMPERATURE = quantity(scale("°F", 5, 9, 459.67), scale("°C", 1, 1, 273.15));
/** A rise or a difference, base unit K. */
export const TEMPERATURE_RISE = quantity(scale("°F", 5, 9), scale("°C"));

export const TIME = sameInBoth("s");
/** The length of a shift, base unit s. */
export const DURATION = sameInBoth("h", 3600);
export const CURRENT = sameInBoth("A");
export const VOLTAGE = sameInBoth("V");
export const ENERGY = sameInBoth("J");
/** Base unit turns per second. */
export const ROTATION = sameInBoth("rpm", 1, 60);
export const FREQUENCY = sameInBoth("Hz");
export const ANGLE = sameInBoth("°");
/** Oxygen in gas by volume, parts per million. */
export const OXYGEN = sameInBoth("ppm");
export const SHARE = sameInBoth("");
/** A flow where only a ratio counts: any unit, the same throughout. */
export const ANY_FLOW = sameInBoth("");
export const COUNT = sameInBoth("");

/** Written value → base SI. */
export function toBase(written: number, of: Quantity, units: Units): number {
  const { times, over, offset } = of[units];
  return ((written + offset) * times) / over;
}

/** Base SI → written value. */
export function fromBase(base: number, of: Quantity, units: Units): number {
  const { times, over, offset } = of[units];
  return (base * over) / times - offset;
}

export function unitOf(of: Quantity, units: Units): string {
  return of[units].unit;
}

/** A number for a sentence: six significant digits unless more are asked for, no trailing zeros. */
export function plainNumber(value: number, digits = 6): string {
  return String(Number(value.toPrecision(digits)));
}

/** A base SI value as people write it, with its unit: `-0.065 in`. */
export function written(base: number, of: Quantity, units: Units, digits?: number): string {
  const unit = unitOf(of, units);
  return plainNumber(fromBase(base, of, units), digits) + (unit === "" || unit === "°" ? unit : ` ${unit}`);
}
