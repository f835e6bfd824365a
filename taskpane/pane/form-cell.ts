/** What the pane says of a cell of a ready sheet that holds no formula of ours: its own sentence, and what it reads. */

import type { Form } from "../sheets/convert";
import type { Note } from "../sheets/notes";
import { NOTES } from "../sheets/notes";
import { addressOf, placeOf } from "../sheets/addresses";
import type { SelectedCell } from "../hosts/host";

/** More would be no explanation. */
const MOST_READ = 8;

export interface FormCellWords {
  /** The sentence of the sheet's own, or "". */
  readonly note: string;
  /** What the cell is for, or "". */
  readonly kind: string;
  /** Cells that a native formula reads, with the label that each has on the sheet. */
  readonly reads: readonly { readonly at: string; readonly label: string }[];
}

export function formCellWords(cell: SelectedCell, form: Form): FormCellWords {
  const typed = new Set(
    form.template
      .plan(form.units)
      .names.filter(({ input }) => input)
      .flatMap(({ name }) => form.cells.get(name) ?? [])
      .map(({ at }) => at),
  );
  return {
    note: noteOf(cell.address, form)?.says ?? "",
    kind: typed.has(cell.address) ? "is for typing" : "",
    reads: readsOf(cell.formula, form),
  };
}

function noteOf(at: string, { template, cells }: Form): Note | undefined {
  const here = placeOf(at);
  return Object.entries(NOTES[template.id]).find(([name, { columns = 1, rows = 1 }]) => {
    const first = cells.get(name)?.[0];
    if (first === undefined) return false;
    const from = placeOf(first.at);
    const [column, row] = [here.column - from.column, here.row - from.row];
    return column >= 0 && column < columns && row >= 0 && row < rows;
  })?.[1];
}

function readsOf(formula: string, form: Form): FormCellWords["reads"] {
  const addresses =
    formula.replace(/"(?:[^"]|"")*"/g, "").match(/(?<![\w.$:])\$?[A-Z]{1,2}\$?\d+(?![\w:(])/g) ?? [];
  const labels = labelsOf(form);
  const seen = new Set<string>();
  return addresses.flatMap((address) => {
    const at = address.replaceAll("$", "");
    const label = labels.get(at);
    if (label === undefined || seen.has(at) || seen.size >= MOST_READ) return [];
    seen.add(at);
    return [{ at, label }];
  });
}

/** The label that stands left of each named cell in the plan, by where the cell is now. */
function labelsOf({ template, units, cells }: Form): Map<string, string> {
  const plan = template.plan(units);
  const labels = new Map(
    plan.cells.filter(({ look }) => look === "label").map(({ at, content }) => [at, String(content)]),
  );
  const found = new Map<string, string>();
  for (const { name, at: planned } of plan.names) {
    const now = cells.get(name)?.[0]?.at;
    const { column, row } = placeOf(planned.replace(/:.*$/, ""));
    const left = Array.from({ length: column }, (_, i) => addressOf({ column: column - 1 - i, row }));
    const label = left.map((one) => labels.get(one)).find((text) => text !== undefined);
    if (now !== undefined && label !== undefined && !label.startsWith("=")) found.set(now, label);
  }
  return found;
}

/** The note with what other columns of the cell's row show in place of their letters. */
export function columnsIn(note: string): string[] {
  return [...new Set([...note.matchAll(/\{([A-Z])\}/g)].map(([, letter = ""]) => letter))];
}
