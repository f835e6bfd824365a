/** The table of formulas in README.md; the rest of that page is written by hand. */

import { families } from "../../functions/catalogue";
import type { Family } from "../../functions/formula";
import { code } from "./words";

const HEAD = "| family | formulas |\n|---|---|\n";
/** The head of the table and all its rows. */
const TABLE = /^\| family \| formulas \|\n\|(?:-+\|)+\n(?:\|.*\n)*/m;

/** The page with the table of all formulas, family by family, in place of the one that it has. */
export function readmePage(page: string, of: readonly Family[] = families): string {
  if (!TABLE.test(page)) throw new Error("README.md has no table of formulas");
  const rows = of.map(
    ({ title, formulas }) => `| ${title} | ${formulas.map(({ id }) => code(id)).join(" ")} |\n`,
  );
  return page.replace(TABLE, () => HEAD + rows.join(""));
}
