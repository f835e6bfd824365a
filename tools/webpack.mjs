/** Three bundles: the functions, the pane in Excel, and the browser sheet with its engine. None holds another's code. */

import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import path from "node:path";

import MiniCssExtractPlugin from "mini-css-extract-plugin";
import webpack from "webpack";

import { dist, root } from "./project.mjs";

export const typescript = {
  test: /\.ts$/,
  exclude: /node_modules/,
  use: {
    loader: "swc-loader",
    options: { jsc: { parser: { syntax: "typescript" }, target: "es2020" } },
  },
};

/** The engine's "browser" entry is a script for a page of globals; its module is what can be bundled. */
export const alias = {
  "@odoo/o-spreadsheet$": path.join(root, "node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js"),
};

/** @param {string[]} files */
function fingerprint(...files) {
  const hash = createHash("sha256");
  for (const file of files) hash.update(readFileSync(file));
  return hash.digest("hex");
}

/** @type {import("webpack").Configuration} */
const common = {
  mode: "production",
  target: ["web", "es2020"],
  context: root,
  resolve: { extensions: [".ts", ".js"] },
  cache: {
    type: "filesystem",
    cacheDirectory: path.join(root, ".cache", "webpack"),
    // A cache made with other settings or packages must never be used again.
    version: fingerprint(import.meta.filename, path.join(root, "package-lock.json")),
  },
  performance: { hints: false },
  devtool: "source-map",
};

/** @type {import("webpack").Configuration[]} */
export const bundles = [
  {
    ...common,
    name: "functions",
    entry: "./generated/associate.ts",
    output: { path: dist, filename: "functions.js" },
    module: { rules: [typescript] },
  },
  {
    ...common,
    name: "pane",
    entry: { taskpane: "./taskpane/hosts/excel/entry.ts", listen: "./taskpane/hosts/excel/listen.ts" },
    output: { path: dist, filename: "[name].js" },
    module: { rules: [typescript] },
  },
  {
    ...common,
    name: "browser sheet",
    resolve: { ...common.resolve, alias },
    entry: "./taskpane/hosts/browser/page.ts",
    output: {
      path: path.join(dist, "sheet"),
      filename: "sheet.js",
      assetModuleFilename: "assets/[name][ext]",
    },
    module: {
      rules: [
        typescript,
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
        { test: /o_spreadsheet\.xml$/, type: "asset/source" },
      ],
    },
    plugins: [new MiniCssExtractPlugin({ filename: "sheet.css" })],
  },
];

/** @param {(line: string) => void} say */
export async function bundle(say) {
  for (const configuration of bundles) {
    say(`bundling the ${configuration.name}`);
    const compiler = webpack(configuration);
    if (compiler === null) throw new Error("webpack gave no compiler");
    const stats = await new Promise((resolve, reject) => {
      compiler.run((problem, result) => (problem ? reject(problem) : resolve(result)));
    });
    await new Promise((resolve) => compiler.close(resolve));
    if (stats.hasErrors()) throw new Error(stats.toString({ all: false, errors: true }));
  }
}
