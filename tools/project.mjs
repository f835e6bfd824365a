/** What the whole build agrees on: where the project lies, its version, its namespace and where it is served. */

import { readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
/** @type {string} */
export const VERSION = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")).version;
/** What formulas are called in comments, sheets, help and the browser sheet. */
export const NAMESPACE = "BEAD";
/** Where an Excel for development loads the add-in from; a real one is given with --env url=https://… */
export const DEVELOPMENT_URL = "https://localhost:3000";
export const dist = path.join(root, "dist");
export const generated = path.join(root, "generated");

/**
 * How Excel tells this add-in from others. One under development has an id, a title and a namespace of its own, so that
 * it can be loaded beside a released one: two of the same namespace keep each other from registering.
 * @param {string} url where it is served
 */
export function identityAt(url) {
  return url === DEVELOPMENT_URL
    ? {
        id: "c2a7d1f4-58e3-4c96-8b21-7d40e9b35a18",
        title: "Ringbead (development)",
        namespace: `${NAMESPACE}DEV`,
      }
    : { id: "6f1f9a7e-3c0b-4b51-9d0e-2f6a52c1b7d4", title: "Ringbead", namespace: NAMESPACE };
}
