/**
 * The two systems of units as help needs them: an example's numbers in the other system, and one sentence out of two
 * that differ in their units only.
 */

/** The value in SI units is (US + offset) × factor: exact, but for the pound and the inch of water to nine digits. */
export const UNIT_PAIRS = [
  { US: "in/min", SI: "mm/min", factor: 25.4, offset: 0 },
  { US: "in", SI: "mm", factor: 25.4, offset: 0 },
  { US: "ft³/h", SI: "L/min", factor: 28.316_846_592 / 60, offset: 0 },
  { US: "ft³", SI: "L", factor: 28.316_846_592, offset: 0 },
  { US: "inH₂O", SI: "mbar", factor: 2.490_889_1, offset: 0 },
  { US: "psi", SI: "bar", factor: 0.068_947_572_9, offset: 0 },
  { US: "kJ/in", SI: "kJ/mm", factor: 1 / 25.4, offset: 0 },
  { US: "°F", SI: "°C", factor: 1 / 1.8, offset: -32 },
];

const UNITS = UNIT_PAIRS.flatMap(({ US, SI }) => [US, SI]).sort((a, b) => b.length - a.length);
/** A number with its unit is one word of a sentence, as far as two sentences are compared. */
const WORD = new RegExp(`-?\\d\\S*(?: (?:${UNITS.join("|")})(?=[ ,;]|$))?[,;]?|\\S+`, "g");

/**
 * A number of an example in the other system, if its description names two units as `in | mm`.
 * @param {unknown} cell @param {string} description @param {"US" | "SI"} from
 */
export function inOtherUnits(cell, description, from) {
  const pair = UNIT_PAIRS.find(({ US, SI }) => description.includes(`${US} | ${SI}`));
  if (typeof cell !== "number" || pair === undefined) return cell;
  return from === "US" ? (cell + pair.offset) * pair.factor : cell / pair.factor - pair.offset;
}

/**
 * "must be at most 0.4 in | 10 mm" from the sentences of the two systems; undefined if they tell different things.
 * @param {string} us @param {string} si
 */
export function inBothUnits(us, si) {
  const [words, others] = [us.match(WORD) ?? [], si.match(WORD) ?? []];
  const differing = words.flatMap((word, i) => (word === others[i] ? [] : [i]));
  const [first, last] = [differing.at(0), differing.at(-1)];
  if (words.length !== others.length) return undefined;
  if (first === undefined || last === undefined) return us;
  if (differing.some((i) => !/\d/.test(words[i] ?? "") || !/\d/.test(others[i] ?? ""))) return undefined;
  const said = (/** @type {string[]} */ of) =>
    of
      .slice(first, last + 1)
      .join(" ")
      .replace(/[,;]$/, "");
  const mark = /[,;]$/.exec(words[last] ?? "")?.[0] ?? "";
  return [...words.slice(0, first), `${said(words)} | ${said(others)}${mark}`, ...words.slice(last + 1)].join(
    " ",
  );
}
