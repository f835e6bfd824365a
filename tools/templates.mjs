/** npm run templates: dist/templates/ from what was built, every template in both systems of units as an .xlsx file. */

import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";

import webpack from "webpack";

import { build } from "./build.mjs";
import { loadFunctions } from "./built.mjs";
import { dist, NAMESPACE, root } from "./project.mjs";
import { alias, typescript } from "./webpack.mjs";

const templates = path.join(dist, "templates");

/** @returns {Promise<string[]>} the files written */
export async function writeTemplates() {
  const { templateFiles } = await bundled();
  const associated = loadFunctions(readFileSync(path.join(dist, "functions.js"), "utf8"));
  const { functions } = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8"));
  /** @type {{ name: string, bytes: Uint8Array }[]} */
  const files = await quietly(() =>
    templateFiles(NAMESPACE, functions, (/** @type {string} */ id) => associated.get(id)),
  );
  rmSync(templates, { recursive: true, force: true });
  mkdirSync(templates, { recursive: true });
  for (const { name, bytes } of files) writeFileSync(path.join(templates, name), bytes);
  return files.map(({ name }) => path.join(templates, name));
}

/** The browser sheet's engine and the file writer, bundled for Node. */
async function bundled() {
  const folder = path.join(root, ".cache", "templates");
  const compiler = webpack({
    mode: "none",
    target: "node",
    context: root,
    entry: "./taskpane/hosts/browser/files.ts",
    output: { path: folder, filename: "files.cjs", library: { type: "commonjs2" } },
    resolve: { extensions: [".ts", ".js"], alias },
    module: { rules: [typescript] },
  });
  await new Promise((resolve, reject) => {
    compiler.run((problem, stats) => {
      if (problem || stats?.hasErrors()) reject(problem ?? new Error(stats?.toString("errors-only")));
      else resolve(undefined);
    });
  });
  return createRequire(import.meta.url)(path.join(folder, "files.cjs"));
}

/** The engine reports every command on the console. @template T @param {() => Promise<T>} work @returns {Promise<T>} */
async function quietly(work) {
  const { debug } = console;
  console.debug = () => undefined;
  try {
    return await work();
  } finally {
    console.debug = debug;
  }
}

if (process.argv[1] === import.meta.filename) {
  try {
    if (!existsSync(path.join(dist, "functions.js"))) await build();
    for (const file of await writeTemplates()) console.log(`wrote ${path.relative(process.cwd(), file)}`);
  } catch (problem) {
    console.error(problem instanceof Error ? problem.message : problem);
    process.exitCode = 1;
  }
}
