/** The words that running formulas tell, as the modules that functions.js has in place of those that put them together. */

import path from "node:path";

import { textsOf } from "../../functions/about/told";
import { entriesOf } from "../../functions/about/find";
import { families } from "../../functions/catalogue";
import { sourcesOf } from "../../functions/metal/told";
import { DESIGNATIONS } from "../../src/metal/material";
import { root } from "./project";

/** The modules, each with all that it can be asked for; their only function looks the answer up. */
const TOLD: ReadonlyMap<string, () => string> = new Map([
  [
    path.join(root, "functions", "about", "told.ts"),
    () => {
      const texts = entriesOf(families).map(textsOf);
      const rows = (texts[0] ?? []).map((_, row) => texts.map((told) => oneLine(told[row])));
      // Row by row, so that like stands beside like: half a thousand bytes less for gzip than formula by formula.
      return [
        `const TOLD = ${JSON.stringify(rows.flat().join("\n"))};`,
        "export function textsOf({ place }) {",
        `  return TOLD.split("\\n").filter((_, line) => line % ${String(texts.length)} === place);`,
        "}\n",
      ].join("\n");
    },
  ],
  [
    path.join(root, "functions", "metal", "told.ts"),
    () => {
      const texts = Object.fromEntries(
        DESIGNATIONS.map((designation) => [designation, sourcesOf(designation)]),
      );
      return `const TOLD = ${JSON.stringify(texts)};\nexport const sourcesOf = (designation) => TOLD[designation];\n`;
    },
  ],
]);

export const TOLD_FILES: readonly string[] = [...TOLD.keys()];

export function told(file: string): string {
  const written = TOLD.get(file);
  if (written === undefined) throw new Error(`${file} is not told by the build`);
  return written();
}

function oneLine(text: string | undefined): string {
  if (text?.includes("\n") !== false) throw new Error(`"${String(text)}" is not one line`);
  return text;
}
