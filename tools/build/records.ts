/** Writes generated/ from the records, without building: what `npm run dev` does after each change of a formula. */

import { generate } from "./generate";

await generate();
