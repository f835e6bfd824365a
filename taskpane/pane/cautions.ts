/** What can hurt, said wherever a procedure is planned. */
export const CAUTIONS = [
  "Argon has no smell and is heavier than air. A purged bore, vessel or pit is a confined space without oxygen: ventilate, measure, never enter alone.",
  "Vent the purge at the top and keep the vent open; a blocked vent bursts dams and blows out the root.",
  "Arc rays, shock, hot metal, fumes and cylinders injure. Screens, gloves, extraction, earthed work, chained cylinders, hot-work permit.",
  "The numbers are starting values. Prove them on a test coupon; the qualified procedure, local codes and licensed practice govern.",
] as const;
