/** What is offered while a formula is typed into a cell. */

import help from "../../generated/help.json";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage();
});
afterAll(async () => {
  await open.close();
});

/** The engine looks for proposals, and paints, between frames. */
async function painted(): Promise<void> {
  for (let frames = 0; frames < 4; frames += 1)
    await open.page.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve)));
}

/** Opens an empty cell of the form, types as a person does, and reads the list below the cell. */
async function offered(typed: string): Promise<string[]> {
  await open.page.keyboard.press("Escape");
  await open.page.keyboard.press("Escape");
  await open.startEditing("wall", 6, 0);
  await open.page.keyboard.type(typed, { delay: 20 });
  await painted();
  const rows = open.page.locator(".o-autocomplete-dropdown .o-autocomplete-value");
  return (await rows.allTextContents()).map((text) => text.trim());
}

test("=bead offers our formulas, in the order of the job, and nothing else", async () => {
  const job = help.formulas.map(({ id }) => `BEAD.${id}`);
  expect(await offered("=bead")).toEqual(job.slice(0, 10));
  expect(await offered("=BEAD.")).toEqual(job.slice(0, 10));
});

test("=be offers ours before the engine's own", async () => {
  const found = await offered("=be");
  expect(found.length).toBeGreaterThan(3);
  expect(found.every((name) => name.startsWith("BEAD."))).toBe(true);
});

test.each([
  ["=stand", ["BEAD.STANDOFF", "BEAD.STANDOFF_SPREAD"]],
  ["=bead.stand", ["BEAD.STANDOFF", "BEAD.STANDOFF_SPREAD"]],
  ["=2*heat", ["BEAD.HEAT_INPUT", "BEAD.HEAT_PULSED"]],
  ["=bead.spread", ["BEAD.STANDOFF_SPREAD"]],
])("%s", async (typed, first) => {
  expect((await offered(typed)).slice(0, first.length)).toEqual(first);
});

test.each([
  ["=su", "SUM"],
  ["=ma", "MAX"],
  ["=roun", "ROUND"],
  ["=abs", "ABS"],
])("%s still offers %s first", async (typed, first) => {
  expect((await offered(typed))[0]).toBe(first);
});

test.each(["=wall", "=speed", "=bead_", "=amps", "=sheet_", "=s", "=w", "=be"])(
  "%s offers no name by which the form finds its cells",
  async (typed) => {
    expect((await offered(typed)).filter((name) => name !== name.toUpperCase())).toEqual([]);
  },
);

test("a name that a person gave to cells is offered", async () => {
  await open.page.evaluate(() => {
    const { model } = (
      globalThis as unknown as {
        ringbead: { model: { dispatch(type: string, payload: object): void; getters: Getters } };
      }
    ).ringbead;
    interface Getters {
      getActiveSheetId(): string;
      getRangeDataFromXc(sheetId: string, xc: string): object;
      getRangeFromSheetXC(sheetId: string, xc: string): object;
    }
    const sheetId = model.getters.getActiveSheetId();
    model.dispatch("CREATE_NAMED_RANGE", {
      name: "my_spool",
      ranges: [model.getters.getRangeDataFromXc(sheetId, "R1")],
    });
  });
  expect(await offered("=my_s")).toContain("my_spool");
});

test("Tab takes the first into the cell, with its bracket, and it computes", async () => {
  await offered("=stand");
  // A finger lets go of the key frames later; the engine sets the cursor in between.
  await open.page.keyboard.down("Tab");
  await painted();
  await open.page.keyboard.up("Tab");
  await open.page.keyboard.type("0.065)");
  await open.page.keyboard.press("Enter");
  const value = await open.page.evaluate(() => {
    const { model } = (
      globalThis as unknown as {
        ringbead: {
          model: {
            getters: {
              getActivePosition(): { sheetId: string; col: number; row: number };
              getEvaluatedCell(position: object): { value: unknown };
            };
          };
        };
      }
    ).ringbead;
    const { row, ...position } = model.getters.getActivePosition();
    return model.getters.getEvaluatedCell({ ...position, row: row - 1 }).value;
  });
  expect(value).toBeCloseTo(0.0425, 12);
  expect(open.errors).toEqual([]);
});
