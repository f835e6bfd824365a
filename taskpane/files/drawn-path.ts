/** The d of an SVG path as the commands of a native shape (ECMA-376, DrawingML, CT_Path2D): M, L, C, A and Z, absolute. */

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** How many numbers a command takes. */
const TAKES: Readonly<Record<string, number>> = { M: 2, L: 2, C: 6, A: 7, Z: 0 };
const COMMANDS = /([A-Za-z])([^A-Za-z]*)/g;
const NUMBER = /-?\d+(?:\.\d+)?/g;
/** DrawingML counts an angle in parts of a degree. */
const PARTS_OF_DEGREE = 60_000;

/** `emu`: native units a pixel. Throws on anything else, so that no part of a drawing is left out. */
export function pathCommands(d: string, emu: number): string {
  if (!d.startsWith("M")) throw new Error(`a path does not begin with M: ${d}`);
  let here: Spot = { x: 0, y: 0 };
  return [...d.matchAll(COMMANDS)]
    .map(([whole, command = "", rest = ""]) => {
      const numbers = (rest.match(NUMBER) ?? []).map(Number);
      const isRead = rest.replace(NUMBER, "").trim().replaceAll(",", "") === "";
      if (TAKES[command] !== numbers.length || !isRead) throw new Error(`a path has “${whole}”`);
      const from = here;
      if (numbers.length > 1) here = { x: numbers.at(-2) ?? 0, y: numbers.at(-1) ?? 0 };
      if (command === "M") return `<a:moveTo>${spotXml(here, emu)}</a:moveTo>`;
      if (command === "L") return lineTo(here, emu);
      if (command === "C") {
        const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = numbers;
        const spots = [{ x: x1, y: y1 }, { x: x2, y: y2 }, here].map((spot) => spotXml(spot, emu));
        return `<a:cubicBezTo>${spots.join("")}</a:cubicBezTo>`;
      }
      return command === "A" ? arcTo(from, numbers, emu) : "<a:close/>";
    })
    .join("");
}

/** The points of a polyline or polygon as such commands. */
export function pointCommands(points: string, emu: number): string {
  const spots = points.split(" ").map((pair) => {
    const [x, y, ...more] = pair.split(",").map(Number);
    if (x === undefined || y === undefined || more.length > 0 || !Number.isFinite(x + y)) {
      throw new Error(`a point is “${pair}”`);
    }
    return { x, y };
  });
  const [first, ...others] = spots;
  if (first === undefined || others.length === 0) throw new Error("a line has no two points");
  return `<a:moveTo>${spotXml(first, emu)}</a:moveTo>${others.map((spot) => lineTo(spot, emu)).join("")}`;
}

function lineTo(spot: Spot, emu: number): string {
  return `<a:lnTo>${spotXml(spot, emu)}</a:lnTo>`;
}

function spotXml({ x, y }: Spot, emu: number): string {
  return `<a:pt x="${whole(x * emu)}" y="${whole(y * emu)}"/>`;
}

/** An arc of a circle, at most half of it, which SVG tells by its ends and DrawingML by its angles, clockwise from the right. */
function arcTo(from: Spot, numbers: readonly number[], emu: number): string {
  const [radius = 0, other, turned, isLong, clockwise, x = 0, y = 0] = numbers;
  if (radius <= 0 || radius !== other || turned !== 0 || isLong !== 0) {
    throw new Error(`an arc is not of a circle, or more than half of it: ${numbers.join(" ")}`);
  }
  const center = centerOf(from, { x, y }, radius, clockwise === 1);
  const start = positive(angleOf(center, from));
  const turn = angleOf(center, { x, y }) - start;
  const swing = clockwise === 1 ? positive(turn) : -positive(-turn);
  return `<a:arcTo wR="${whole(radius * emu)}" hR="${whole(radius * emu)}" stAng="${angle(start)}" swAng="${angle(swing)}"/>`;
}

/** At one side of the middle of the chord; y goes down. */
function centerOf(from: Spot, to: Spot, radius: number, clockwise: boolean): Spot {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const chord = Math.hypot(dx, dy);
  if (chord === 0) throw new Error("an arc ends where it begins");
  // The ends of half a circle are rounded, and may lie a little too far apart.
  const away = Math.sqrt(Math.max(0, radius ** 2 - (chord / 2) ** 2)) / chord;
  const side = clockwise ? 1 : -1;
  return { x: (from.x + to.x) / 2 - side * away * dy, y: (from.y + to.y) / 2 + side * away * dx };
}

function angleOf(center: Spot, { x, y }: Spot): number {
  return (Math.atan2(y - center.y, x - center.x) * 180) / Math.PI;
}

/** The same angle from 0 to 360. */
function positive(degrees: number): number {
  return ((degrees % 360) + 360) % 360;
}

function angle(degrees: number): string {
  return whole(degrees * PARTS_OF_DEGREE);
}

/** A whole number, which every length of a native drawing is. */
export function whole(number: number): string {
  // Without the sign of a nothing that is below 0.
  return String(Math.round(number) + 0);
}
