/** The help of every formula at once, for what is made of it; a running formula asks for one at a time. */

import { families } from "./catalogue";
import type { FormulaHelp } from "./help-text";
import { helpOf } from "./help-text";

export const HELP: readonly FormulaHelp[] = families.flatMap((family) =>
  family.formulas.map((formula) => helpOf(formula, family)),
);
