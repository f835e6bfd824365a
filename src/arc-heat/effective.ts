/**
 * Constant properties that stand for a metal whose properties change between room temperature and melting. One rule
 * for all metals, fitted to an independent nonlinear 3-D solution for three metals whose conductivity rises 2.6-fold
 * (316L), rises 4.5-fold (titanium-like) and falls to less than half (carbon-steel-like).
 */

/** What the rule needs to know of a metal, base SI. */
export interface MetalNumbers {
  /** Mean of k(T) from 20 °C to the liquidus, W/(m·K). */
  readonly meanConductivity: number;
  /** k of the solid at the liquidus, W/(m·K). */
  readonly liquidusConductivity: number;
  /** k at 25 °C, W/(m·K). */
  readonly coldConductivity: number;
  /** ρ·cp at 25 °C, J/(m³·K). */
  readonly coldHeatCapacity: number;
  /** Heat from 20 °C to the liquidus without the latent heat, J/kg. */
  readonly sensibleHeat: number;
  /** J/kg */
  readonly latentHeat: number;
  /** kg/m³ at room temperature. */
  readonly density: number;
  /** K */
  readonly liquidus: number;
}

/** The metal as the moving-source integrals see it. */
export interface EffectiveMetal {
  /** α near the arc, m²/s. */
  readonly diffusivity: number;
  /** ρc with the latent heat that counts, J/(m³·K). */
  readonly heatCapacity: number;
  /** α that heat of long ago has spread by, m²/s. */
  readonly farDiffusivity: number;
  /** Temperature rise that heat of long ago adds, over what it would add with the properties near the arc. */
  readonly farStrength: number;
  /** K */
  readonly liquidus: number;
}

/** The room that the properties are counted from, 20 °C in K. */
export const ROOM = 293.15;

/** k = 0.98·k_mean·(k_liquidus/k_mean)^0.28: between the Kirchhoff mean, which governs slow heat, and k at the melt's edge. */
const CONDUCTIVITY_FACTOR = 0.98;
const CONDUCTIVITY_EXPONENT = 0.28;
/** Fraction of the latent heat that counts: most of it is given back behind the arc, too late for the width. */
const LATENT_FRACTION = 0.36;
/** Heat of long ago sits in colder metal, whose conductivity is another: powers of its ratios to the values near the arc. */
const FAR_STRENGTH_EXPONENT = 0.2044;
const FAR_DIFFUSIVITY_EXPONENT = 0.6887;

/** The effective constants of a metal, base SI; valid for the range of properties between the three fitted metals. */
export function effectiveMetal(metal: MetalNumbers): EffectiveMetal {
  const mean = metal.meanConductivity;
  const conductivity =
    CONDUCTIVITY_FACTOR * mean * (metal.liquidusConductivity / mean) ** CONDUCTIVITY_EXPONENT;
  const heat = metal.sensibleHeat + LATENT_FRACTION * metal.latentHeat;
  const heatCapacity = (heat * metal.density) / (metal.liquidus - ROOM);
  const diffusivity = conductivity / heatCapacity;
  const coldDiffusivity = metal.coldConductivity / metal.coldHeatCapacity;
  return {
    diffusivity,
    heatCapacity,
    farDiffusivity: diffusivity * (coldDiffusivity / diffusivity) ** FAR_DIFFUSIVITY_EXPONENT,
    farStrength: (metal.coldConductivity / mean) ** FAR_STRENGTH_EXPONENT,
    liquidus: metal.liquidus,
  };
}
