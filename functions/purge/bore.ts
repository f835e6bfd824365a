/** Gas and pressure in the bore: smooth flow, the vent, and what the molten root can hold. */

import { LAMINAR_LIMIT, laminarFlow, reynolds } from "../../src/purge/bore-flow";
import { blowOutPressure } from "../../src/purge/puddle";
import { MAX_VENT_PRESSURE, SHARP_EDGE_DISCHARGE, ventDiameter, ventPressure } from "../../src/purge/vent";
import { BORE_PRESSURE, COUNT, FLOW, LENGTH, plainNumber, SHARE } from "../../src/quantity";
import { number, orDefault, toldInBoth } from "../argument";
import { BORE, FLOW_OF_PURGE, GAS, MATERIAL } from "../arguments";
import { family, formula } from "../formula";
import { scalar } from "../gives";

const DISCHARGE = {
  ...orDefault(number("Discharge coefficient, above 0 to 1", SHARE), SHARP_EDGE_DISCHARGE),
  omitted: `${plainNumber(SHARP_EDGE_DISCHARGE)} (sharp edge)`,
};
const VENT_LIMIT = toldInBoth(MAX_VENT_PRESSURE, BORE_PRESSURE);
const REYNOLDS_SOURCE =
  "Reynolds; ρ and μ by [tegeler-1999], [lemmon-jacobsen-2004] and the equations of [coolprop-8.0.0]";
const ORIFICE_SOURCE = "Orifice equation of [iso-5167-2] and textbooks, without the velocity of approach";

const PURGE_REYNOLDS = formula({
  id: "PURGE_REYNOLDS",
  meaning: "Reynolds number of the purge gas in the bore",
  args: { bore: BORE, flow: FLOW_OF_PURGE, gas: GAS },
  gives: scalar(COUNT),
  tex: [String.raw`\mathrm{Re} = \frac{4\rho Q}{\pi\mu d}`],
  where: {
    Re: "Reynolds number",
    ρ: "density of the gas at 20 °C and 1 atm (gas)",
    Q: "purge flow (flow)",
    μ: "dynamic viscosity of the gas at the same state",
    d: "inside diameter (bore)",
  },
  validity: `Under about ${plainNumber(LAMINAR_LIMIT)} the gas runs smoothly and pushes the air ahead of it; above 2300 it mixes.`,
  assumptions: "A round bore",
  source: REYNOLDS_SOURCE,
  related: ["PURGE_LAMINAR", "PURGE_CHANGES", "PURGE_FLOW"],
  synonyms: ["laminar flow", "turbulence", "mixing", "turbulent", "smooth flow"],
  example: { args: [47.5, 10, "AR", "SI"], gives: "332.826" },
  calc: ({ bore, flow, gas }) => reynolds(bore, flow, gas),
});

const PURGE_LAMINAR = formula({
  id: "PURGE_LAMINAR",
  meaning: "Maximum purge flow that stays smooth (laminar) in the bore",
  args: { bore: BORE, gas: GAS },
  gives: scalar(FLOW),
  tex: [String.raw`Q = \frac{2000\,\pi\mu d}{4\rho}`],
  where: {
    Q: "maximum smooth flow",
    μ: "dynamic viscosity of the gas at 20 °C and 1 atm (gas)",
    d: "inside diameter (bore)",
    ρ: "density of the gas at the same state",
  },
  validity: "A jet from the inlet hose can stir a bore that this calls smooth.",
  assumptions: "A round bore",
  source: REYNOLDS_SOURCE,
  related: ["PURGE_REYNOLDS", "PURGE_FLOW", "PURGE_TIME"],
  synonyms: [
    "laminar flow",
    "turbulence",
    "cfh",
    "flow rate",
    "maximum flow",
    "too much flow",
    "turbulent",
    "lpm",
    "scfh",
  ],
  example: { args: [47.5, "AR", "SI"], gives: "60.091" },
  calc: ({ bore, gas }) => laminarFlow(bore, gas),
});

const PURGE_VENT = formula({
  id: "PURGE_VENT",
  meaning: "Diameter of a round vent that holds a bore pressure at a purge flow",
  args: {
    flow: FLOW_OF_PURGE,
    pressure: number("Bore pressure to hold above the room", BORE_PRESSURE),
    gas: GAS,
    discharge: DISCHARGE,
  },
  gives: scalar(LENGTH),
  tex: [String.raw`Q = C_d\,\frac{\pi}{4}\,d^2\sqrt{\frac{2\,\Delta p}{\rho}}`],
  where: {
    Q: "purge flow (flow)",
    C_d: "discharge coefficient (discharge)",
    d: "diameter of the vent",
    Δp: "bore pressure above the room (pressure)",
    ρ: "density of the gas at 20 °C and 1 atm (gas)",
  },
  validity: `pressure at most ${VENT_LIMIT}. At small flows Cd is known only to about 10 %, so read a gauge.`,
  assumptions: "An incompressible gas; a sharp-edged hole in a thin cap, the bore far wider than the hole",
  source: ORIFICE_SOURCE,
  related: ["PURGE_PRESSURE", "PURGE_CEILING", "PURGE_FLOW"],
  synonyms: [
    "vent hole",
    "exhaust hole",
    "orifice",
    "purge plug",
    "vent",
    "bleed hole",
    "vent size",
    "exhaust",
  ],
  figure: "vent",
  example: { args: [10, 1, "AR", null, "SI"], gives: "5.6312" },
  calc: ({ flow, pressure, gas, discharge }) => ventDiameter(flow, pressure, gas, discharge),
});

const PURGE_PRESSURE = formula({
  id: "PURGE_PRESSURE",
  meaning: "Bore pressure above the room that a round vent holds at a purge flow",
  args: {
    flow: FLOW_OF_PURGE,
    ventDiameter: number("Diameter of the vent", LENGTH),
    gas: GAS,
    discharge: DISCHARGE,
  },
  gives: scalar(BORE_PRESSURE),
  tex: [String.raw`\Delta p = \frac{\rho}{2}\left(\frac{Q}{C_d\,\frac{\pi}{4}\,d^2}\right)^2`],
  where: {
    Δp: "bore pressure above the room",
    ρ: "density of the gas at 20 °C and 1 atm (gas)",
    Q: "purge flow (flow)",
    C_d: "discharge coefficient (discharge)",
    d: "diameter of the vent (ventDiameter)",
  },
  validity: `As PURGE_VENT; a vent that would hold more than ${VENT_LIMIT} is refused. Compare with PURGE_CEILING and keep well under it.`,
  assumptions: "As PURGE_VENT",
  source: ORIFICE_SOURCE,
  related: ["PURGE_VENT", "PURGE_CEILING", "PURGE_FLOW"],
  synonyms: [
    "back pressure",
    "purge pressure",
    "internal pressure",
    "inches of water",
    "pressure",
    "water column",
    "manometer",
    "bore pressure",
  ],
  figure: "vent",
  example: { args: [20, 0.1875], gives: "0.69914" },
  calc: ({ flow, ventDiameter: diameter, gas, discharge }) => ventPressure(flow, diameter, gas, discharge),
});

const PURGE_CEILING = formula({
  id: "PURGE_CEILING",
  meaning: "Bore pressure above the room at which the molten root blows out",
  args: { rootWidth: number("Width of the molten root", LENGTH), material: MATERIAL },
  gives: scalar(BORE_PRESSURE),
  tex: [String.raw`\Delta p = \frac{2\sigma}{w}`],
  where: {
    Δp: "bore pressure above the room",
    σ: "surface tension of the liquid metal (material)",
    w: "width of the molten root (rootWidth)",
  },
  validity: "A ceiling, not a target: stay well under it. Sulfur lowers σ further.",
  assumptions:
    "A long root, which bulges to a half-cylinder as wide as it is. The metal's own weight is neglected: about 1 mbar for 1.6 mm of steel, it lowers the ceiling at the bottom of the tube, where it hangs outward.",
  source: "Young–Laplace for a half-cylinder; σ and its source in MATERIALS",
  unconfirmed:
    "No measured blow-out confirms it. σ of some metals is from memory or an estimate; MATERIALS marks them.",
  unchecked: "No measured blow-out pressure was found",
  related: ["PURGE_PRESSURE", "PURGE_VENT", "MATERIALS"],
  synonyms: [
    "blow-out",
    "weld pool",
    "root concavity",
    "suck-back",
    "back pressure",
    "blow through",
    "concave root",
    "pressure limit",
    "ID pressure",
  ],
  figure: "puddle",
  example: { args: [4, "316L", "SI"], gives: "7.965" },
  calc: ({ rootWidth, material }) => blowOutPressure(rootWidth, material),
});

export const BORE_GAS = family("Bore pressure", [
  PURGE_REYNOLDS,
  PURGE_LAMINAR,
  PURGE_VENT,
  PURGE_PRESSURE,
  PURGE_CEILING,
]);
