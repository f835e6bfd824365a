/** What can hurt, said in the pane and on every sheet that plans a weld or its gas. */
export const CAUTIONS = [
  "Argon has no smell and is heavier than air: a purged bore, vessel or pit is a confined space without oxygen. Ventilate, measure oxygen before anyone enters, never enter alone.",
  "Vent the purge at the top and keep the vent open: a blocked vent blows out the root and can burst a dam. An oxygen meter, not the clock, says when the bore is ready.",
  "Arc rays, shock, hot metal, fumes and cylinder pressure injure: screens, gloves, earthed work, extraction, hot-work permit, cylinders chained.",
  "The qualified procedure, local codes and licensed practice decide. The numbers here are starting values: prove them on a test coupon.",
] as const;
