/** Runs one test file in this process and stops at the first failure: just what is needed to ask "does a test notice?". */

import { expect } from "expect";
import { ModuleMocker } from "jest-mock";
import vm from "node:vm";

import type { Modules } from "./modules";

type Work = (...row: readonly unknown[]) => unknown;
interface Group {
  readonly before: Work[];
  readonly beforeEach: Work[];
  readonly after: Work[];
  readonly afterEach: Work[];
  readonly tests: { readonly title: string; readonly work: () => unknown }[];
  readonly groups: Group[];
}

/** A change can make a loop endless; the whole of a quick test file takes far less. */
const LONGEST = 20_000;

function group(): Group {
  return { before: [], beforeEach: [], after: [], afterEach: [], tests: [], groups: [] };
}

/** The title of the first test that fails, or undefined when all pass. */
export async function firstFailure(modules: Modules, file: string): Promise<string | undefined> {
  const whole = group();
  let current = whole;
  const describe = (_: string, body: () => void): void => {
    const outer = current;
    current = group();
    outer.groups.push(current);
    body();
    current = outer;
  };
  const test = (title: string, work: () => unknown): void => {
    current.tests.push({ title, work });
  };
  const mocker = new ModuleMocker(globalThis);
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
    },
  });
  try {
    guarded(() => modules.load(file));
    return await failureIn(whole, [], []);
  } catch (problem) {
    return `loading: ${problem instanceof Error ? problem.message : String(problem)}`;
  } finally {
    mocker.restoreAllMocks();
  }
}

async function failureIn(
  { before, beforeEach, after, afterEach, tests, groups }: Group,
  outerBefore: readonly Work[],
  outerAfter: readonly Work[],
): Promise<string | undefined> {
  const [befores, afters] = [
    [...outerBefore, ...beforeEach],
    [...afterEach, ...outerAfter],
  ];
  try {
    for (const work of before) await guarded(work);
    for (const { title, work } of tests) {
      try {
        for (const first of befores) await guarded(first);
        await guarded(work);
      } catch {
        return title;
      } finally {
        for (const last of afters) await guarded(last);
      }
    }
    for (const inner of groups) {
      const failure = await failureIn(inner, befores, afters);
      if (failure !== undefined) return failure;
    }
  } catch (problem) {
    return `set-up: ${String(problem)}`;
  } finally {
    for (const work of after) await guarded(work);
  }
  return undefined;
}

/** Ends work that does not end by itself, as far as it is synchronous. */
function guarded(work: () => unknown): unknown {
  Object.assign(globalThis, { ringbeadWork: work });
  return RUN.runInThisContext({ timeout: LONGEST });
}
const RUN = new vm.Script("globalThis.ringbeadWork()");

function rowsOf(table: readonly unknown[]): (readonly unknown[])[] {
  return table.map((row) => (Array.isArray(row) ? (row as readonly unknown[]) : [row]));
}
