/** npm run docs: the pages that are made from the sources, written anew. */

import { writeRefusals } from "./refusals.mjs";

await writeRefusals();
