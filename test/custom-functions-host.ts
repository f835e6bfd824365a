/** The formulas that a test imports refuse as they do in a host. */

import { provideCellHost } from "../tools/build/cell-host";

provideCellHost();
