/**
 * Every number that help tells as a limit is one at which the formula refuses, found by trying; every other number in
 * those texts is declared here with what it is. So neither a limit nor the words about it can change alone.
 */

import { FORMULAS } from "../../functions/catalogue";
import type { Formula } from "../../functions/formula";
import { unitOf } from "../../src/quantity";
import * as quantities from "../../src/quantity";
import { exampleWith, refusal } from "../bead";
import { HELP } from "../../functions/help";
import type { Limit } from "./found-limits";
import { limitsOf } from "./found-limits";

/** Passages with numbers that are no limits, and why. */
const NO_LIMITS: readonly (readonly [ids: string, passage: string, why: string])[] = [
  ["*", '"316L"', "a name"],
  ["*", "4σ of its Gaussian", "what the width of a spot means"],
  ["*", '"N2"', "a name"],
  [
    "FEELER_STACK",
    "told apart to 0.1 µm",
    "how finely leaves are told apart; the test of the search tries it",
  ],
  ["FEELER_STACK", "at most 100 leaves", "how many cells of a range; the test of limits tries it"],
  ["STANDOFF_SPREAD", "minimum gap 0 or less", "a result, not an argument; the test of limits tries it"],
  ["ELECTRODE_LENGTH", "od/2 + standoff", "of two other arguments; the test of limits tries it"],
  ["ELECTRODE_DIAMETER", "1/16 in in US, 1.6 mm in SI", "an example of the sizes it gives"],
  ["AMPS_WALL", "0.8 to 1.8 A per 0.001 in", "what shops run, not what is refused"],
  ["AMPS_MELT", "v·b/4α up to 3", "how far it was compared, not what is refused"],
  [
    "SCHEDULE",
    "with a remark above 3.2 mm (1/8 in) and under 0.0193701 in (0.492 mm)",
    "remarks, not refusals",
  ],
  ["SCHEDULE", "within 14 % of its width", "how far the bead may be off in the check of itself"],
  [
    "SCHEDULE",
    "316L of 1 to 3.2 mm: peaks lie within 0.8 to 1.8 A per 0.001 in; arc energy lies within 60 to 130 J/mm² of travel × wall up to 1.6 mm, and above it (to 210)",
    "outside brackets that its test against publications tries",
  ],
  [
    "HEAT_INPUT HEAT_PULSED HEAT_METERED",
    "1 for ASME arc energy, 0.6 for TIG by EN 1011-1",
    "factors of codes",
  ],
  ["PURGE_CHANGES PURGE_TIME PURGE_FLOW PURGE_OXYGEN", "1 is fully mixed", "what the smallest number means"],
  ["PURGE_REYNOLDS", "about 2000 the gas runs smoothly", "of the result, which is not refused"],
  ["PURGE_REYNOLDS", "above 2300 it mixes", "of the result, which is not refused"],
  ["PURGE_VENT", "only to about 10 %", "how well a coefficient is known"],
  ["PURGE_PRESSURE", "more than 10.0366 inH₂O (25 mbar)", "of the result; the test of limits tries it"],
  ["GAS_CYLINDER", "at 70 °F and 1 atm (14.696 psi), the liter at 15 °C and 1 bar", "standard states"],
  ["GAS_LIQUID", "under 1 atm", "the state of the liquid"],
  ["CYCLE_PHASES", "of 0 s keeps its row", "a value that is answered"],
  ["RING_BEAD", "1 to 360 sectors", "how many cells of a range; the test of limits tries it"],
  ["TAKEOFF TAKEOFF_SIZES SIZE_TABLE SETUP_COUNT", "316L if omitted", "a name"],
  ["SIZE_TABLE", "up to 2000 rows", "of the list itself; the test of size tables tries it"],
  ["SHOP_FACTOR", "Values 1e-9 to 1000000000, up to 100000 rows", "of a range; the test of coupons tries it"],
  ["COUPON_TABLE", "up to 1000 rows", "of the list itself; the test of coupon tables tries it"],
  ["COUPON_EFFICIENCY", "up to 1000 coupons", "of a range; the test of coupons tries it"],
  [
    "CREW_COURSE",
    "hours up to 480 steps and 5000 joints",
    "of other arguments; the test of the course tries it",
  ],
  ["LEARN_TIME LEARN_TOTAL", "such as 0.9", "an example"],
  ["CREW_HEADS", "both 0", "of two arguments together; the test of limits tries it"],
  ["TAKEOFF TAKEOFF_SIZES SETUP_COUNT SIZE_TABLE", "or NPS 1; wall or sch 10S", "names of pipe"],
  ["TAKEOFF SETUP_COUNT SIZE_TABLE", "NPS 1-1/2 for od and sch 10S", "names of pipe"],
  ["COUPON_TABLE", "blank or 0 if not measured", "what stands for nothing; the test of coupons tries it"],
  ["TAKEOFF", "up to 200000 rows", "of the list itself; the test of lists tries it"],
  ["SIZE", "1/2, 1-1/2, 1 1/2 in, 1.5 or 38.1 mm", "examples"],
  ["PIPE_OD PIPE_WALL", '"1/2", "1-1/2", "1 1/2", 1.5, "2 in"', "examples"],
  ["PIPE_OD PIPE_WALL", "NPS 1/8 to 12", "sizes of a table, all of which a test reads"],
  [
    "PIPE_OD",
    "NPS 2 is 2.375 in outside. B36.10M prints 273.0 and 323.8 mm for NPS 10 and 12",
    "what a table prints",
  ],
  ["PIPE_WALL", '"5S", "10S", "40S", "80S", 5, 10, 40 or 80', "names"],
  ["PIPE_WALL", "40 and 40S differ at NPS 12, 80 and 80S from NPS 10 up", "what a table prints"],
  ["PIPE_WALL", "commonly 12.5 %", "a tolerance that is not in the table"],
  ["ACCEPT_LIMITS", "15 % of wall", "a limit of form, which it gives"],
  [
    "ACCEPT_LIMITS",
    "± 0.015 in (0.381 mm) of 4 in (101.6 mm) or ± 0.03 in (0.762 mm) of 6 in (152.4 mm)",
    "sizes that take a limit of form of their own; the test of the table tries them",
  ],
  ["MATERIALS", "near 1200 K (927 °C). Cold: 25 °C", "states of the property values"],
  ["MATERIALS", "from 20 °C to the liquidus", "what the mean is of"],
  ["MOISTURE_PPM DEW_POINT", "over ice below 0.01 °C", "where ice gives way to water"],
  ["MOISTURE_PPM DEW_POINT", "At 1 atm", "the state of the gas"],
  ["DEW_POINT", "to 121905", "the ends of MOISTURE_PPM in six digits; the test of moisture tries them"],
  ["ROOM_OXYGEN", "under 19.5 %, and 19.5 % is not called safe", "of the result, which is not refused"],
  ["SAMPLE_PLAN", "0.1, 0.15, 0.25, 0.4, 0.65, 1, 1.5, 2.5, 4, 6.5, 10", "a list, all of which a test tries"],
  ["SAMPLE_PLAN", '"S-1" to "S-4", "I"', "names"],
  ["SAMPLE_ODDS", "A 20 % sample finds", "an example, which a test computes"],
  ["REJECT_RATE", "give 2 × confidence − 1", "a factor; the test of one-sided limits tries it"],
  ["JOINTS_START", "#N/A above 1000000000 joints", "of the result; the test of limits tries it"],
  ["COUPONS", "Idle too long: over 30 min by NFPA 99", "what counts as idle, and a name"],
  ["LOG_CHECK", "Up to 5000 rows", "of the log itself; the test of the log tries it"],
  ["COVER_WALL COVER_HEAT", "ISO 15614-1 (2017)", "a name"],
  ["COVER_WALL", '"ISO 15614-1" or "ISO 9606-1"', "names"],
  ["COVER_WALL", "ASME IX (2017)", "a name"],
  ["COVER_WALL", "1.55 mm covers from 1.5 mm", "an example"],
  ["COVER_WALL", "level 2, butt weld", "a name"],
  ["COVER_WALL COVER_OD", "ISO 9606-1 is for welding by hand", "a name"],
  ["COVER_WALL COVER_OD", "welding is ISO 14732", "a name"],
  ["COVER_OD", '"ISO 9606-1"', "a name"],
  ["COVER_OD", "QW-452.3, performance of welders; QW-361.2 names", "names"],
  ["COVER_OD", "applies QW-452.3", "a name"],
  ["COVER_HEAT", '"ISO 15614-1"', "a name"],
  ["MILL_RATIO", '"WRC-1992" (default)', "a name"],
  ["MILL_RATIO", "without its 3 Ti", "a term that is left out"],
  ["MILL_RATIO", "from 1.42 (316L) or 1.52 (304L) to 1.9", "of the result, which is not refused"],
  ["MILL_SULFUR", "316L; above", "a name"],
  ["MILL_SULFUR", "ppm divided by 10000", "a factor"],
  ["MILL_SULFUR", "in one study of 316 it was, of 304 it was not", "names"],
  ["TUBE_TOLERANCE", '"A270" (default), "A269" or "A1016"', "names"],
  [
    "TUBE_TOLERANCE",
    "A270 between 1 and 1 1/2 in, between 2 and 2 1/2 in and above 12 in, A269 above 8 in, A1016 above 4 in. A270 is the edition of 2002; A1016 with the wall of A249",
    "rows of tables, all of which a test tries",
  ],
  ["VERSION", "0.2.0", "an example"],
];

interface Told {
  readonly number: string;
  /** The unit behind it, where it has one. */
  readonly unit: string | undefined;
}

const UNITS = [
  ...new Set(
    Object.values<unknown>(quantities)
      .filter((one): one is quantities.Quantity => typeof one === "object" && one !== null && "kind" in one)
      .flatMap((of) => [unitOf(of, "US"), unitOf(of, "SI")]),
  ),
]
  .filter((unit) => unit !== "")
  .sort((a, b) => b.length - a.length);
const NUMBER = new RegExp(
  `(?<![\\w.])(?:(\\d+(?:\\.\\d+)?) to )?(-?\\d+(?:\\.\\d+)?)(?: ?(${UNITS.map((unit) => unit.replace(/[/]/g, "\\/")).join("|")})(?![\\w/]))?`,
  "g",
);

/** Numbers of a text with their units; both ends of "0.5 to 3 mm" have the unit behind them. */
function numbersIn(text: string): Told[] {
  return [...text.matchAll(NUMBER)].flatMap(([, first, number = "", unit]) => [
    ...(first === undefined ? [] : [{ number: first, unit }]),
    { number, unit },
  ]);
}

/** What help says of limits, without the passages that are declared. */
function textOf({ id, args, validity }: Formula): string {
  const texts = [validity, ...Object.values(args).flatMap(({ what, detail }) => [what, detail])].join(" | ");
  return NO_LIMITS.filter(([ids]) => ids === "*" || ids.split(" ").includes(id)).reduce(
    (text, [, passage]) => text.replaceAll(passage, "…"),
    texts,
  );
}

/** A number that was found says the same as one that is told, to the digits in which it is told. */
function agrees({ value, quantity, units }: Limit, { number, unit }: Told): boolean {
  if (unit !== undefined && unitOf(quantity, units) !== unit) return false;
  const digits = /\.(\d+)$/.exec(number)?.[1]?.length ?? 0;
  return (
    Math.abs(value - Number(number)) <= 0.5 * 10 ** -digits * (digits === 0 ? 1e-6 * Math.max(1, value) : 1)
  );
}

describe("numbers in validity and in the words of arguments are limits that are found, or are declared", () => {
  test.each(FORMULAS.map((formula) => [formula.id, formula] as const))("%s", (_, formula) => {
    let open = numbersIn(textOf(formula));
    if (open.length === 0) return;
    for (const limit of limitsOf(formula)) {
      open = open.filter((told) => !agrees(limit, told));
      if (open.length === 0) break;
    }
    expect(open).toEqual([]);
  });
});

test.each(NO_LIMITS)("%s: %j is still there", (ids, passage) => {
  const formulas = FORMULAS.filter(({ id }) => ids === "*" || ids.split(" ").includes(id));
  const texts = formulas.map(({ validity, args }) =>
    [validity, ...Object.values(args).flatMap(({ what, detail }) => [what, detail])].join(" | "),
  );
  expect(formulas.length).toBeGreaterThanOrEqual(ids === "*" ? 1 : ids.split(" ").length);
  if (ids === "*") expect(texts.some((text) => text.includes(passage))).toBe(true);
  else for (const text of texts) expect(text).toContain(passage);
});

describe("an argument that validity names above 0 refuses 0, one of 0 or more answers it", () => {
  const NAMED = /((?:\w+, )*\w+(?: and \w+)?) (above 0|0 or more)/g;
  const told = HELP.flatMap((about) =>
    [...about.validity.matchAll(NAMED)].flatMap(([, names = "", words = ""]) =>
      names.split(/, | and /).flatMap((name) => {
        const index = about.parameters.findIndex((parameter) => parameter.name === name);
        return index < 0 ? [] : [[about.id, name, words, about, index] as const];
      }),
    ),
  );

  test("there are such", () => {
    expect(told.length).toBeGreaterThan(15);
  });

  test.each(told)("%s: %s %s", (id, name, words, about, index) => {
    const at = (cell: number): string => refusal(id, ...exampleWith(about, index, cell));
    if (words === "above 0") expect(at(0)).toMatch(new RegExp(`^#VALUE! ${name} = 0\\b.*: must be above 0`));
    else {
      expect(at(0)).not.toMatch(new RegExp(`^#\\S+ ${name} = `));
      expect(at(-1e-9)).toMatch(new RegExp(`^#VALUE! ${name} = `));
    }
  });
});
