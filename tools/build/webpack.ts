/** Three bundles: the functions, the pane in Excel, and the browser sheet with its engine. None holds another's code. */

import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import path from "node:path";

import MiniCssExtractPlugin from "mini-css-extract-plugin";
import MinimizerPlugin from "minimizer-webpack-plugin";
import type { Configuration, RuleSetRule } from "webpack";

import { dist, root } from "./project";
import { TOLD_FILES } from "./told";

export type Mode = "production" | "development";

const typescript: RuleSetRule = {
  test: /\.ts$/,
  exclude: /node_modules/,
  use: {
    loader: "swc-loader",
    options: {
      jsc: {
        parser: { syntax: "typescript" },
        target: "es2020",
        // Fields are set, as the compiler of the types does it: one that is defined takes many times as long.
        transform: { useDefineForClassFields: false },
      },
    },
  },
};

/**
 * What is told of the functions is left out of them, see untold-loader.ts; what they tell themselves stands in one place,
 * see told-loader.ts. A bundle that is being worked on has it all where it is written.
 */
function withoutWords(): Configuration {
  const untold: RuleSetRule = {
    test: /\.ts$/,
    include: [path.join(root, "functions"), path.join(root, "src")],
    enforce: "pre",
    use: path.join(root, "tools", "build", "untold-loader.ts"),
  };
  const told: RuleSetRule = {
    include: [...TOLD_FILES],
    enforce: "pre",
    use: path.join(root, "tools", "build", "told-loader.ts"),
  };
  return { module: { rules: [typescript, untold, told] } };
}

/** What a newcomer starts with is made by the build, a third of the time to the first number. */
const fresh: RuleSetRule = {
  include: path.join(root, "taskpane", "hosts", "browser", "fresh-data.ts"),
  enforce: "pre",
  use: path.join(root, "tools", "build", "fresh-loader.ts"),
};

/** The engine's "browser" entry is a script for a page of globals; its module is what can be bundled. */
const alias = {
  "@odoo/o-spreadsheet$": path.join(root, "node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js"),
};

function fingerprint(...files: readonly string[]): string {
  const hash = createHash("sha256");
  for (const file of files) hash.update(readFileSync(file));
  return hash.digest("hex");
}

function common(mode: Mode): Configuration {
  return {
    mode,
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
    // A fifth of the time that webpack's own choice takes for the browser sheet's engine.
    optimization: minimized(),
    devtool: mode === "production" ? "source-map" : "cheap-module-source-map",
  };
}

function minimized(compress = {}): NonNullable<Configuration["optimization"]> {
  const minify = MinimizerPlugin.swcMinify;
  return {
    minimizer: [new MinimizerPlugin({ minify, parallel: false, minimizerOptions: { compress } })],
  };
}

export interface Bundles {
  readonly functions: Configuration;
  readonly pane: Configuration;
  readonly sheet: Configuration;
}

export function bundles(mode: Mode, folder = dist): Bundles {
  const base = common(mode);
  return {
    functions: {
      ...base,
      name: "functions",
      entry: "./functions/associate.ts",
      // A function put into the place that calls it is made anew in every call, for each line of a list.
      optimization: minimized({ inline: 0, reduce_funcs: false }),
      output: { path: folder, filename: "functions.js" },
      ...(mode === "production" ? withoutWords() : { module: { rules: [typescript] } }),
    },
    pane: {
      ...base,
      name: "pane",
      entry: {
        taskpane: "./taskpane/hosts/excel/entry.ts",
        listen: "./taskpane/hosts/excel/listen.ts",
        "help-search": "./taskpane/hosts/help/help-search.ts",
      },
      output: { path: folder, filename: "[name].js" },
      module: { rules: [typescript] },
    },
    sheet: {
      ...base,
      name: "browser sheet",
      resolve: { ...base.resolve, alias },
      entry: "./taskpane/hosts/browser/page.ts",
      output: {
        path: path.join(folder, "sheet"),
        filename: "sheet.js",
        assetModuleFilename: "assets/[name][ext]",
      },
      module: {
        rules: [
          typescript,
          ...(mode === "production" ? [fresh] : []),
          { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
          { test: /o_spreadsheet\.xml$/, type: "asset/source" },
        ],
      },
      plugins: [new MiniCssExtractPlugin({ filename: "sheet.css" })],
    },
  };
}
