import { cycle } from "../../taskpane/sheets/cycle";
import { byName, number } from "../bead";
import { computed } from "./computed";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

/** A 1 in × 0.065 in tube of 316L by hand, mm and s: bead 1 mm + 2 walls, v = 1.6·α/b, its dwell by the formula alone. */
const BEAD = 1 + 2 * 1.651;
const SPEED = (1.6 * 5.848) / BEAD;
const TURN = (Math.PI * 25.4) / SPEED;
const DWELL = number(
  "START_DWELL",
  ...byName("START_DWELL", { wall: 1.651, speed: 60 * SPEED, units: "SI" }),
);
const DOWNSLOPE = (3 * BEAD) / SPEED;
const MACHINE = 120 + 30 + DWELL + TURN * (380 / 360) + DOWNSLOPE + 15;
/** Eight hours less 6 electrode changes of 5 min and 2 coupons of 10 min. */
const NET_HOURS = 8 - (6 * 5 + 2 * 10) / 60;
const [LOAD, WALK, AVAILABILITY] = [180, 15, 0.85];

/** Synchronous operator and machines (Niebel; Groover): the slower of the head's cycle and the operator's round. */
function steady(heads: number, load: number): number {
  // One head has no next one to walk to.
  const round = Math.max(load + MACHINE, heads === 1 ? 0 : heads * (load + WALK));
  return (heads * 3600 * NET_HOURS * AVAILABILITY) / round;
}

/** Finite-source queue M/M/1//N, its states added up one by one: the share of time the operator works. */
function random(heads: number, load: number): number {
  // As above, one head has no next one to walk to.
  const service = heads === 1 ? load : load + WALK;
  const r = service / MACHINE;
  let [weight, total] = [1, 1];
  for (let n = 1; n <= heads; n += 1) {
    weight *= (heads - n + 1) * r;
    total += weight;
  }
  return ((1 - 1 / total) * 3600 * NET_HOURS * AVAILABILITY) / service;
}

let sheet: OpenSheet;
beforeAll(async () => {
  sheet = await openSheet(cycle, "US");
});

test.each([
  ["dwell", DWELL],
  ["downslope", DOWNSLOPE],
  ["machine", MACHINE],
  ["net_hours", NET_HOURS],
  ["heads_busy", Math.floor((LOAD + MACHINE) / (LOAD + WALK))],
  ["shift_steady", 2 * steady(2, LOAD)],
  ["shift_random", 2 * random(2, LOAD)],
  ["shifts", Math.ceil(600 / (2 * steady(2, LOAD)))],
  ["shifts_random", Math.ceil(600 / (2 * random(2, LOAD)))],
  ["one_steady", steady(2, LOAD)],
  ["gain_head", steady(3, LOAD) - steady(2, LOAD)],
  ["gain_load", steady(2, LOAD - 30) - steady(2, LOAD)],
  ["labor", 8 / steady(2, LOAD)],
  ["labor_lot", (600 * 8) / steady(2, LOAD)],
  ["labor_cost", (48 * 8) / steady(2, LOAD)],
])("%s, by hand", (name, expected) => {
  expect(Math.abs(Number(sheet.value(name)) / expected - 1)).toBeLessThan(1e-8);
});

test("joints a shift for one to six heads: steady, random and how busy the operator is", () => {
  for (let heads = 1; heads <= 6; heads += 1) {
    const [count, even, uneven, busy] = [0, 1, 2, 3].map((c) =>
      Number(sheet.beside("outputs", c, heads - 1)),
    );
    expect(count).toBe(heads);
    expect(even).toBeCloseTo(steady(heads, LOAD), 6);
    expect(uneven).toBeCloseTo(random(heads, LOAD), 6);
    expect(busy).toBeCloseTo((steady(heads, LOAD) * (LOAD + WALK)) / (3600 * NET_HOURS * AVAILABILITY), 9);
  }
});

test("the two-way table: load time down, heads across", () => {
  [0.5, 0.75, 1, 1.25, 1.5].forEach((share, row) => {
    expect(sheet.beside("two_way", 0, row)).toBeCloseTo(share * LOAD, 9);
    for (let heads = 1; heads <= 6; heads += 1) {
      expect(sheet.beside("two_way", heads, row)).toBeCloseTo(steady(heads, share * LOAD), 6);
    }
  });
});

test("the phases: bore purge in the prepurge, load as handling", () => {
  const lasts = [150, DWELL, TURN, (TURN * 20) / 360, DOWNSLOPE, 15, 180];
  lasts.forEach((seconds, row) => {
    expect(sheet.beside("phases", 2, row)).toBeCloseTo(seconds, 6);
  });
});

test("every check holds, the summary counts them, and no cell holds an error", async () => {
  const { cells } = await sheet.form();
  const checks = [...cells.keys()].filter((name) => name.startsWith("check_"));
  for (const name of checks) expect([name, sheet.value(name)]).toEqual([name, "✓ holds"]);
  expect(sheet.value("summary")).toMatch(new RegExp(`^✓ All ${String(checks.length)} checks hold\\.`));
  for (const name of cells.keys()) {
    expect([name, String(sheet.value(name)).startsWith("#")]).toEqual([name, false]);
  }
});

describe("what a planner changes", () => {
  afterEach(() => {
    expect(sheet.holds()).toBe(true);
  });

  test("the bottleneck is where more is gained: one more head, or 30 s less load", () => {
    // Two heads keep the operator 99 % busy: a third gives 1 %, 30 s less load 8 %, so the heads hold nothing back.
    const [one, more, less] = [steady(2, LOAD), steady(3, LOAD), steady(2, LOAD - 30)];
    expect([Math.round(100 * (more / one - 1)), Math.round(100 * (less / one - 1))]).toEqual([1, 8]);
    expect(sheet.value("bottleneck")).toBe("The operator");
    const before = Number(sheet.value("shift_steady"));
    sheet.having({ heads: "1" }, () => {
      expect(sheet.value("gain_head")).toBeCloseTo(steady(2, LOAD) - steady(1, LOAD), 9);
      expect(sheet.value("bottleneck")).toBe("The heads");
    });
    sheet.having({ heads: "3", load: "60" }, () => {
      expect(sheet.value("bottleneck")).toBe("The heads");
      expect(Number(sheet.value("shift_steady"))).toBeGreaterThan(before);
    });
    // The operator is busy throughout, so no head helps, and 30 s of 1015 are under 5 %.
    sheet.having({ load: "1000" }, () => {
      expect(sheet.value("gain_head")).toBeCloseTo(0, 9);
      expect(sheet.value("gain_load")).toBeCloseTo(steady(2, 970) - steady(2, 1000), 9);
      expect(sheet.value("bottleneck")).toBe("Balanced");
    });
  });

  test("a gain under 5 % is none, at 5 % it counts", () => {
    // Operator-bound: two heads take 2·(load + 15) s, so 30 s less gains 30/(load + 15 − 30): 5 % at 615 s of load.
    const gain = (load: number): number => steady(2, load - 30) / steady(2, load) - 1;
    expect(gain(615)).toBeCloseTo(0.05, 12);
    for (const [load, bottleneck] of [
      ["614.9", "The operator"],
      ["615.1", "Balanced"],
    ] as const) {
      sheet.having({ load }, () => {
        expect([load, sheet.value("bottleneck")]).toEqual([load, bottleneck]);
      });
    }
  });

  test("calendar days skip the days the shop is closed", () => {
    // 10 shifts, one a day, five days a week: Monday to Friday of the week after, 12 days.
    sheet.having({ joints: String(Math.floor(10 * 2 * steady(2, LOAD))) }, () => {
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

  test("a typed speed takes the place of the suggested one, and its label tells", () => {
    expect(sheet.beside("speed", -1)).toBe("Travel speed, suggested");
    sheet.having({ speed_typed: "4" }, () => {
      expect([sheet.value("speed"), sheet.beside("speed", -1)]).toEqual([4, "Travel speed, typed"]);
      // 1·π in of travel at 4 in/min and 20° more.
      expect(sheet.beside("phases", 2, 2)).toBeCloseTo((Math.PI / 4) * 60, 9);
      expect(sheet.holds()).toBe(true);
    });
  });

  test("conversion keeps every time and count", async () => {
    const plan = await openSheet(cycle, "US");
    const names = ["machine", "shift_steady", "shift_random", "labor", "days"];
    const before = names.map((name) => Number(plan.value(name)));
    expect(await plan.convert()).toBe("");
    expect(plan.value("wall")).toBeCloseTo(1.651, 12);
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
        "bead speed overlap dwell downslope machine gain_head gain_load shift_steady shifts shifts_random days labor_lot labor labor_cost";
      for (const name of waiting.split(" ")) expect([name, sheet.value(name)]).toEqual([name, ""]);
      expect(sheet.value("check_tube")).toMatch(/^▲ (od|wall) = .+: /);
      expect(sheet.value("check_crew")).toBe("▲ no machine time");
      expect(sheet.value("bottleneck")).toBe("no cycle to judge");
    });
  });

  test("heads that need no operator are named by the check of the crew", () => {
    sheet.having({ load: "0", walk: "0" }, () => {
      expect(sheet.value("heads_busy")).toBe("#N/A");
      expect(sheet.value("check_crew")).toMatch(/^▲ loadSeconds = 0 s: /);
    });
  });

  /** What is typed, how it is told, and what does not stand. */
  test.each<[Record<string, string>, RegExp, string]>([
    [{ operators: "0" }, /Operators: 0 is not between 1 and 100/, "shift_steady shifts days labor labor_lot"],
    [{ joints: "0" }, /Joints to make: 0 is not between 1 and/, "shifts shifts_random days labor_lot"],
    [{ joints: "-600" }, /Joints to make: -600 is not between 1 and/, "shifts shifts_random days labor_lot"],
    [
      { hours: "80" },
      /Hours of a shift: 80 is not between 1 and 16 h/,
      "net_hours shift_steady shifts days labor",
    ],
    [{ days_a_week: "9" }, /Working days a week: 9 is not between 1 and 7/, "days"],
    [{ shifts_a_day: "4" }, /Shifts a day: 4 is not between 1 and 3/, "days"],
    [
      { prepurge: "-30" },
      /Prepurge: -30 is not 0, or between 1 and 600 s/,
      "machine shift_steady shifts days",
    ],
    [
      { prepurge: "0.0208333" },
      /type seconds: the sheet turns 0:30 into a fraction of a day/,
      "machine days",
    ],
    [{ changes: "-6" }, /Electrode changes a shift: -6 is not between 0 and 60/, "net_hours shifts days"],
    [{ rate: "-48" }, /Labor, an hour: -48 is not between 1 and 1000/, "labor_cost"],
    [
      { availability: "85" },
      /Availability, fraction of the shift: 85 is not between 0\.2 and 1/,
      "shifts days",
    ],
    [{ heads: "2.5" }, /whole numbers/, "shifts days"],
    [{ joints: "10.5" }, /whole numbers/, ""],
    [{ hours: "13", shifts_a_day: "2" }, /the shifts of a day are longer than the day/, ""],
    [{ changes: "60", change_minutes: "8" }, /changes and coupons take the whole shift/, "shifts days labor"],
  ])("%j is told", (typed, sentence, empty) => {
    sheet.having(typed, () => {
      expect(sheet.value("summary")).toMatch(/^▲ /);
      expect(sheet.value("summary")).toMatch(sentence);
      for (const name of empty.split(" ").filter((one) => one !== "")) {
        expect([name, typeof sheet.value(name)]).toEqual([name, "string"]);
      }
    });
  });

  test("two shifts of twelve hours fill the day, and no more", () => {
    sheet.having({ hours: "12", shifts_a_day: "2" }, () => {
      expect(sheet.holds()).toBe(true);
    });
    sheet.having({ hours: "12.1", shifts_a_day: "2" }, () => {
      expect(sheet.value("check_hours")).toBe("▲ the shifts of a day are longer than the day");
    });
  });

  test("stops that take more than the shift are refused in words", () => {
    sheet.having({ changes: "60", change_minutes: "10" }, () => {
      expect(sheet.value("check_hours")).toBe("▲ changes and coupons take the whole shift");
      expect(sheet.message("one_steady")).toMatch(/^hours = /);
    });
  });

  test("one head is one head", () => {
    const heads = computed(sheet).filter(({ text }) => /^\d heads?$/.test(text));
    expect(heads.map(({ text }) => text)).toEqual([
      "1 head",
      "2 heads",
      "3 heads",
      "4 heads",
      "5 heads",
      "6 heads",
    ]);
  });
});
