import { cycle } from "../../taskpane/sheets/cycle";
import { computed } from "./computed";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

/** E₁(u) = 4πkhθ/q at v·b/4α = 0.4, found outside this project: the dwell of the suggested speed is b²/(16αu). */
const U = 0.048_377_104_521;

/** A 1 in × 0.065 in tube of 316L by hand, mm and s: bead 1 mm + 2 walls, v = 1.6·α/b. */
const BEAD = 1 + 2 * 1.651;
const SPEED = (1.6 * 5.848) / BEAD;
const TURN = (Math.PI * 25.4) / SPEED;
const DWELL = BEAD ** 2 / (16 * 5.848 * U);
const DOWNSLOPE = (3 * BEAD) / SPEED;
const MACHINE = 120 + 30 + DWELL + TURN * (380 / 360) + DOWNSLOPE + 15;
/** Eight hours less 6 electrode changes of 5 min and 2 coupons of 10 min. */
const NET_HOURS = 8 - (6 * 5 + 2 * 10) / 60;
const [LOAD, WALK, AVAILABILITY] = [180, 15, 0.85];

/** Synchronous operator and machines (Niebel; Groover): the slower of the head's cycle and the operator's round. */
function steady(heads: number, load: number): number {
  const round = Math.max(load + MACHINE, heads * (load + WALK));
  return (heads * 3600 * NET_HOURS * AVAILABILITY) / round;
}

/** Finite-source queue M/M/1//N, its states added up one by one: the share of time the operator works. */
function random(heads: number, load: number): number {
  const r = (load + WALK) / MACHINE;
  let [weight, total] = [1, 1];
  for (let n = 1; n <= heads; n += 1) {
    weight *= (heads - n + 1) * r;
    total += weight;
  }
  return ((1 - 1 / total) * 3600 * NET_HOURS * AVAILABILITY) / (load + WALK);
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
  ["labour", 8 / steady(2, LOAD)],
  ["labour_lot", (600 * 8) / steady(2, LOAD)],
  ["labour_cost", (48 * 8) / steady(2, LOAD)],
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

test("every check is fine and no cell holds an error", async () => {
  const { cells } = await sheet.form();
  for (const name of cells.keys()) {
    if (name.startsWith("check_")) expect([name, sheet.value(name)]).toEqual([name, "fine"]);
    expect([name, String(sheet.value(name)).startsWith("#")]).toEqual([name, false]);
  }
});

describe("what a planner changes", () => {
  test("more heads make the operator the bottleneck, a shorter load frees him", async () => {
    const plan = await openSheet(cycle, "US");
    expect(plan.value("bottleneck")).toBe("The heads");
    plan.type("heads", "3");
    expect(plan.value("bottleneck")).toBe("The operator");
    const before = Number(plan.value("shift_steady"));
    plan.type("load", "60");
    expect(plan.value("bottleneck")).toBe("The heads");
    expect(Number(plan.value("shift_steady"))).toBeGreaterThan(before);
  });

  test("calendar days skip the days the shop is closed", async () => {
    const plan = await openSheet(cycle, "US");
    // 10 shifts, one a day, five days a week: Monday to Friday of the week after, 12 days.
    plan.type("joints", String(Math.floor(10 * 2 * steady(2, LOAD))));
    expect(plan.value("shifts")).toBe(10);
    expect(plan.value("days")).toBe(12);
    plan.type("shifts_a_day", "2");
    expect(plan.value("days")).toBe(5);
  });

  test("conversion keeps every time and count", async () => {
    const plan = await openSheet(cycle, "US");
    const names = ["machine", "shift_steady", "shift_random", "labour", "days"];
    const before = names.map((name) => Number(plan.value(name)));
    expect(await plan.convert()).toBe("");
    expect(plan.value("wall")).toBeCloseTo(1.651, 12);
    names.forEach((name, i) => {
      expect(plan.value(name)).toBeCloseTo(before[i] ?? NaN, 8);
    });
  });

  test.each([
    ["1", "-0.065"],
    ["1", "1.65"],
    ["", "0.065"],
  ])("od %s and wall %s are no tube: no cycle, no shifts, no cost", async (od, wall) => {
    const plan = await openSheet(cycle, "US");
    plan.type("od", od);
    plan.type("wall", wall);
    const waiting =
      "bead speed overlap dwell downslope machine shifts shifts_random days labour_lot labour labour_cost";
    for (const name of waiting.split(" ")) expect([name, plan.value(name)]).toEqual([name, ""]);
    expect(plan.value("check_tube")).toMatch(/^(od|wall) = .+: /);
    expect(plan.value("check_crew")).toBe("waits for the checks above");
    expect(plan.value("bottleneck")).toBe("waits for the cycle");
  });

  test("heads that need no operator, and no operators, are named by the check of the crew", async () => {
    const plan = await openSheet(cycle, "US");
    plan.type("load", "0");
    plan.type("walk", "0");
    expect(plan.value("heads_busy")).toBe("#N/A");
    expect(plan.value("check_crew")).toMatch(/^loadSeconds = 0 s: /);
    plan.type("load", "180");
    expect(plan.value("check_crew")).toBe("fine");
    plan.type("operators", "0");
    expect(plan.value("check_crew")).toBe("operators must be above 0");
    expect(["shifts", "days", "labour_lot"].map((name) => plan.value(name))).toEqual(["", "", ""]);
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

  test("more stops than hours are refused in words", async () => {
    const plan = await openSheet(cycle, "US");
    plan.type("changes", "200");
    expect(plan.value("check_crew")).toMatch(/^hours = -.+ h: /);
    expect(plan.message("shift_steady")).toMatch(/^hours = /);
  });
});
