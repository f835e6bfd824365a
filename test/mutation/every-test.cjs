/**
 * Every test that calls src/, in one file: a mutant then loads the sources once, not once for each file of tests.
 * The quick and particular ones come first, since the first failure ends a mutant's run.
 */

const { readdirSync } = require("node:fs");
const path = require("node:path");

const ROOMS = ["src", "published", "functions"];
/** They load the browser sheet's engine or measure the machine, and say nothing of src/ that others do not. */
const OMITTED = /host-model|bounded-work/;
/** All, unless the environment asks for those with some words in their path: a few files of src/ need only their own. */
const ASKED_FOR = new RegExp(process.env.RINGBEAD_TESTS ?? "");
/** Its spy has to be in place before the sources load. */
const MOCKS = /planning.takeoff/;
const LAST = /any-|units-agree|heat-flow.(sectors|ring|dam)|takeoff/;

const files = ROOMS.flatMap((room) => {
  const folder = path.join(__dirname, "..", room);
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".test.ts") && !OMITTED.test(name))
    .map((name) => path.join(folder, name))
    .filter((file) => ASKED_FOR.test(file));
});

for (const file of [...files.filter((one) => !LAST.test(one)), ...files.filter((one) => LAST.test(one))]) {
  describe(path.basename(file, ".test.ts"), () => {
    if (MOCKS.test(file)) jest.isolateModules(() => require(file));
    else require(file);
  });
}
