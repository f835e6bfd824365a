/**
 * Many commands as one: the engine computes once when all are carried out, and one press of Undo takes all of them back.
 * Inside the step nothing is computed yet, so it may read cells but no values.
 */

import type { Model } from "@odoo/o-spreadsheet";
import { registries, UIPlugin } from "@odoo/o-spreadsheet";

import { command } from "./commands";

const STEP = "RINGBEAD_STEP";
const NAME = "ringbead one step";

/** An undo or redo is carried out: what it repeats was allowed when it was done. */
let isRepeating = false;

class OneStep extends UIPlugin {
  override beforeHandle(given: { readonly type: string }): void {
    if (REPEATS.test(given.type)) isRepeating = true;
  }

  override handle(given: { readonly type: string }): void {
    if (isStep(given)) given.work();
    // The engine's own plugins, which undo and redo, have their turn before.
    if (REPEATS.test(given.type)) isRepeating = false;
  }
}

const REPEATS = /^REQUEST_(?:UN|RE)DO$/;

function isStep(given: object): given is { readonly work: () => void } {
  return "type" in given && given.type === STEP && "work" in given && typeof given.work === "function";
}

/** Before a model is made: it takes its plugins then. */
export function offerSteps(): void {
  const { featurePluginRegistry } = registries;
  if (!featurePluginRegistry.contains(NAME)) featurePluginRegistry.add(NAME, OneStep);
}

let depth = 0;

/** Whether what is being commanded is the work of a step, or repeats what was done: a person's new changes are neither. */
export function isOursToDo(): boolean {
  return depth > 0 || isRepeating;
}

/** Carries out what `work` commands, all of it or nothing. */
export function inOneStep(model: Model, work: () => void): void {
  let failure: Error | undefined;
  command(model, STEP, {
    work: () => {
      depth += 1;
      try {
        work();
      } catch (problem) {
        // Thrown any further it would leave the engine in the middle of a command.
        failure = problem instanceof Error ? problem : new Error("the sheet refused", { cause: problem });
      } finally {
        depth -= 1;
      }
    },
  });
  if (failure === undefined) return;
  command(model, "REQUEST_UNDO", {});
  throw failure;
}
