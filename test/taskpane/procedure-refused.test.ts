/** A procedure sheet for what cannot be: nothing that waits shows a number, and the checks name what to fix. */

import { procedure } from "../../taskpane/sheets/procedure";
import { computed } from "./computed";
import { openSheet } from "./open-sheet";

const WAITING =
  "volts bead speed overlap dwell peak pulse_share pulse_rate downslope heat purge_displaced purge_common purge_gas dam_heat dam_distance cycle bore";
test.each([
  ["1", "-0.065"],
  ["1", "0"],
  ["1", ""],
  ["1", "thin"],
  ["1", "0.5"],
  ["1", "1.65"],
  ["0.12", "0.065"],
  ["", "0.065"],
  ["-1", "0.065"],
])(
  "od %s and wall %s are no tube: what hangs on it is empty, and no check below calls it fine",
  async (od, wall) => {
    const sheet = await openSheet(procedure, "US");
    sheet.type("od", od);
    sheet.type("wall", wall);
    for (const name of WAITING.split(" ")) expect([name, sheet.value(name)]).toEqual([name, ""]);
    expect(sheet.value("check_tube")).toMatch(/^(od|wall) = .+: |look like millimetres/);
    for (const check of ["sectors", "pulse", "heat", "purge", "cycle"]) {
      expect([check, sheet.value(`check_${check}`)]).toEqual([check, "waits for the checks above"]);
    }
    expect(
      ["verdict", "laminar_verdict", "pressure_verdict", "dam_verdict"].map((name) => sheet.value(name)),
    ).toEqual([
      "No heat input to judge",
      "No limit to judge",
      "No pressure to judge",
      "No distance to judge",
    ]);
    const errors = computed(sheet).filter(({ text }) => text === "#DIV/0!" || text === "#ERROR");
    expect(errors).toEqual([]);
  },
);

test("a tube that is none under a typed speed still has no downslope, and its own speed stays", async () => {
  const sheet = await openSheet(procedure, "US");
  sheet.type("speed_typed", "5");
  sheet.type("wall", "-0.065");
  expect(["speed", "downslope", "cycle"].map((name) => sheet.value(name))).toEqual([5, "", ""]);
  sheet.type("wall", "0.065");
  sheet.type("speed_typed", "-5");
  expect(sheet.value("downslope")).toBe("");
  expect(sheet.value("check_speed")).toMatch(/^speed = -5 in\/min: must be above 0/);
});

test("a bead width that cannot be leaves its cell empty and is named", async () => {
  const sheet = await openSheet(procedure, "US");
  sheet.type("bead_typed", "-0.1");
  sheet.type("speed_typed", "5");
  expect(["bead", "overlap", "mean_first", "cycle"].map((name) => sheet.value(name))).toEqual([
    "",
    "",
    "",
    "",
  ]);
  expect(sheet.value("check_tube")).toMatch(/= -0\.1 in: must be above 0/);
});

test("numbers stored as text are no tube, and said so", async () => {
  const sheet = await openSheet(procedure, "US");
  sheet.type("wall", '="0.065"');
  expect(["bead", "speed", "bore"].map((name) => sheet.value(name))).toEqual(["", "", ""]);
  expect(sheet.value("check_tube")).toMatch(/^wall = "0\.065": is a number stored as text/);
});

test("without a purge flow nothing divides by it, and no flow is called laminar", async () => {
  const sheet = await openSheet(procedure, "US");
  for (const flow of ["0", "-15", ""]) {
    sheet.type("purge_flow", flow);
    expect(["purge_displaced", "purge_common", "purge_gas"].map((name) => sheet.value(name))).toEqual([
      "",
      "",
      "",
    ]);
    expect(sheet.value("laminar_verdict")).toBe("No limit to judge");
    expect(sheet.value("check_purge")).toMatch(/^flow = .+: /);
  }
});

test("a vent of 1/16 in is refused by name; typed as a fraction it is a date, larger than the bore", async () => {
  const sheet = await openSheet(procedure, "US");
  sheet.type("vent", "0.0625");
  expect(sheet.value("pressure")).toBe("#VALUE!");
  expect(sheet.value("check_vent")).toMatch(
    /^ventDiameter = 0\.0625 in: must be at least 0\.08\d+ in for this flow/,
  );
  sheet.type("vent", "1/16");
  expect(Number(sheet.value("vent"))).toBeGreaterThan(40_000);
  expect(sheet.value("pressure_verdict")).toBe("Vent larger than the bore");
  expect(sheet.value("check_vent")).toMatch(
    /^vent must not be larger than the bore; 1\/16 is typed as 0\.0625/,
  );
});
