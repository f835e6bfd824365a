/** npm run docs: the pages that are made from the sources, written anew. */

import { writeNotice } from "./notice.mjs";
import { writeRefusals } from "./refusals.mjs";

writeNotice();
await writeRefusals();
