/** The gas estimate: a list of joints priced in argon, on a page to bid with. */

import type { Units } from "../../../src/quantity";
import { behindThePage, cautions, checks, FROZEN_ROWS, head, mark, release } from "../frame";
import { jointList, linesOfList, LIST_TITLE } from "../joint-list";
import { Layout } from "../layout";
import type { SheetPlan, Template } from "../sheet";
import { bySize } from "./by-size";
import { BID, PAPERS, SUPPLY, WELDING } from "./inputs";
import { CHECKS, COST, LIST, TOTALS } from "./results";

const GRID = { blockColumns: 6, labelColumns: 3, columns: 14 };
const WIDTHS = [8, 10, 12, 11, 12, 9, 13, 11, 11, 10, 12, 14, 12, 36, 3, 20];
function plan(units: Units): SheetPlan {
  const form = new Layout(units, GRID);
  head(form, "Gas estimate: orbital TIG tube welds");
  form.section("Bid");
  form.blocks(BID, PAPERS);
  form.section("Shared by all joints: typed");
  form.blocks(WELDING, SUPPLY);
  form.section("Gas and cost");
  form.blocks(TOTALS, COST);
  const all = checks(form, CHECKS);
  form.section("By size and metal");
  const chart = bySize(form);
  cautions(form);
  release(form, ["Prepared", "Approved"]);
  mark(form, "gas", "gas estimate");
  form.section(LIST_TITLE);
  jointList(form, LIST);
  const lastRow = form.lastRow;
  linesOfList(form);
  behindThePage(form, all);

  return {
    template: "gas",
    title: "Gas estimate",
    units,
    widths: WIDTHS,
    cells: form.finished(),
    names: form.names,
    lists: form.lists,
    ranges: form.ranges,
    signs: form.signs,
    charts: [chart],
    frozenRows: FROZEN_ROWS,
    print: { area: `A1:N${String(lastRow)}`, paper: "list" },
  };
}

export const gas: Template = { id: "gas", title: "Gas estimate", plan };
