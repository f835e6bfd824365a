/** What the whole build agrees on: where the project lies, its version, its namespace and where it is served. */

import { readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
/** @type {string} */
export const VERSION = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")).version;
export const NAMESPACE = "BEAD";
/** Where an Excel for development loads the add-in from; a real one is given with --env url=https://… */
export const DEVELOPMENT_URL = "https://localhost:3000";
export const dist = path.join(root, "dist");
export const generated = path.join(root, "generated");
