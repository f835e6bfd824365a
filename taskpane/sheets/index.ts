/** The sheets the pane can insert, in the order it offers them. */

import { cycle } from "./cycle";
import { gas } from "./gas";
import { procedure } from "./procedure";
import type { Template } from "./sheet";

export const TEMPLATES: readonly Template[] = [procedure, gas, cycle];
