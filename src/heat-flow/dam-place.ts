/** How hot the tube gets beside the weld, for a purge dam: the moving arc round the ring. */

import { above0, atLeast0, between, isAbove, temperature, tube } from "../limits";
import type { Current, Length, Share, Temperature, Time, Voltage } from "../quantity";
import { CURRENT, LENGTH, si, TEMPERATURE, TIME } from "../quantity";
import type { Rule } from "../refusal";
import { amount, Refusal, rule } from "../refusal";
import { wattsPerAmp } from "./arc";
import type { DamWeld } from "./dam";
import { damReach, damRise, STILL_AIR_LOSS } from "./dam";
import { metalNumbers } from "./effective";
import type { Weld } from "./plate";
import { plateOf } from "./plate";

/** What takes heat from the surface: nothing, which errs hot, or still air. */
export const SURFACES = ["none", "still air"] as const;
export type Surface = (typeof SURFACES)[number];

export interface HeatedTube extends Weld {
  readonly od: Length;
  readonly amps: Current;
  readonly volts: Voltage;
  /** Arc on besides the one turn: dwell and lap, s. */
  readonly extraSeconds: Time;
  readonly efficiency: Share;
  readonly ambient: Temperature;
  readonly surface: Surface;
}

/** Far beyond any tube and dam; inside, the search ends. */
const LARGEST_OD = 10;
const FARTHEST = 100;
const LONGEST = 1e5;
const MOST_AMPS = 1e4;
/** What a change of unit may leave between two equal temperatures, K. */
const ROUNDING = 1e-9;

function damWeld(heated: HeatedTube): DamWeld {
  const { od, wall, amps, volts, speed, extraSeconds, efficiency, material, surface } = heated;
  tube(od, wall);
  between("od", od, LENGTH, 0, LARGEST_OD);
  temperature("ambient", heated.ambient);
  const watts = wattsPerAmp(volts, efficiency);
  between("amps", above0("amps", amps, CURRENT), CURRENT, 0, MOST_AMPS);
  between("extraSeconds", atLeast0("extraSeconds", extraSeconds, TIME), TIME, 0, LONGEST);
  const { spread } = plateOf(heated);
  return {
    od,
    wall,
    speed,
    power: amps * watts,
    extraSeconds,
    spread,
    metal: metalNumbers(material),
    surfaceLoss: surface === "none" ? 0 : STILL_AIR_LOSS,
  };
}

/** Maximum temperature that a place ever reaches, K; refused where it would be molten. */
export function damTemperature(distance: Length, heated: HeatedTube): Temperature {
  const weld = damWeld(heated);
  between("distance", atLeast0("distance", distance, LENGTH), LENGTH, 0, FARTHEST);
  const hottest = heated.ambient + damRise(distance, weld);
  const { liquidus } = weld.metal;
  if (hottest < liquidus) return si(hottest, TEMPERATURE);
  throw new Refusal(
    "distance",
    amount(distance, LENGTH),
    rule`so near, the metal melts; the liquidus is ${amount(liquidus, TEMPERATURE)}`,
    "unanswerable",
  );
}

/** The nearest place that never gets above `limit`, m from the weld. */
export function damDistance(limit: Temperature, heated: HeatedTube): Length {
  const weld = damWeld(heated);
  const allowed = limit - heated.ambient;
  const refuse = (why: Rule, kind?: "unanswerable"): never => {
    throw new Refusal("limit", amount(limit, TEMPERATURE), why, kind);
  };
  if (!(allowed > ROUNDING)) refuse(rule`must be above ambient, ${amount(heated.ambient, TEMPERATURE)}`);
  if (limit >= weld.metal.liquidus) {
    refuse(rule`must be below the liquidus, ${amount(weld.metal.liquidus, TEMPERATURE)}`);
  }
  if (damRise(si(FARTHEST, LENGTH), weld) > allowed) {
    refuse(rule`is exceeded further away than ${amount(FARTHEST, LENGTH)}`, "unanswerable");
  }
  const reach = damReach(allowed, weld);
  const joint = reach === 0 ? damRise(0, weld) : Infinity;
  if (isAbove(allowed, joint)) {
    refuse(
      rule`the weld itself only reaches ${amount(heated.ambient + joint, TEMPERATURE)} by this calculation`,
      "unanswerable",
    );
  }
  return si(reach, LENGTH);
}
