/**
 * Runs test files in this process, some of their tests or all: just what is needed to ask "does a test notice?", and
 * what a test takes. The tests of a file are numbered as they stand, from 0.
 */

import { expect } from "expect";
import { ModuleMocker } from "jest-mock";
import { performance } from "node:perf_hooks";
import vm from "node:vm";

import type { Modules } from "./modules";

type Work = (...row: readonly unknown[]) => unknown;
interface Test {
  readonly at: number;
  readonly title: string;
  readonly work: () => unknown;
}
interface Group {
  readonly before: Work[];
  readonly beforeEach: Work[];
  readonly after: Work[];
  readonly afterEach: Work[];
  readonly tests: Test[];
  readonly groups: Group[];
}
export interface Asked {
  /** The numbers of the tests to run; all if omitted. */
  readonly only?: ReadonlySet<number> | undefined;
  /** Ends a piece of work that does not end by itself, as far as it is synchronous, ms. */
  readonly longest?: number | undefined;
  /** Told of each test before and after it runs. */
  readonly starts?: (at: number) => void;
  readonly ended?: (at: number, ms: number) => void;
  /** Goes on after a failure. */
  readonly all?: boolean;
  /** Runs no further test once it says so. */
  readonly isEnough?: () => boolean;
}
export interface Failure {
  readonly title: string;
  /** The file failed before its first test. */
  readonly loading: boolean;
  /** A piece of work did not end in its time. */
  readonly ranOut: boolean;
}

const LONGEST = 60_000;
let longest = LONGEST;
let ranOut = false;

/** What this process has used of its processors, ms: other programs do not make a test slow. */
export function used(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function group(): Group {
  return { before: [], beforeEach: [], after: [], afterEach: [], tests: [], groups: [] };
}

/** The first test that fails, or undefined when all pass. */
export async function firstFailure(
  modules: Modules,
  file: string,
  asked: Asked = {},
): Promise<Failure | undefined> {
  const whole = group();
  let current = whole;
  let count = 0;
  const describe = (_: string, body: () => void): void => {
    const outer = current;
    current = group();
    outer.groups.push(current);
    body();
    current = outer;
  };
  const test = (title: string, work: () => unknown): void => {
    current.tests.push({ at: count++, title, work });
  };
  const mocker = new ModuleMocker(globalThis);
  longest = asked.longest ?? LONGEST;
  ranOut = false;
  Object.assign(globalThis, {
    describe: Object.assign(describe, {
      each: (table: readonly unknown[]) => (title: string, body: Work) => {
        for (const row of rowsOf(table)) describe(title, () => void body(...row));
      },
    }),
    test: Object.assign(test, {
      each: (table: readonly unknown[]) => (title: string, work: Work) => {
        for (const row of rowsOf(table)) test(`${title} ${String(row[0])}`, () => work(...row));
      },
    }),
    beforeAll: (work: Work) => current.before.push(work),
    beforeEach: (work: Work) => current.beforeEach.push(work),
    afterAll: (work: Work) => current.after.push(work),
    afterEach: (work: Work) => current.afterEach.push(work),
    expect,
    jest: {
      spyOn: mocker.spyOn.bind(mocker),
      fn: mocker.fn.bind(mocker),
      restoreAllMocks: () => {
        mocker.restoreAllMocks();
      },
      mock: (specifier: string, made: () => unknown) => {
        modules.replace(specifier, file, made);
      },
      mocked: (one: unknown) => one,
      requireActual: (specifier: string) => modules.actual(specifier, file),
    },
  });
  try {
    guarded(() => modules.load(file), LOADING);
  } catch (problem) {
    mocker.restoreAllMocks();
    return { title: problem instanceof Error ? problem.message : String(problem), loading: true, ranOut };
  }
  try {
    const title = await failureIn(whole, asked, [], []);
    return title === undefined ? undefined : { title, loading: false, ranOut };
  } finally {
    mocker.restoreAllMocks();
  }
}

function isAsked({ tests, groups }: Group, only: ReadonlySet<number> | undefined): boolean {
  return (
    only === undefined || tests.some(({ at }) => only.has(at)) || groups.some((inner) => isAsked(inner, only))
  );
}

async function failureIn(
  one: Group,
  asked: Asked,
  outerBefore: readonly Work[],
  outerAfter: readonly Work[],
): Promise<string | undefined> {
  const { only } = asked;
  if (!isAsked(one, only)) return undefined;
  const befores = [...outerBefore, ...one.beforeEach];
  const afters = [...one.afterEach, ...outerAfter];
  let failed: string | undefined;
  try {
    for (const work of one.before) await guarded(work);
    for (const test of one.tests) {
      if (only !== undefined && !only.has(test.at)) continue;
      if (asked.isEnough?.() === true) return failed;
      if (!(await passes(test, asked, befores, afters))) failed ??= test.title;
      if (failed !== undefined && asked.all !== true) return failed;
    }
    for (const inner of one.groups) {
      failed ??= await failureIn(inner, asked, befores, afters);
      if (failed !== undefined && asked.all !== true) return failed;
    }
  } catch (problem) {
    return failed ?? `set-up: ${String(problem)}`;
  } finally {
    for (const work of one.after) await guarded(work);
  }
  return failed;
}

async function passes(
  { at, work }: Test,
  { starts, ended }: Asked,
  befores: readonly Work[],
  afters: readonly Work[],
): Promise<boolean> {
  starts?.(at);
  const began = used();
  try {
    for (const first of befores) await guarded(first);
    await guarded(work);
    return true;
  } catch {
    return false;
  } finally {
    for (const last of afters) await guarded(last);
    ended?.(at, used() - began);
  }
}

function guarded(work: () => unknown, timeout = longest): unknown {
  Object.assign(globalThis, { ringbeadWork: work });
  try {
    return waited(RUN.runInThisContext({ timeout }));
  } catch (problem) {
    if ((problem as { readonly code?: unknown } | null)?.code === OUT_OF_TIME) ranOut = true;
    throw problem;
  }
}
const OUT_OF_TIME = "ERR_SCRIPT_EXECUTION_TIMEOUT";

/** Fails when nothing has been going on for long: what is waited for never comes. */
function waited(result: unknown): unknown {
  if (!(result instanceof Promise)) return result;
  return new Promise((resolve, reject) => {
    const before = performance.eventLoopUtilization();
    const watch = setInterval(() => {
      if (performance.eventLoopUtilization(before).idle < IDLE) return;
      clearInterval(watch);
      ranOut = true;
      reject(new Error("what it waits for never comes"));
    }, IDLE / 20);
    void result.then(resolve, reject).finally(() => {
      clearInterval(watch);
    });
  });
}
const IDLE = 5_000;
// A test may put its own in their place.
const { setInterval, clearInterval } = globalThis;
/** A test file brings a spreadsheet's engine along, which takes seconds to load where others work too, ms. */
const LOADING = 20_000;
const RUN = new vm.Script("globalThis.ringbeadWork()");

function rowsOf(table: readonly unknown[]): (readonly unknown[])[] {
  return table.map((row) => (Array.isArray(row) ? (row as readonly unknown[]) : [row]));
}
