/** Prints the milliseconds that one load of a functions script takes in this fresh process. */

import { readFileSync } from "node:fs";
import vm from "node:vm";

const [, , file = ""] = process.argv;
const script = readFileSync(file, "utf8");
let associated = 0;
Object.assign(globalThis, {
  CustomFunctions: { Error, ErrorCode: {}, associate: () => (associated += 1) },
});
const start = performance.now();
vm.runInThisContext(script, { filename: file });
const took = performance.now() - start;
if (associated === 0) throw new Error(`${file} offers no formula`);
console.log(took);
