/**
 * npm run check -- https://addins.example/ringbead: fetches what the manifest names from a host, as Excel would, and says
 * what Excel would stumble over. Ends with an error where there is a fault.
 */

import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";

import { VERSION } from "../../functions/catalogue";
import { root } from "../build/project";
import { examine } from "./hosted/hosted";
import { addressFrom, reportLines } from "./hosted/report";

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { authority: { type: "string" } },
});
const url = addressFrom(positionals);
console.log(`checking ${url}`);
const report = await examine(url, { version: VERSION, authority: authorityFor(url) });
for (const line of reportLines(report)) console.log(line);
if (report.faults.length > 0) process.exitCode = 1;

/** A certificate to trust besides those that Node knows: a given file, or for this machine the project's own. */
function authorityFor(address: string): string | undefined {
  const own = path.join(root, ".cache", "certificates", "ringbead-authority.crt");
  const isHere = new URL(address).hostname === "localhost" && existsSync(own);
  const file = values.authority ?? (isHere ? own : undefined);
  return file === undefined ? undefined : readFileSync(file, "utf8");
}
