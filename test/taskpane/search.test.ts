/** Words that welders, inspectors and estimators type, and the formula that answers each. Common practice. */

import { FORMULAS } from "../../taskpane/pane/help";
import { search } from "../../taskpane/pane/search";

const idsOf = (typed: string): string[] => search(typed).formulas.map(({ id }) => id);

describe("finds first", () => {
  test.each([
    ["heat", "HEAT_INPUT"],
    ["kJ/in", "HEAT_INPUT"],
    ["kj/mm", "HEAT_INPUT"],
    ["arc energy", "HEAT_INPUT"],
    ["joules", "HEAT_INPUT"],
    ["color", "PURGE_TINT"],
    ["colour", "PURGE_TINT"],
    ["discolouration", "PURGE_TINT"],
    ["heat tint", "PURGE_TINT"],
    ["oxidised", "PURGE_TINT"],
    ["straw", "PURGE_TINT"],
    ["oxygen", "PURGE_OXYGEN"],
    ["purge", "PURGE_TIME"],
    ["purge time", "PURGE_TIME"],
    ["how long to purge", "PURGE_TIME"],
    ["backing gas", "PURGE_TIME"],
    ["ipm", "TRAVEL_SPEED"],
    ["travel speed", "TRAVEL_SPEED"],
    ["rpm", "TRAVEL_RPM"],
    ["rotor", "TRAVEL_RPM"],
    ["gap", "STANDOFF"],
    ["arc gap", "STANDOFF"],
    ["stand-off", "STANDOFF"],
    ["stick-out", "ELECTRODE_LENGTH"],
    ["stickout", "ELECTRODE_LENGTH"],
    ["thoriated", "ELECTRODE_DIAMETER"],
    ["electrode size", "ELECTRODE_DIAMETER"],
    ["feeler gage", "FEELER_STACK"],
    ["feeler gauge", "FEELER_STACK"],
    ["ovality", "STANDOFF_SPREAD"],
    ["TIR", "STANDOFF_SPREAD"],
    ["volts", "ARC_VOLTS"],
    ["AVC", "ARC_VOLTS"],
    ["overlap", "OVERLAP_SUGGEST"],
    ["tie-in", "OVERLAP_SUGGEST"],
    ["duty", "PULSE_SHARE"],
    ["duty cycle", "PULSE_SHARE"],
    ["pps", "PULSE_RATE"],
    ["average amps", "AMPS_MEAN"],
    ["taper", "AMPS_SECTORS"],
    ["levels", "AMPS_SECTORS"],
    ["dwell", "START_DWELL"],
    ["start delay", "START_DWELL"],
    ["schedule", "SCHEDULE"],
    ["WPS", "SCHEDULE"],
    ["welding parameters", "SCHEDULE"],
    ["bead width", "MELT_WIDTH"],
    ["root width", "MELT_SECTION"],
    ["lack of fusion", "AMPS_THROUGH"],
    ["volume changes", "PURGE_CHANGES"],
    ["leak", "PURGE_LEAK"],
    ["Reynolds", "PURGE_REYNOLDS"],
    ["vent", "PURGE_VENT"],
    ["back pressure", "PURGE_PRESSURE"],
    ["suck-back", "PURGE_CEILING"],
    ["blow-out", "PURGE_CEILING"],
    ["purge bag", "DAM_TEMPERATURE"],
    ["where to put the dam", "DAM_DISTANCE"],
    ["cup", "GAS_JOINT"],
    ["gas usage", "GAS_JOINT"],
    ["bottle", "GAS_CYLINDER"],
    ["dewar", "GAS_LIQUID"],
    ["flowmeter", "GAS_METER"],
    ["tack", "CYCLE_TIME"],
    ["postflow", "CYCLE_TIME"],
    ["cycle time", "CYCLE_TIME"],
    ["timeline", "CYCLE_PHASES"],
    ["manning", "CREW_HEADS"],
    ["labour", "CREW_HEADS"],
    ["welds per shift", "CREW_OUTPUT"],
    ["productivity", "CREW_OUTPUT"],
    ["quote", "TAKEOFF"],
    ["man-hours", "TAKEOFF"],
    ["take-off", "TAKEOFF"],
    ["BOM", "TAKEOFF"],
    ["inches to millimetres", "SIZE"],
    ["decimal", "SIZE"],
    ["NPS", "PIPE_OD"],
    ["Sch 40", "PIPE_WALL"],
    ["hi-lo", "ACCEPT_LIMITS"],
    ["inspection", "ACCEPT_LIMITS"],
    ["stainless", "MATERIALS"],
    ["titanium", "MATERIALS"],
    ["why", "REASON"],
    ["#VALUE!", "REASON"],
    ["version", "VERSION"],
    ["documentation", "ABOUT"],
  ])("%s: %s", (typed, id) => {
    expect(idsOf(typed)[0]).toBe(id);
  });
});

describe("finds among the first three", () => {
  test.each([
    ["cfh", ["PURGE_FLOW", "GAS_JOINT"]],
    ["lpm", ["PURGE_FLOW"]],
    ["upslope", ["SCHEDULE", "CYCLE_TIME"]],
    ["downslope", ["SCHEDULE", "CYCLE_TIME"]],
    ["ramp", ["CYCLE_TIME", "CYCLE_PHASES", "SCHEDULE"]],
    ["sugaring", ["PURGE_OXYGEN", "PURGE_TINT"]],
    ["arc time", ["TRAVEL_TIME", "CYCLE_TIME"]],
    ["ppm", ["PURGE_OXYGEN"]],
    ["tungsten", ["ELECTRODE_LENGTH", "ELECTRODE_DIAMETER"]],
    ["amps", ["AMPS_WALL", "AMPS_MELT"]],
    ["amperage", ["AMPS_WALL", "AMPS_MELT"]],
    ["how many amps for this wall", ["AMPS_WALL"]],
    ["penetration", ["AMPS_MELT", "AMPS_THROUGH"]],
    ["pulse", ["PULSE_SHARE", "PULSE_RATE", "AMPS_MEAN"]],
    ["argon", ["GAS_CYLINDER", "GAS_JOINT", "GAS_LIQUID"]],
    ["schedule", ["SCHEDULE", "PIPE_WALL"]],
    ["wall thickness", ["PIPE_WALL"]],
    ["dam", ["DAM_TEMPERATURE", "DAM_DISTANCE"]],
    ["crew", ["CREW_HEADS", "CREW_OUTPUT"]],
    ["preheat", ["AMPS_MELT"]],
    ["heat build-up", ["AMPS_SECTORS", "RING_BEAD"]],
    ["speed", ["TRAVEL_SPEED", "TRAVEL_SUGGEST"]],
    ["argon per weld", ["GAS_JOINT"]],
    ["misalignment", ["ACCEPT_LIMITS"]],
    ["pipe", ["PIPE_OD", "PIPE_WALL"]],
  ])("%s: %j", (typed, ids) => {
    expect(idsOf(typed).slice(0, 3)).toEqual(expect.arrayContaining(ids));
  });
});

test("every formula is found by each of its own synonyms and by its name, among the first ten", () => {
  for (const { id, synonyms } of FORMULAS) {
    expect([id, synonyms.length > 1]).toEqual([id, true]);
    expect([id, idsOf(id)[0]]).toEqual([id, id]);
    expect([id, idsOf(`BEAD.${id}`)[0]]).toEqual([id, id]);
    for (const typed of synonyms)
      expect([id, typed, idsOf(typed).slice(0, 10)]).toEqual([id, typed, expect.arrayContaining([id])]);
  }
});

test("no word of another weld is answered with a formula that is not for it, without saying so", () => {
  for (const typed of ["fillet", "fillet weld", "socket weld", "filler wire", "bevel", "MIG", "stick"])
    expect([typed, search(typed).remark]).toEqual([typed, expect.stringContaining("butt welds of tube")]);
  expect(idsOf("fillet")).toEqual([]);
});

test("more words than any formula has: those that have most of them, which is said", () => {
  const { formulas, remark } = search("purge oxygen leprechaun");
  expect(formulas[0]?.id).toBe("PURGE_OXYGEN");
  expect(remark).toContain("None has all of these words");
  expect(search("leprechaun")).toEqual({ formulas: [], remark: "" });
});

test("nothing typed, or nothing that says anything: all, in the order of the job", () => {
  for (const typed of ["", "  ", "bead", "=BEAD."])
    expect(search(typed)).toEqual({ formulas: FORMULAS, remark: "" });
});
