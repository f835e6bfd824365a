/** Which workbook this tab has. No two tabs have the same one, so neither can write over the other's work. */

const PREFIX = "ringbead workbook ";
/** Survives a reload of the tab, and is no other tab's. */
const TAB = "ringbead workbook of this tab";

export class HeldWorkbook {
  #letGo: (() => void) | undefined;

  /** Takes it if no other tab has it. Where the browser knows no locks, it is always taken. */
  async take(name: string): Promise<boolean> {
    const locks = (navigator as { locks?: LockManager }).locks;
    const taken = locks === undefined ? () => undefined : await lock(locks, PREFIX + name);
    if (taken === undefined) return false;
    this.#letGo?.();
    this.#letGo = taken;
    remember(name);
    return true;
  }
}

/** What lets go of the lock again, or undefined where another tab has it. */
function lock(locks: LockManager, name: string): Promise<(() => void) | undefined> {
  return new Promise((tell) => {
    void locks.request(name, { ifAvailable: true }, (granted) => {
      if (granted === null) {
        tell(undefined);
        return undefined;
      }
      return new Promise<void>((letGo) => {
        tell(letGo);
      });
    });
  });
}

export function workbookOfTab(): string | undefined {
  try {
    return sessionStorage.getItem(TAB) ?? undefined;
  } catch {
    return undefined;
  }
}

function remember(name: string): void {
  try {
    sessionStorage.setItem(TAB, name);
  } catch {
    // A browser that keeps nothing for the page: the next load starts afresh.
  }
}
