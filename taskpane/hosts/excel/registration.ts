/**
 * Waits until Excel knows our formulas. One that is written earlier stays #NAME? for good, since Excel looks a name up
 * only when the formula is entered.
 */

import { HostFailure } from "./failure";
import type { Naming } from "./naming";
import { firstOf, isError } from "./values";

/** Milliseconds between one try and the next: 20 s together, since a first load on a slow line takes that long. */
const PAUSES = [250, 250, 500, 1000, ...Array.from({ length: 9 }, () => 2000)];
const SECONDS = PAUSES.reduce((sum, one) => sum + one, 0) / 1000;
const PROBE = "=BEAD.VERSION()";
/** What a cell shows whose formula is known and still at work. */
const AT_WORK = "#BUSY!";

export type Pause = (milliseconds: number) => Promise<void>;

export interface Waiting {
  readonly pause: Pause;
  /** Tells the person what is being waited for. */
  readonly say: (text: string) => void;
}

/** Enters a formula of ours in a cell that nobody needs; gives up in words when Excel does not come to know it. */
export async function waitForFunctions(
  scratch: Excel.Range,
  naming: Naming,
  { pause, say }: Waiting,
): Promise<void> {
  for (const [i, milliseconds] of PAUSES.entries()) {
    scratch.formulas = [[naming.toExcel(PROBE)]];
    if (await isAnswered(scratch)) return;
    if (i === 0) say(`Waiting for Excel to register the formulas, ${String(SECONDS)} s at most…`);
    await pause(milliseconds);
    // An answer may only have been late; entering the formula again would make it late once more.
    if (await isAnswered(scratch)) return;
  }
  throw new HostFailure(
    `Excel does not know the formulas after ${String(SECONDS)} s (${naming.toExcel(PROBE)} gives an error): ` +
      "close this pane, reopen it from the Home tab, wait a few seconds and insert again; if that does not help, restart Excel",
  );
}

async function isAnswered(scratch: Excel.Range): Promise<boolean> {
  scratch.load("values,valueTypes");
  await scratch.context.sync();
  return !isError(scratch) || firstOf(scratch.values) === AT_WORK;
}
