/** What the size table sums up of its rows, and what its checks look for. */

import { CURRENT, HEAT_INPUT } from "../../../src/quantity";
import { call, refusal } from "../call";
import type { Check } from "../frame";
import { firstOf, unless } from "../frame";
import type { Row } from "../layout";

/** The list from its header to the line that ends it, and what all of its lines share. */
const LIST = { sizes: "{list}", style: "{style?}", efficiency: "{efficiency?}" } as const;

export const FORMULA = `=${call("SIZE_TABLE", LIST)}`;

/** A remark beside a size that has its numbers. A file keeps an empty answer as a space that no line breaks at. */
const REMARKED = 'SUMPRODUCT(ISNUMBER({list_rotor})*(LEN(SUBSTITUTE({list_remark},"\u00a0",""))>0))';

function largest(of: string): string {
  return `=IF({lines_done}=0,"",MAX({list_${of}}))`;
}

export const SUMS: Row[] = [
  {
    label: "Sizes with a schedule",
    name: "sizes",
    content: '={lines_done}&" of "&{lines_typed}',
    look: "text",
  },
  {
    label: "Sizes with a remark",
    name: "remarked",
    content: `=${REMARKED}`,
    look: "result",
    unit: "",
    format: "0",
    columns: 1,
  },
];

export const LARGEST: Row[] = [
  {
    label: "Largest mean current",
    name: "largest_mean",
    content: largest("means"),
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Largest heat input",
    name: "largest_heat",
    content: largest("heat_input"),
    look: "result",
    quantity: HEAT_INPUT,
  },
];

export const CHECKS: readonly Check[] = [
  {
    label: "Size list",
    name: "check_list",
    problem: firstOf(
      unless("{lines_typed}>0", "no sizes to work out"),
      refusal("SIZE_TABLE", LIST),
      unless(
        "ISTEXT({size_table})",
        "no table: a cell that the list's formula fills is not empty, or the formula was deleted",
      ),
      unless(
        "SUMPRODUCT(LEN({list_below}))=0",
        "something is typed below the end of the list: insert rows above the end and move it there",
      ),
      unless(
        "{lines_done}={lines_typed}",
        '=({lines_typed}-{lines_done})&" of "&{lines_typed}&" sizes without a schedule; the remark beside each says why"',
      ),
    ),
  },
  {
    label: "Remarks",
    name: "check_remarks",
    problem: unless(
      "{remarked}=0",
      '={remarked}&" of "&{lines_done}&" sizes with a remark: read it before the size is welded"',
    ),
  },
  {
    label: "Numbers",
    name: "check_numbers",
    problem: unless(
      `COUNT({list_filled})=({lines_done})*IF({style}="steady",16,20)`,
      "a size has a number missing",
    ),
  },
];
