/**
 * Which tests are asked about a change, and in what order. Measured once on sources that are right: what each test takes,
 * and which changes lie in code that it runs.
 */

import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { root } from "../../build/project";
import { roomOf } from "../../docs/mutation";
import { CALLED } from "./edit";
import { Modules } from "./modules";
import { firstFailure, used } from "./test-run";

/** Tests that ask about the whole at length are not asked here: others must notice. */
const NOT_ASKED =
  /host-model|bounded-work|any-cells|typed-matrix\.test|typed-cells|\/tools\/|\/types\/|\/office\/|\/browser\//;
const HOST = path.join(root, "test/custom-functions-host.ts");
const KEPT = path.join(root, ".cache", "mutation", "times.json");
/** So many times as long as tests are asked, a file of them is timed. */
const TIMED = 5;
/** Stands for what a file runs outside its tests: every one of them may depend on it. */
const OUTSIDE = "outside";

/** What each test of a file takes, by its number, and what loading the file takes, ms. */
interface Times {
  readonly loading: number;
  readonly tests: readonly number[];
  /** They were timed as long as this, ms: those that come later are not asked. */
  readonly within: number;
}
export interface Run {
  readonly test: string;
  readonly only: readonly number[];
  /** On the sources as they are, ms. */
  readonly takes: number;
}
interface One {
  readonly test: string;
  readonly at: number;
  readonly ms: number;
  readonly rank: number;
}

export class Plan {
  readonly #modules = new Modules(root);
  readonly #times = new Map<string, Times>();
  /** By change: which tests run it. */
  #reaching = new Map<number, Set<string>>();
  /** By file of the sources: the tests that noticed a change there, the last first. */
  readonly #noticed = new Map<string, string[]>();

  /** Asks no more than `longest` of tests about a change, and no test that takes longer by itself, ms. */
  constructor(readonly longest: number) {}

  /** Times every test that reaches one of the files; one that fails on right sources can notice nothing. */
  async measure(files: readonly string[]): Promise<void> {
    const wanted = files.map((file) => ({ place: path.join(root, file), tests: roomOf(file).tests }));
    const kept = existsSync(KEPT) ? (JSON.parse(readFileSync(KEPT, "utf8")) as Record<string, Times>) : {};
    for (const test of filesIn("test", ".test.ts").filter((file) => !NOT_ASKED.test(file))) {
      const reached = this.#modules.reachedBy(path.join(root, test));
      const about = wanted.filter(({ tests }) => tests.some((folder) => test.startsWith(folder)));
      if (!about.some(({ place }) => reached.has(place))) continue;
      const text = readFileSync(path.join(root, test), "utf8");
      const key = `${test} ${String(text.length)}`;
      const known = kept[key];
      const isLongEnough = known !== undefined && known.within >= TIMED * this.longest;
      const times = isLongEnough ? known : await this.#timed(test);
      if (times === undefined) continue;
      this.#times.set(test, times);
      if (isLongEnough) continue;
      kept[key] = times;
      mkdirSync(path.dirname(KEPT), { recursive: true });
      writeFileSync(KEPT, JSON.stringify(kept));
    }
  }

  async #timed(test: string): Promise<Times | undefined> {
    this.#modules.reset();
    const began = used();
    this.#modules.load(HOST);
    let loading = 0;
    const tests: number[] = [];
    const within = TIMED * this.longest;
    const failure = await firstFailure(this.#modules, path.join(root, test), {
      starts: () => {
        if (loading === 0) loading = used() - began;
      },
      ended: (at, ms) => {
        tests[at] = ms;
      },
      isEnough: () => used() - began > within,
    });
    // Those that were not timed are too long to be asked.
    if (failure === undefined)
      return { loading, tests: Array.from(tests, (ms: number | undefined) => ms ?? within), within };
    console.log(`not asked, since it fails here: ${test}: ${failure.title}`);
    return undefined;
  }

  /** Runs the tests once on sources that tell which change they reach: `telling` by file, the changes numbered. */
  async trace(telling: ReadonlyMap<string, string>, tracer: Tracer): Promise<void> {
    this.#reaching = new Map();
    for (const [file, text] of telling) this.#modules.change(path.join(root, file), text);
    for (const [test, { tests }] of this.#times) {
      const only = new Set([...tests.keys()].filter((at) => (tests[at] ?? 0) < this.longest));
      if (only.size === 0) continue;
      this.#modules.reset();
      tracer.begin(`${test}\t${OUTSIDE}`);
      this.#modules.load(HOST);
      await firstFailure(this.#modules, path.join(root, test), {
        only,
        all: true,
        starts: (at) => {
          tracer.begin(`${test}\t${String(at)}`);
        },
        ended: () => {
          tracer.begin(`${test}\t${OUTSIDE}`);
        },
      });
    }
    for (const file of telling.keys()) this.#modules.change(path.join(root, file), undefined);
    for (const [one, ids] of tracer.reached())
      for (const id of ids) this.#reaching.set(id, (this.#reaching.get(id) ?? new Set()).add(one));
  }

  /** The tests to ask about a change in a file: those that run it, near and quick ones first. */
  runs(file: string, id: number): { readonly runs: Run[]; readonly all: boolean } {
    const reaching = this.#reaching.get(id) ?? new Set();
    const last = this.#noticed.get(file) ?? [];
    const ones = [...this.#times]
      .filter(([test]) => roomOf(file).tests.some((folder) => test.startsWith(folder)))
      .flatMap(([test, { tests, loading }]) =>
        tests.flatMap((ms, at): One[] =>
          ms < this.longest && (reaching.has(`${test}\t${OUTSIDE}`) || reaching.has(`${test}\t${String(at)}`))
            ? [{ test, at, ms, rank: rank(file, test, ms + loading / 3, last) }]
            : [],
        ),
      )
      .sort((a, b) => a.rank - b.rank);
    let sum = 0;
    const loaded = new Set<string>();
    const chosen = ones.filter(({ test, ms }) => {
      const takes = ms + (loaded.has(test) ? 0 : (this.#times.get(test)?.loading ?? 0));
      if (sum + takes > this.longest) return false;
      loaded.add(test);
      sum += takes;
      return true;
    });
    const byFile = new Map<string, One[]>();
    for (const one of chosen) byFile.set(one.test, [...(byFile.get(one.test) ?? []), one]);
    return {
      all: chosen.length === ones.length,
      runs: [...byFile].map(([test, of]) => ({
        test,
        only: of.map(({ at }) => at),
        takes: (this.#times.get(test)?.loading ?? 0) + of.reduce((so, { ms }) => so + ms, 0),
      })),
    };
  }

  noticed(file: string, test: string): void {
    const others = (this.#noticed.get(file) ?? []).filter((one) => one !== test);
    this.#noticed.set(file, [test, ...others].slice(0, 3));
  }
}

/** A word of a path that says what a test is about. */
const SHORTEST_WORD = 3;
const EXAMPLES = "examples";
const WALKS_RECORDS = /examples|help|words|limits|refusals/;

/** The lower, the sooner it is asked. */
function rank(file: string, test: string, ms: number, last: readonly string[]): number {
  const [room, name] = [path.dirname(file), path.basename(file, ".ts")];
  const place = last.indexOf(test);
  const words = [roomOf(file).folder === room ? "" : path.basename(room), ...name.split("-")];
  // What a record says is held by the tests that walk all records, its example by that of the examples.
  if (room.startsWith("functions") && WALKS_RECORDS.test(test)) words.push(path.basename(test));
  const isAkin = words.some((word) => word.length >= SHORTEST_WORD && test.includes(word));
  const isAbout =
    test.includes(`${room}/${name}.`) || (room.startsWith("functions") && test.includes(EXAMPLES));
  const near = isAbout ? 0.05 : isAkin ? 0.2 : 1;
  return (ms + 5) * (place === 0 ? 0.05 : place > 0 ? 0.2 : 1) * near;
}

/** What telling sources call: keeps which changes were reached since when. */
export class Tracer {
  readonly #reached = new Map<string, Set<number>>();
  readonly #since: Uint32Array;
  #now = new Set<number>();
  #turn = 0;

  constructor(changes: number) {
    this.#since = new Uint32Array(changes);
    Object.assign(globalThis, { [CALLED]: this.#reach.bind(this) });
  }

  begin(one: string): void {
    this.#turn++;
    this.#now = this.#reached.get(one) ?? new Set();
    this.#reached.set(one, this.#now);
  }

  // Called in the innermost loops.
  #reach(...ids: readonly number[]): void {
    for (const id of ids) {
      if (this.#since[id] === this.#turn) continue;
      this.#since[id] = this.#turn;
      this.#now.add(id);
    }
  }

  reached(): ReadonlyMap<string, ReadonlySet<number>> {
    return this.#reached;
  }
}

export function filesIn(folder: string, ending: string): string[] {
  return readdirSync(path.join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
    .sort();
}
