/**
 * A webpack loader for the functions alone: leaves out of records and tables of numbers what is told of them. Help, pages
 * and the pane have it from generated/help.json; what ABOUT and MATERIALS tell stands in one place instead, see told.ts.
 */

import type { LoaderContext } from "webpack";

import { untold } from "./untold";

export default function loader(this: LoaderContext<unknown>, source: string): string {
  // A cached module would outlive a change of untold.ts.
  this.cacheable(false);
  return untold(this.resourcePath, source);
}
