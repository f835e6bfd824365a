/** The workbooks kept in this browser, by name. They never leave this computer. */

import type { DBSchema, IDBPDatabase } from "idb";
import { openDB } from "idb";

/** A workbook as the engine exports it and takes it back. */
export type WorkbookData = object;

export interface KeptWorkbook {
  readonly name: string;
  /** When it was stored, milliseconds of the clock. */
  readonly at: number;
  readonly data: WorkbookData;
}

interface Schema extends DBSchema {
  readonly workbooks: { readonly key: string; readonly value: KeptWorkbook };
}

export class WorkbookStore {
  readonly #database: IDBPDatabase<Schema>;

  private constructor(database: IDBPDatabase<Schema>) {
    this.#database = database;
  }

  /** Undefined where the browser keeps nothing for this page. */
  static async open(): Promise<WorkbookStore | undefined> {
    try {
      const database = await openDB<Schema>("ringbead", 1, {
        upgrade: (fresh) => void fresh.createObjectStore("workbooks", { keyPath: "name" }),
      });
      return new WorkbookStore(database);
    } catch {
      return undefined;
    }
  }

  /** Names and times, the latest first. */
  async list(): Promise<Pick<KeptWorkbook, "name" | "at">[]> {
    const all = await this.#database.getAll("workbooks");
    return all.map(({ name, at }) => ({ name, at })).sort((a, b) => b.at - a.at);
  }

  read(name: string): Promise<KeptWorkbook | undefined> {
    return this.#database.get("workbooks", name);
  }

  /** All of it or nothing: a page that is closed meanwhile leaves what was stored before. */
  async write(workbook: KeptWorkbook): Promise<void> {
    await this.#database.put("workbooks", workbook);
  }

  async rename(from: string, to: string): Promise<void> {
    const change = this.#database.transaction("workbooks", "readwrite");
    const workbook = await change.store.get(from);
    if (workbook !== undefined) {
      await change.store.put({ ...workbook, name: to });
      await change.store.delete(from);
    }
    await change.done;
  }

  async forget(name: string): Promise<void> {
    await this.#database.delete("workbooks", name);
  }

  async forgetAll(): Promise<void> {
    await this.#database.clear("workbooks");
  }
}
