/** What the whole build agrees on: where the project lies and where it is served. */

import path from "node:path";

import { NAMESPACE } from "../../functions/namespace";

export const root = path.resolve(import.meta.dirname, "..", "..");
/** Where an Excel for development loads the add-in from; a real one is given with --env url=https://… */
export const DEVELOPMENT_URL = "https://localhost:3000";
export const dist = path.join(root, "dist");
export const generated = path.join(root, "generated");

export interface Identity {
  readonly id: string;
  readonly title: string;
  readonly namespace: string;
}

/**
 * How Excel tells this add-in from others. One under development has an id, a title and a namespace of its own, so that
 * it can be loaded beside a released one: two of the same namespace keep each other from registering.
 */
export function identityAt(url: string): Identity {
  return url === DEVELOPMENT_URL
    ? {
        id: "c2a7d1f4-58e3-4c96-8b21-7d40e9b35a18",
        title: "Ringbead (development)",
        namespace: `${NAMESPACE}DEV`,
      }
    : { id: "6f1f9a7e-3c0b-4b51-9d0e-2f6a52c1b7d4", title: "Ringbead", namespace: NAMESPACE };
}
