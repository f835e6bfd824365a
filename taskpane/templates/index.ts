/** The sheets the pane can insert, in the order it offers them. */

import { procedure } from "./procedure";
import type { Template } from "./sheet";

export const TEMPLATES: readonly Template[] = [procedure];
