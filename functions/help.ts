/** The help of every formula at once, for what is made of it; a running formula asks for one at a time. */

import type { Units } from "../src/quantity";
import { unitOf } from "../src/quantity";
import { families, FORMULAS } from "./catalogue";
import type { Formula } from "./formula";
import type { FormulaHelp } from "./help-text";
import { helpOf } from "./help-text";
import type { Rest } from "./standing";
import { restsOn } from "./standing";

/** A column of a table, with its unit in each system; "" where its heading says all. */
export interface ColumnHelp extends Readonly<Record<Units, string>> {
  readonly heading: string;
}

/** What only the pane and the pages tell, and no running formula. */
export interface FullHelp extends FormulaHelp {
  /** In front of the columns and behind them; "" and none for a single value. */
  readonly table: { readonly lead: string; readonly columns: readonly ColumnHelp[]; readonly more: string };
  readonly restsOn: readonly Rest[];
}

export const HELP: readonly FullHelp[] = families.flatMap((family) =>
  family.formulas.map((formula) => ({
    ...helpOf(formula, family),
    table: tableOf(formula),
    restsOn: restsOn(formula, FORMULAS),
  })),
);

function tableOf({ gives: { shape, columnKinds } }: Formula): FullHelp["table"] {
  const { lead = "", headings = [], more = "" } = shape ?? {};
  const columns = headings.map((words, i): ColumnHelp => {
    const heading = words.replace(/,$/, "");
    const kind = columnKinds[i];
    const [US, SI] = kind === undefined ? ["", ""] : [unitOf(kind, "US"), unitOf(kind, "SI")];
    // Some headings say their unit themselves.
    return heading.endsWith(` ${US}`) ? { heading, US: "", SI: "" } : { heading, US, SI };
  });
  return { lead, columns, more };
}
