/**
 * The packages whose code or fonts go into dist/, and under which name each one's license text goes with them. The build
 * compares them with the modules that webpack put into the bundles.
 */

import { readFileSync } from "node:fs";
import path from "node:path";

import { root } from "./project";

export interface Shipped {
  readonly name: string;
  /** Where the license stands, from the project's folder. */
  readonly text: string;
  readonly copy: string;
  /** The package that brings it in its own bundle. */
  readonly inside?: string;
  /** Where its source is, for a package whose package.json does not say. */
  readonly source?: string;
  /** What of it is shipped, where that is not all of it. */
  readonly part?: string;
}

/** Nothing comes with the functions or the pane; all of these are of the browser sheet. */
export const SHIPPED: readonly Shipped[] = [
  packaged("@odoo/o-spreadsheet"),
  packaged("@odoo/owl"),
  packaged("idb"),
  packaged("chart.js", "LICENSE.md"),
  packaged("@kurkle/color", "LICENSE.md"),
  packaged("bootstrap"),
  {
    name: "font-awesome",
    // The package brings no text of its licenses.
    text: "taskpane/hosts/browser/font-awesome-licence.txt",
    copy: "sheet/font-awesome-licence.txt",
  },
  { ...packaged("rbush"), inside: "@odoo/o-spreadsheet" },
  {
    ...packaged("quickselect"),
    inside: "@odoo/o-spreadsheet",
    source: "https://github.com/mourner/quickselect",
  },
  packaged("hucre"),
  packaged("fflate"),
  { ...packaged("webpack"), part: "the lines that load the other modules" },
];

function packaged(name: string, file = "LICENSE"): Shipped {
  const short = name.split("/").at(-1) ?? name;
  return { name, text: `node_modules/${name}/${file}`, copy: `sheet/${short}-licence.txt` };
}

/** From where in the project to where in dist/ each license text is copied. */
export const LICENCE_COPIES: Readonly<Record<string, string>> = Object.fromEntries(
  SHIPPED.map(({ text, copy }) => [text, copy]),
);

export interface Installed {
  readonly version: string;
  readonly license: string;
  readonly author?: string;
  readonly repository?: string | { readonly url: string };
}

export function installed(name: string): Installed {
  return JSON.parse(readFileSync(path.join(root, "node_modules", name, "package.json"), "utf8")) as Installed;
}

/** Where the source of a package is, as an address for a browser; throws where nobody says. */
export function sourceOf({ name, source }: Shipped): string {
  const { repository } = installed(name);
  const told = source ?? (typeof repository === "string" ? repository : repository?.url) ?? "";
  const address = told
    .replace(/^git\+/, "")
    .replace(/^git:/, "https:")
    .replace(/\.git$/, "");
  if (!/^https:\/\/\S+$/.test(address)) throw new Error(`${name} does not say where its source is`);
  return address;
}

/** The packages that are in a bundle with these in it: those, and what came inside of one of them. */
export function shippedWith(
  bundled: readonly string[],
  shipped: readonly Shipped[] = SHIPPED,
): readonly Shipped[] {
  return shipped.filter(({ name, inside }) => bundled.includes(inside ?? name));
}

/** What is wrong with the list for bundles that hold these packages; empty when nothing is. */
export function licenceErrors(
  bundled: readonly string[],
  exists: (copy: string) => boolean,
  shipped: readonly Shipped[] = SHIPPED,
): string[] {
  return [
    ...bundled
      .filter((name) => !shipped.some((one) => one.name === name))
      .map((name) => `${name} is bundled, and no license text is named for it`),
    ...shipped
      .filter(({ copy }) => !exists(copy))
      .map(({ name, copy }) => `${copy}, the license of ${name}, is missing`),
    ...shipped
      .filter(({ name, inside }) => !bundled.includes(inside ?? name))
      .map(({ name }) => `${name} is said to be bundled and is not`),
  ];
}
