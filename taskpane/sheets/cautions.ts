/** What can hurt, stated in the pane and on every sheet that plans a weld or its gas. */
export const CAUTIONS = [
  "Argon has no smell and is heavier than air: a purged bore, vessel or pit is a confined space without oxygen. Ventilate, measure oxygen before anyone enters, never enter alone.",
  "Vent the purge at the top and keep the vent open: a blocked vent blows out the root and can burst a dam. Trust an oxygen meter, not the clock, to tell when the bore is ready.",
  "Arc rays, electric shock, hot metal, fumes and cylinder pressure injure: use screens, gloves, grounded work, fume extraction, a hot-work permit and secured cylinders.",
  "The qualified procedure, local codes and licensed practice govern. The numbers here are starting values: prove them on a test coupon.",
] as const;

/** The same where there is room for one line only. */
export const CAUTION_IN_SHORT =
  "A purged bore holds no oxygen to breathe. The meter, not the clock, says when it is ready. Starting values: prove them on a test coupon.";
