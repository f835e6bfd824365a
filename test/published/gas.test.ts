/** The densities and viscosities of the gases. */

import { GASES } from "../../src/gas/gas";
import { expectPrinted } from "../bead";
import { evidence, INPUT_DATA } from "../evidence";

describe(
  evidence(
    "PURGE_REYNOLDS PURGE_LAMINAR PURGE_VENT PURGE_PRESSURE GAS_METER",
    INPUT_DATA,
    "coolprop-8.0.0",
    "density and viscosity of argon, nitrogen, helium and air at 20 °C and 1 atm",
  ),
  () => {
    // PropsSI("D" and "V", "T", 293.15, "P", 101325, …): kg/m³ and µPa·s.
    test.each([
      ["AR", "1.6618206815852796", "22.306535127796867"],
      ["N2", "1.1648301789877347", "17.57293309298292"],
      ["HE", "0.16631098917363996", "19.617581546864475"],
      ["AIR", "1.2045751824931505", "18.205675178515367"],
    ] as const)("%s: %s kg/m³, %s µPa·s", (name, density, viscosity) => {
      const gas = GASES[name];
      // The table rounds what the library gives.
      expectPrinted(Number(density), String(gas.density.value));
      expectPrinted(Number(viscosity), String(Number((gas.viscosity.value * 1e6).toPrecision(6))));
    });
  },
);
