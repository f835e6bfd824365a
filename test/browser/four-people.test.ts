/**
 * Four people at their jobs from the first action to the last, each within the time that docs/four-people.md gives. The
 * jobs and all that is typed are invented.
 */

import { readFileSync } from "node:fs";

import { openPage } from "./open-page";
import type { Look, OpenPage } from "./open-page";
import { Person } from "./people";

const DESK: Look = { width: 1500, height: 1200 };

let open: OpenPage;
async function at(look: Look): Promise<Person> {
  open = await openPage(look);
  return new Person(open);
}
afterEach(async () => {
  expect(open.errors).toEqual([]);
  expect(open.foreign).toEqual([]);
  await open.close();
});

/** The page tells how many actions it took and how long, rounded up to ten seconds. */
function expectTold(who: string, { actions, seconds }: Person, most: number): void {
  const told = `| ${who} | ${String(actions.length)} | ${String(10 * Math.ceil(seconds / 10))} s |`;
  expect(readFileSync("docs/four-people.md", "utf8")).toContain(told);
  expect(seconds).toBeLessThan(most);
}

test("the estimator: forty lines, a cylinder, a page to sign", async () => {
  const estimator = await at(DESK);
  await estimator.insert("Bid");
  const sizes = ["1/2 0.049", "3/4 0.065", "1 0.065", "1-1/2 0.065", "NPS 2|sch 10S"];
  const lines = Array.from({ length: 40 }, (_, i) => {
    const size = sizes[i % sizes.length] ?? "";
    return [String(i + 1), ...size.split(size.includes("|") ? "|" : " "), "316L"];
  });
  await estimator.paste("takeoff", [-4, -1], 6, lines);
  expect(await estimator.read("lines")).toBe("40 of 40");
  await estimator.type("contents", "250");
  await estimator.type("job", "Invented dairy, skid 4");
  await estimator.type("customer", "Invented customer");
  await estimator.type("bid_number", "B-17, 2 March");
  await estimator.type("margin", "0.25");
  expect(await estimator.read("summary")).toMatch(/^✓/);
  expect(await estimator.read("price")).toBeGreaterThan(0);
  expect(await open.value("draft")).toBe("");
  expect(await estimator.print()).toBe(1);
  expectTold("Estimator: bid of forty lines", estimator, 300);
});

test("the engineer: five coupons, a table of eight sizes with their efficiency", async () => {
  const engineer = await at(DESK);
  await engineer.insert("Coupons");
  const coupons = [
    [45, 0.162, 0.128],
    [47, 0.171, 0.141],
    [49, 0.18, 0.152],
    [51, 0.187, 0.163],
    [53, 0.197, 0.176],
  ].map(([amps, face, root]) => ["1", "0.065", amps, "9.4", "5.1", face, root].map(String));
  await engineer.paste("coupon_table", [-7, -1], 6, coupons);
  expect(await engineer.read("summary")).toMatch(/^✓/);
  const efficiency = Number(await engineer.read("shop_efficiency")).toFixed(3);
  expect(efficiency).toBe("0.755");
  const beforeTheTable = engineer.seconds;
  await engineer.insert("Size table");
  const sizes = [
    "1/2 0.049",
    "3/4 0.065",
    "1 0.065",
    "1-1/2 0.065",
    "2 0.065",
    "3 0.083",
    "50.8mm 0.065",
    "1/2 0.3",
  ];
  await engineer.paste(
    "size_table",
    [-3, -1],
    7,
    sizes.map((size) => [...size.split(" "), "316L"]),
  );
  await engineer.type("efficiency", efficiency);
  expect(await engineer.read("sizes")).toBe("7 of 8");
  expect(await engineer.print()).toBeGreaterThan(0);
  expect(engineer.seconds - beforeTheTable).toBeLessThan(120);
  expectTold("Engineer: coupons, then a table of eight sizes", engineer, 180);
});

test("the engineer again: a program that ran, judged", async () => {
  const engineer = await at(DESK);
  for (const [name, peak] of [
    ["set_first", "68"],
    ["set_second", "66"],
    ["set_third", "62"],
    ["set_fourth", "58"],
  ] as const) {
    await engineer.type(name, peak);
  }
  await engineer.type("share_set", "0.5");
  expect(await engineer.read("check_program")).toMatch(/^▲ \d of 5 sectors need attention/);
  await engineer.type("share_set", "0.62");
  await engineer.type("set_third", "65");
  await engineer.type("set_fourth", "61");
  expect(await engineer.read("check_program")).toBe("✓ holds");
  expectTold("Engineer: a program judged and set right", engineer, 120);
});

test("the planner: three operators and four heads, shared against their own", async () => {
  const planner = await at({ width: 1900, height: 1400 });
  await planner.insert("Cycle plan");
  await planner.type("operators", "3");
  await planner.type("shop_heads_b", "4");
  await planner.type("heads_are_b", "shared");
  await planner.type("scenario_b", "Shared");
  await planner.type("start_date", "2026-03-02");
  await planner.type("finish_by", "2026-03-06");
  expect(await planner.read("summary")).toMatch(/^✓/);
  expect(Number(await planner.read("more_random_b"))).toBeGreaterThan(0);
  expect(await planner.read("bottleneck_b")).not.toBe("");
  expect(await planner.print()).toBeGreaterThan(0);
  expectTold("Planner: two ways to run three operators and four heads", planner, 180);
});

test("the welder: the numbers to set are there when the phone opens the page", async () => {
  const welder = await at({ width: 390, height: 844 });
  const card = open.page.locator("#card");
  await card.waitFor({ state: "visible" });
  const text = await card.innerText();
  for (const needed of ["Standoff", "Electrode length", "Rotor", "Purge"]) expect(text).toContain(needed);
  expect(text).toMatch(/\d+\.\d+ rpm/);
  await welder.press("Show the sheet");
  await welder.press("Show the card");
  await card.waitFor({ state: "visible" });
  expectTold("Welder: from the card to the sheet and back", welder, 20);
});
