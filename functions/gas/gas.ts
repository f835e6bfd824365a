import type { Gas } from "../../src/gas/gas";
import { DEFAULT_GAS, GAS_NAMES, GASES } from "../../src/gas/gas";
import { cylinderArgon, jointGas, meterFlow, STANDARD_STATE } from "../../src/gas/gas-supply";
import { ANY_FLOW, CYLINDER_PRESSURE, FLOW, TEMPERATURE, TIME, VOLUME } from "../../src/quantity";
import { Refusal } from "../../src/refusal";
import { answer, answerAlike } from "../answer";
import type { Reader } from "../cells";

/** The gas argument of every formula that has an optional one. */
export function readGas(read: Reader, gas: unknown): Gas {
  return GASES[read.wordOr("gas", gas, GAS_NAMES, DEFAULT_GAS)];
}

/** Where guessing the gas would hide a mistake. */
function readRequiredGas(read: Reader, gas: unknown): Gas {
  const name = read.wordOr("gas", gas, GAS_NAMES, undefined);
  if (name !== undefined) return GASES[name];
  throw new Refusal("gas", "blank", [`needs one of ${GAS_NAMES.join(", ")}`]);
}

/**
 * Gas that one joint takes, torch and purge together, ft³ | L.
 * @customfunction GAS_JOINT
 * @param torchFlow Shielding flow at the torch, ft³/h | L/min
 * @param torchSeconds Time the torch gas is on, s: prepurge to postpurge
 * @param [purgeFlow] Flow into the bore, ft³/h | L/min; 0 if left out
 * @param [purgeSeconds] Time the purge gas is on, s: purging and welding; 0 if left out
 * @param [units] "US" (default) or "SI"
 * @equation V = Qt·tt + Qp·tp
 * @math V = Q_t\,t_t + Q_p\,t_p
 * @where V gas of one joint; Qₜ flow at the torch (torchFlow); tₜ time the torch gas is on (torchSeconds); Qₚ flow into the bore (purgeFlow); tₚ time the purge gas is on (purgeSeconds)
 * @validity Nothing below 0. Hoses, leaks and forgotten valves come on top.
 * @assumptions Steady flows; volumes at the state the flow meters are made for
 * @source Flow × time
 * @related GAS_CYLINDER, GAS_METER, PURGE_TIME, CYCLE_TIME, TAKEOFF
 * @example =BEAD.GAS_JOINT(10, 120, 20, 660, "SI") → 240
 */
export function gasJointCell(
  torchFlow: unknown,
  torchSeconds: unknown,
  purgeFlow?: unknown,
  purgeSeconds?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    read.give(
      jointGas(
        read.number("torchFlow", torchFlow, FLOW),
        read.number("torchSeconds", torchSeconds, TIME),
        read.numberOr("purgeFlow", purgeFlow, FLOW, 0),
        read.numberOr("purgeSeconds", purgeSeconds, TIME, 0),
      ),
      VOLUME,
    ),
  );
}

/**
 * Usable argon of a cylinder as a real gas, at 70 °F, 1 atm | 15 °C, 1 bar, ft³ | L.
 * @customfunction GAS_CYLINDER
 * @param waterVolume Inside volume of the cylinder, ft³ | L
 * @param pressure Gauge pressure when full, psi | bar
 * @param [residual] Gauge pressure at which it is changed, psi | bar; 0 if left out
 * @param [temperature] Temperature of the cylinder, °F | °C; 70 °F | 15 °C if left out
 * @param [units] "US" (default) or "SI"; US and SI differ in their standard state
 * @equation V = Vw·(ρ(p + 1 atm, T) − ρ(residual + 1 atm, T))/ρ(standard); ρ from the reference equation of state
 * @math V = V_w\,\frac{\rho(p + 1\ \text{atm},\ T) - \rho(\text{residual} + 1\ \text{atm},\ T)}{\rho(\text{standard})}
 * @where V usable gas at the standard state; V_w inside volume of the cylinder (waterVolume); ρ density of argon at an absolute pressure and a temperature; p gauge pressure when full (pressure); residual gauge pressure at which it is changed; T temperature of the cylinder (temperature); standard 70 °F and 1 atm in US, 15 °C and 1 bar in SI
 * @validity Argon; gauge 0 to 350 bar (5076 psi), −30 to 60 °C (−22 to 140 °F). The cubic foot is of 70 °F and 1 atm (14.696 psi), the litre of 15 °C and 1 bar: the one place where US and SI differ physically.
 * @assumptions Full and changed at the same temperature, gauges read from 1 atm. What is left at residual stays in the cylinder.
 * @source Tegeler, Span & Wagner 1999, J. Phys. Chem. Ref. Data 28, 779, the equation NIST uses: 0.03 % in density to 300 bar. Chosen because the ideal gas is off by up to 7 % and a cubic equation by 2 to 3 %. Coefficients as a general reference library (CoolProp 8.0.0) has them, checked against printed NIST densities.
 * @related GAS_JOINT, GAS_METER, TAKEOFF
 * @example =BEAD.GAS_CYLINDER(50, 200, 0, 15, "SI") → 10668.1
 */
export function gasCylinderCell(
  waterVolume: unknown,
  pressure: unknown,
  residual?: unknown,
  temperature?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) => {
    const standard = STANDARD_STATE[read.units];
    const usable = cylinderArgon(
      read.number("waterVolume", waterVolume, VOLUME),
      read.number("pressure", pressure, CYLINDER_PRESSURE),
      read.numberOr("residual", residual, CYLINDER_PRESSURE, 0),
      read.numberOr("temperature", temperature, TEMPERATURE, standard.temperature),
      standard,
    );
    return read.give(usable, VOLUME);
  });
}

/**
 * True flow through a float meter made for another gas, in the unit of the reading.
 * @customfunction GAS_METER
 * @param reading What the scale shows, any unit
 * @param gas Gas that flows: "AR", "N2", "HE" or "AIR"
 * @param [scaleGas] Gas that the scale was made for; "AIR" if left out
 * @equation Q = reading·√(ρ of scaleGas/ρ of gas); densities at 20 °C and 1 atm
 * @math Q = \text{reading}\cdot\sqrt{\frac{\rho_{\text{scaleGas}}}{\rho_{\text{gas}}}}
 * @where Q true flow, in the unit of the reading; reading what the scale shows; ρ_scaleGas density of the gas the scale was made for, at 20 °C and 1 atm; ρ_gas density of the gas that flows, at the same state
 * @validity reading not below 0; float meters near atmospheric pressure. A thermal mass flow meter follows other laws.
 * @assumptions The same float height and drag for both gases, both at the same low pressure
 * @source Equal float height, as in de Nevers, Fluid Mechanics for Chemical Engineers, example 5.11
 * @related GAS_JOINT, PURGE_TIME, PURGE_FLOW
 * @example =BEAD.GAS_METER(10, "AR") → 8.5138
 */
export function gasMeterCell(reading: unknown, gas: unknown, scaleGas?: unknown): number {
  return answerAlike((read) =>
    meterFlow(
      read.number("reading", reading, ANY_FLOW),
      readRequiredGas(read, gas),
      GASES[read.wordOr("scaleGas", scaleGas, GAS_NAMES, "AIR")],
    ),
  );
}
