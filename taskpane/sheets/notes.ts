/**
 * What a computed cell of a ready sheet says, for the person who has selected it: what it is, what it follows, why it can
 * look odd. By the name of the first cell; a table's note holds for all of it. {E} is what column E of the same row shows.
 */

import type { TemplateId } from "./sheet";

export interface Note {
  readonly says: string;
  /** How far the note reaches from the named cell, one cell if omitted. */
  readonly columns?: number;
  readonly rows?: number;
}

const CHECK =
  "A check: ✓ when it holds, ▲ with what is wrong when it does not. It judges what is typed and computed above and changes nothing.";

const CHECKS = (names: readonly string[]): Record<string, Note> =>
  Object.fromEntries(names.map((name) => [name, { says: CHECK }]));

const SUMMARY: Note = {
  says: "All checks in one line. It names those that need attention, and tells when a check or a row behind the page was typed over.",
};

const SCHEDULE: Note = {
  says: "A row of the schedule that the rest of the sheet reads from.",
  columns: 3,
  rows: 64,
};

const QUALIFICATION: Readonly<Record<string, Note>> = {
  covered_wall_least: { says: "Minimum and maximum wall that the coupon covers by the rule.", columns: 2 },
  covered_od_least: {
    says: "Minimum and maximum outside diameter that the coupon covers by the rule; blank where it sets no limit.",
    columns: 2,
  },
  covered_heat_least: {
    says: "Minimum and maximum heat input that the coupon covers by the rule. The heat inputs of this sheet are compared with them.",
    columns: 2,
  },
  covered: { says: "Whether wall and diameter of this tube lie in what the coupon covers." },
};

export const NOTES: Record<TemplateId, Readonly<Record<string, Note>>> = {
  procedure: {
    summary: SUMMARY,
    sectors: {
      says: "Mean current is what melts; peak and background give it at the peak share. A later sector has less, since heat has come around the tube: in this row {E}° ahead of the arc.",
      columns: 8,
      rows: 5,
    },
    heat: {
      says: "The largest heat input of the sectors and the start dwell, which counts as if the arc traveled. The qualified maximum is compared with it.",
    },
    mean_of_turn: { says: "The mean of the four sectors: what a meter shows over the full turn." },
    bead_table: {
      says: "The bead that these currents melt at the sector's end, face and root, by the same heat flow that the currents come from.",
      columns: 4,
      rows: 6,
    },
    own_verdicts: {
      says: "Judges this sector: root and face as set, then with the thickest wall under the weakest arc and the thinnest under the strongest. With nothing set it judges the schedule. The overlap melts again what sector 1 welded: whether its root has to be through too is for the qualified procedure.",
      rows: 5,
    },
    ...QUALIFICATION,
    own_heat: { says: "The heat input of the largest mean current of the program and the start dwell." },
    own_program: {
      says: "What the program melts: a row a sector that your own program reads from, the overlap last.",
      columns: 9,
      rows: 5,
    },
    amps_through: {
      says: "The mean current at the start, on the cold tube, under which the root does not melt through.",
    },
    plate_amps: {
      says: "The steady current that melts the same bead into a flat plate; the window is worked out there and carried over to sector 1 in proportion.",
    },
    window_least: {
      says: "With less than this in sector 1 a thick wall under a weak arc leaves less than half a wall of root.",
    },
    window_most: {
      says: "With more than this in sector 1 a thin wall under a strong arc makes the face wider than one and a half beads.",
    },
    window_room: {
      says: "The window over the current it stands around. A negative room is a closed window: no one current suits every tube and arc.",
    },
    speed: { says: "Typed, or suggested for the wall and metal." },
    bead: { says: "Typed, or one millimeter more than two walls." },
    volts: { says: "Typed, or estimated from the standoff: a long arc has more." },
    dwell: { says: "Typed, or what the heat flow asks for before the tube turns." },
    dwell_amps: { says: "The arc stands with more than sector 1 has, since the tube is cold." },
    overlap: { says: "Typed, or as much as covers the start." },
    dam_distance: { says: "The larger of what heat asks for and what was typed as the minimum." },
    cycle: { says: "All phases added up: from one start of the arc to the next, handling included." },
    schedule: SCHEDULE,
    ...CHECKS(
      "units typed computed tube gap sectors bead program remarks heat qualified purge flow vent dams cycle"
        .split(" ")
        .map((one) => `check_${one}`),
    ),
  },
  gas: {
    summary: SUMMARY,
    lines: {
      says: "Lines that are counted of those in which anything is typed. A line that cannot be read says why in its remark.",
    },
    by_size: {
      says: "The lines of the list added up by size and metal, in the order of the list; the last row adds up the sizes beyond ten.",
      columns: 8,
      rows: 11,
    },
    purge_share: { says: "The part of the gas that purges bores; the rest is the torch's." },
    gas_bought: { says: "Gas used and the waste on top." },
    usable: {
      says: "What a container gives that can be used: argon as a real gas down to the change-out pressure, or a share of the liquid.",
    },
    containers: { says: "The exact number rounded up: a container is bought whole." },
    ...CHECKS("units typed computed list purge supply totals".split(" ").map((one) => `check_${one}`)),
  },
  bid: {
    summary: SUMMARY,
    lines: {
      says: "Lines that are counted of those in which anything is typed. With a line that is not counted there is no price.",
    },
    by_size: {
      says: "The lines of the list added up by size and metal, in the order of the list; the last row adds up the sizes beyond twenty. Time without set-ups, coupons and joints started over.",
      columns: 8,
      rows: 21,
    },
    price: {
      says: "The price before rounding up, rounded up to the multiple that is typed. The customer page shows it.",
    },
    price_exact: {
      says: "A margin of the price is taken from the price: cost / (1 - margin). A margin of the cost comes on top of it: cost x (1 + margin).",
    },
    margin_on_price: { says: "What the rounded price leaves above the cost, as a fraction of the price." },
    margin_on_cost: { says: "The same as a fraction of the cost." },
    start: {
      says: "So many that enough are good, with the reject rate and confidence typed. Over the whole list: an order of spare tube asks JOINTS_START for each size.",
    },
    changes: {
      says: "Where size or metal differ from the line before, or as few as there can be with like lines grouped.",
    },
    joint_hours: {
      says: "Cycle, handling and the fraction of the purge that is waited for, one head working by itself.",
    },
    periods: { says: "Time of joints and set-ups in working periods, rounded up." },
    period_coupons: { says: "One at the start, one at the end, and those that fall due between." },
    electrodes: { says: "Joints to start and coupons over the joints of an electrode, rounded up." },
    gas_used: {
      says: "Gas of the list, and that of a mean joint for each joint started over and each coupon.",
    },
    usable: {
      says: "By nominal contents or liquid the usable fraction of it; by water volume argon as a real gas down to the change-out pressure.",
    },
    containers: { says: "The exact number rounded up: a container is bought whole." },
    draft: { says: "Empty where all checks hold. The page is not for the customer while it says draft." },
    ...CHECKS(
      "units typed computed list purge tests supply margin totals".split(" ").map((one) => `check_${one}`),
    ),
  },
  cycle: {
    summary: SUMMARY,
    head: { says: "The scenarios, as they are called beside the typed cells.", columns: 4 },
    shift_steady: {
      says: "Each load takes the same time. Real ones vary: the random row is nearer to a shift.",
      columns: 4,
    },
    more_steady_b: { says: "What this what-if makes more than the shop as it is.", columns: 3 },
    shift_random: {
      says: "Load times vary at random, so heads wait for an operator now and then.",
      columns: 4,
    },
    days: { says: "Calendar days from the start, days off between included.", columns: 4 },
    labor_lot: {
      says: "All operators for the whole shifts that the joints take, and one of them for each changeover.",
      columns: 4,
    },
    lever_head: {
      says: "Rank among the four, and joints a shift that the lever gains at steady times.",
      columns: 4,
      rows: 4,
    },
    bottleneck: {
      says: "What the lever that gains most moves; where all gain under a twentieth of the output it is balanced.",
      columns: 4,
    },
    finish_heads: {
      says: "The shop as it is with so many heads: joints a shift and calendar days at steady and at random times, and whether that is in time.",
      columns: 6,
      rows: 10,
    },
    heads_busy: { says: "How many heads one operator can serve before a head has to wait.", columns: 4 },
    load_mean: {
      says: "The load typed is that of the first joint; over the lot it falls by the learning rate, if one is typed.",
      columns: 4,
    },
    starts: { says: "The joints to make and, on average, those that are rejected.", columns: 4 },
    changeovers: { says: "Typed, or counted from the joint list in the order chosen.", columns: 4 },
    setups_listed: {
      says: "Changes of size or material as listed, and with like joints grouped.",
      columns: 2,
    },
    schedule: SCHEDULE,
    ...CHECKS(
      "units typed computed tube whole hours crew list calendar".split(" ").map((one) => `check_${one}`),
    ),
  },
  sizes: {
    summary: SUMMARY,
    sizes: {
      says: "Sizes that have their numbers, of those in which anything is typed. One that cannot be says why in its remark.",
    },
    remarked: {
      says: "Sizes that have their numbers and a remark beside them: a thick or a thin wall, a small tube, a window of current that is closed or missed.",
    },
    largest_mean: {
      says: "The largest mean current of any sector: what power source and torch have to give.",
    },
    largest_heat: { says: "The largest heat input of all sizes." },
    size_table: {
      says: "One formula fills the table: each row is the schedule of its size. The window is that of sector 1: with less than its minimum a thick wall under a weak arc has too little root, with more than its maximum a thin wall under a strong one has too wide a face.",
      columns: 21,
      rows: 122,
    },
    ...CHECKS("units typed computed list remarks numbers".split(" ").map((one) => `check_${one}`)),
  },
  coupons: {
    summary: SUMMARY,
    shop_efficiency: {
      says: "The mean of the coupons' own efficiencies. Type it as the arc efficiency of the procedure sheet or the size table.",
    },
    shop_low: {
      says: "The mean of ever more coupons like these would lie above this, as sure as the confidence says.",
    },
    shop_high: { says: "The mean of ever more coupons like these would lie below this." },
    next_low: { says: "A single next weld like these lies above this: the weakest arc of AMPS_WINDOW." },
    next_high: { says: "A single next weld like these lies below this: the strongest arc of AMPS_WINDOW." },
    more_coupons: {
      says: "Four times as many coupons halve the interval of the mean; of a few coupons somewhat fewer do. The interval of a next weld does not shrink under the scatter itself.",
    },
    coupons: {
      says: "Coupons that have an efficiency, of those in which anything is typed. One that cannot be met says why in its remark.",
    },
    coupon_table: {
      says: "One formula fills the table: the efficiency at which the model melts the measured width, the width at the mean of all, and the band of a next weld. Measured is the mean of face and root, or the face where no root was typed.",
      columns: 6,
      rows: 42,
    },
    ...CHECKS("units typed computed list outliers count efficiency".split(" ").map((one) => `check_${one}`)),
  },
  log: {
    summary: SUMMARY,
    logged: { says: "Lines that name a joint." },
    inspected: { says: "Lines with a result, accept or reject." },
    rejected: { says: "Lines with the result reject." },
    to_check: {
      says: "Lines whose status is ▲: out of a limit, not to be read, or accepted with a blank cell.",
    },
    rate: { says: "Rejected over inspected. Few joints say little: see low and high." },
    rate_low: { says: "The lowest reject rate of the process that goes with what was inspected." },
    rate_high: { says: "The highest reject rate of the process that goes with what was inspected." },
    letter: {
      says: "Single sampling plan: code letter, joints to look at, how many may be bad, and from how many the lot is refused.",
      columns: 4,
    },
    pass_odds: { says: "The chance that a lot with as many bad joints as typed passes this plan." },
    proving: {
      says: "So many joints, all good, prove with the confidence typed that the lot has fewer bad ones than typed.",
    },
    coupons_due: {
      says: "At the start, at the end, each time the typed hours have passed, and after each long idle time and change.",
    },
    accept_concavity: {
      says: "Maximum concavity, convexity and misalignment by the table of form limits for this tube.",
      columns: 3,
    },
    concavity_limit: { says: "Typed, or by the table." },
    convexity_limit: { says: "Typed, or by the table." },
    misalignment_limit: { says: "Typed, or by the table." },
    ...QUALIFICATION,
    log_check: {
      says: "Judges every line beside it: ✓ accept, ▲ check with the reason, × reject, or open. It changes nothing that is typed.",
      columns: 3,
      rows: 502,
    },
    ...CHECKS(
      "units typed computed limits qualified joints log rate sample coupons"
        .split(" ")
        .map((one) => `check_${one}`),
    ),
  },
};
