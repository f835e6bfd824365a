import { ANGLE, COUNT, DURATION, FLOW, LENGTH, SPEED, TIME, VOLUME } from "../../src/quantity";
import { Refusal } from "../../src/refusal";
import type { Counted, Line } from "../../src/planning/takeoff";
import { Takeoff } from "../../src/planning/takeoff";
import type { Value } from "../answer";
import { answer } from "../answer";
import type { Reader } from "../cells";
import { isBlank, rowsOf } from "../cells";
import { readMaterial } from "../metal/materials";

/** Quantity, od and wall; the material is a fourth. */
const NUMBERS = 3;
const COLUMNS = "quantity, od, wall and, if you like, material";
const MOST_ROWS = 200_000;
const HEADER = "header";

/**
 * Machine time, hours and gas of a whole list of joints, a row a line, the totals last.
 * @customfunction TAKEOFF
 * @param joints Columns: quantity; od in | mm; wall in | mm; material, 316L if left out. A header, blank lines and numbers as text may stay
 * @param [handlingSeconds] Unload, load and set up per joint, s; 0 if left out
 * @param [torchFlow] Shielding flow at the torch, ft³/h | L/min; 0 if left out
 * @param [purgeFlow] Flow into the bore, ft³/h | L/min; 0 if left out
 * @param [purgeSeconds] Purge of the bore before the cycle starts, s; 0 if left out
 * @param [overlap] Degrees past the full turn; 0 if left out
 * @param [units] "US" (default) or "SI"
 * @returns Columns: suggested speed in/min | mm/min; machine s a joint; hours of the line; gas of the line ft³ | L; remark. As many rows as joints has, and the totals: hours, gas, and how many lines are left out. A line that cannot be counted says why in its remark and has no numbers; a header has the remark "header", a blank line none.
 * @equation machine = 30 s + dwell + π·d·(360° + overlap)/360°/v + 3·b/v + 15 s, v = TRAVEL_SUGGEST, b = 1 mm + 2·wall; hours = n·(machine + handling); gas = n·(torchFlow·machine + purgeFlow·(purgeSeconds + machine)); dwell that of START_DWELL
 * @math \text{machine} = 30\ \text{s} + \text{dwell} + \frac{\pi d}{v}\cdot\frac{360^\circ + \text{overlap}}{360^\circ} + \frac{3b}{v} + 15\ \text{s}
 * @math b = 1\ \text{mm} + 2\,h,\quad v = \text{TRAVEL\_SUGGEST}
 * @math \text{hours} = n\,(\text{machine} + \text{handling})
 * @math \text{gas} = n\,\bigl(Q_t\cdot\text{machine} + Q_p\,(t_p + \text{machine})\bigr)
 * @where machine time of one joint from prepurge to postpurge; dwell time of START_DWELL; d outside diameter (od); v suggested travel; overlap degrees past the full turn; b fused width; h wall thickness (wall); n joints of the line (quantity); hours time of the line; handling unload, load and set up per joint (handlingSeconds); gas volume of the line; Qₜ flow at the torch (torchFlow); Qₚ flow into the bore (purgeFlow); tₚ purge before the cycle starts (purgeSeconds)
 * @validity As TRAVEL_SUGGEST and START_DWELL. Quantity a whole number, 1 to 1000000000; wall 0.001 to 100 mm (0.00004 to 3.94 in), od to 10 m (394 in); up to 200000 rows. The first row that is not blank is a header if it has no digit in quantity, od and wall.
 * @assumptions One head working by itself: CREW_OUTPUT tells what several put out. The bore purge stays on through the cycle.
 * @source Sum over the joints; 30 s and 15 s of gas and a downslope of three bead widths are common practice
 * @unconfirmed Suggested speed, dwell and bead width are estimates, as TRAVEL_SUGGEST and START_DWELL say
 * @related CYCLE_TIME, GAS_JOINT, GAS_CYLINDER, CREW_OUTPUT, TRAVEL_SUGGEST
 * @figure cycle
 * @example =BEAD.TAKEOFF({"joints","od","wall";120,1,0.065;8,2,0.109}, 300) → "", "", "", "", "header"; 5.138, …
 */
export function takeoffCells(
  joints: unknown[][],
  handlingSeconds?: unknown,
  torchFlow?: unknown,
  purgeFlow?: unknown,
  purgeSeconds?: unknown,
  overlap?: unknown,
  units?: unknown,
): unknown[][] {
  return answer(units, (read) => {
    const rows = readRows(joints);
    const sums = new Takeoff({
      handling: read.numberOr("handlingSeconds", handlingSeconds, TIME, 0),
      torchFlow: read.numberOr("torchFlow", torchFlow, FLOW, 0),
      purgeFlow: read.numberOr("purgeFlow", purgeFlow, FLOW, 0),
      purgeSeconds: read.numberOr("purgeSeconds", purgeSeconds, TIME, 0),
      overlap: read.numberOr("overlap", overlap, ANGLE, 0),
    });
    const first = rows.findIndex((row) => !isBlankRow(row));
    const lines = rows.map((row, at) => {
      if (isBlankRow(row)) return withoutNumbers("");
      if (at === first && isHeader(row)) return withoutNumbers(HEADER);
      return writeLine(
        read,
        sums.add(() => readLine(read, row)),
      );
    });
    return [...lines, writeSums(read, sums)];
  });
}

function readRows(joints: unknown): unknown[][] {
  const rows = rowsOf(joints);
  if (rows.every(isBlankRow)) throw new Refusal("joints", "blank", [`needs rows of ${COLUMNS}`]);
  if (rows.length > MOST_ROWS) {
    throw new Refusal("joints", `${String(rows.length)} rows`, [
      `must be at most ${String(MOST_ROWS)} rows; take the list in parts`,
    ]);
  }
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  if (width === NUMBERS || width === NUMBERS + 1) return rows;
  throw new Refusal("joints", `${String(width)} column${width === 1 ? "" : "s"}`, [
    `must be 3 or 4 columns: ${COLUMNS}`,
  ]);
}

function readLine(read: Reader, [quantity, od, wall, material]: readonly unknown[]): Line {
  return {
    quantity: read.listed("quantity", quantity, COUNT),
    od: read.listed("od", od, LENGTH),
    wall: read.listed("wall", wall, LENGTH),
    material: readMaterial(read, material === BLANK_IN_A_RANGE ? null : material),
  };
}

/** Some hosts hand a blank cell of a range over as 0; no line is made of zeros alone, no metal is called 0. */
const BLANK_IN_A_RANGE = 0;

function isBlankRow(row: readonly unknown[]): boolean {
  return row.every((cell) => cell === BLANK_IN_A_RANGE || isBlank(cell));
}

/** Any digit makes it a line: one that cannot be read is counted as left out, a header is not. */
function isHeader(row: readonly unknown[]): boolean {
  const titles = row.slice(0, NUMBERS).filter((cell) => !isBlank(cell));
  return titles.length > 0 && titles.every((cell) => typeof cell === "string" && !/\p{N}/u.test(cell));
}

function withoutNumbers(remark: string): Value[] {
  return ["", "", "", "", remark];
}

function writeLine(read: Reader, line: Counted | Refusal): Value[] {
  if (line instanceof Refusal) return withoutNumbers(line.remark(read.units));
  const { speed, machine, seconds, gas } = line;
  return [read.give(speed, SPEED), machine, read.give(seconds, DURATION), read.give(gas, VOLUME), ""];
}

function writeSums(read: Reader, { seconds, gas, counted, leftOut }: Takeoff): Value[] {
  const all = counted > 0 ? "all lines counted" : "no lines to count";
  const standing = leftOut > 0 ? `${String(leftOut)} line${leftOut === 1 ? "" : "s"} left out` : all;
  return ["", "", read.give(seconds, DURATION), read.give(gas, VOLUME), standing];
}
