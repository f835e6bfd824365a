/** The script that stands between office.js and functions.js. */

import { listenIn } from "./associated";

listenIn();
