/**
 * The quantities a welder's sheet holds and the two systems of units they are written in.
 * Calculations work in base SI units only; a value is converted once on the way in and once on the way out.
 */

export type Units = "US" | "SI";

declare const KIND: unique symbol;

/**
 * A number in the base SI unit of one kind of quantity. The compiler keeps kinds apart: a length is no speed, and a
 * plain number is neither until `si` says which it is.
 */
export type Of<Kind extends string> = number & { readonly [KIND]: Kind };

/** One unit of a quantity: base SI value = (written + offset) × times / over. Whole-number ratios keep the factors exact. */
interface Scale {
  readonly unit: string;
  readonly times: number;
  readonly over: number;
  readonly offset: number;
}

export interface Quantity<Kind extends string = string> {
  readonly kind: Kind;
  readonly US: Scale;
  readonly SI: Scale;
}

function scale(unit: string, times = 1, over = 1, offset = 0): Scale {
  return { unit, times, over, offset };
}

function quantity<Kind extends string>(kind: Kind, us: Scale, other: Scale): Quantity<Kind> {
  return { kind, US: us, SI: other };
}

function sameInBoth<Kind extends string>(kind: Kind, unit: string, times = 1, over = 1): Quantity<Kind> {
  const only = scale(unit, times, over);
  return quantity(kind, only, only);
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
export const LENGTH = quantity("length", scale("in", 254, 10_000), scale("mm", 1, 1000));
/** Surface speed of the arc, base unit m/s. */
export const SPEED = quantity("speed", scale("in/min", 254, 600_000), scale("mm/min", 1, 60_000));
/** Base unit m³/s. */
export const FLOW = quantity("flow", scale("ft³/h", CUBIC_FOOT, 3600), scale("L/min", 1, 60_000));
/** Base unit m³. */
export const VOLUME = quantity("volume", scale("ft³", CUBIC_FOOT), scale("L", 1, 1000));
/** Pressure in the bore above the room, base unit Pa. */
export const BORE_PRESSURE = quantity("bore pressure", scale("inH₂O", INCH_OF_WATER), scale("mbar", 100));
/** Gauge pressure of a cylinder, base unit Pa. */
export const CYLINDER_PRESSURE = quantity("cylinder pressure", scale("psi", PSI), scale("bar", 100_000));
/** Base unit J/m. */
export const HEAT_INPUT = quantity("heat input", scale("kJ/in", 10_000_000, 254), scale("kJ/mm", 1_000_000));
/** Base unit K, on the absolute scale. */
export const TEMPERATURE = quantity("temperature", scale("°F", 5, 9, 459.67), scale("°C", 1, 1, 273.15));
/** A rise or a difference, base unit K. */
export const TEMPERATURE_RISE = quantity("temperature rise", scale("°F", 5, 9), scale("°C"));

/** Liquid gas in a container, which both systems count in liters; base unit m³. */
export const LIQUID_VOLUME = sameInBoth("liquid volume", "L", 1, 1000);
export const TIME = sameInBoth("time", "s");
/** The length of a shift, base unit s. */
export const DURATION = sameInBoth("duration", "h", 3600);
export const CURRENT = sameInBoth("current", "A");
export const VOLTAGE = sameInBoth("voltage", "V");
export const ENERGY = sameInBoth("energy", "J");
/** Base unit turns per second. */
export const ROTATION = sameInBoth("rotation", "rpm", 1, 60);
export const FREQUENCY = sameInBoth("frequency", "Hz");
export const ANGLE = sameInBoth("angle", "°");
/** Oxygen in gas by volume, parts per million. */
export const OXYGEN = sameInBoth("oxygen", "ppm");
export const SHARE = sameInBoth("share", "");
/** Water vapor in gas by volume, parts per million. */
export const MOISTURE = sameInBoth("moisture", "ppm");
/** Percent of a mass, a volume or a lot; the base unit is the percent itself. */
export const PERCENT = sameInBoth("percent", "%");
/** How often fresh air fills a room, base unit 1/s. */
export const AIR_CHANGES = sameInBoth("air changes", "per hour", 1, 3600);
/** A flow where only a ratio counts: any unit, the same throughout. */
export const ANY_FLOW = sameInBoth("any flow", "");
export const COUNT = sameInBoth("count", "");

export type Length = Of<"length">;
export type Speed = Of<"speed">;
export type Flow = Of<"flow">;
export type Volume = Of<"volume">;
export type LiquidVolume = Of<"liquid volume">;
export type BorePressure = Of<"bore pressure">;
export type CylinderPressure = Of<"cylinder pressure">;
export type HeatInput = Of<"heat input">;
export type Temperature = Of<"temperature">;
export type TemperatureRise = Of<"temperature rise">;
export type Time = Of<"time">;
export type Duration = Of<"duration">;
export type Current = Of<"current">;
export type Voltage = Of<"voltage">;
export type Energy = Of<"energy">;
export type Rotation = Of<"rotation">;
export type Frequency = Of<"frequency">;
export type Angle = Of<"angle">;
export type Oxygen = Of<"oxygen">;
export type Share = Of<"share">;
export type Moisture = Of<"moisture">;
export type Percent = Of<"percent">;
export type AirChanges = Of<"air changes">;
export type AnyFlow = Of<"any flow">;
export type Count = Of<"count">;

/** Says of a number in base SI which kind of quantity it is. */
export function si<Kind extends string>(base: number, of: Quantity<Kind>): Of<Kind>;
export function si(base: number): number {
  return base;
}

/** Written value → base SI. */
export function toBase<Kind extends string>(written: number, of: Quantity<Kind>, units: Units): Of<Kind> {
  const { times, over, offset } = of[units];
  return si(((written + offset) * times) / over, of);
}

/** Base SI → written value. */
export function fromBase(base: number, of: Quantity, units: Units): number {
  const { times, over, offset } = of[units];
  return (base * over) / times - offset;
}

export function unitOf(of: Quantity, units: Units): string {
  return of[units].unit;
}

/** Whether the two systems write the quantity in different units. */
export function differs(of: Quantity): boolean {
  return of.US !== of.SI;
}

/** The unit as help tells it: "in | mm", or the one that both systems share. */
export function unitPair(of: Quantity): string {
  return differs(of) ? `${of.US.unit} | ${of.SI.unit}` : of.US.unit;
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
