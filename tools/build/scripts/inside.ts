/** What both scripts hold inside: the calling side and functions.js itself, in words that older hosts read too. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { transformSync } from "@swc/core";

import type { Formula } from "../../../functions/formula";
import { NAMESPACE } from "../../../functions/namespace";

/** The scripts' own name for the function behind all others. Google Sheets offers no name that ends so as a formula. */
const CALL = "ringbead_";
/** Some hosts' editors do not read what came into the language later. */
const TARGET = "es2019";

/** As a formula is called where no name can have a dot. */
export function scriptName(id: string): string {
  return `${NAMESPACE}_${id}`;
}

/** The text of a function that calls a formula with what stands in `given`, an expression. */
export function callOf({ id, args, takesUnits }: Formula, given: string): string {
  const own = Object.values(args);
  const repeats = own.some(({ takes }) => takes === "rest");
  const places = own.filter(({ takes }) => takes !== "rest").length + (takesUnits ? 1 : 0);
  return `${CALL}(${JSON.stringify(id)}, ${given}, ${String(places)}${repeats ? ", true" : ""})`;
}

/** A declaration of the function behind all others; nothing in it is seen from outside. */
export function insideOf(functionsScript: string): string {
  const side = readFileSync(path.join(import.meta.dirname, "called.ts"), "utf8");
  return [
    `var ${CALL} = (function () {`,
    lowered(side, "typescript").replace(/^export /gm, ""),
    "var side = scriptSide();",
    "(function (CustomFunctions) {",
    lowered(functionsScript.replace(/\/\/# sourceMappingURL=.*/, ""), "ecmascript"),
    "})(side.CustomFunctions);",
    "return side.call;",
    "})();",
  ].join("\n");
}

/** No comment of the sources goes on: a host takes those of a formula for its help. */
function lowered(code: string, syntax: "typescript" | "ecmascript"): string {
  return transformSync(code, {
    swcrc: false,
    configFile: false,
    isModule: syntax === "typescript",
    jsc: {
      parser: { syntax },
      target: TARGET,
      preserveAllComments: false,
      minify: { format: { comments: false } },
    },
  }).code.trim();
}
