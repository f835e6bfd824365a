/** What the formulas are called by in a sheet: the one place that spells it. */

export const NAMESPACE = "BEAD";
