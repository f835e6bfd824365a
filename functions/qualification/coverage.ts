/** What a welded test coupon qualifies for. */

import type { Covered } from "../../src/qualification/covered";
import { coveredHeat, HEAT_RULES } from "../../src/qualification/heat";
import { coveredOd, OD_RULES } from "../../src/qualification/od";
import { coveredWall, WALL_RULES } from "../../src/qualification/wall";
import { HEAT_INPUT, LENGTH } from "../../src/quantity";
import { number, ofTrade, word } from "../argument";
import { family, formula } from "../formula";
import { columnOrBlank, row } from "../gives";
import { TRADE_ODS, TRADE_WALLS } from "../sense";

const GOVERNS =
  "As read from the code, whose edition governs: a starting point for whoever has the standard.";
const NO_LIMIT = "Blank where the rule sets no limit.";
const MACHINE = "ISO 9606-1 is for welding by hand; machine and orbital welding is ISO 14732.";

/** A limit that a rule does not set stays blank. */
function limits<Value>({ least, most }: Covered<Value>): { least: Value | ""; most: Value | "" } {
  return { least: least ?? "", most: most ?? "" };
}

const COVER_WALL = formula({
  id: "COVER_WALL",
  meaning: "Minimum and maximum wall that a test coupon covers",
  args: {
    couponWall: ofTrade(number("Wall of the test coupon", LENGTH), TRADE_WALLS),
    rule: word('"ASME IX" (default), "ISO 15614-1" or "ISO 9606-1"', WALL_RULES, "ASME IX"),
  },
  gives: row({ least: columnOrBlank("minimum", LENGTH), most: columnOrBlank("maximum", LENGTH) }),
  tex: [
    String.raw`\text{ASME IX:}\quad \begin{cases} t \text{ to } 2t & t < 1/16\ \text{in (1.5 mm)} \\ 1/16\ \text{in (1.5 mm) to } 2t & t \le 3/8\ \text{in (10 mm)} \\ 3/16\ \text{in (5 mm) to } 2t & t < 1\,1/2\ \text{in (38 mm)} \end{cases}`,
    String.raw`\text{ISO 15614-1:}\quad \begin{cases} 0.7\,t \text{ to } 1.3\,t & t \le 3\ \text{mm} \\ 0.5\,t\ (\text{at least } 3\ \text{mm}) \text{ to } 1.3\,t & t \le 12\ \text{mm} \\ 0.5\,t \text{ to } 1.1\,t & \text{otherwise} \end{cases}`,
    String.raw`\text{ISO 9606-1:}\quad \begin{cases} t \text{ to } \max(3\ \text{mm}, 2t) & t < 3\ \text{mm} \\ 3\ \text{mm to } 2t & t < 12\ \text{mm} \\ 3\ \text{mm and more} & \text{otherwise} \end{cases}`,
  ],
  where: { t: "wall of the coupon (couponWall)" },
  validity: `${GOVERNS} ASME IX (2017): groove welds, base metal, tension and bend tests; toughness rules restrict it further. Its inches and its millimeters differ, so units decide: 1.55 mm covers from 1.5 mm, in inches from itself. ISO 15614-1 (2017): level 2, butt weld in a single run. ${MACHINE} ${NO_LIMIT}`,
  source: "[asme-ix-2017], QW-451.1; [iso-15614-1-2017], level 2; [iso-9606-1-2013]",
  unconfirmed:
    "ISO 15614-1 is from memory, and so is ISO 9606-1 but for its last row: compare them with the standard.",
  related: ["COVER_OD", "COVER_HEAT", "ACCEPT_LIMITS", "HEAT_INPUT"],
  synonyms: [
    "qualification range",
    "thickness range",
    "PQR",
    "WPS",
    "WPQ",
    "QW-451",
    "range of approval",
    "procedure qualification",
    "coupon thickness",
  ],
  example: { args: [1.65, null, "SI"], gives: "1.5, 3.3" },
  calc: ({ couponWall, rule }, units) => limits(coveredWall(couponWall, rule, units)),
});

const COVER_OD = formula({
  id: "COVER_OD",
  meaning: "Minimum and maximum outside diameter that a test coupon covers",
  args: {
    couponOd: ofTrade(number("Outside diameter of the test coupon", LENGTH), TRADE_ODS),
    rule: word('"ASME IX" (default) or "ISO 9606-1"', OD_RULES, "ASME IX"),
  },
  gives: row({ least: columnOrBlank("minimum", LENGTH), most: columnOrBlank("maximum", LENGTH) }),
  tex: [
    String.raw`\text{ASME IX:}\quad \begin{cases} d \text{ and more} & d < 1\ \text{in (25 mm)} \\ 1\ \text{in (25 mm) and more} & d \le 2\,7/8\ \text{in (73 mm)} \\ 2\,7/8\ \text{in (73 mm) and more} & \text{otherwise} \end{cases}`,
    String.raw`\text{ISO 9606-1:}\quad \begin{cases} d \text{ to } 2d & d \le 25\ \text{mm} \\ 0.5\,d\ (\text{at least } 25\ \text{mm}) \text{ and more} & \text{otherwise} \end{cases}`,
  ],
  where: { d: "outside diameter of the coupon (couponOd)" },
  validity: `${GOVERNS} ASME IX: QW-452.3, performance of welders; QW-361.2 names no diameter for machine operators, so it counts if your inspector applies QW-452.3, and in a procedure the diameter is no variable. Its inches and its millimeters differ; units decide. ${MACHINE} ${NO_LIMIT}`,
  source: "[asme-ix-diameters]; [iso-9606-1-2013]",
  related: ["COVER_WALL", "COVER_HEAT", "ACCEPT_LIMITS"],
  synonyms: [
    "qualification range",
    "diameter range",
    "WPQ",
    "QW-452",
    "operator qualification",
    "welder qualification",
    "range of approval",
  ],
  example: { args: [2], gives: '1, ""' },
  calc: ({ couponOd, rule }, units) => limits(coveredOd(couponOd, rule, units)),
});

const COVER_HEAT = formula({
  id: "COVER_HEAT",
  meaning: "Minimum and maximum heat input that a test coupon covers",
  args: {
    couponHeat: number("Heat input of the test coupon", HEAT_INPUT),
    rule: word('"ASME IX" (default) or "ISO 15614-1"', HEAT_RULES, "ASME IX"),
  },
  gives: row({ least: columnOrBlank("minimum", HEAT_INPUT), most: columnOrBlank("maximum", HEAT_INPUT) }),
  tex: [
    String.raw`\text{ASME IX:}\quad H \le H_c`,
    String.raw`\text{ISO 15614-1:}\quad 0.75\,H_c \le H \le 1.25\,H_c`,
  ],
  where: { H: "heat input that is covered", H_c: "heat input of the coupon (couponHeat)" },
  validity: `couponHeat above 0. ${GOVERNS} ASME IX: with impact tests no more than the coupon's; without them heat input is no limit. ISO 15614-1 (2017): the maximum counts where impact tests are required, the minimum where hardness is. ${NO_LIMIT} Take both heat inputs by the same formula.`,
  source: "[asme-ix-2010], QW-409.1; [iso-15614-1-2017]",
  unconfirmed:
    "That ASME IX asks for it with impact tests alone, and the 25 % of ISO 15614-1, are from memory: compare them with the standard.",
  related: ["HEAT_INPUT", "HEAT_PULSED", "HEAT_METERED", "COVER_WALL", "COVER_OD"],
  synonyms: ["qualification range", "heat input range", "QW-409.1", "PQR", "WPS", "range of approval"],
  example: { args: [0.4, "ISO 15614-1", "SI"], gives: "0.3, 0.5" },
  calc: ({ couponHeat, rule }) => limits(coveredHeat(couponHeat, rule)),
});

export const QUALIFICATION = family("Qualification", [COVER_WALL, COVER_OD, COVER_HEAT]);
