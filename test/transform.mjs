/**
 * Compiles the sources for the tests, and gives each file the usual globals as names of its own. Looked up in the sandbox
 * that a test runs in, a global takes several times as long as what it does: the sums of the heat flow were ten times
 * slower in a test than in a sheet, and the sheet's engine spent a tenth of its time on the name `Array`. Names that a
 * test may replace, such as `Date` and the timers, are looked up as ever.
 */

import swcJest from "@swc/jest";

const NAMES = [
  "Array",
  "Boolean",
  "Error",
  "Function",
  "Infinity",
  "JSON",
  "Map",
  "Math",
  "NaN",
  "Number",
  "Object",
  "Promise",
  "RegExp",
  "Set",
  "String",
  "Symbol",
  "WeakMap",
  "isFinite",
  "isNaN",
  "parseFloat",
  "parseInt",
];
const STRICT = '"use strict";';
const OWN = `const{${NAMES.join()}}=globalThis;`;

/** @param {Parameters<typeof swcJest.createTransformer>[0]} options */
function createTransformer(options) {
  const inner = swcJest.createTransformer(options);
  return {
    ...inner,
    /** @type {typeof inner.process} */
    process: (source, file, ...rest) =>
      isCompiled(file) ? { code: withNames(source) } : compiled(inner.process(source, file, ...rest)),
    /** @type {typeof inner.getCacheKey} */
    getCacheKey: (...args) => `${inner.getCacheKey?.(...args) ?? ""} with ${NAMES.join()}`,
  };
}

/** Packages that come as CommonJS. @param {string} file */
function isCompiled(file) {
  return file.endsWith(".cjs") || /[\\/]node_modules[\\/](?:fast-check|pure-rand)[\\/]/.test(file);
}

/** @param {import("@jest/transform").TransformedSource} made */
function compiled(made) {
  return { ...made, code: withNames(made.code) };
}

/** @param {string} code */
function withNames(code) {
  return code.startsWith(STRICT) ? `${STRICT}${OWN}${code.slice(STRICT.length)}` : `${OWN}${code}`;
}

export default { createTransformer };
