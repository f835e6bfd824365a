/** The page for the customer: job, scope, sizes, price, what is not included, validity, signatures. Nothing of the inside. */

import { ALL_HOLD } from "../frame";
import type { Layout } from "../layout";
import { address } from "../layout";
import { SIGNS } from "../sheet";
import { sizesForCustomer } from "./sizes";

/** Columns of the page: it is upright, and as wide as the left half of the list. */
export const CUSTOMER_COLUMNS = 8;
/** Where the page says that it is no bid yet. */
export const DRAFT = "draft";
const LABELS = 2;
const VALUE = { columns: CUSTOMER_COLUMNS - LABELS };

const HEAD = [
  ["Bid by", "bidder"],
  ["Bid to", "customer"],
  ["Job", "job"],
  ["Drawing, revision", "drawing"],
  ["Bid number, date", "bid_number"],
] as const;

/** Gives the corner cells of what prints. `sizes`: the first row of the table by size. */
export function customerPage(form: Layout, sizes: number): string {
  const top = form.nextRow;
  form.cell(0, "Bid: orbital TIG welds of tube", "title", { columns: CUSTOMER_COLUMNS });
  form.nextLine();
  // From the checks and not from their summary, which watches this cell.
  form.cell(
    0,
    `=IF(${ALL_HOLD},"","${SIGNS.attention}Draft, not for the customer: a check on the working page is open")`,
    "verdict",
    { columns: CUSTOMER_COLUMNS },
  );
  form.signs.push(address(0, form.nextRow));
  form.name(DRAFT, 0);
  form.nextLine();
  for (const [label, name] of HEAD) line(form, label, `={${name}}&""`);
  heading(form, "Scope");
  for (const name of ["scope_one", "scope_two", "scope_three"]) line(form, "", `={${name}}&""`);
  heading(form, "Joints");
  sizesForCustomer(form, sizes);
  const hours = (formula: string): string => `=IF(AND(COUNT({price})=1,{show_hours}="yes"),${formula},"")`;
  form.cell(1, '=IF({show_hours}="yes","Set-up and tests","")', "label", { columns: 3 });
  form.cell(5, hours("{hours}-{joint_hours}"), "result", { format: "0.0" });
  form.nextLine();
  form.cell(1, "All", "label", { columns: 3 });
  form.cell(4, '=IF(COUNT({price})=1,{joints},"")', "result", { format: "0" });
  form.cell(5, hours("{hours}"), "result", { format: "0.0" });
  form.nextLine();
  heading(form, "Price");
  form.cell(0, "Price", "label", { columns: LABELS });
  form.cell(LABELS, '=IF(COUNT({price})=1,{price},"")', "title", { columns: 2, format: "#,##0" });
  form.name("customer_price", LABELS);
  form.cell(LABELS + 2, '={currency}&""', "label", { columns: CUSTOMER_COLUMNS - LABELS - 2 });
  form.nextLine();
  heading(form, "Not included");
  for (const name of ["excluded_one", "excluded_two", "excluded_three"]) line(form, "", `={${name}}&""`);
  heading(form, "Validity and signatures");
  line(form, "Valid", '={validity}&""');
  for (const role of ["For the bidder", "Accepted"]) {
    form.cell(0, role, "label", { columns: LABELS });
    form.cell(LABELS, "", "line", { columns: 3 });
    form.cell(LABELS + 3, "Date", "label");
    form.cell(LABELS + 4, "", "line", { columns: 2 });
    form.nextLine();
  }
  return `${address(0, top)}:${address(CUSTOMER_COLUMNS - 1, form.lastRow)}`;
}

function heading(form: Layout, title: string): void {
  form.cell(0, title, "heading", { columns: CUSTOMER_COLUMNS });
  form.nextLine();
}

function line(form: Layout, label: string, content: string): void {
  form.cell(0, label, "label", { columns: LABELS });
  form.cell(LABELS, content, "label", VALUE);
  form.nextLine();
}
