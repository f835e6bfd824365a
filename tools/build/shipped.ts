/** The packages whose code or fonts go into dist/, and under which name each one's licence text goes with them. */

import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

export interface Shipped {
  readonly name: string;
  /** Where the licence stands, from the project's folder. */
  readonly text: string;
  readonly copy: string;
  /** The package that brings it in its own bundle. */
  readonly inside?: string;
}

/** Nothing comes with the functions or the pane; all of these are of the browser sheet. */
export const SHIPPED: readonly Shipped[] = [
  packaged("@odoo/o-spreadsheet"),
  packaged("@odoo/owl"),
  packaged("chart.js", "LICENSE.md"),
  packaged("@kurkle/color", "LICENSE.md"),
  packaged("bootstrap"),
  {
    name: "font-awesome",
    // The package brings no text of its licences.
    text: "taskpane/hosts/browser/font-awesome-licence.txt",
    copy: "sheet/font-awesome-licence.txt",
  },
  { ...packaged("rbush"), inside: "@odoo/o-spreadsheet" },
  { ...packaged("quickselect"), inside: "@odoo/o-spreadsheet" },
  packaged("hucre"),
  packaged("fflate"),
];

function packaged(name: string, file = "LICENSE"): Shipped {
  const short = name.split("/").at(-1) ?? name;
  return { name, text: `node_modules/${name}/${file}`, copy: `sheet/${short}-licence.txt` };
}

/** From where in the project to where in dist/ each licence text is copied. */
export const LICENCE_COPIES: Readonly<Record<string, string>> = Object.fromEntries(
  SHIPPED.map(({ text, copy }) => [text, copy]),
);

/** What is wrong with the licences of a build: its source maps tell which packages are in it. */
export function licenceErrors(dist: string, shipped: readonly Shipped[] = SHIPPED): string[] {
  const found = packagesIn(dist);
  return [
    ...found
      .filter((name) => !shipped.some((one) => one.name === name))
      .map((name) => `${name} is bundled, and no licence text is named for it`),
    ...shipped
      .filter(({ copy }) => !existsSync(path.join(dist, copy)))
      .map(({ name, copy }) => `${copy}, the licence of ${name}, is missing`),
    ...shipped
      .filter(({ name, inside }) => !found.includes(inside ?? name))
      .map(({ name }) => `${name} is said to be bundled and is not`),
  ];
}

function packagesIn(dist: string): string[] {
  const sources = readdirSync(dist, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".map"))
    .flatMap(
      (file) => (JSON.parse(readFileSync(path.join(dist, file), "utf8")) as { sources: string[] }).sources,
    );
  const names = sources.map((source) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(source)?.[1]);
  return [...new Set(names.filter((name) => name !== undefined))];
}
