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
      "units typed computed tube gap sectors bead remarks heat purge flow vent dams cycle"
        .split(" ")
        .map((one) => `check_${one}`),
    ),
  },
  gas: {
    summary: SUMMARY,
    lines: {
      says: "Lines that are counted of those in which anything is typed. A line that cannot be read says why in its remark.",
    },
    purge_share: { says: "The part of the gas that purges bores; the rest is the torch's." },
    gas_bought: { says: "Gas used and the waste on top." },
    usable: {
      says: "What a container gives that can be used: argon as a real gas down to the change-out pressure, or a share of the liquid.",
    },
    containers: { says: "The exact number rounded up: a container is bought whole." },
    ...CHECKS("units typed computed list purge supply totals".split(" ").map((one) => `check_${one}`)),
  },
  cycle: {
    summary: SUMMARY,
    heads_busy: { says: "How many heads one operator can serve before a head has to wait." },
    gain_head: { says: "What one more head brings a shift: little, when the operator is what is short." },
    gain_load: {
      says: "What half a minute less of loading brings a shift: little, when the heads are what is short.",
    },
    bottleneck: {
      says: "The larger of the two gains names it; where both are under a twentieth of the output it is balanced.",
    },
    shift_steady: {
      says: "Each load takes the same time. Real ones vary: the row below is nearer to a shift.",
    },
    shift_random: { says: "Load times vary at random, so heads wait for the operator now and then." },
    days: { says: "Calendar days, days off between working weeks included." },
    outputs: {
      says: "Joints a shift of one operator with so many heads: it rises until the operator is busy all the time.",
      columns: 4,
      rows: 6,
    },
    two_way: { says: "The same by heads and by load time.", columns: 7, rows: 5 },
    schedule: SCHEDULE,
    ...CHECKS("units typed computed tube whole hours crew".split(" ").map((one) => `check_${one}`)),
  },
};
