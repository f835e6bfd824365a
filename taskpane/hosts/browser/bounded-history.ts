/**
 * Forgets what an edit changed once it can no longer be undone. The engine takes back its last 99 steps and keeps the
 * changes of every step for as long as the page is open.
 */

import { registries, UIPlugin } from "@odoo/o-spreadsheet";

const NAME = "ringbead bounded history";
/** As many steps as the engine's own stack holds. */
const STEPS = 99;

/** What is read of the engine's session, whose type keeps it private. */
interface Kept {
  readonly revisions: {
    get(id: string): { setChanges(changes: readonly never[]): void };
  };
}

type Config = ConstructorParameters<typeof UIPlugin>[0];

/** Holds the same stacks as the engine: only what falls off the bottom of them is beyond undoing. */
class BoundedHistory extends UIPlugin {
  readonly #kept: Kept;
  readonly #undo: string[] = [];
  #redo: string[] = [];

  constructor(config: Config) {
    super(config);
    this.#kept = config.session as unknown as Kept;
    config.session.on("new-local-state-update", this, ({ id }: { readonly id: string }) => {
      this.#undo.push(id);
      this.#redo = [];
      const oldest = this.#undo.length > STEPS ? this.#undo.shift() : undefined;
      if (oldest !== undefined) this.#kept.revisions.get(oldest).setChanges([]);
    });
    config.session.on("snapshot", this, () => {
      this.#undo.length = 0;
      this.#redo = [];
    });
  }

  override beforeHandle({ type }: { readonly type: string }): void {
    if (type === "REQUEST_UNDO") move(this.#undo, this.#redo);
    // With nothing to redo the engine does the last command again, which is a new step.
    else if (type === "REQUEST_REDO") move(this.#redo, this.#undo);
  }
}

function move(from: string[], to: string[]): void {
  const id = from.pop();
  if (id !== undefined) to.push(id);
}

/** Before a model is made: it takes its plugins then. */
export function boundHistory(): void {
  const { featurePluginRegistry } = registries;
  if (!featurePluginRegistry.contains(NAME)) featurePluginRegistry.add(NAME, BoundedHistory);
}
