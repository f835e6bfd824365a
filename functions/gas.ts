import type { Gas } from "../src/gas";
import { DEFAULT_GAS, GAS_NAMES, GASES } from "../src/gas";
import { cylinderArgon, jointGas, meterFlow, STANDARD_STATE } from "../src/gas-supply";
import { ANY_FLOW, CYLINDER_PRESSURE, FLOW, TEMPERATURE, TIME, VOLUME } from "../src/quantity";
import { Refusal } from "../src/refusal";
import { answer, answerAlike } from "./answer";
import type { Reader } from "./cells";

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
 * @equation V = Q_t·t_t + Q_p·t_p
 * @math V = Q_\text{t}\,t_\text{t} + Q_\text{p}\,t_\text{p}
 * @where V gas of one joint; Q_t shielding flow at the torch (torchFlow); t_t time the torch gas is on (torchSeconds); Q_p flow into the bore (purgeFlow); t_p time the purge gas is on (purgeSeconds)
 * @validity Nothing below 0; volumes at the state the flow meters are made for
 * @assumptions Each flow is steady for its time. Hoses, leaks and forgotten valves come on top.
 * @source Flow × time
 * @related GAS_CYLINDER, GAS_METER, PURGE_TIME, PURGE_FLOW, CYCLE_TIME
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
 * @equation V = V_w·(ρ(p + 1 atm, T) − ρ(p_r + 1 atm, T))/ρ_s; ρ from the reference equation of state
 * @math V = V_\text{w}\,\frac{\rho(p + 1\,\text{atm},\, T) - \rho(p_\text{r} + 1\,\text{atm},\, T)}{\rho_\text{s}}
 * @where V usable gas at the standard state; V_w inside volume of the cylinder (waterVolume); ρ density of argon by the reference equation of state; p gauge pressure when full (pressure); p_r gauge pressure at which it is changed (residual); T temperature of the cylinder (temperature); ρ_s density at the standard state of the units
 * @validity Argon; gauge 0 to 350 bar (5076 psi), −30 to 60 °C (−22 to 140 °F). The cubic foot is of 70 °F and 1 atm (14.696 psi), the litre of 15 °C and 1 bar: the one place where US and SI differ physically.
 * @assumptions The cylinder is at one temperature, the same when full and when changed; the gauge reads from 1 atm. What is left at residual stays in the cylinder.
 * @source Tegeler, Span & Wagner 1999, J. Phys. Chem. Ref. Data 28, 779, the equation NIST uses: 0.03 % in density to 300 bar. Chosen because the ideal gas is off by up to 7 % and a cubic equation by 2 to 3 %. Coefficients as a general reference library (CoolProp 8.0.0) has them, checked against printed NIST densities.
 * @related GAS_JOINT, GAS_METER, PURGE_TIME
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
 * @equation Q = R·√(ρ_s/ρ_g), densities at 20 °C and 1 atm
 * @math Q = R\,\sqrt{\frac{\rho_\text{s}}{\rho_\text{g}}}
 * @where Q true flow; R what the scale shows (reading); ρ_s density of the gas the scale was made for (scaleGas); ρ_g density of the gas that flows (gas)
 * @validity reading not below 0; float meters near atmospheric pressure. A thermal mass flow meter follows other laws.
 * @assumptions Equal float height and drag; both gases at the same low pressure and temperature.
 * @source Equal float height, as in de Nevers, Fluid Mechanics for Chemical Engineers, example 5.11
 * @related GAS_JOINT, GAS_CYLINDER, PURGE_FLOW, PURGE_TIME
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
