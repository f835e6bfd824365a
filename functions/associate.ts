/** Hands every formula to the host: the script that a spreadsheet loads. */

import { FORMULAS } from "./catalogue";

for (const { id, call } of FORMULAS) CustomFunctions.associate(id, call);
