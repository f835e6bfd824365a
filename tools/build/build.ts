/**
 * npm run build: dist/ from the sources. Fails on anything wrong with the records, an example that does not give what it
 * says, an id that functions.js does not associate, and a manifest that Excel would refuse.
 *   npm run build -- --env url=https://addins.example/ringbead
 */

import path from "node:path";
import { parseArgs } from "node:util";

import { build } from "./built-site";
import { DEVELOPMENT_URL, dist } from "./project";

const { values } = parseArgs({ options: { env: { type: "string", multiple: true } } });
await build(urlFrom(values.env ?? []));
console.log(`built ${path.relative(process.cwd(), dist)}`);

/** From settings such as url=https://… */
function urlFrom(settings: readonly string[]): string {
  const given = settings.find((setting) => setting.startsWith("url="))?.slice("url=".length);
  if (given === undefined) return DEVELOPMENT_URL;
  if (!/^https:\/\/[^\s?#]+$/.test(given))
    throw new Error(`url=${given}: Excel loads add-ins from https addresses only`);
  return given.replace(/\/$/, "");
}
