/**
 * A program of one's own: what currents that are set, sector by sector, would melt, with what wall and arc may make of it.
 * A blank cell is as computed, so that with nothing typed it is the schedule that is judged.
 */

import { FACE_MOST, ROOT_LEAST } from "../../../src/heat-flow/arc";
import { CURRENT, HEAT_INPUT, LENGTH } from "../../../src/quantity";
import { call, refusal } from "../call";
import type { Check } from "../frame";
import { firstOf, unless } from "../frame";
import { formatOf } from "../formats";
import type { Layout } from "../layout";
import { address } from "../layout";
import { scheduled } from "../schedule-table";
import { SIGNS } from "../sheet";
import { optional } from "../typed";
import { ARC_OF_SHEET } from "./bead";
import { OWN_PULSE, OWN_SPREAD, SET_AMPS } from "./inputs";

const SECTORS = ["Sector 1", "Sector 2", "Sector 3", "Sector 4", "Overlap"] as const;
const NTH = ["first", "second", "third", "fourth", "overlap"] as const;
/** The last of them, behind the full turn. */
const OVERLAP = SECTORS.length - 1;
const COUNT = String(SECTORS.length);
const HEADINGS = ["set A", "used A", "mean A"];
/** Columns of PROGRAM_BEAD. */
const [MEAN, FACE, ROOT, ROOT_MIN, FACE_MAX] = [3, 5, 6, 7, 8];

const OWN = {
  od: "{od}",
  wall: "{wall}",
  speed: "{speed}",
  peaks: "{own_peaks}",
  share: `IF({style}="steady",1,IF({share_set}="",${scheduled("Peak share of the pulse")},{share_set}))`,
  background: "{back_share?}",
  rate: `IF({rate_set}="",${scheduled("Pulse rate")},{rate_set})`,
  beadWidth: "{bead}",
  dwell: "{dwell}",
  dwellAmps: "{dwell_amps}",
  overlap: "{overlap}",
  volts: ARC_OF_SHEET.volts,
  material: ARC_OF_SHEET.material,
  arcSize: ARC_OF_SHEET.arcSize,
  efficiency: "{efficiency?}",
  wallTolerance: "{wall_tolerance?}",
  overlapPeak: "{own_overlap}",
} as const;

export function programTable(form: Layout): void {
  form.blocks(OWN_PULSE, OWN_SPREAD);
  form.cell(0, "sector", "heading");
  form.across(1, HEADINGS, "columnHead");
  form.cell(4, "what wall and arc may make of it", "heading");
  form.across(5, ["face", "root", "root min"], "columnHead");
  form.nextLine();
  const top = form.nextRow;
  form.rangeOf("own_peaks", 2, top, 2, top + OVERLAP - 1);
  form.name("own_verdicts", 4, undefined, false, SECTORS.length);
  form.name("own_faces", 5, LENGTH, false, SECTORS.length);
  form.name("own_roots", 6, LENGTH, false, SECTORS.length);
  form.name("own_roots_least", 7, LENGTH, false, SECTORS.length);
  const length = formatOf(LENGTH, form.units);
  SECTORS.forEach((sector, i) => {
    const row = form.nextRow;
    if (i === OVERLAP) form.name("own_overlap", 2);
    const [set, mean, face, root, least] = [1, 3, 5, 6, 7].map((column) => address(column, row));
    // Of a program that is refused, or without an overlap, cells of the table are blank, which INDEX would read as 0.
    const there = i === OVERLAP ? "AND(ISNUMBER({own_program}),{overlap}>0)" : "ISNUMBER({own_program})";
    const of = (column: number): string =>
      `IF(${there},INDEX({own_table},${String(i + 1)},${String(column)}),"")`;
    const computed = `IF({style}="steady",${scheduled(`${sector} mean`)},${scheduled(`${sector} peak`)})`;
    form.row(
      optional({
        label: `${sector}, set`,
        name: `set_${NTH[i] ?? ""}`,
        quantity: CURRENT,
        unit: "",
        range: SET_AMPS,
      }),
      0,
    );
    form.backTo(row);
    form.across(2, [`=IF(${String(set)}="",${computed},${String(set)})`, `=${of(MEAN)}`], "result", [
      "0.0",
      "0.0",
    ]);
    form.cell(4, verdict(String(mean), String(face), String(root), String(least), of(FACE_MAX)), "verdict");
    form.signs.push(address(4, row));
    form.across(5, [`=${of(FACE)}`, `=${of(ROOT)}`, `=${of(ROOT_MIN)}`], "result", [length, length, length]);
    form.nextLine();
  });
  const bottom = form.nextRow - 1;
  form.guardBlock("Your own program", "own_rows", [2, top], [7, bottom]);
  form.blocks(
    [
      {
        label: "Heat input, as set",
        name: "own_heat",
        content: `=IF({own_most}="","",${call("HEAT_INPUT", { volts: "{volts}", amps: "{own_most}", speed: "{speed}", efficiency: "{heat_factor?}" })})`,
        look: "result",
        quantity: HEAT_INPUT,
        format: "0.000",
      },
    ],
    [],
  );
  form.range("own_means", address(3, top), address(3, bottom));
}

/** Largest mean of sectors and dwell, and the table that the page looks things up in; behind the page. */
export function programBehind(form: Layout): void {
  form.cell(0, "Your own program: what it melts", "heading");
  form.nextLine();
  const top = form.nextRow;
  form.name("own_program", 0);
  form.guardComputed("Your own program, computed", "own_program");
  form.cell(0, `=${call("PROGRAM_BEAD", OWN)}`, "note");
  form.rangeOf("own_table", 0, top, 8, top + OVERLAP);
  form.downTo(top + SECTORS.length);
  // Of a program that is refused the dwell alone is left, whose heat input is not the program's.
  form.cell(0, `=IF(COUNT({own_means})=${COUNT},MAX({own_means},{dwell_amps}),"")`, "note");
  form.name("own_most", 0);
  form.guardComputed("Your own program, largest mean", "own_most");
  form.nextLine();
}

/** One sentence on a sector, the worst first; blank where it has no numbers. */
function verdict(mean: string, face: string, root: string, least: string, most: string): string {
  const attention = (words: string): string => `"${SIGNS.attention}${words}"`;
  const cases: [string, string][] = [
    [`${root}<=0`, attention("root does not melt through")],
    [`${least}<=0`, attention("root may be missing: thick wall, weak arc")],
    [`NOT(ISNUMBER(${most}))`, attention("thin wall, strong arc: melts all round")],
    [`${root}<${String(ROOT_LEAST)}*{wall_read}`, attention("root under half the wall")],
    [`${face}>${String(FACE_MOST)}*{bead}`, attention("face over 1.5 beads")],
    [`${least}<${String(ROOT_LEAST)}*{wall_read}`, attention("root may fall under half the wall")],
    [`${most}>${String(FACE_MOST)}*{bead}`, attention("face may pass 1.5 beads")],
  ];
  const words = cases.reduceRight(
    (rest, [when, told]) => `IF(${when},${told},${rest})`,
    `"${SIGNS.holds}holds"`,
  );
  return `=IF(COUNT(${mean},${face},${root},${least},{bead},{wall_read})<6,"",${words})`;
}

const GOOD = `SUMPRODUCT(--(LEFT({own_verdicts},1)="${SIGNS.holds.trim()}"))`;

export const OWN_CHECK: Check = {
  label: "Your own program",
  name: "check_program",
  problem: firstOf(
    refusal("PROGRAM_BEAD", OWN),
    unless(`COUNT({own_means})=${COUNT}`, "a sector has no mean current"),
    unless(
      `${GOOD}=${COUNT}`,
      `=(${COUNT}-${GOOD})&" of ${COUNT} sectors need attention: see Your own program"`,
    ),
  ),
};
