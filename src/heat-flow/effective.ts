/**
 * Constant properties that stand for a metal whose properties change between room temperature and melting. One rule
 * for all metals, fitted to an independent nonlinear 3-D solution for three metals whose conductivity rises 2.6-fold
 * (316L), rises 4.5-fold (titanium-like) and falls to less than half (carbon-steel-like).
 */

import type { Material } from "../metal/material";

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
  /** H of both faces together, W/(m²·K). */
  readonly surfaceLoss: number;
  /** K */
  readonly liquidus: number;
}

/** The room that the properties are counted from, 20 °C in K. */
export const ROOM = 293.15;

/**
 * k = 0.953·(0.757·k_mean + 0.243·k_liquidus): mostly the Kirchhoff mean, which governs heat that spreads slowly, with
 * some of the conductivity at the edge of the melt, where the gradient is steepest.
 */
const CONDUCTIVITY_FACTOR = 0.9533;
const LIQUIDUS_FRACTION = 0.2432;
/** Fraction of the latent heat that counts: most of it is given back behind the arc, too late for the width. */
const LATENT_FRACTION = 0.5006;
/**
 * Heat of long ago sits in colder metal, whose conductivity is another: powers of k_cold/k_mean for the rise it adds
 * and of α_cold/α for how fast it spreads.
 */
const FAR_STRENGTH_EXPONENT = 0.1162;
const FAR_DIFFUSIVITY_EXPONENT = 0.7513;
/**
 * Radiation and convection of outside and bore together near the heated strip, W/(m²·K) (emissivity 0.4 and film 15
 * outside, 0.2 and 5 in the bore). Where k rises with temperature the strip is hotter than the linear solution has it
 * and loses more: a power of k_mean/k_cold.
 */
const SURFACE_LOSS = 77.2871;
const SURFACE_LOSS_EXPONENT = 0.8744;

/** The effective constants of a metal, base SI; valid for the range of properties between the three fitted metals. */
export function effectiveMetal(metal: MetalNumbers): EffectiveMetal {
  const mean = metal.meanConductivity;
  const conductivity = CONDUCTIVITY_FACTOR * (mean + LIQUIDUS_FRACTION * (metal.liquidusConductivity - mean));
  const heat = metal.sensibleHeat + LATENT_FRACTION * metal.latentHeat;
  const heatCapacity = (heat * metal.density) / (metal.liquidus - ROOM);
  const diffusivity = conductivity / heatCapacity;
  const coldDiffusivity = metal.coldConductivity / metal.coldHeatCapacity;
  return {
    diffusivity,
    heatCapacity,
    farDiffusivity: diffusivity * (coldDiffusivity / diffusivity) ** FAR_DIFFUSIVITY_EXPONENT,
    farStrength: (metal.coldConductivity / mean) ** FAR_STRENGTH_EXPONENT,
    surfaceLoss: SURFACE_LOSS * (mean / metal.coldConductivity) ** SURFACE_LOSS_EXPONENT,
    liquidus: metal.liquidus,
  };
}

/** The numbers of a metal of the table. */
export function metalNumbers(material: Material): MetalNumbers {
  return {
    meanConductivity: material.meanConductivity.value,
    liquidusConductivity: material.liquidusConductivity.value,
    coldConductivity: material.coldConductivity.value,
    coldHeatCapacity: material.coldHeatCapacity.value,
    sensibleHeat: material.sensibleHeat.value,
    latentHeat: material.latentHeat.value,
    density: material.density.value,
    liquidus: material.liquidus.value,
  };
}
