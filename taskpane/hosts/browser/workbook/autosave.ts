/** Stores the open workbook soon after each change, and knows whether anything is not stored yet. */

import type { KeptWorkbook, WorkbookStore } from "./store";

/** A person's pause, and the longest that a change waits while there is none, ms. */
const PAUSE = 250;
const LONGEST_WAIT = 800;
/** After a failure, a full disk say, ms. */
const RETRY = 5_000;

export type StoringState =
  | { readonly state: "stored"; readonly at: number }
  | { readonly state: "waiting" }
  | { readonly state: "failed"; readonly reason: string };

export class Autosave {
  readonly #store: WorkbookStore | undefined;
  readonly #take: () => Omit<KeptWorkbook, "at">;
  readonly #tell: (state: StoringState) => void;
  #isChanged = false;
  #hasFailed = false;
  #firstChange = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #writing: Promise<void> = Promise.resolve();

  constructor(
    store: WorkbookStore | undefined,
    take: () => Omit<KeptWorkbook, "at">,
    tell: (state: StoringState) => void,
  ) {
    this.#store = store;
    this.#take = take;
    this.#tell = tell;
  }

  /** Whether closing the page now would lose something. */
  get isAtRisk(): boolean {
    return this.#isChanged;
  }

  changed(): void {
    if (!this.#isChanged) {
      this.#isChanged = true;
      this.#firstChange = Date.now();
      if (this.#store !== undefined) this.#tell({ state: "waiting" });
    }
    const waited = Date.now() - this.#firstChange;
    this.#wait(Math.max(0, Math.min(PAUSE, LONGEST_WAIT - waited)));
  }

  /** Whether the last attempt failed. */
  get hasFailed(): boolean {
    return this.#hasFailed;
  }

  /** Another workbook is open, which has not changed yet. */
  isAsStored(): void {
    clearTimeout(this.#timer);
    this.#isChanged = false;
  }

  /** All that was changed has gone into a file. */
  savedElsewhere(): void {
    if (this.#store === undefined) this.#isChanged = false;
  }

  /** Stores what has changed; resolves when the browser has it, or has refused it. */
  flush(): Promise<void> {
    clearTimeout(this.#timer);
    // One after the other: an older state must never arrive after a newer one.
    this.#writing = this.#writing.then(() => this.#write());
    return this.#writing;
  }

  async #write(): Promise<void> {
    if (!this.#isChanged) return;
    if (this.#store === undefined) {
      this.#hasFailed = true;
      this.#tell({ state: "failed", reason: "this browser keeps nothing for this page" });
      return;
    }
    this.#isChanged = false;
    const at = Date.now();
    try {
      await this.#store.write({ ...this.#take(), at });
      this.#hasFailed = false;
      // What was changed meanwhile waits for its own turn.
      if (!this.isAtRisk) this.#tell({ state: "stored", at });
    } catch (problem) {
      this.#isChanged = true;
      this.#hasFailed = true;
      this.#tell({ state: "failed", reason: problem instanceof Error ? problem.message : String(problem) });
      this.#wait(RETRY);
    }
  }

  #wait(milliseconds: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), milliseconds);
  }
}
