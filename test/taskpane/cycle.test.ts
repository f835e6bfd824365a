import type { Units } from "../../src/quantity";
import { cycle } from "../../taskpane/sheets/cycle";
import { table } from "../bead";
import {
  daysOf,
  fixed,
  GAS,
  LOAD,
  machineOf,
  NET_HOURS,
  randomShared,
  steadyOfOne,
  steadyShared,
  WALK,
  WALLS,
  weldOf,
} from "./cycle-by-hand";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

const ENDS = ["", "_b", "_c", "_d"] as const;

describe.each(["US", "SI"] as const)("the example in %s, by hand", (units: Units) => {
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(cycle, units);
  });
  const MACHINE = machineOf(units);
  const shop = { load: LOAD, machine: MACHINE };
  const quick = { load: 120, machine: MACHINE };
  const steady = (heads: number, operators: number, of = shop): number =>
    fixed(heads, operators, (own) => steadyOfOne(own, of));
  const random = (heads: number, operators: number, of = shop): number =>
    fixed(heads, operators, (own) => randomShared(own, 1, of));
  /** Joints to start and three changeovers of 20 min, one operator's time each, of two operators' net hours. */
  const shifts = (joints: number): number => Math.ceil(600 / joints + (3 * 20) / 60 / (2 * NET_HOURS));
  const near = (name: string, expected: number): void => {
    expect([name, Math.abs(Number(sheet.value(name)) / expected - 1) < 1e-8]).toEqual([name, true]);
  };

  test("the weld and the cycle", () => {
    const { dwell, turn, downslope, arc } = weldOf(WALLS[units]);
    near("dwell", dwell);
    near("downslope", downslope);
    near("net_hours", NET_HOURS);
    for (const end of ["", "_b", "_c"]) {
      near(`arc_time${end}`, arc);
      near(`machine${end}`, MACHINE);
    }
    // The bore purge in the prepurge, the load as handling.
    const lasts = [GAS[0] + GAS[1], dwell, turn, (turn * 20) / 360, downslope, GAS[2], LOAD];
    lasts.forEach((seconds, row) => {
      expect(sheet.beside("phases", 2, row)).toBeCloseTo(seconds, 6);
    });
  });

  test("as it is: two operators with two heads each", () => {
    near("heads_busy", Math.floor((LOAD + MACHINE) / (LOAD + WALK)));
    near("shift_steady", 2 * steadyOfOne(2, shop));
    near("shift_random", 2 * randomShared(2, 1, shop));
    near("shifts", shifts(steady(4, 2)));
    near("shifts_random", shifts(random(4, 2)));
    near("days", daysOf(shifts(steady(4, 2)), 5));
    near("starts", 600);
    near("changeovers", 3);
    // Hours of both for the joints, and of one for the changeovers, as parts of a shift that has fewer net hours.
    const lot = (2 * 8 * 600) / steady(4, 2) + (1 * 8) / NET_HOURS;
    near("labor_lot", lot);
    near("labor", lot / 600);
    near("labor_cost", (48 * lot) / 600);
  });

  test("what-ifs: six heads, and two minutes of load; the fourth is empty", () => {
    near("shift_steady_b", steady(6, 2));
    near("shift_random_b", random(6, 2));
    near("shift_steady_c", steady(4, 2, quick));
    near("shift_random_c", random(4, 2, quick));
    expect(sheet.value("more_steady_b")).toBeCloseTo(steady(6, 2) - steady(4, 2), 8);
    expect(sheet.value("more_random_b")).toBeCloseTo(random(6, 2) - random(4, 2), 8);
    expect(sheet.value("more_steady_c")).toBeCloseTo(steady(4, 2, quick) - steady(4, 2), 8);
    const lot = (of: number): number => (2 * 8 * 600) / of + 8 / NET_HOURS;
    expect(sheet.value("more_cost_c")).toBeCloseTo(
      (48 * (lot(steady(4, 2, quick)) - lot(steady(4, 2)))) / 600,
      8,
    );
    for (const name of ["shift_steady", "shift_random", "shifts", "days", "labor_cost", "bottleneck"]) {
      expect([name, sheet.value(`${name}_d`)]).toEqual([name, ""]);
    }
  });

  test("four levers, gain and rank", () => {
    const less = { ...shop, machine: MACHINE - 0.1 * GAS[0] };
    const gains = {
      head: steady(5, 2) - steady(4, 2),
      operator: steady(4, 3) - steady(4, 2),
      load: steady(4, 2, { ...shop, load: 150 }) - steady(4, 2),
      purge: steady(4, 2, less) - steady(4, 2),
    };
    const ranked = Object.values(gains).sort((a, b) => b - a);
    for (const [name, gain] of Object.entries(gains)) {
      expect(sheet.value(`gain_${name}`)).toBeCloseTo(gain, 8);
      expect(sheet.value(`lever_${name}`)).toBe(`${String(ranked.indexOf(gain) + 1)}. +${gain.toFixed(1)}`);
    }
    // 30 s less load gives 8 %, everything else under 1 %.
    expect(sheet.value("bottleneck")).toBe("The load");
  });

  /** Columns of a scenario from that of the heads: days, joints at steady times, joints at random times. */
  const [DAYS, STEADY, RANDOM] = [1, 7, 11] as const;

  test("heads down, every scenario that is filled in across: days and joints a shift", () => {
    const crews = [shop, shop, quick];
    [1, 2, 3, 4, 5, 6, 7, 8, 10, 12].forEach((heads, row) => {
      expect(sheet.beside("finish_heads", 0, row)).toBe(heads);
      crews.forEach((crew, scenario) => {
        const [even, uneven] = [steady(heads, 2, crew), random(heads, 2, crew)];
        expect(Number(sheet.beside("finish_heads", STEADY + scenario, row))).toBeCloseTo(even, 6);
        expect(Number(sheet.beside("finish_heads", RANDOM + scenario, row))).toBeCloseTo(uneven, 6);
        const [days, late] = [even, uneven].map((made) => daysOf(shifts(made), 5));
        expect(sheet.beside("finish_heads", DAYS + scenario, row)).toBe(
          `${String(days)}${days === late ? "" : `–${String(late)}`}`,
        );
      });
      // The last is not filled in.
      for (const column of [DAYS, STEADY, RANDOM]) {
        expect(sheet.beside("finish_heads", column + 3, row)).toBe("");
      }
    });
  });
});

let sheet: OpenSheet;
beforeAll(async () => {
  sheet = await openSheet(cycle, "US");
});
const MACHINE = machineOf("US");
const shop = { load: LOAD, machine: MACHINE };

test("every check holds, the summary counts them, and no cell holds an error", async () => {
  const { cells } = await sheet.form();
  const checks = [...cells.keys()].filter((name) => name.startsWith("check_"));
  for (const name of checks) expect([name, sheet.value(name)]).toEqual([name, "✓ holds"]);
  expect(sheet.value("summary")).toMatch(new RegExp(`^✓ All ${String(checks.length)} checks hold\\.`));
  for (const name of cells.keys()) {
    expect([name, String(sheet.value(name)).startsWith("#")]).toEqual([name, false]);
  }
});

test("the first hour: one operator and two heads, minute by minute, as lines above each other", () => {
  const course = table("CREW_COURSE", 2, LOAD, MACHINE, WALK, 1, 60, 1) as number[][];
  expect(course).toHaveLength(61);
  course.forEach(([time, joints, operator = 0, ...heads], row) => {
    expect([time, joints]).toEqual([sheet.beside("course", 0, row), sheet.beside("course", 1, row)]);
    const steps = [operator > 0 ? 2 : operator < 0 ? 1 : 0, ...heads];
    steps.forEach((step, line) => {
      // Columns of the lines begin behind eight of the course and the minute.
      expect(sheet.beside("course", 11 + line, row)).toBeCloseTo(3 - (line + 1) + 0.35 * step, 12);
    });
    expect(sheet.beside("course", 14, row)).toBe(0);
  });
});

describe("what a planner changes", () => {
  afterEach(() => {
    expect(sheet.holds()).toBe(true);
  });

  test("a blank cell of a what-if follows the first, and the column beside it shows what is used", () => {
    // Typed cells of B stand one column on from the first, what it uses five.
    expect([sheet.value("load_b"), sheet.beside("load", 5)]).toEqual(["", 180]);
    sheet.having({ load: "200" }, () => {
      expect(sheet.beside("load", 5)).toBe(200);
      expect(sheet.beside("load", 6)).toBe(120);
      expect(sheet.value("shift_steady_b")).toBeCloseTo(2 * steadyOfOne(3, { ...shop, load: 200 }), 8);
    });
  });

  test("a what-if begins with its first typed cell and ends with its last", () => {
    sheet.having({ operators_d: "3" }, () => {
      expect(sheet.value("shift_steady_d")).toBeCloseTo(
        fixed(4, 3, (own) => steadyOfOne(own, shop)),
        8,
      );
      expect(sheet.holds()).toBe(true);
    });
    expect(sheet.value("shift_steady_d")).toBe("");
    sheet.having({ shop_heads_b: "" }, () => {
      expect(sheet.value("shift_steady_b")).toBe("");
      expect(sheet.holds()).toBe(true);
    });
  });

  test("three operators share four heads", () => {
    sheet.having({ operators: "3", heads_are: "shared" }, () => {
      expect(sheet.value("shift_steady")).toBeCloseTo(steadyShared(4, 3, shop), 8);
      expect(sheet.value("shift_random")).toBeCloseTo(randomShared(4, 3, shop), 8);
      // The fourth operator gives each head one: 4/(load + machine).
      expect(sheet.value("gain_operator")).toBeCloseTo(
        steadyShared(4, 4, shop) - steadyShared(4, 3, shop),
        8,
      );
      expect(sheet.holds()).toBe(true);
    });
  });

  test("more operators than fixed heads: those without a head make nothing", () => {
    sheet.having({ operators: "5" }, () => {
      expect(sheet.value("shift_steady")).toBeCloseTo(4 * steadyOfOne(1, shop), 8);
    });
  });

  test("the bottleneck is the lever that gains most, if it gains 5 %", () => {
    sheet.having({ shop_heads: "2" }, () => {
      expect(sheet.value("gain_head")).toBeCloseTo(steadyOfOne(2, shop) - steadyOfOne(1, shop), 6);
      expect(sheet.value("bottleneck")).toBe("The heads");
    });
    // Shared heads without end: operators hold it back.
    sheet.having({ shop_heads: "12", heads_are: "shared" }, () => {
      expect(sheet.value("bottleneck")).toBe("The crew");
    });
    // Heads bound, fixed to operators who have time: neither gains 5 % but the heads.
    sheet.having({ operators: "20", shop_heads: "20", purge: "5400", load: "400" }, () => {
      // A tenth of 5400 s off a cycle of about 5900 s is 10 %.
      expect(sheet.value("bottleneck")).toBe("The purge");
    });
    sheet.having({ operators: "40", shop_heads: "40", load: "1000", purge: "0" }, () => {
      expect(sheet.value("bottleneck")).toBe("Balanced");
    });
  });

  test("a gain under 5 % is none, at 5 % it counts", () => {
    // Forty operators with a head each: 30 s less gain 30/(load + machine − 30), 5 % at 630 s; another head gives 2.5 %.
    for (const [cycle, bottleneck] of [
      [629.9, "The load"],
      [630.1, "Balanced"],
    ] as const) {
      sheet.having({ operators: "40", shop_heads: "40", load: String(cycle - MACHINE) }, () => {
        expect([cycle, sheet.value("bottleneck")]).toEqual([cycle, bottleneck]);
      });
    }
  });

  test("rejects ask for more joints: 600 of which 2 % fail are 613 to start", () => {
    sheet.having({ reject_rate: "0.02" }, () => {
      // 600/0.98 = 612.2.
      expect(sheet.value("starts")).toBe(613);
      const lot = (2 * 8 * 613) / (2 * steadyOfOne(2, shop)) + 8 / NET_HOURS;
      expect(sheet.value("labor_lot")).toBeCloseTo(lot, 8);
      expect(sheet.value("labor")).toBeCloseTo(lot / 600, 8);
    });
  });

  test("learning: the load typed is the first joint's, the mean of the lot falls by the model that is named", () => {
    expect(sheet.value("learning")).toBe("none");
    sheet.having({ learn_rate: "0.95", joints: "64" }, () => {
      // Cumulative average, 64 = 2⁶ joints: 180·0.95⁶.
      expect(sheet.value("load_mean")).toBeCloseTo(180 * 0.95 ** 6, 8);
      expect(sheet.value("learning")).toBe("95% average");
      expect(sheet.value("shift_steady")).toBeCloseTo(
        2 * steadyOfOne(2, { ...shop, load: 180 * 0.95 ** 6 }),
        8,
      );
      sheet.having({ learn_model: "unit" }, () => {
        let sum = 0;
        for (let n = 1; n <= 64; n += 1) sum += n ** Math.log2(0.95);
        expect(sheet.value("load_mean")).toBeCloseTo((180 * sum) / 64, 8);
        expect(sheet.value("learning")).toBe("95% unit");
      });
    });
  });

  test("changeovers: from the list as listed or grouped, or typed", () => {
    // 1 × .065, 1-1/2, 1, 2: three as listed; three sizes, so two when grouped.
    expect([sheet.value("setups_listed"), sheet.value("setups_grouped"), sheet.value("changeovers")]).toEqual(
      [3, 2, 3],
    );
    sheet.having({ list_order: "grouped" }, () => {
      expect(sheet.value("changeovers")).toBe(2);
    });
    sheet.having({ changeovers_typed: "40" }, () => {
      expect(sheet.value("changeovers")).toBe(40);
      // 40·20 min of one operator are 13.3 h of 2·7.17 a shift.
      const shifts = 600 / (2 * steadyOfOne(2, shop)) + (40 * 20) / 60 / (2 * NET_HOURS);
      expect(sheet.value("shifts")).toBe(Math.ceil(shifts));
    });
    sheet.having({ changeovers_typed: "0" }, () => {
      expect(sheet.value("changeovers")).toBe(0);
    });
  });

  test("a line of the list that cannot be read is told by its row, and nothing is counted without it", () => {
    sheet.undone(() => {
      sheet.typeBeside("joint_counts", 1, 2, "0.05");
      expect(sheet.value("check_list")).toMatch(/^▲ joints = row 3: is no joint: wall = /);
      expect([sheet.value("changeovers"), sheet.value("shifts"), sheet.value("labor_lot")]).toEqual([
        "",
        "",
        "",
      ]);
    });
    // Without a list there are none.
    sheet.undone(() => {
      for (let row = 1; row <= 4; row += 1) {
        for (let column = 0; column < 4; column += 1) sheet.typeBeside("joint_counts", column, row, "");
      }
      expect([sheet.value("changeovers"), sheet.holds()]).toEqual([0, true]);
    });
  });

  test("calendar days skip the days the shop is closed", () => {
    // 10 shifts, one a day, five days a week: Monday to Friday of the week after, 12 days.
    const joints = String(Math.floor(9.9 * 2 * steadyOfOne(2, shop)));
    sheet.having({ joints }, () => {
      expect(sheet.value("shifts")).toBe(10);
      expect(sheet.value("days")).toBe(12);
      sheet.having({ shifts_a_day: "2" }, () => {
        expect(sheet.value("days")).toBe(5);
      });
      // Seven days a week: no day is closed.
      sheet.having({ days_a_week: "7" }, () => {
        expect(sheet.value("days")).toBe(10);
      });
    });
  });

  /** The sign beside the days of the first scenario. */
  const signAt = (row: number): string => String(sheet.beside("finish_heads", 1, row)).replace(/^.* /, "");

  test("a start in the middle of a week, or on a day off, and a date to finish by", () => {
    // Day 46023 is Thursday, January 1, 2026 (day 1 is Sunday, January 1, 1900 but for one day that never was).
    const shifts = 3;
    expect(sheet.value("shifts")).toBe(shifts);
    sheet.having({ start_date: "46023" }, () => {
      // Thursday, Friday, Monday.
      expect([sheet.value("days"), sheet.value("finish")]).toEqual([5, 46_027]);
      // Four shifts at random times: Tuesday.
      expect([sheet.value("shifts_random"), sheet.value("finish_random")]).toEqual([4, 46_028]);
      sheet.having({ finish_by: "46028" }, () => {
        expect([sheet.value("spare"), sheet.value("check_calendar")]).toEqual([0, "✓ holds"]);
        // Four heads do, three do not even at steady times: five shifts and more are Wednesday.
        expect([2, 3].map((row) => signAt(row))).toEqual(["~", "✓"]);
      });
      sheet.having({ finish_by: "46027" }, () => {
        expect(sheet.value("check_calendar")).toBe("▲ in time only at steady times");
        expect(signAt(3)).toBe("~");
      });
      sheet.having({ finish_by: "46026" }, () => {
        expect(sheet.value("check_calendar")).toMatch(/^▲ too late/);
        expect(signAt(3)).toBe("▲");
      });
    });
    // Saturday: work begins on Monday and is done on Wednesday.
    sheet.having({ start_date: "46025" }, () => {
      expect([sheet.value("days"), sheet.value("finish")]).toEqual([5, 46_029]);
    });
    sheet.having({ finish_by: "46026" }, () => {
      expect(sheet.value("check_calendar")).toBe("▲ a finish is wanted, but no start is typed");
    });
  });

  test("a typed speed takes the place of the suggested one, and its label tells", () => {
    expect(sheet.beside("speed", -1)).toBe("Travel speed, suggested");
    sheet.having({ speed_typed: "4" }, () => {
      expect([sheet.value("speed"), sheet.beside("speed", -1)]).toEqual([4, "Travel speed, typed"]);
      // 1·π in of travel at 4 in/min and 20° more.
      expect(sheet.beside("phases", 2, 2)).toBeCloseTo((Math.PI / 4) * 60, 9);
      expect(sheet.holds()).toBe(true);
    });
  });

  test("conversion keeps every time and count, what-ifs included", async () => {
    const plan = await openSheet(cycle, "US");
    plan.type("wall_b", "0.083");
    const names = ["machine", "shift_steady", "shift_random", "labor", "days"].flatMap((name) =>
      ENDS.slice(0, 3).map((end) => `${name}${end}`),
    );
    const before = names.map((name) => Number(plan.value(name)));
    expect(await plan.convert()).toBe("");
    expect(plan.value("wall")).toBeCloseTo(1.651, 12);
    expect(plan.value("wall_b")).toBeCloseTo(2.1082, 12);
    names.forEach((name, i) => {
      expect(plan.value(name)).toBeCloseTo(before[i] ?? NaN, 8);
    });
    expect(plan.holds()).toBe(true);
  });

  test.each([
    ["1", "-0.065"],
    ["1", "1.65"],
    ["", "0.065"],
  ])("od %s and wall %s are no tube: no cycle, no shifts, no cost", (od, wall) => {
    sheet.having({ od, wall }, () => {
      const waiting =
        "bead speed overlap dwell downslope machine gain_head gain_load shift_steady shift_steady_b shifts shifts_random days labor_lot labor labor_cost bottleneck";
      for (const name of waiting.split(" ")) expect([name, sheet.value(name)]).toEqual([name, ""]);
      expect(sheet.value("check_crew")).toBe("▲ no machine time");
      expect(sheet.value("summary")).toMatch(/^▲ /);
    });
  });

  test("a tube of a what-if that is none is told as that one's, and the others stand", () => {
    sheet.having({ wall_b: "0.48", od_b: "0.9" }, () => {
      expect(sheet.value("check_tube")).toMatch(
        /^▲ what-if B: wall = 0\.48 in: must be less than half of od/,
      );
      expect(sheet.value("shift_steady_b")).toBe("");
      expect(sheet.value("shift_steady")).toBeCloseTo(2 * steadyOfOne(2, shop), 8);
    });
  });

  test("two shifts of twelve hours fill the day, and no more", () => {
    sheet.having({ hours: "12", shifts_a_day: "2" }, () => {
      expect(sheet.holds()).toBe(true);
    });
    sheet.having({ hours: "12.1", shifts_a_day: "2" }, () => {
      expect(sheet.value("check_hours")).toMatch(/^▲ the shifts of a day are longer than the day/);
    });
  });

  test("more than eight lines are no picture, and all else stands", () => {
    sheet.having({ operators: "3", shop_heads: "9", heads_are: "shared" }, () => {
      for (let line = 0; line < 8; line += 1) expect(sheet.beside("course", 11 + line, 30)).toBe(0);
      expect(sheet.holds()).toBe(true);
    });
  });
});
