import { readFileSync } from "node:fs";

import type { CellObject } from "@e965/xlsx";
import { read } from "@e965/xlsx";

import { seriousViolations } from "./axe";
import { pagesOf } from "./on-paper";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { convert, insert, removeSheet, showSheet } from "./working";

/** Longer than the engine fades a cell by itself, ms. */
const FADING = 400;

/** The grid's pixels, once what was asked for is drawn. Runs in the page; stands alone. */
function paintedGrid(): Promise<string> {
  return new Promise((resolve) =>
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        resolve(document.querySelector<HTMLCanvasElement>(".o-grid canvas")?.toDataURL() ?? "");
      }),
    ),
  );
}

let open: OpenPage;
beforeAll(async () => {
  open = await openPage();
});
afterAll(async () => {
  await open.close();
});

// The first workbook, which these leave as it is.

test("opens with a computed procedure sheet, without a foreign request or an error", async () => {
  expect(await open.value("standoff")).toBeCloseTo(0.0425, 12);
  expect(await open.value("summary")).toMatch(/^✓ All \d+ checks hold\./);
  await open.page.waitForLoadState("networkidle");
  expect(open.foreign).toEqual([]);
  expect(open.errors).toEqual([]);
});

test("a cell that changed is drawn to the end at once, and a sheet deleted meanwhile is drawn no more", async () => {
  const painted = (): Promise<string> => open.page.evaluate(paintedGrid);
  const before = await painted();
  const was = await open.put("wall", "0.083");
  const changed = await painted();
  expect(changed).not.toBe(before);
  await open.page.waitForTimeout(FADING);
  expect(await painted()).toBe(changed);
  await open.put("wall", was);
  expect(await painted()).toBe(before);
  await insert(open, "Gas estimate");
  await open.put("water_volume", "0.88");
  await removeSheet(open);
  await open.page.waitForTimeout(FADING);
  expect(open.errors).toEqual([]);
});

test("the units cell cannot be retyped", async () => {
  await open.edit("sheet_units", "SI");
  expect(await open.value("sheet_units")).toBe("US");
});

test("the pane explains a selected formula, finds one by words, and puts an example only into an empty cell", async () => {
  const pane = open.page.locator("#pane");
  await open.select("heat");
  await pane.getByRole("heading", { name: /^BEAD\.HEAT_INPUT\(volts, amps, speed/ }).waitFor();
  await pane.getByLabel(/Words, such as/).fill("purge leak");
  await pane.getByText(/^\d+ formulas?$/).waitFor();
  await pane.locator("summary", { hasText: "PURGE_LEAK" }).click();
  await pane.getByRole("button", { name: "Put the example in the cell" }).click();
  await pane.getByText(/not empty; nothing was overwritten/).waitFor();
});

test("the formulas complete as they are typed, with help for their arguments", async () => {
  await open.startEditing("job");
  await open.page.keyboard.type("=bead.stand");
  const offered = open.page.locator(".o-autocomplete-dropdown");
  await offered.getByText("BEAD.STANDOFF_SPREAD", { exact: true }).waitFor();
  await open.page.keyboard.press("Escape");
});

test("the pane has nothing that axe calls serious", async () => {
  expect(await seriousViolations(open.page, "#pane", "#bar")).toEqual([]);
});

describe("in a workbook of its own", () => {
  beforeEach(async () => {
    await open.newWorkbook();
  });

  test("the pane inserts a sheet in SI beside the first, and overwrites nothing", async () => {
    await open.edit("wall", "0.049");
    await insert(open, "Procedure sheet", "SI");
    expect(await open.value("sheet_units")).toBe("SI");
    expect(await open.value("standoff")).toBeCloseTo(1.65 / 2 + 0.254, 9);
    await showSheet(open, "Procedure sheet");
    expect(await open.value("wall")).toBe(0.049);
  });

  test("a person's edit of the wall changes standoff, volume and cycle", async () => {
    const before = await Promise.all(["purge_volume", "cycle", "heat"].map((name) => open.value(name)));
    await open.edit("wall", "0.083");
    expect(await open.value("wall")).toBe(0.083);
    expect(await open.value("standoff")).toBeCloseTo(0.0515, 12);
    const after = await Promise.all(["purge_volume", "cycle", "heat"].map((name) => open.value(name)));
    after.forEach((value, i) => {
      expect(value).not.toBe(before[i]);
    });
  });

  test("converting to SI rewrites the inputs, keeps the physics, and converting back restores them", async () => {
    const cycle = Number(await open.value("cycle"));
    await convert(open, "SI");
    expect(await open.value("wall")).toBeCloseTo(1.651, 12);
    expect(await open.value("od")).toBeCloseTo(25.4, 12);
    expect(Number(await open.value("cycle"))).toBeCloseTo(cycle, 8);
    await convert(open, "US");
    expect(await open.value("wall")).toBe(0.065);
    expect(await open.value("heat_most")).toBe(8);
  });

  test("a negative wall shows the refusal in words: in the sheet, in the pane and over the cell", async () => {
    await open.edit("wall", "-0.065");
    const sentence = "wall = -0.065 in: must be above 0";
    expect(await open.value("check_tube")).toBe(`▲ ${sentence}`);
    expect(await open.value("summary")).toMatch(/^▲ \d+ of \d+ need attention: .*tube/i);
    await open.select("schedule");
    await open.page
      .locator("#pane")
      .getByText(new RegExp(`^A\\d+ refuses\\. ${sentence}$`))
      .waitFor();
    const { x, y } = await open.pointOf("schedule");
    await open.page.mouse.move(x + 5, y + 2);
    await open.page.locator(".o-error-tooltip").getByText(sentence).waitFor();
  });

  test("the gas estimate by a person's edits: a line more, one blanked, another cylinder", async () => {
    await insert(open, "Gas estimate");
    const total = Number(await open.value("gas_used"));
    // Joints, diameter and wall stand left of the list's formula, beside its header.
    await open.editBeside("takeoff", -4, 7, "50");
    expect(await open.value("summary")).toMatch(/^▲ .*joint list/i);
    await open.editBeside("takeoff", -3, 7, "1");
    await open.editBeside("takeoff", -2, 7, "0.065");
    expect(await open.value("lines")).toBe("7 of 7");
    const more = Number(await open.value("gas_used"));
    expect(more).toBeGreaterThan(total);
    await open.page.keyboard.press("ArrowUp");
    await open.page.keyboard.press("Delete");
    expect(await open.value("lines")).toBe("6 of 7");
    expect(await open.value("check_list")).toMatch(/^▲ 1 of 7 lines not counted/);
    expect(Number(await open.value("gas_used"))).toBeCloseTo(total, 6);
    const containers = Number(await open.value("containers_exact"));
    await open.edit("water_volume", "0.88");
    expect(Number(await open.value("containers_exact"))).toBeGreaterThan(1.9 * containers);
  });

  test("the cycle plan in use: heads, load time, units", async () => {
    await insert(open, "Cycle plan");
    expect(await open.value("bottleneck")).toBe("The load");
    await open.edit("shop_heads", "2");
    expect(await open.value("bottleneck")).toBe("The heads");
    await open.edit("shop_heads", "8");
    expect(await open.value("bottleneck")).toBe("The crew");
    const before = Number(await open.value("shift_steady"));
    await open.edit("load", "60");
    const after = Number(await open.value("shift_steady"));
    expect(after).toBeGreaterThan(before);
    await convert(open, "SI");
    expect(Number(await open.value("shift_steady"))).toBeCloseTo(after, 6);
    expect(open.errors).toEqual([]);
  });

  /** A list goes on as far as it has lines: the six of the example, and no page of empty ones. */
  test.each([
    ["Procedure sheet", 3],
    ["Gas estimate", 2],
    ["Cycle plan", 2],
  ] as const)("prints the %s on %d pages of Letter and of A4", async (template, pages) => {
    if (template !== "Procedure sheet") await insert(open, template);
    for (const format of ["Letter", "A4"] as const) expect(await pagesOf(open.page, format)).toBe(pages);
  });

  test("the workbook is saved as a file of its name, with a typed wall in it and no foreign request", async () => {
    await open.edit("wall", "0.083");
    const [download] = await Promise.all([
      open.page.waitForEvent("download"),
      open.page.getByRole("button", { name: "Save as .xlsx" }).click(),
    ]);
    const name = await open.page.locator("#workbook-name").textContent();
    expect(download.suggestedFilename()).toBe(`${name ?? ""}.xlsx`);
    const book = read(readFileSync(await download.path()));
    const sheet = book.Sheets["Procedure sheet"];
    const at = book.Workbook?.Names?.find(({ Name }) => Name === "standoff")?.Ref.split("!")[1];
    const standoff = sheet?.[at?.replaceAll("$", "") ?? ""] as CellObject | undefined;
    expect(standoff?.v).toBeCloseTo(0.0515, 12);
    expect(open.foreign).toEqual([]);
    expect(open.errors).toEqual([]);
  });
});
