/**
 * Measured width against predicted, all coupons of the list: dots called by their numbers, outliers with a mark of their
 * own, the one-to-one line, the band of a next weld. Behind the page the coupons stand in the order of their predicted
 * widths, since a line is drawn from point to point.
 */

import type { Layout } from "../layout";
import { address } from "../layout";
import type { ChartPlan } from "../sheet";
import { LINES } from "./inputs";

/** Room for lines that a person inserts. */
const POINTS = LINES + 20;
/** Columns behind the page. */
const COLUMNS = { predicted: 0, rank: 1, apart: 2, called: 3, x: 4 } as const;
/** What is drawn over the predicted width, and the column of the list that it is taken from. */
const SERIES = [
  ["measured", "{list_measured}"],
  ["one to one", "{list_predicted}"],
  ["next weld, low", "{list_low}"],
  ["next weld, high", "{list_high}"],
] as const;
/** Drawn last: of coupons that do not stand apart it has no point. */
const APART = SERIES.length;
const DOTS = [0, APART];

/** The points, and the names of the coupons that stand apart. */
export function points(form: Layout): Omit<ChartPlan, "from" | "to"> {
  const header = form.nextRow;
  const [top, last] = [header + 1, header + POINTS];
  form.across(0, ["Points of the picture", "order", "apart", "called", "predicted"], "columnHead");
  form.across(COLUMNS.x + 1, [...SERIES.map(([heading]) => heading), "outlier"], "columnHead");
  form.nextLine();
  // From the heading on, so that no block is a single cell.
  const predicted = (end: number): string =>
    `${address(COLUMNS.predicted, header)}:${address(COLUMNS.predicted, end)}`;
  for (let i = 1; i <= POINTS; i += 1) {
    const row = form.nextRow;
    const own = address(COLUMNS.predicted, row);
    const [all, above] = [predicted(last), predicted(row)];
    const inList = (list: string): string => `INDEX(${list},${String(i + 1)},1)`;
    const isLine = `${String(i)}<ROWS({list_remark})`;
    const named = called(inList("{list_number}"), String(i));
    form.cell(COLUMNS.predicted, `=IF(${isLine},${ofCounted(inList)},"")`, "note");
    // Of equal ones the upper comes first, so that none has the place of another.
    form.cell(
      COLUMNS.rank,
      `=IF(ISNUMBER(${own}),SUMPRODUCT(ISNUMBER(${all})*(${all}<${own}))+SUMPRODUCT(ISNUMBER(${above})*(${above}=${own})),"")`,
      "note",
    );
    form.cell(
      COLUMNS.apart,
      `=IF(${isLine},IF(LEFT(${inList("{list_remark}")},7)="outlier",${named},""),"")`,
      "note",
    );
    // Beyond the last coupon its point again: a chart takes a blank for 0.
    const line = `MATCH(MIN(${String(i)},COUNT({coupon_ranks})),{coupon_ranks},0)`;
    const ofPoint = (list: string): string => `INDEX(${list},${line}+1,1)`;
    form.cell(
      COLUMNS.called,
      `=IF(COUNT({coupon_ranks})<${String(i)},"",${called(ofPoint("{list_number}"), line)})`,
      "note",
    );
    ["{list_predicted}", ...SERIES.map(([, list]) => list)].forEach((list, s) => {
      form.cell(COLUMNS.x + s, `=IF(COUNT({coupon_ranks})=0,"",${ofPoint(list)})`, "note");
    });
    // A chart leaves out what is not available.
    form.cell(
      COLUMNS.x + 1 + APART,
      `=IF(COUNT({coupon_ranks})=0,"",IF(LEN(INDEX({coupons_apart},${line},1))>0,${ofPoint("{list_measured}")},NA()))`,
      "note",
    );
    form.nextLine();
  }
  form.rangeOf("coupon_ranks", COLUMNS.rank, top, COLUMNS.rank, last);
  form.rangeOf("coupons_apart", COLUMNS.apart, top, COLUMNS.apart, last);
  form.guardBlock("Points of the picture", "coupon_points", [0, top], [COLUMNS.x + 1 + APART, last]);
  return {
    title: "Measured width against predicted: each coupon a dot, one to one, band of a next weld",
    kind: "curve",
    axes: { x: "predicted width", y: "width" },
    labels: `${address(COLUMNS.x, top)}:${address(COLUMNS.x, last)}`,
    values: Array.from({ length: APART + 1 }, (_, s) => {
      const column = COLUMNS.x + 1 + s;
      return `${address(column, header)}:${address(column, last)}`;
    }),
    dots: DOTS,
    marked: [APART],
    named: [0],
  };
}

/** The number that a person typed of a coupon, or which line it is. */
function called(number: string, line: string): string {
  return `IF(LEN(${number})>0,${number}&"","line "&${line})`;
}

/** The predicted width of a coupon that counts. */
function ofCounted(inList: (list: string) => string): string {
  const all = ["{list_predicted}", "{list_measured}", "{list_low}", "{list_high}"].map(inList);
  return `IF(COUNT(${all.join(",")})=${String(all.length)},${inList("{list_predicted}")},"")`;
}
