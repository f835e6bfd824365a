/** What is typed once for a weld log: limits, the qualified coupon, the lot. Job and joints are invented. */

import type { Quantity } from "../../../src/quantity";
import { COUNT, CURRENT, LENGTH, OXYGEN, PERCENT, SHARE, SPEED, VOLTAGE } from "../../../src/quantity";
import type { Row } from "../layout";
import { TUBE } from "../tube";
import { choice, counted, optional, typed, words } from "../typed";

export const JOB: Row[] = [
  words("Job", "job", "Invented creamery"),
  words("Drawing, revision", "drawing", "ISO-000 rev. 0 (invented)"),
];
export const PAPERS: Row[] = [words("Shift, date", "shift", ""), words("Inspector", "inspector", "")];

/** Most that concavity, convexity or misalignment can be before somebody has slipped. */
const FORM_RANGE = { US: [0.0001, 0.25], SI: [0.001, 6] } as const;

function formLimit(label: string, name: string): Row {
  return optional({ label: `${label} (blank: table)`, name, quantity: LENGTH, range: FORM_RANGE });
}

export const FORM_LIMITS: Row[] = [
  ...TUBE.filter(({ name }) => name !== "material"),
  formLimit("Concavity, maximum", "concavity_typed"),
  formLimit("Convexity, maximum", "convexity_typed"),
  formLimit("Misalignment, maximum", "misalignment_typed"),
];

/** Percentages, volts and travel are invented; 50 ppm and sample 3 are common practice. */
export const ARC_LIMITS: Row[] = [
  typed({
    label: "Amps off those set, fraction",
    name: "amps_off",
    content: 0.05,
    quantity: SHARE,
    range: [0.005, 0.5],
  }),
  typed({ label: "Volts, minimum", name: "volts_least", content: 8, quantity: VOLTAGE, range: [5, 20] }),
  typed({ label: "Volts, maximum", name: "volts_most", content: 11, quantity: VOLTAGE, range: [5, 30] }),
  typed({
    label: "Travel, planned",
    name: "travel_planned",
    content: { US: 5, SI: 127 },
    quantity: SPEED,
    range: { US: [0.8, 30], SI: [20, 760] },
  }),
  typed({
    label: "Travel off the planned, fraction",
    name: "travel_off",
    content: 0.05,
    quantity: SHARE,
    range: [0.005, 0.5],
  }),
  typed({
    label: "Oxygen before the arc, maximum",
    name: "oxygen_most",
    content: 50,
    quantity: OXYGEN,
    range: [1, 10_000],
  }),
  counted("Color sample, highest", "color_most", 3, "", [1, 10]),
];

/** Invented. */
export const COUPON = { od: { US: 2, SI: 50.8 }, heat: { US: 7, SI: 0.28 } };

export const LOT: Row[] = [
  counted("Joints in the lot", "lot", 80, "", [2, 36_000]),
  typed({
    label: "Acceptance quality limit",
    name: "aql",
    content: 4,
    quantity: PERCENT,
    range: [0.1, 10],
    format: "0.00",
  }),
  choice("Inspection level", "level", "II", ["S-1", "S-2", "S-3", "S-4", "I", "II", "III"], { columns: 2 }),
  choice("Severity", "severity", "normal", ["normal", "tightened"], { columns: 2 }),
  counted("Bad joints not to miss", "bad", 5, "", [1, 10_000]),
  typed({ label: "Confidence", name: "confidence", content: 0.95, quantity: SHARE, range: [0.5, 0.9999] }),
];

export const PERIOD: Row[] = [
  counted("Working period", "hours", 8, "h", [0.5, 24], { format: "0.0" }),
  counted("Coupon every", "every", 4, "h", [0.25, 24], { format: "0.0" }),
  counted("Idle over 30 min, times", "idles", 0, "", [0, 50]),
  counted("Changes of operator, head, supply, gas", "changes", 0, "", [0, 50]),
];

/** A column of the log: its heading, its kind, and whether the formula of the log reads it. */
export interface LogColumn {
  readonly name: string;
  readonly heading: string;
  readonly quantity?: Quantity;
  readonly words?: true;
}

/** Columns in order; the measured ones stand together, as LOG_CHECK takes them. */
export const WORD_COLUMNS: readonly LogColumn[] = [
  { name: "joint", heading: "joint", words: true },
  { name: "heat_one", heading: "heat, side 1", words: true },
  { name: "heat_other", heading: "heat, side 2", words: true },
  { name: "procedure", heading: "procedure", words: true },
  { name: "coupon", heading: "coupon", words: true },
  { name: "welder", heading: "operator", words: true },
];
export const MEASURED_COLUMNS: readonly LogColumn[] = [
  { name: "set", heading: "set, A", quantity: CURRENT },
  { name: "amps", heading: "actual, A", quantity: CURRENT },
  { name: "volts", heading: "volts", quantity: VOLTAGE },
  { name: "travel", heading: "travel", quantity: SPEED },
  { name: "oxygen", heading: "O₂, ppm", quantity: OXYGEN },
  { name: "color", heading: "color", quantity: COUNT },
  { name: "concavity", heading: "concavity", quantity: LENGTH },
  { name: "convexity", heading: "convexity", quantity: LENGTH },
  { name: "misalignment", heading: "misaligned", quantity: LENGTH },
  { name: "result", heading: "result", words: true },
];

/** Lines of the log, blank ones included. */
export const LINES = 500;

type Both = Readonly<Record<"US" | "SI", number>>;
const both = (US: number, SI: number): Both => ({ US, SI });

/** Invented joints: words, then what was measured. */
export const JOINTS: readonly (readonly (string | number | Both)[])[] = [
  [
    "J-01",
    "H123",
    "H123",
    "P-1",
    "C-1",
    "W1",
    60,
    60.4,
    9.1,
    both(5, 127),
    22,
    2,
    both(0.002, 0.05),
    both(0.001, 0.03),
    both(0.004, 0.1),
    "accept",
  ],
  [
    "J-02",
    "H123",
    "H124",
    "P-1",
    "C-1",
    "W1",
    60,
    59.8,
    9.2,
    both(5, 127),
    18,
    2,
    both(0.003, 0.08),
    both(0.001, 0.03),
    both(0.005, 0.12),
    "accept",
  ],
  [
    "J-03",
    "H124",
    "H124",
    "P-1",
    "C-1",
    "W1",
    60,
    60.1,
    9.0,
    both(5.05, 128),
    25,
    1,
    both(0.002, 0.05),
    both(0.002, 0.05),
    both(0.006, 0.15),
    "accept",
  ],
  [
    "J-04",
    "H124",
    "H125",
    "P-1",
    "C-1",
    "W1",
    60,
    60.0,
    9.1,
    both(5, 127),
    31,
    5,
    both(0.004, 0.1),
    both(0.001, 0.03),
    both(0.012, 0.3),
    "reject",
  ],
  [
    "J-05",
    "H125",
    "H125",
    "P-1",
    "C-2",
    "W2",
    60,
    60.2,
    9.1,
    both(4.95, 126),
    20,
    2,
    both(0.002, 0.05),
    both(0.001, 0.03),
    both(0.004, 0.1),
    "accept",
  ],
  [
    "J-06",
    "H125",
    "H126",
    "P-1",
    "C-2",
    "W2",
    60,
    60.3,
    9.2,
    both(5, 127),
    19,
    2,
    both(0.003, 0.08),
    both(0.002, 0.05),
    both(0.005, 0.12),
    "accept",
  ],
  ["J-07", "H126", "H126", "P-1", "C-2", "W2", 60, 59.9, 9.1, both(5, 127), 24, "", "", "", "", ""],
];
