/**
 * The workbooks of this page: which one is open, what is stored of it, and how another takes its place. Nothing that was
 * stored is written over by anything but a later state of the same workbook, in the one tab that has it.
 */

import type { BrowserHost } from "../browser-host";
import type { StoringState } from "./autosave";
import { Autosave } from "./autosave";
import { onWorkbookChange } from "./changes";
import type { Grid } from "./grid";
import { HeldWorkbook, workbookOfTab } from "./held";
import type { KeptWorkbook, WorkbookData, WorkbookStore } from "./store";

const FIRST_NAME = "Workbook";

/** How the open workbook came here. */
export type Origin =
  | { readonly how: "fresh" }
  | { readonly how: "restored"; readonly at: number }
  | { readonly how: "elsewhere"; readonly name: string }
  | { readonly how: "file"; readonly remark: string };

export interface Watcher {
  opened(name: string, origin: Origin): void;
  storing(state: StoringState): void;
  /** Asks a person whether a workbook that could not be stored may go. */
  mayLose(name: string): boolean;
}

export class Workbooks {
  readonly #grid: Grid;
  readonly #host: BrowserHost;
  readonly #store: WorkbookStore | undefined;
  readonly #fresh: () => Promise<WorkbookData>;
  readonly #watcher: Watcher;
  readonly #held = new HeldWorkbook();
  readonly #autosave: Autosave;
  #name = FIRST_NAME;
  #isOpening = false;

  constructor(
    grid: Grid,
    host: BrowserHost,
    store: WorkbookStore | undefined,
    fresh: () => Promise<WorkbookData>,
    watcher: Watcher,
  ) {
    this.#grid = grid;
    this.#host = host;
    this.#store = store;
    this.#fresh = fresh;
    this.#watcher = watcher;
    const take = (): Omit<KeptWorkbook, "at"> => ({ name: this.#name, data: grid.model.exportData() });
    this.#autosave = new Autosave(store, take, (state) => {
      watcher.storing(state);
    });
    onWorkbookChange((of) => {
      if (!this.#isOpening && grid.shows(of)) this.#autosave.changed();
    });
    grid.onLoss(
      () =>
        void grid.show(grid.model.exportData()).then((model) => {
          host.attend(model);
        }),
    );
  }

  get name(): string {
    return this.#name;
  }

  get isAtRisk(): boolean {
    return this.#autosave.isAtRisk;
  }

  /** The workbook this tab had, or else the latest one; a fresh one where there is none or other tabs have it. */
  async start(): Promise<void> {
    const kept = (await this.#store?.list()) ?? [];
    const mine = kept.find(({ name }) => name === workbookOfTab());
    const wanted = mine ?? kept[0];
    if (wanted === undefined) {
      await this.startAfresh();
    } else if (!(await this.#openKept(wanted.name))) {
      await this.#openFresh({ how: "elsewhere", name: wanted.name });
    }
  }

  list(): Promise<Pick<KeptWorkbook, "name" | "at">[]> {
    return this.#store?.list() ?? Promise.resolve([]);
  }

  startAfresh(): Promise<void> {
    return this.#openFresh({ how: "fresh" });
  }

  /** A kept workbook; a copy of it under another name where another tab has it. */
  async open(name: string): Promise<void> {
    if (await this.#openKept(name)) return;
    const kept = await this.#store?.read(name);
    if (kept === undefined) throw new Error(`“${name}” is no longer stored`);
    await this.#openAs(name, kept.data, { how: "elsewhere", name });
    this.#autosave.changed();
  }

  /** What was read from a file, under a name of its own. */
  async openFile(name: string, data: WorkbookData, remark: string): Promise<void> {
    await this.#openAs(name, data, { how: "file", remark });
    this.#autosave.changed();
  }

  async rename(to: string): Promise<void> {
    const wanted = to.trim();
    if (wanted === "" || wanted === this.#name) return;
    await this.#autosave.flush();
    const name = await this.#takeFree(wanted);
    await this.#store?.rename(this.#name, name);
    this.#name = name;
    this.#autosave.changed();
  }

  async forget(name: string): Promise<void> {
    await this.#store?.forget(name);
  }

  /** Forgets all that is stored, the open workbook too: it stays on the page until that is closed or changed. */
  async forgetAll(): Promise<void> {
    await this.#autosave.flush();
    await this.#store?.forgetAll();
  }

  flush(): Promise<void> {
    return this.#autosave.flush();
  }

  savedToFile(): void {
    this.#autosave.savedElsewhere();
  }

  async #openKept(name: string): Promise<boolean> {
    if (!(await this.#held.take(name))) return false;
    const kept = await this.#store?.read(name);
    if (kept === undefined) return false;
    await this.#show(name, kept.data);
    this.#watcher.opened(name, { how: "restored", at: kept.at });
    return true;
  }

  async #openFresh(origin: Origin): Promise<void> {
    await this.#openAs(FIRST_NAME, await this.#fresh(), origin);
  }

  async #openAs(wanted: string, data: WorkbookData, origin: Origin): Promise<void> {
    await this.#show(await this.#takeFree(wanted), data);
    this.#watcher.opened(this.#name, origin);
  }

  /** The first of "Name", "Name 2", "Name 3" … that is not stored and that no other tab has. */
  async #takeFree(wanted: string): Promise<string> {
    const taken = new Set((await this.list()).map(({ name }) => name));
    for (let serial = 1; ; serial += 1) {
      const name = serial === 1 ? wanted : `${wanted} ${String(serial)}`;
      if (!taken.has(name) && (await this.#held.take(name))) return name;
    }
  }

  /** The old workbook is stored first, and the name changes with the workbook: neither is ever stored as the other. */
  async #show(name: string, data: WorkbookData): Promise<void> {
    while (this.#store !== undefined && this.#autosave.isAtRisk && !this.#autosave.hasFailed) {
      await this.#autosave.flush();
    }
    if (this.#autosave.isAtRisk && !this.#watcher.mayLose(this.#name))
      throw new Error("the open workbook stays");
    this.#isOpening = true;
    this.#name = name;
    try {
      this.#host.attend(await this.#grid.show(data));
      this.#autosave.isAsStored();
    } finally {
      this.#isOpening = false;
    }
  }
}
