/** The engine's history in the browser sheet: a hundred steps come back, and older ones keep nothing. */

import { Model } from "@odoo/o-spreadsheet";

import { boundHistory } from "../../taskpane/hosts/browser/bounded-history";
import { command } from "../../taskpane/hosts/browser/commands";

const EDITS = 150;
/** Of the last 99 as many as do not take long: each step back is longer than the one before. */
const BACK = 25;

interface Revisions {
  readonly session: {
    on(event: string, owner: object, callback: (message: { readonly id: string }) => void): void;
    readonly revisions: { get(id: string): { readonly changes: readonly unknown[] } };
  };
}

function opened(): { model: Model; ids: string[]; changes: (id: string) => number } {
  boundHistory();
  const model = new Model({ version: "19.3.0", sheets: [{ id: "one", name: "One" }] });
  const { session } = model as unknown as Revisions;
  const ids: string[] = [];
  session.on("new-local-state-update", ids, ({ id }) => ids.push(id));
  return { model, ids, changes: (id) => session.revisions.get(id).changes.length };
}

function type(model: Model, content: string): void {
  command(model, "UPDATE_CELL", { sheetId: "one", col: 0, row: 0, content });
}

const shown = (model: Model): unknown =>
  model.getters.getEvaluatedCell({ sheetId: "one", col: 0, row: 0 }).value;

test("after 150 edits the last 99 keep their changes and those before them none; steps are undone and redone one by one", () => {
  const { model, ids, changes } = opened();
  for (let i = 1; i <= EDITS; i += 1) type(model, String(i));
  expect(ids).toHaveLength(EDITS);
  expect(ids.filter((id) => changes(id) > 0)).toHaveLength(99);
  for (let i = EDITS - 1; i >= EDITS - BACK; i -= 1) {
    command(model, "REQUEST_UNDO", {});
    expect(shown(model)).toBe(i);
  }
  for (let i = EDITS - BACK + 1; i <= EDITS; i += 1) {
    command(model, "REQUEST_REDO", {});
    expect(shown(model)).toBe(i);
  }
});

test("an edit undone at once never costs an older step that can still be undone", () => {
  const { model, ids, changes } = opened();
  for (let i = 1; i <= 98; i += 1) type(model, String(i));
  for (let i = 0; i < 10; i += 1) {
    type(model, `x${String(i)}`);
    command(model, "REQUEST_UNDO", {});
    expect(shown(model)).toBe(98);
  }
  // 98 on the engine's stack, whatever was typed and undone above it.
  expect(ids.slice(0, 98).filter((id) => changes(id) === 0)).toEqual([]);
  command(model, "REQUEST_UNDO", {});
  expect(shown(model)).toBe(97);
});
