/**
 * npm test: checks everything, a question at a time in two lanes, since two is what the smallest machine has cores for.
 * Closes with one line that counts what passed and failed.
 */

import { provideCellHost } from "../build/cell-host";
import { build } from "../build/built-site";
import { generate } from "../build/generate";
import { writeTemplates } from "../build/template-files";
import { recordsIn } from "../docs/check-records";
import { madeFiles, stale } from "../docs/made-files";
import { ensureChromium } from "./chromium";
import type { TestRun } from "./jest";
import { runTests } from "./jest";
import { ensureOffice } from "./office";
import { onceMore } from "./once-more";
import { runPackaged } from "./program";
import type { Found, Step } from "./steps";
import { goThrough, YES } from "./steps";

/** Whether a file is laid out as agreed hangs on nothing but the file: what has been looked at is remembered by its content. */
const LAID_OUT = ["--cache", "--cache-strategy", "content", "--cache-location", ".cache/prettier"];
const ROOMS = ["functions", "taskpane", "tools", "test"];

async function packaged(program: string, ...args: string[]): Promise<Found> {
  const { status, output } = await runPackaged(program, args);
  if (status !== 0) throw new Error(output);
  return YES;
}

async function tests(
  config: string,
  options: readonly string[] = [],
  env: NodeJS.ProcessEnv = {},
): Promise<TestRun> {
  const run = await runTests(config, options, env);
  if (run.passed + run.failed === 0) throw new Error(`no test ran:\n${run.output}`);
  if (run.failed === 0 && run.status !== 0) throw new Error(run.output);
  return run;
}

let report = "";
let built: Promise<void> | undefined;

/** The build, made by the step that asks about it; those who look at it only tell that there is none. */
async function needsBuild(): Promise<void> {
  const there = await built?.then(
    () => true,
    () => false,
  );
  if (there !== true) throw new Error("there is no build to look at");
}

const types = ROOMS.map((room): Step => ({
  question: `Do the types agree in ${room}?`,
  ask: () => packaged("tsc", "-p", room),
}));

const steps = {
  lint: {
    question: "Does the code keep to its rules?",
    ask: () => packaged("eslint", ".", "--max-warnings", "0"),
  },
  layout: {
    question: "Is the code laid out as agreed?",
    ask: () => packaged("prettier", "--check", "--log-level", "warn", ...LAID_OUT, "."),
  },
  unit: {
    question: "Are the numbers, the sheets and the tools right, in every branch of src/?",
    ask: async () => {
      const run = await tests("jest.config.mjs", ["--coverage", "--silent", "--maxWorkers=2"]);
      ({ report } = run);
      return { ...run, output: run.failed > 0 ? run.output : "" };
    },
  },
  pages: {
    question: "Do the generated pages of docs/ say what is so?",
    ask: () => {
      if (report === "")
        throw new Error("the tests have to run first, since the pages tell what they checked");
      const old = stale(madeFiles(recordsIn(report)));
      if (old.length > 0) throw new Error(`no longer so: ${old.join(", ")}; npm run docs writes them anew`);
      return Promise.resolve(YES);
    },
  },
  build: {
    question: "Does it build, and is what was built complete and safe?",
    ask: async () => {
      built = build(undefined, () => undefined);
      await built;
      return YES;
    },
  },
  browser: {
    question: "Does the browser sheet work by pointer and keyboard?",
    ask: async () => {
      const chromium = await ensureChromium();
      await needsBuild();
      const env = chromium === undefined ? {} : { RINGBEAD_CHROMIUM: chromium };
      const run = (options: readonly string[]): Promise<TestRun> =>
        tests("jest.browser.config.mjs", options, env);
      return shown(
        await onceMore(await run([]), (files) => run(["--runInBand", "--runTestsByPath", ...files])),
      );
    },
  },
  office: {
    question: "Does LibreOffice show the exported files as they were computed?",
    ask: async () => {
      if (ensureOffice() === undefined)
        return {
          passed: 0,
          failed: 0,
          output: "   this machine has no LibreOffice, and none can be installed here",
        };
      await needsBuild();
      await writeTemplates();
      return shown(await tests("jest.office.config.mjs"));
    },
  },
} satisfies Record<string, Step>;

/** Everything where something failed; else what a test says it could not check here, and what failed once. */
function shown(run: TestRun): Found {
  const unchecked = [...new Set(run.output.match(/^ *(?:NOT CHECKED|FAILED ONCE): .*$/gm))].map(
    (line) => `   ${line.trim()}`,
  );
  return { ...run, output: run.failed > 0 ? run.output : unchecked.join("\n") };
}

const began = performance.now();
provideCellHost();
const first = await goThrough([
  [
    {
      question: "Are the records complete, and does Excel's tool read them as they are?",
      ask: () => generate().then(() => YES),
    },
  ],
]);
const rest = await goThrough([
  [steps.unit, steps.pages],
  [...types, steps.lint, steps.layout, steps.build, steps.browser, steps.office],
]);
const [passed, failed] = [first.passed + rest.passed, first.failed + rest.failed];
console.log(`\n${((performance.now() - began) / 1000).toFixed(0)} s`);
console.log(`Ringbead: ${String(passed)} passed, ${String(failed)} failed`);
process.exitCode = failed === 0 ? 0 : 1;
