/** The words that functions.js has in one place, against those that the sources put together. */

import path from "node:path";
import vm from "node:vm";

import { entriesOf } from "../../functions/about/find";
import { textsOf } from "../../functions/about/told";
import { families } from "../../functions/catalogue";
import { sourcesOf } from "../../functions/metal/told";
import { DESIGNATIONS } from "../../src/metal/material";
import { root } from "../../tools/build/project";
import { told, TOLD_FILES } from "../../tools/build/told";

/** The one function that the build writes in place of a file, made from its text. */
function written(file: string, name: string): (asked: unknown) => unknown {
  const script = told(path.join(root, file)).replace("export ", "");
  return vm.runInNewContext(`${script};\n${name}`) as (asked: unknown) => unknown;
}

test("every formula has its own texts", () => {
  const texts = written("functions/about/told.ts", "textsOf");
  for (const entry of entriesOf(families)) {
    expect([entry.formula.id, JSON.stringify(texts({ place: entry.place }))]).toEqual([
      entry.formula.id,
      JSON.stringify(textsOf(entry)),
    ]);
  }
});

test("every metal has its own sources", () => {
  const sources = written("functions/metal/told.ts", "sourcesOf");
  for (const designation of DESIGNATIONS)
    expect([designation, sources(designation)]).toEqual([designation, sourcesOf(designation)]);
});

test("only these files are written by the build", () => {
  expect(TOLD_FILES).toHaveLength(2);
  expect(() => told("functions/answer.ts")).toThrow("functions/answer.ts is not told by the build");
});
