/** Every verdict of the ready sheets with its value at, just under and just over its limit, in both systems. */

import type { Units } from "../../src/quantity";
import { TEMPLATES } from "../../taskpane/sheets";
import { cycle } from "../../taskpane/sheets/cycle";
import { gas } from "../../taskpane/sheets/gas";
import { procedure } from "../../taskpane/sheets/procedure";
import { byName, number, table } from "../bead";
import { isFurtherWhatIf } from "./further-what-if";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

const SYSTEMS = ["US", "SI"] as const;
/** Far more than a sheet's slack for rounding, far less than anyone measures. */
const LITTLE = 1e-6;
const [UNDER, OVER] = [1 - LITTLE, 1 + LITTLE];

const SHEETS = TEMPLATES.flatMap((template) =>
  SYSTEMS.map((units) => [template.id, units, template] as const),
);

describe.each(SHEETS)("what is typed in %s in %s", (_, units, template) => {
  const plan = template.plan(units);
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(template, units);
  });

  const ranges = plan.ranges
    .map((range) => [plan.names.find(({ at }) => at === range.at)?.name ?? range.at, range] as const)
    .filter(([name]) => !isFurtherWhatIf(name));

  test.each(ranges)("%s: its range is told from just outside on", (name, { least, most, message }) => {
    // "0, or between 1 and 600 s": nothing but 0 below the least that a person could mean.
    const [, from = ""] = /^0, or between (\S+) and/.exec(message) ?? [];
    const lowest = from === "" ? least : Number(from);
    const inside = [lowest, most, ...(from === "" ? [] : [0])];
    const outside = [lowest === 0 ? -LITTLE : lowest * UNDER, most * OVER, ...(least === 0 ? [-1] : [])];
    const told = (typed: number): boolean =>
      said(sheet, "check_typed", { [name]: typed }).includes(`: ${String(typed)} is not ${message}`);
    expect(inside.map(told)).toEqual(inside.map(() => false));
    expect(outside.map(told)).toEqual(outside.map(() => true));
  });
});

/** What a check says with some cells typed. */
function said(sheet: OpenSheet, check: string, typed: Readonly<Record<string, string | number>>): string {
  const contents = Object.entries(typed).map(([name, content]) => [name, String(content)] as const);
  let sentence = "";
  sheet.having(Object.fromEntries(contents), () => {
    sentence = String(sheet.value(check));
  });
  return sentence;
}

const HOLDS = /^✓ holds$/;

describe.each(SYSTEMS)("the verdicts of the procedure sheet in %s", (units: Units) => {
  const inch = units === "US" ? 1 : 25.4;
  let sheet: OpenSheet;
  const value = (name: string): number => Number(sheet.value(name));
  beforeAll(async () => {
    sheet = await openSheet(procedure, units);
  });

  test("heat input: the qualified maximum itself holds", () => {
    const heat = value("heat");
    expect(said(sheet, "check_heat", { heat_most: heat })).toMatch(HOLDS);
    expect(said(sheet, "check_heat", { heat_most: heat * OVER })).toMatch(HOLDS);
    expect(said(sheet, "check_heat", { heat_most: heat * UNDER })).toMatch(
      /^▲ above the qualified maximum: /,
    );
  });

  test("what if: at the maximum itself it is within", () => {
    const judged = (heat: number): unknown => {
      let middle: unknown;
      sheet.having({ heat_most: String(heat) }, () => {
        middle = sheet.beside("whatif_step", 3, 4);
      });
      return middle;
    };
    const heat = value("heat");
    expect([heat, heat * OVER, heat * UNDER].map(judged)).toEqual([
      "within the maximum",
      "within the maximum",
      "ABOVE the maximum",
    ]);
  });

  test("purge flow: laminar up to the limit itself", () => {
    const laminar = value("laminar");
    expect(said(sheet, "check_flow", { purge_flow: laminar })).toMatch(HOLDS);
    expect(said(sheet, "check_flow", { purge_flow: laminar * UNDER })).toMatch(HOLDS);
    expect(said(sheet, "check_flow", { purge_flow: laminar * OVER })).toMatch(/^▲ above laminar/);
  });

  test("bore pressure: half of the blow-out pressure itself holds", () => {
    let vent = 0;
    // The vent that the formula asks for just that pressure.
    sheet.having({ pressure_wanted: String(value("ceiling") / 2) }, () => {
      vent = value("vent_wanted");
    });
    expect(said(sheet, "check_vent", { vent })).toMatch(HOLDS);
    expect(said(sheet, "check_vent", { vent: vent * OVER })).toMatch(HOLDS);
    expect(said(sheet, "check_vent", { vent: vent * UNDER })).toMatch(/^▲ bore pressure above half/);
  });

  test("vent: one as wide as the bore is none", () => {
    const bore = value("bore");
    expect(said(sheet, "check_vent", { vent: bore })).toBe("▲ the vent is not smaller than the bore");
    expect(said(sheet, "check_vent", { vent: bore * OVER })).toBe("▲ the vent is not smaller than the bore");
    expect(said(sheet, "check_vent", { vent: bore * UNDER })).toMatch(HOLDS);
  });

  test("dams: half their spacing may be just the distance, whether practice or heat asks for it", () => {
    const near = /^▲ dams too near the weld/;
    // 6 in, or 150 mm, as typed.
    const least = units === "US" ? 6 : 150;
    expect(said(sheet, "check_dams", { dam_spacing: 2 * least })).toMatch(HOLDS);
    expect(said(sheet, "check_dams", { dam_spacing: 2 * least * OVER })).toMatch(HOLDS);
    expect(said(sheet, "check_dams", { dam_spacing: 2 * least * UNDER })).toMatch(near);
    const practice = units === "US" ? 0.5 : 13;
    const heat = value("dam_heat");
    expect(heat).toBeGreaterThan(practice);
    const spaced = (spacing: number): string =>
      said(sheet, "check_dams", { dam_least: practice, dam_spacing: spacing });
    expect(spaced(2 * heat)).toMatch(HOLDS);
    expect(spaced(2 * heat * OVER)).toMatch(HOLDS);
    expect(spaced(2 * heat * UNDER)).toMatch(near);
  });

  test("dam temperature: what the dam stands is what the tube reaches at its place, and no less", () => {
    // The formula of the temperature, which has checks of its own, half way between dams at the typed spacing.
    const practice = units === "US" ? 0.5 : 13;
    const spacing = units === "US" ? 6 : 150;
    const cells = byName("DAM_TEMPERATURE", {
      distance: spacing / 2,
      od: sheet.value("od"),
      wall: sheet.value("wall"),
      amps: value("mean_of_turn"),
      volts: value("volts"),
      speed: value("speed"),
      extraSeconds:
        Number(sheet.beside("phases", 2, 1)) + Number(sheet.beside("phases", 2, 3)) + value("downslope"),
      material: "316L",
      units,
    });
    const limit = number("DAM_TEMPERATURE", ...cells);
    const judged = (dam_limit: number): string =>
      said(sheet, "check_dams", { dam_least: practice, dam_spacing: spacing, dam_limit });
    expect(judged(limit * OVER)).toMatch(HOLDS);
    expect(judged(limit * UNDER)).toMatch(/^▲ dams too near the weld/);
  });

  test("a bore typed: within 4 % of OD less two walls", () => {
    const bore = value("bore");
    for (const typed of [bore, 1.04 * bore, 0.96 * bore]) {
      expect([typed, said(sheet, "check_purge", { bore_typed: typed })]).toEqual([typed, "✓ holds"]);
    }
    for (const typed of [1.04 * bore * OVER, 0.96 * bore * UNDER]) {
      expect(said(sheet, "check_purge", { bore_typed: typed })).toMatch(/^▲ the bore typed is not OD/);
    }
  });

  test("tube: a diameter of 200 walls may be, and no larger one", () => {
    const odd = "▲ outside diameter and wall do not belong together: check the units of both";
    const judged = (od: number): string => said(sheet, "check_tube", { od: od * inch, wall: 0.02 * inch });
    expect([4, 4 * UNDER, 4 * OVER].map(judged)).toEqual(["✓ holds", "✓ holds", odd]);
  });

  test("standoff: the tube's tolerance and runout leave a gap", () => {
    // Half of both comes off the gap: 2·gap − runout leaves nothing.
    const all = 2 * value("standoff") - Number(sheet.value("runout"));
    expect(said(sheet, "check_gap", { od_tolerance: all * UNDER })).toMatch(HOLDS);
    expect(said(sheet, "check_gap", { od_tolerance: all * OVER })).toMatch(/^▲ /);
    expect(said(sheet, "check_gap", { od_tolerance: all })).toMatch(/^▲ /);
  });

  test("window: a bead that takes its minimum itself holds, a narrower one does not", () => {
    const [wall, speed] = [Number(sheet.value("wall")), value("speed")];
    const arc = { wall, speed, volts: value("volts"), arcSize: value("arc_spot"), units };
    const [[least = NaN] = []] = table("AMPS_WINDOW", ...byName("AMPS_WINDOW", arc)) as number[][];
    const bead = number("MELT_WIDTH", ...byName("MELT_WIDTH", { ...arc, amps: least }));
    const judged = (width: number): string =>
      said(sheet, "check_bead", { bead_typed: width, speed_typed: speed });
    expect(judged(bead * OVER)).toMatch(HOLDS);
    expect(judged(bead * UNDER)).toMatch(/^▲ the current is below the window/);
  });

  test("oxygen: the purge gas itself cannot be reached", () => {
    expect(said(sheet, "check_purge", { supply_ppm: 50 })).toMatch(/^▲ ppm = 50 ppm: /);
    expect(said(sheet, "check_purge", { supply_ppm: 50 * OVER })).toMatch(/^▲ ppm = 50 ppm: /);
    expect(said(sheet, "check_purge", { supply_ppm: 50 * UNDER })).toMatch(HOLDS);
  });
});

describe.each(SYSTEMS)("the verdicts of the gas estimate in %s", (units: Units) => {
  const inch = units === "US" ? 1 : 25.4;
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(gas, units);
  });
  afterEach(() => {
    expect(sheet.holds()).toBe(true);
  });
  const ofLine = (columns: number, content: string | number): string => {
    let sentence = "";
    sheet.undone(() => {
      sheet.typeBeside("takeoff", columns, 2, String(content));
      sentence = String(sheet.value("check_list"));
    });
    return sentence;
  };

  test("a line has up to 36 000 joints", () => {
    expect(ofLine(-4, 36_000)).toMatch(HOLDS);
    expect(ofLine(-4, 35_999)).toMatch(HOLDS);
    expect(ofLine(-4, 36_001)).toMatch(/^▲ a line has more than 36000 joints/);
  });

  test("a line's diameter may be 200 walls, and no larger", () => {
    const walls = 200 * Number(sheet.beside("takeoff", -2, 2));
    expect(ofLine(-3, walls)).toMatch(HOLDS);
    expect(ofLine(-3, walls * UNDER)).toMatch(HOLDS);
    expect(ofLine(-3, walls * OVER)).toMatch(/^▲ 1 of 6 lines not counted/);
  });

  test("a line's wall leaves a bore", () => {
    expect(ofLine(-2, 0.5 * inch * UNDER)).toMatch(HOLDS);
    expect(ofLine(-2, 0.5 * inch)).toMatch(/^▲ 1 of 6 lines not counted/);
  });

  test("purge: the gas itself cannot be reached", () => {
    expect(said(sheet, "check_purge", { supply_ppm: 50 })).toMatch(/^▲ ppm = 50 ppm: /);
    expect(said(sheet, "check_purge", { supply_ppm: 50 * UNDER })).toMatch(HOLDS);
  });

  test("supply: a cylinder that is left full gives no gas", () => {
    const full = Number(sheet.value("full_pressure"));
    expect(said(sheet, "check_supply", { residual: full })).toMatch(/^▲ /);
    expect(said(sheet, "check_supply", { residual: full * OVER })).toMatch(/^▲ /);
    expect(said(sheet, "check_supply", { residual: full * UNDER })).toMatch(HOLDS);
  });
});

describe.each(SYSTEMS)("the verdicts of the cycle plan in %s", (units: Units) => {
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(cycle, units);
  });
  afterEach(() => {
    expect(sheet.holds()).toBe(true);
  });

  test("the shifts of a day may fill it", () => {
    const judged = (hours: number): string => said(sheet, "check_hours", { hours, shifts_a_day: 2 });
    expect([12, 12 * UNDER, 12 * OVER].map(judged)).toEqual([
      "✓ holds",
      "✓ holds",
      expect.stringMatching(/^▲ the shifts of a day are longer than the day/),
    ]);
  });

  test("changes and coupons may take almost the whole shift", () => {
    // 48 changes of 10 minutes are the 8 hours of the shift.
    const judged = (minutes: number): string =>
      said(sheet, "check_hours", { changes: 48, coupons: 0, change_minutes: minutes });
    expect([10, 10 * OVER, 10 * UNDER].map(judged)).toEqual([
      "▲ changes and coupons take the whole shift",
      "▲ changes and coupons take the whole shift",
      "✓ holds",
    ]);
  });

  test("what is counted is whole", () => {
    for (const name of ["joints", "operators", "shop_heads", "days_a_week", "changes", "coupons"]) {
      const usual = Number(sheet.value(name));
      for (const off of [-LITTLE, LITTLE]) {
        expect([name, said(sheet, "check_whole", { [name]: usual + off })]).toEqual([
          name,
          expect.stringMatching(/^▲ .* are whole numbers$/),
        ]);
      }
      expect(said(sheet, "check_whole", { [name]: usual })).toMatch(HOLDS);
    }
  });

  test("tube: a diameter of 200 walls may be, and no larger one", () => {
    const inch = units === "US" ? 1 : 25.4;
    const odd = "▲ outside diameter and wall do not belong together: check the units of both";
    const judged = (od: number): string => said(sheet, "check_tube", { od: od * inch, wall: 0.02 * inch });
    expect([4, 4 * UNDER, 4 * OVER].map(judged)).toEqual(["✓ holds", "✓ holds", odd]);
  });

  test("a finish by the day itself is in time", () => {
    // Three shifts from Thursday, four at random times: done on Monday or Tuesday, days 46 027 and 46 028.
    const judged = (day: number): string =>
      said(sheet, "check_calendar", { start_date: 46_023, finish_by: day });
    expect([46_029, 46_028, 46_027, 46_026].map(judged)).toEqual([
      "✓ holds",
      "✓ holds",
      "▲ in time only at steady times",
      expect.stringMatching(/^▲ too late/),
    ]);
  });
});
