import { formulaById } from "../../../functions/catalogue";

/** A formula that there has to be. */
export function formulaOf(id: string): (...cells: unknown[]) => unknown {
  const formula = formulaById(id);
  if (formula === undefined) throw new Error(`no formula ${id}`);
  return formula;
}
