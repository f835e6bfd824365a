/**
 * Compiles the sources for the tests, and gives each file `Math` as a name of its own. Looked up in the sandbox that a
 * test runs in, as any global is, it takes several times as long as what it computes: the sums of the heat flow were ten
 * times slower in a test than in a sheet.
 */

import swcJest from "@swc/jest";

const STRICT = '"use strict";';

/** @param {Parameters<typeof swcJest.createTransformer>[0]} options */
function createTransformer(options) {
  const inner = swcJest.createTransformer(options);
  return {
    ...inner,
    /** @type {typeof inner.process} */
    process: (...args) => withMath(inner.process(...args)),
    /** @type {typeof inner.getCacheKey} */
    getCacheKey: (...args) => `${inner.getCacheKey?.(...args) ?? ""} with Math`,
  };
}

/** @param {import("@jest/transform").TransformedSource} compiled */
function withMath(compiled) {
  return { ...compiled, code: compiled.code.replace(STRICT, `${STRICT}const{Math}=globalThis;`) };
}

export default { createTransformer };
