/** The Excel host in a fake Excel. */

import { formulaById } from "../../functions/catalogue";
import { ExcelHost } from "../../taskpane/hosts/excel/excel-host";
import type { FakeExcel } from "./excel-fake";

/** A host that waits for nothing; how long it was asked to wait is written down. */
export function hostIn(excel: FakeExcel, waits: number[] = []): ExcelHost {
  const functions = new Map(
    ["STANDOFF", "STANDOFF_SPREAD", "FEELER_STACK", "VERSION", "CREW_HEADS", "REASON"].map((id) => [
      id,
      called(id),
    ]),
  );
  const pause = (milliseconds: number): Promise<void> => {
    waits.push(milliseconds);
    return Promise.resolve();
  };
  return new ExcelHost({ namespace: excel.namespace, functions, pause });
}

function called(id: string): (...cells: unknown[]) => unknown {
  const formula = formulaById(id);
  if (formula === undefined) throw new Error(`no formula ${id}`);
  return formula;
}

/** The sentence a failure is told in. */
export async function failure(work: Promise<unknown>): Promise<string> {
  try {
    await work;
  } catch (problem) {
    return (problem as Error).message;
  }
  return "no failure";
}
