/**
 * The schedule behind a sheet: one formula gives every starting value of the tube, and the page looks them up by their
 * labels. The page itself holds no physics.
 */

import { call, refusal } from "./call";
import type { Cells } from "./call";
import { spilledOver } from "./frame";
import { quote } from "./guards";
import type { Layout } from "./layout";

/** More rows than a schedule has: what a sheet keeps free for it. */
const ROWS = 64;

/** The last row of every schedule, which every sheet says elsewhere. */
const CLOSING = "Starting values. Prove on a test coupon; the qualified procedure governs.";
/** How many remarks a schedule may have at most, between its last value and its last row. */
const MOST_REMARKS = 3;
const LAST_VALUE = "Bore";

/** Values of the schedule by its label; "" while there is none. `which`: the end of its name, where a sheet has several. */
export function scheduled(label: string, which = ""): string {
  const [values, labels] = [`{schedule${which}_values}`, `{schedule${which}_labels}`];
  return `IFERROR(INDEX(${values},MATCH("${label}",${labels},0)),"")`;
}

export class ScheduleTable {
  /** `which`: the end of its name, where a sheet has several. */
  constructor(
    readonly cells: Cells<"SCHEDULE">,
    readonly which = "",
  ) {}

  /** The sentence with which the schedule refuses the tube; "" where it answers. */
  get refusal(): string {
    return refusal("SCHEDULE", this.cells);
  }

  /** A sentence where the schedule answers but cannot be shown. */
  get blocked(): string {
    return `IF(ISERROR({schedule${this.which}}),${quote(spilledOver("the schedule behind the page"))},"")`;
  }

  /** Where the schedule is less sure than elsewhere; "" where it has no remark. */
  get remarks(): string {
    const rows = Array.from(
      { length: MOST_REMARKS },
      (_, i) => `INDEX({schedule_labels},MATCH("${LAST_VALUE}",{schedule_labels},0)+${String(i + 1)})`,
    );
    return `TRIM(SUBSTITUTE(${rows.join('&" "&')},${quote(CLOSING)},""))`;
  }

  /** Writes the table behind the page. `column`: its first. */
  place(form: Layout, column = 0): void {
    const name = `schedule${this.which}`;
    form.cell(column, "Schedule", "heading");
    form.nextLine();
    const top = form.nextRow;
    form.name(name, column);
    form.guardComputed("Schedule", name);
    form.cell(column, `=${call("SCHEDULE", this.cells)}`, "note");
    form.rangeOf(`${name}_labels`, column, top, column, top + ROWS - 1);
    form.rangeOf(`${name}_values`, column + 1, top, column + 1, top + ROWS - 1);
    form.downTo(top + ROWS);
  }
}
