/** Fills in what depends on where the add-in is served: its manifest and its page. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { VERSION } from "../../functions/catalogue";
import { identityAt, root } from "./project";

export function writeManifest(url: string): string {
  return filledIn("manifest/manifest.xml", url);
}

/** A file with every {{name}} in it filled in, for an add-in that is served there. */
export function filledIn(file: string, url: string): string {
  const values = new Map(Object.entries({ ...identityAt(url), version: `${VERSION}.0`, url }));
  return readFileSync(path.join(root, file), "utf8").replace(/\{\{(\w+)\}\}/g, (_, name: string) => {
    const value = values.get(name);
    if (value === undefined) throw new Error(`${file} asks for {{${name}}}, which nothing fills`);
    return value.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
  });
}
