/** What can hurt at this work beyond what every sheet states, each with where it is published. */
export const LOG_CAUTIONS = [
  "Grind tungsten with local exhaust and eye protection: the dust of thoriated electrodes is radioactive (AWS Safety and Health Fact Sheet 27); electrodes with cerium, lanthanum or yttrium avoid it.",
  "Where a person sees the arc: shade 8 at least up to 150 A, shade 10 above, darker first (29 CFR 1910.133). A closed head hides the arc; an open one and a tack do not.",
  "Fume of stainless steel holds hexavalent chromium, 5 µg/m³ at most over 8 h, action from 2.5 (29 CFR 1910.1026), and manganese, 5 mg/m³ at most. Exhaust at the arc; measure where in doubt.",
] as const;
