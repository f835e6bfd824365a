/** A shop's coupons line by line: what each says, and what the mean of all predicts for it. */

import { checkedArcSize } from "../../src/heat-flow/plate";
import { checkedConfidence, CONFIDENCES } from "../../src/shop/fit";
import type { JudgedCoupon, TubeCoupon } from "../../src/shop/judged";
import { judged } from "../../src/shop/judged";
import type { Length, Units } from "../../src/quantity";
import { COUNT, LENGTH, plainNumber, SHARE, si, SPEED, unitOf, unitPair } from "../../src/quantity";
import { above0, atLeast0 } from "../../src/limits";
import { Refusal } from "../../src/refusal";
import { number, rows } from "../argument";
import { ARC_SIZE, MATERIAL, MEAN_AMPS, OD, SPEED_OF_TRAVEL, VOLTS, WALL } from "../arguments";
import type { Reader } from "../cells";
import { isBlank } from "../cells";
import { formula } from "../formula";
import { columnOrWords, table, wordsColumn } from "../gives";
import type { ListRow, ListShape } from "../list";
import { readList, rowsOfList } from "../list";
import { oneTube } from "../sense";
import { CONFIDENCE } from "./confidence";

const MOST_COUPONS = si(1000, COUNT);
const [FACE, ROOT] = [number("Face width", LENGTH), number("Root width", LENGTH)];

type Line = Omit<TubeCoupon, "material" | "arcSize">;

/**
 * No root where none was measured. Some hosts hand a blank cell of a range over as 0, so 0 is the same in all: from a root
 * that did not melt through nothing is learned but the face.
 */
function readRoot(reader: Reader, root: unknown): Length | undefined {
  if (isBlank(root)) return undefined;
  const width = atLeast0("root", ROOT.read(reader, "root", root), LENGTH);
  return width === 0 ? undefined : width;
}

const SHAPE: ListShape<Line> = {
  columns: "od, wall, amps, volts, travel, face and, if measured, root",
  numbers: 6,
  mostRows: MOST_COUPONS,
  line: (reader, [od, wall, amps, volts, travel, face, root]) => {
    const line = {
      od: OD.read(reader, "od", od),
      wall: WALL.read(reader, "wall", wall),
      amps: MEAN_AMPS.read(reader, "amps", amps),
      volts: VOLTS.read(reader, "volts", volts),
      speed: SPEED_OF_TRAVEL.read(reader, "travel", travel),
      face: above0("face", FACE.read(reader, "face", face), LENGTH),
      root: readRoot(reader, root),
    };
    oneTube(line.od, line.wall);
    return line;
  },
};

interface Row {
  readonly measured: Length | string;
  readonly efficiency: JudgedCoupon["efficiency"] | string;
  readonly predicted: Length | string;
  readonly low: Length | string;
  readonly high: Length | string;
  readonly remark: string;
}

export const COUPON_TABLE = formula({
  id: "COUPON_TABLE",
  meaning:
    "Your own coupons line by line: arc efficiency of each, and the width that the mean of all predicts",
  args: {
    coupons: rows(
      `Columns: od ${unitPair(LENGTH)}; wall; amps; volts; travel ${unitPair(SPEED)}; face; root, blank or 0 if not measured. A header may stay`,
      (reader, name, range) => readList(reader, name, range, SHAPE),
      [LENGTH, SPEED],
    ),
    material: MATERIAL,
    arcSize: ARC_SIZE,
    confidence: CONFIDENCE,
  },
  gives: table(
    {
      measured: columnOrWords("measured", LENGTH),
      efficiency: columnOrWords("efficiency", SHARE),
      predicted: columnOrWords("predicted", LENGTH),
      low: columnOrWords("next low", LENGTH),
      high: columnOrWords("next high", LENGTH),
      remark: wordsColumn("remark"),
    },
    {
      more: "Measured and predicted: mean of face and root, or the face where no root was measured. As many rows as coupons has. A coupon that cannot be read or met gives the reason in its remark and counts nowhere; beside a header stand the headings, beside a blank line nothing.",
    },
  ),
  tex: [
    String.raw`(\eta_i - \eta)^2 > s^2\,\frac{(n - 1)^2}{n}\cdot\frac{t^2}{n - 2 + t^2}`,
    String.raw`v_m = v\left(1 - \frac{h}{d}\right)`,
  ],
  where: {
    ηᵢ: "efficiency of a coupon, which is an outlier where this holds: Grubbs' test",
    η: "mean of all",
    s: "standard deviation of all",
    n: "coupons; under four none is an outlier",
    t: "Student's t of 1 − (1 − confidence)/2n with n − 2 degrees of freedom",
    vₘ: "travel at the mean radius",
    v: "travel at the outside (travel)",
    h: "wall thickness (wall)",
    d: "outside diameter (od)",
  },
  validity: `As COUPON_EFFICIENCY, each at the travel of its mean radius; predicted as MELT_SECTION at the mean of all, next low and next high at the ends of the interval of a next weld; up to ${plainNumber(MOST_COUPONS)} rows; confidence ${plainNumber(CONFIDENCES[0])} to ${plainNumber(CONFIDENCES[1])}.`,
  assumptions:
    "One metal and one arc length. Widths from late in the first quarter, 45 to 90° from the start, of a tube that was at 20 °C (68 °F).",
  source: "COUPON_EFFICIENCY; Grubbs' test for one outlier, from memory",
  unconfirmed: "As COUPON_EFFICIENCY. Grubbs' test for one outlier, from memory.",
  unchecked:
    "Rows of COUPON_EFFICIENCY and MELT_SECTION: the check is that they are equal; Grubbs' limits are compared with a table from memory",
  related: ["COUPON_EFFICIENCY", "SHOP_FACTOR", "MELT_SECTION", "AMPS_WINDOW"],
  synonyms: [
    "coupon log",
    "calibrate",
    "outlier",
    "measured and predicted",
    "own welds",
    "weld coupons",
    "calibration table",
  ],
  figure: "bead-section",
  example: {
    args: [
      [
        [1, 0.065, 46, 9.4, 5.1, 0.18, 0.15],
        [1, 0.065, 50, 9.4, 5.1, 0.2, 0.175],
        [1, 0.065, 54, 9.4, 5.1, 0.21, 0.195],
      ],
    ],
    gives: "0.165, 0.800423, …",
  },
  calc: ({ coupons, material, arcSize, confidence }, units) => {
    // Refused once, not in every row.
    checkedConfidence(confidence);
    checkedArcSize(arcSize);
    const listed = rowsOfList(coupons);
    const lines = listed.filter((one): one is () => Line => typeof one === "function");
    const found = judged(
      lines.map((line) => () => ({ ...line(), material, arcSize })),
      confidence,
    );
    const byLine = new Map(lines.map((line, i) => [line as ListRow<Line>, found[i]]));
    return listed.map((one) => rowOf(one === "header" || one === "" ? one : byLine.get(one), units));
  },
});

const NOTHING: Row = { measured: "", efficiency: "", predicted: "", low: "", high: "", remark: "" };

function rowOf(one: JudgedCoupon | Refusal | "" | "header" | undefined, units: Units): Row {
  if (one === "header") return headings(units);
  if (one === "" || one === undefined) return NOTHING;
  if (one instanceof Refusal) return { ...NOTHING, remark: one.remark(units) };
  const { apart, ...numbers } = one;
  return { ...numbers, remark: apart ? "outlier: stands apart from the other coupons" : "" };
}

function headings(units: Units): Row {
  const length = unitOf(LENGTH, units);
  return {
    measured: `measured, ${length}`,
    efficiency: "efficiency",
    predicted: `predicted, ${length}`,
    low: `next low, ${length}`,
    high: `next high, ${length}`,
    remark: "remark",
  };
}
