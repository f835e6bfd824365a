/**
 * The schedule behind a sheet: one formula gives every starting value of the tube, and the page looks them up by their
 * labels. The page itself holds no physics.
 */

import { call, refusal } from "./call";
import type { Cells } from "./call";
import { spilledOver } from "./frame";
import { quote } from "./guards";
import type { Layout } from "./layout";
import { address } from "./layout";

/** More rows than a schedule has: what a sheet keeps free for it. */
const ROWS = 64;

/** The last row of every schedule, which every sheet says elsewhere. */
const CLOSING = "Starting values. Prove on a test coupon; the qualified procedure governs.";
/** How many remarks a schedule may have at most, between its last value and its last row. */
const MOST_REMARKS = 3;
const LAST_VALUE = "Bore";

/** Values of the schedule by its label; "" while there is none. */
export function scheduled(label: string): string {
  return `IFERROR(INDEX({schedule_values},MATCH("${label}",{schedule_labels},0)),"")`;
}

export class ScheduleTable {
  constructor(readonly cells: Cells<"SCHEDULE">) {}

  /** The sentence with which the schedule refuses the tube; "" where it answers. */
  get refusal(): string {
    return refusal("SCHEDULE", this.cells);
  }

  /** A sentence where the schedule answers but cannot be shown. */
  get blocked(): string {
    return `IF(ISERROR({schedule}),${quote(spilledOver("the schedule behind the page"))},"")`;
  }

  /** Where the schedule is less sure than elsewhere; "" where it has no remark. */
  get remarks(): string {
    const rows = Array.from(
      { length: MOST_REMARKS },
      (_, i) => `INDEX({schedule_labels},MATCH("${LAST_VALUE}",{schedule_labels},0)+${String(i + 1)})`,
    );
    return `TRIM(SUBSTITUTE(${rows.join('&" "&')},${quote(CLOSING)},""))`;
  }

  /** Writes the table behind the page. */
  place(form: Layout): void {
    form.cell(0, "Schedule", "heading");
    form.nextLine();
    const top = form.nextRow;
    form.name("schedule", 0);
    form.guardComputed("Schedule", "schedule");
    form.cell(0, `=${call("SCHEDULE", this.cells)}`, "note");
    form.range("schedule_labels", address(0, top), address(0, top + ROWS - 1));
    form.range("schedule_values", address(1, top), address(1, top + ROWS - 1));
    form.downTo(top + ROWS);
  }
}
