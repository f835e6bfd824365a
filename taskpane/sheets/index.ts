/** The sheets the pane can insert, in the order it offers them. */

import { bid } from "./bid";
import { coupons } from "./coupons";
import { cycle } from "./cycle";
import { gas } from "./gas";
import { procedure } from "./procedure";
import { sizeTable } from "./size-table";
import type { Template } from "./sheet";
import { weldLog } from "./weld-log";

export const TEMPLATES: readonly Template[] = [procedure, sizeTable, gas, bid, cycle, weldLog, coupons];
