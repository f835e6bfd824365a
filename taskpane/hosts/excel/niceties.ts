/**
 * What a sheet is as good without: charts, frozen rows, gridlines, how it prints. Excel refuses these now and then for
 * reasons of its own, such as another workbook in front, so each is asked for in a sync of its own and may fail.
 */

import type { SheetPlan } from "../../sheets/sheet";
import { liesAcross } from "../../sheets/sheet";
import { addressOf } from "../../sheets/addresses";
import { addChart } from "./chart";
import { pageStarts } from "./page-breaks";
import { isPersons, inWords } from "./failure";

export interface Nicety {
  readonly what: string;
  /** Queues the calls; gives what takes half of them back, where half would be left. */
  readonly queue: (sheet: Excel.Worksheet) => (() => void) | undefined;
  /** Whether Excel did what it was asked, where it is known to keep quiet about not doing it. */
  readonly isDone?: (sheet: Excel.Worksheet) => Promise<boolean>;
}

export interface Refused {
  readonly nicety: Nicety;
  readonly why: string;
}

function simple(what: string, ask: (sheet: Excel.Worksheet) => void): Nicety {
  return {
    what,
    queue: (sheet) => {
      ask(sheet);
      return undefined;
    },
  };
}

export function nicetiesOf(plan: SheetPlan): Nicety[] {
  const { charts, cells, frozenRows, frozenColumns = 0, filter, print } = plan;
  const zoom = { horizontalFitToPages: 1, ...(print.paper === "page" ? { verticalFitToPages: 1 } : {}) };
  const starts = pageStarts(plan);
  return [
    simple("showing the sheet", (sheet) => {
      sheet.activate();
    }),
    ...charts.map((chart): Nicety => ({
      what: `the chart “${chart.title}”`,
      queue: (sheet) => addChart(sheet, chart, cells),
    })),
    ...(frozenRows === 0 ? [] : [simple("the frozen rows", freezing(frozenRows, frozenColumns))]),
    ...(filter === undefined
      ? []
      : [
          simple("the filter of the list", (sheet) => {
            sheet.autoFilter.apply(sheet.getRange(filter));
          }),
        ]),
    simple("hiding the gridlines", (sheet) => {
      sheet.showGridlines = false;
    }),
    simple("the print area", ({ pageLayout }) => {
      pageLayout.setPrintArea(print.area);
    }),
    simple("the way the page lies", ({ pageLayout }) => {
      pageLayout.orientation = liesAcross(print.paper) ? "Landscape" : "Portrait";
    }),
    {
      ...simple("the width of the page", ({ pageLayout }) => {
        pageLayout.zoom = zoom;
      }),
      isDone: async ({ pageLayout, context }) => {
        pageLayout.load("zoom");
        await context.sync();
        return pageLayout.zoom.horizontalFitToPages === zoom.horizontalFitToPages;
      },
    },
    ...(starts.length === 0
      ? []
      : [
          simple("the page breaks", (sheet) => {
            for (const row of starts) sheet.horizontalPageBreaks.add(addressOf({ column: 0, row }));
          }),
        ]),
  ];
}

function freezing(rows: number, columns: number): (sheet: Excel.Worksheet) => void {
  return (sheet) => {
    if (columns === 0) sheet.freezePanes.freezeRows(rows);
    else
      sheet.freezePanes.freezeAt(sheet.getRange(`A1:${addressOf({ column: columns - 1, row: rows - 1 })}`));
  };
}

/** Asks for each; gives those that Excel refused. What a person can put right, such as a cell being edited, is thrown. */
export async function addNiceties(sheet: Excel.Worksheet, niceties: readonly Nicety[]): Promise<Refused[]> {
  const refused: Refused[] = [];
  for (const nicety of niceties) {
    const why = await refusal(sheet, nicety);
    if (why !== "") refused.push({ nicety, why });
  }
  return refused;
}

/** Why Excel refused, or "". */
async function refusal(sheet: Excel.Worksheet, { queue, isDone }: Nicety): Promise<string> {
  let takeBack: (() => void) | undefined;
  try {
    takeBack = queue(sheet);
    await sheet.context.sync();
    const done = (await isDone?.(sheet)) ?? true;
    return done ? "" : "Excel did not keep it";
  } catch (problem) {
    if (isPersons(problem)) throw problem;
    if (takeBack !== undefined) {
      takeBack();
      // What was never made cannot be taken back.
      await sheet.context.sync().catch(() => undefined);
    }
    return inWords(problem);
  }
}

/** A sentence for the person, or "". */
export function refusedInWords(refused: readonly Refused[]): string {
  if (refused.length === 0) return "";
  const reasons = [...new Set(refused.map(({ why }) => why))];
  const parts = reasons.map((reason) => {
    const whats = refused.filter(({ why }) => why === reason).map(({ nicety }) => nicety.what);
    return `${whats.join(", ")} (${reason})`;
  });
  return `Excel refused ${parts.join("; ")}. The numbers do not depend on that.`;
}
