/** What the checks of a bid look for. */

import { refusal } from "../call";
import type { Check } from "../frame";
import { firstOf, spilledOver, unless } from "../frame";
import { quote } from "../guards";
import { listProblem } from "../joint-list";
import { CYLINDER, LIQUID, LIST, STARTED, TESTED } from "./results";

export const CHECKS: readonly Check[] = [
  { label: "Joint list", name: "check_list", problem: listProblem(LIST) },
  {
    label: "Purge of the list",
    name: "check_purge",
    problem: refusal("PURGE_CHANGES", { ppm: "{target_ppm?}", supplyPpm: "{supply_ppm?}" }),
  },
  {
    label: "Joints to start, coupons",
    name: "check_tests",
    problem: firstOf(
      `IF(COUNT({joints})=0,"",${refusal("JOINTS_START", STARTED)})`,
      refusal("COUPONS", TESTED),
      unless("{coupon_every}<={period_hours}", "a coupon is due less often than once a working period"),
    ),
  },
  {
    label: "Supply",
    name: "check_supply",
    problem: firstOf(
      `IF({supply}="liquid",${refusal("GAS_LIQUID", LIQUID)},IF({supply}="water volume",${refusal("GAS_CYLINDER", CYLINDER)},""))`,
      unless("SUM({usable})>0", "a container gives no usable gas"),
    ),
  },
  {
    label: "Margin",
    name: "check_margin",
    problem: unless("SUM({margin_on_price})>=0", "the price is below the cost"),
  },
  {
    label: "Totals",
    name: "check_totals",
    problem: firstOf(
      `IF(ISERROR({by_size}),${quote(spilledOver("the table by size"))},"")`,
      unless(
        "COUNT({joints},{start},{hours},{electrodes},{containers},{cost},{price})=7",
        "a total, a cost or the price is missing",
      ),
      unless(
        "AND(ABS(SUM({size_gas})-{total_gas})<=1E-9*{total_gas},ABS(SUM({size_hours})-{total_hours})<=1E-9*{total_hours})",
        "the table by size does not add up to the totals: a cell that its formula fills is not empty, or was typed over",
      ),
      unless("COUNT({worths_left},{worths_right})={worths_planned}", "the worth of an assumption is missing"),
    ),
  },
];
