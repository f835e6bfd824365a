/**
 * The project's modules in a registry of their own, which can be thrown away and filled anew in milliseconds: each file is
 * compiled once, and run again for each change. Packages are loaded once.
 */

import { existsSync, readFileSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import vm from "node:vm";

import { transformSync } from "@swc/core";

type Body = (
  module: { exports: unknown },
  exports: unknown,
  require: (specifier: string) => unknown,
  dirname: string,
  filename: string,
) => void;

/** Packages that come as ES modules only, and are compiled like our own. */
const COMPILED_PACKAGES = /node_modules\/(?:@odoo|hucre)\//;
const ENDINGS = ["", ".ts", "/index.ts", ".mjs", ".js", ".json"];

export class Modules {
  readonly #bodies = new Map<string, Body>();
  readonly #packages = new Map<string, { exports: unknown }>();
  readonly #changed = new Map<string, Body>();
  #registry = new Map<string, { exports: unknown }>();
  #mocks = new Map<string, () => unknown>();

  constructor(readonly root: string) {}

  /** From now on `file` reads as `text`, or as it stands. Throws where the text is no program. */
  change(file: string, text: string | undefined): void {
    if (text === undefined) this.#changed.delete(file);
    else this.#changed.set(file, compiled(file, text));
  }

  /** Forgets what ran. */
  reset(): void {
    this.#registry = new Map();
    this.#mocks = new Map();
  }

  /** From now on, until the next reset, a module is what `made` makes. */
  replace(specifier: string, from: string, made: () => unknown): void {
    const target = resolved(specifier, from);
    if (target !== undefined) this.#mocks.set(target, made);
  }

  /** A module as it stands, though it is replaced. */
  actual(specifier: string, from: string): unknown {
    const target = resolved(specifier, from);
    if (target === undefined) throw new Error(`no module ${specifier} for ${from}`);
    const made = this.#mocks.get(target);
    this.#mocks.delete(target);
    const exports = this.load(target);
    if (made === undefined) return exports;
    this.#mocks.set(target, made);
    this.#registry.delete(target);
    return exports;
  }

  load(file: string): unknown {
    const isPackage = file.includes("/node_modules/");
    const registry = isPackage ? this.#packages : this.#registry;
    const known = registry.get(file);
    if (known !== undefined) return known.exports;
    const module = { exports: {} as unknown };
    const made = this.#mocks.get(file);
    if (made !== undefined) module.exports = made();
    registry.set(file, module);
    if (made !== undefined) return module.exports;
    if (file.endsWith(".json")) {
      const parsed = JSON.parse(readFileSync(file, "utf8")) as object;
      module.exports = { ...parsed, default: parsed, __esModule: true };
      return module.exports;
    }
    const require = (specifier: string): unknown => this.#require(specifier, file);
    this.#bodyOf(file)(module, module.exports, require, path.dirname(file), file);
    return module.exports;
  }

  /** The files of the project that a file imports, itself included. */
  reachedBy(file: string, seen = new Set<string>()): ReadonlySet<string> {
    if (seen.has(file) || !existsSync(file)) return seen;
    seen.add(file);
    for (const [, specifier = ""] of readFileSync(file, "utf8").matchAll(/(?:from|import)\s+"(\.[^"]+)"/g)) {
      const target = resolved(specifier, file);
      if (target?.endsWith(".ts") === true) this.reachedBy(target, seen);
    }
    return seen;
  }

  #require(specifier: string, from: string): unknown {
    if (specifier.startsWith(".")) {
      const target = resolved(specifier, from);
      if (target === undefined) throw new Error(`no module ${specifier} for ${from}`);
      return this.load(target);
    }
    const require = createRequire(from);
    const target = specifier.startsWith("node:") ? specifier : require.resolve(specifier);
    return COMPILED_PACKAGES.test(target) ? this.load(target) : (require(specifier) as unknown);
  }

  #bodyOf(file: string): Body {
    let body = this.#changed.get(file) ?? this.#bodies.get(file);
    if (body === undefined) {
      body = compiled(file, readFileSync(file, "utf8"));
      this.#bodies.set(file, body);
    }
    return body;
  }
}

function resolved(specifier: string, from: string): string | undefined {
  const base = path.resolve(path.dirname(from), specifier);
  return ENDINGS.map((ending) => base + ending).find((file) => existsSync(file) && statSync(file).isFile());
}

function compiled(file: string, text: string): Body {
  const { code } = transformSync(text, {
    filename: file,
    jsc: {
      parser: { syntax: "typescript" },
      target: "es2022",
      // A test replaces a module before it imports the others.
      transform: { hidden: { jest: true } },
    } as object,
    module: { type: "commonjs" },
  });
  const wrapped = `(function (module, exports, require, __dirname, __filename) {${code}\n})`;
  return vm.runInThisContext(wrapped, { filename: file }) as Body;
}
