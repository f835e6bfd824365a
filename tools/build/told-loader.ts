/** A webpack loader for the functions alone: writes the words that running formulas tell in one place, see told.ts. */

import type { LoaderContext } from "webpack";

import { told } from "./told";

export default function loader(this: LoaderContext<unknown>): string {
  // The words come from all records and from the bibliography, which are other files.
  this.cacheable(false);
  return told(this.resourcePath);
}
