/** dist/templates/: every ready sheet in both systems of units as an .xlsx file, computed with the built functions. */

import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";

import { NAMESPACE } from "../../functions/namespace";
import type { FunctionDefinition } from "../../taskpane/hosts/browser/functions-host";
import { loadFunctions } from "./built";
import { dist } from "./project";
import { quietly } from "./quietly";

const templates = path.join(dist, "templates");

/** The files written. */
export async function writeTemplates(): Promise<string[]> {
  // The engine takes a second to load, which nobody should wait for who does not need it.
  const { templateFiles } = await import("../../taskpane/hosts/browser/files");
  const associated = loadFunctions(readFileSync(path.join(dist, "functions.js"), "utf8"));
  const { functions } = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as {
    functions: FunctionDefinition[];
  };
  const files = await quietly(() => templateFiles(NAMESPACE, functions, (id) => associated.get(id)));
  rmSync(templates, { recursive: true, force: true });
  mkdirSync(templates, { recursive: true });
  for (const { name, bytes } of files) writeFileSync(path.join(templates, name), bytes);
  return files.map(({ name }) => path.join(templates, name));
}
