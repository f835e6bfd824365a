import { procedureFacts } from "../../taskpane/hosts/browser/bench-card/procedure-facts";
import type { ProcedureFacts } from "../../taskpane/hosts/browser/bench-card/procedure-facts";
import { ShownSheet } from "../../taskpane/hosts/browser/bench-card/shown-sheet";
import { stripFacts } from "../../taskpane/hosts/browser/bench-card/strip-facts";
import { gas } from "../../taskpane/sheets/gas";
import { procedure } from "../../taskpane/sheets/procedure";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

const facts = (sheet: OpenSheet): ProcedureFacts => procedureFacts(new ShownSheet(sheet.model));

function large(sheet: OpenSheet): Record<string, string> {
  return Object.fromEntries(
    facts(sheet).facts.map(({ label, large: number, unit }) => [label, `${number} ${unit}`]),
  );
}

/** A value with the decimals that the sheet has for it. */
const rounded = (sheet: OpenSheet, name: string, decimals: number): string =>
  Number(sheet.value(name)).toFixed(decimals);

test.each([
  ["US", "in", 4, "kJ/in", 2, "ft³/h"],
  ["SI", "mm", 3, "kJ/mm", 3, "L/min"],
] as const)(
  "%s: every number of the card is the sheet's, in its unit",
  async (units, length, decimals, heat, heatDecimals, flow) => {
    const sheet = await openSheet(procedure, units);
    expect(large(sheet)).toEqual({
      Standoff: `${rounded(sheet, "standoff", decimals)} ${length}`,
      "Electrode length": `${rounded(sheet, "electrode_length", decimals)} ${length}`,
      Rotor: `${rounded(sheet, "rpm", 3)} rpm`,
      "Heat input": `${rounded(sheet, "heat", heatDecimals)} ${heat}`,
      "Peak/background, sector 1": "65.0/19.5 A",
      Purge: `${rounded(sheet, "purge_flow", 1)} ${flow}`,
    });
    const all = facts(sheet);
    expect(all.refused).toEqual([]);
    expect(all.summary).toBe(sheet.value("summary"));
    const details = all.facts.flatMap((fact) => fact.details);
    expect(details).toContain(`leaves ${String(sheet.value("feeler"))}`);
    expect(details).toContain(`start dwell ${rounded(sheet, "dwell", 1)} s`);
    expect(details).toContain(
      `at least ${rounded(sheet, "purge_time", 1)} s, then until the meter shows 50 ppm`,
    );
    expect(all.phases.map(({ label }) => label)).toEqual([
      "Prepurge",
      "Start dwell",
      "Full turn",
      "Overlap",
      "Downslope",
      "Postpurge",
    ]);
    const cycle = all.phases.reduce((sum, { seconds }) => sum + seconds, 0) + Number(sheet.value("handling"));
    expect(cycle).toBeCloseTo(Number(sheet.value("cycle")), 9);
  },
);

test("the card follows a conversion and stays right when a row comes between the sectors", async () => {
  const sheet = await openSheet(procedure, "US");
  await sheet.convert();
  // Half of 0.065 in and 0.010 in: 1.0795 mm, shown to three decimals.
  expect(large(sheet).Standoff).toBe("1.080 mm");
  const before = facts(sheet).facts.flatMap(({ later }) => later);
  expect(before.map(({ label }) => label)).toEqual(["Sector 2", "Sector 3", "Sector 4", "Overlap"]);
  sheet.insertRow("sectors", 2);
  expect(facts(sheet).facts.flatMap(({ later }) => later)).toEqual(before);
});

test.each([
  ["wall", "-0.065"],
  ["wall", ""],
  ["od", "0.1"],
  ["material", "cheese"],
  ["purge_flow", "0"],
  ["reach", "0.2"],
  ["target_ppm", "-1"],
  ["heat_most", "none"],
  ["sheet_units", "SI"],
  ["rpm", "about two"],
  ["standoff", ""],
])("%s = %j: a number that is not there is told with the words of a check", async (name, typed) => {
  const sheet = await openSheet(procedure, "US");
  sheet.type(name, typed);
  const { facts: there, refused, summary } = facts(sheet);
  expect(summary).toMatch(/^▲/);
  expect(refused.length).toBeGreaterThan(0);
  for (const { why, what } of refused) {
    expect(why).toMatch(/^▲ .{8}/);
    expect(why).not.toContain("the sheet has no such number");
    expect(what.length).toBeGreaterThan(0);
  }
  for (const { large: number } of there) expect(number).toMatch(/^\d/);
});

test("a sheet with a row of the card deleted says so, and shows nothing in its place", async () => {
  const sheet = await openSheet(procedure, "US");
  const row = (await sheet.form()).cells.get("rpm")?.[0]?.at.replace(/\D/g, "");
  sheet.deleteRow(Number(row));
  const { facts: there, refused } = facts(sheet);
  expect(there.map(({ label }) => label)).not.toContain("Rotor");
  expect(refused.flatMap(({ what }) => what)).toContain("rotor speed");
});

test("strip: dashes where the card refuses, and nothing on a sheet without a form", async () => {
  const sheet = await openSheet(procedure, "US");
  const strip = (): ReturnType<typeof stripFacts> => stripFacts(new ShownSheet(sheet.model));
  expect(strip()?.summary).toBe("✓ All 16 checks hold");
  expect(strip()?.items.map(({ text }) => text)).toContain(`✓ ${rounded(sheet, "heat", 2)} kJ/in`);
  sheet.type("wall", "-0.065");
  expect(strip()?.items.map(({ text }) => text)).toEqual(["—", "—", "—", "—", "—"]);
  expect(strip()?.holds).toBe(false);
  sheet.command("ACTIVATE_SHEET", {
    sheetIdFrom: sheet.model.getters.getActiveSheetId(),
    sheetIdTo: "scratch",
  });
  expect(strip()).toBeUndefined();
});

test("strip of a gas estimate: what to buy, without a number where a line is refused", async () => {
  const sheet = await openSheet(gas, "US");
  const texts = (): string[] => stripFacts(new ShownSheet(sheet.model))?.items.map(({ text }) => text) ?? [];
  expect(texts()).toEqual([
    `${rounded(sheet, "gas_bought", 1)} ft³`,
    rounded(sheet, "containers", 0),
    `${rounded(sheet, "cost", 2)} money`,
  ]);
  sheet.type("waste", "2");
  expect(texts()[0]).toBe("—");
});
