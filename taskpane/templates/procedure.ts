/** The procedure sheet: one page from a tube size to a set of starting values, with what to check before the arc. */

import { DESIGNATIONS } from "../../src/material";
import type { Units } from "../../src/quantity";
import {
  ANGLE,
  COUNT,
  CURRENT,
  FLOW,
  HEAT_INPUT,
  LENGTH,
  OXYGEN,
  ROTATION,
  SHARE,
  SPEED,
  TIME,
  VOLTAGE,
  VOLUME,
} from "../../src/quantity";
import type { Row } from "./layout";
import { Layout } from "./layout";
import type { SheetPlan, Template } from "./sheet";
import { formName, UNITS_NAME } from "./sheet";

const WIDTHS = [29, 11, 9, 9, 29, 11, 9, 9];

/** An invented job, so marked on the sheet. */
const JOB: Row[] = [
  { label: "Job", name: "job", content: "Invented: Fennel Island creamery", look: "inputText" },
  { label: "Joint", name: "joint", content: "Skid 3, joint 12 (invented)", look: "inputText" },
  { label: "Heat numbers", name: "heat_numbers", content: "A-0001 / A-0002 (invented)", look: "inputText" },
];
const PAPERS: Row[] = [
  { label: "Qualified procedure", name: "procedure_no", content: "WPS-000 (invented)", look: "inputText" },
  { label: "Head, collets", name: "head", content: "", look: "inputText" },
  { label: "Date", name: "sheet_date", content: "", look: "inputText" },
];

const TUBE: Row[] = [
  { label: "Outside diameter", name: "od", content: { US: 1, SI: 25.4 }, look: "input", quantity: LENGTH },
  { label: "Wall", name: "wall", content: { US: 0.065, SI: 1.65 }, look: "input", quantity: LENGTH },
  { label: "Material", name: "material", content: "316L", look: "inputText", allowed: DESIGNATIONS },
  {
    label: "Bead width (blank: common)",
    name: "bead_width",
    content: "",
    look: "input",
    quantity: LENGTH,
  },
  {
    label: "Standoff allowance",
    name: "allowance",
    content: { US: 0.01, SI: 0.254 },
    look: "input",
    quantity: LENGTH,
  },
  {
    label: "OD tolerance, ±",
    name: "od_tolerance",
    content: { US: 0.005, SI: 0.13 },
    look: "input",
    quantity: LENGTH,
  },
  {
    label: "Runout, total indicator",
    name: "runout",
    content: { US: 0.004, SI: 0.1 },
    look: "input",
    quantity: LENGTH,
  },
  {
    label: "Reach, tube centre to seat",
    name: "reach",
    content: { US: 1.5, SI: 38.1 },
    look: "input",
    quantity: LENGTH,
  },
];
const ARC: Row[] = [
  {
    label: "Mean current (blank: by wall)",
    name: "amps_typed",
    content: "",
    look: "input",
    quantity: CURRENT,
  },
  {
    label: "Travel speed (blank: suggested)",
    name: "speed_typed",
    content: "",
    look: "input",
    quantity: SPEED,
  },
  { label: "Overlap (blank: suggested)", name: "overlap_typed", content: "", look: "input", quantity: ANGLE },
  {
    label: "Qualified heat input, most",
    name: "heat_most",
    content: { US: 8, SI: 0.315 },
    look: "input",
    quantity: HEAT_INPUT,
  },
  {
    label: "Heat input factor (1, or EN 0.6)",
    name: "heat_factor",
    content: 1,
    look: "input",
    quantity: SHARE,
  },
  { label: "Prepurge", name: "prepurge", content: 30, look: "input", quantity: TIME },
  { label: "Start dwell", name: "dwell", content: 2, look: "input", quantity: TIME },
  { label: "Downslope", name: "downslope", content: 6, look: "input", quantity: TIME },
  { label: "Postpurge", name: "postpurge", content: 15, look: "input", quantity: TIME },
  { label: "Handling", name: "handling", content: 240, look: "input", quantity: TIME },
];

const BORE: Row[] = [
  { label: "Bore", name: "bore", content: "={od}-2*{wall}", look: "input", quantity: LENGTH },
  {
    label: "Dam spacing",
    name: "dam_spacing",
    content: { US: 24, SI: 600 },
    look: "input",
    quantity: LENGTH,
  },
  { label: "Purge flow", name: "purge_flow", content: { US: 15, SI: 7 }, look: "input", quantity: FLOW },
];
const OXYGEN_TARGET: Row[] = [
  { label: "Oxygen to reach", name: "target_ppm", content: 50, look: "input", quantity: OXYGEN },
  { label: "Oxygen in the purge gas", name: "supply_ppm", content: 0, look: "input", quantity: OXYGEN },
  { label: "Mixed cells (1 is safe)", name: "cells", content: 1, look: "input", quantity: COUNT },
];

const GAP_RESULTS: Row[] = [
  {
    label: "Electrode diameter",
    name: "electrode",
    content: "=BEAD.ELECTRODE_DIAMETER({amps},{sheet_units})",
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Standoff",
    name: "standoff",
    content: "=BEAD.STANDOFF({wall},{allowance},{sheet_units})",
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Gap round the tube, least/most",
    name: "gap_least",
    content: "=BEAD.STANDOFF_SPREAD({standoff},{od_tolerance},{runout},{sheet_units})",
    look: "result",
    quantity: LENGTH,
    spill: 2,
  },
  {
    label: "Feeler leaves",
    name: "feeler",
    content: '=TEXTJOIN(" + ",TRUE,ROUND(BEAD.FEELER_STACK({standoff},,,{sheet_units}),5))',
    look: "result",
    quantity: LENGTH,
    format: "General",
    columns: 2,
  },
  {
    label: "Electrode length",
    name: "electrode_length",
    content: "=BEAD.ELECTRODE_LENGTH({reach},{od},{standoff},{sheet_units})",
    look: "result",
    quantity: LENGTH,
  },
  {
    label: "Arc voltage, estimate",
    name: "volts",
    content: "=BEAD.ARC_VOLTS({wall}/2+{allowance},{sheet_units})",
    look: "result",
    quantity: VOLTAGE,
  },
];
const HEAT_RESULTS: Row[] = [
  {
    label: "Mean current",
    name: "amps",
    content: '=IF({amps_typed}="",BEAD.AMPS_WALL({wall},{material},{sheet_units}),{amps_typed})',
    look: "result",
    quantity: CURRENT,
  },
  {
    label: "Travel speed",
    name: "speed",
    content:
      '=IF({speed_typed}="",BEAD.TRAVEL_SUGGEST({wall},{bead_width?},{material},{sheet_units}),{speed_typed})',
    look: "result",
    quantity: SPEED,
  },
  {
    label: "Rotor speed",
    name: "rpm",
    content: "=BEAD.TRAVEL_RPM({od},{speed},{sheet_units})",
    look: "result",
    quantity: ROTATION,
  },
  {
    label: "Overlap",
    name: "overlap",
    content:
      '=IF({overlap_typed}="",BEAD.OVERLAP_SUGGEST({od},{wall},{bead_width?},{sheet_units}),{overlap_typed})',
    look: "result",
    quantity: ANGLE,
    format: "0",
  },
  {
    label: "Heat input",
    name: "heat",
    content: "=BEAD.HEAT_INPUT({volts},{amps},{speed},{heat_factor},{sheet_units})",
    look: "result",
    quantity: HEAT_INPUT,
  },
  {
    label: "Against the qualified maximum",
    name: "verdict",
    content:
      '=IF(NOT(ISNUMBER({heat})),"No heat input to judge",IF({heat_most}="","No qualified maximum typed",IF({heat}<={heat_most},"Within the maximum","ABOVE the maximum")))',
    look: "text",
  },
];

const PURGE_RESULTS: Row[] = [
  {
    label: "Volume between the dams",
    name: "purge_volume",
    content: "=BEAD.PURGE_VOLUME({bore},{dam_spacing},{sheet_units})",
    look: "result",
    quantity: VOLUME,
  },
  {
    label: "Volume changes",
    name: "purge_changes",
    content: "=BEAD.PURGE_CHANGES({target_ppm},{supply_ppm},{cells})",
    look: "result",
    quantity: COUNT,
    format: "0.00",
  },
  {
    label: "Purge time",
    name: "purge_time",
    content:
      "=BEAD.PURGE_TIME({bore},{dam_spacing},{purge_flow},{target_ppm},{supply_ppm},{cells},{sheet_units})",
    look: "result",
    quantity: TIME,
  },
  {
    label: "Gas for the purge",
    name: "purge_gas",
    content: '={purge_flow}*{purge_time}/IF({sheet_units}="SI",60,3600)',
    look: "result",
    quantity: VOLUME,
  },
];

const CYCLE = "{od},{speed},{prepurge},{dwell},{overlap},{downslope},{postpurge},{handling},{sheet_units}";
const PHASES = 7;

/** What each check says: a sentence when something is wrong, "fine" when not. */
const CHECKS: readonly (readonly [label: string, name: string, formula: string])[] = [
  [
    "Tube and units",
    "check_tube",
    '=IF(AND({sheet_units}="US",OR(SUM({wall})>=0.3,SUM({od})>16)),"Outside diameter and wall look like millimetres; this sheet is in inches.",' +
      'IF(AND({sheet_units}="SI",OR(AND(SUM({wall})>0,SUM({wall})<0.3),AND(SUM({od})>0,SUM({od})<3))),"Outside diameter and wall look like inches; this sheet is in millimetres.",' +
      'BEAD.REASON("OVERLAP_SUGGEST",{od},{wall},{bead_width?},{sheet_units})))',
  ],
  ["Standoff", "check_standoff", '=BEAD.REASON("STANDOFF",{wall},{allowance},{sheet_units})'],
  [
    "Gap round the tube",
    "check_gap",
    '=IFERROR(BEAD.REASON("STANDOFF_SPREAD",{standoff},{od_tolerance},{runout},{sheet_units}),"waits for the standoff")',
  ],
  [
    "Arc voltage",
    "check_volts",
    '=IFERROR(BEAD.REASON("ARC_VOLTS",{wall}/2+{allowance},{sheet_units}),"waits for wall and allowance")',
  ],
  [
    "Current and speed",
    "check_speed",
    '=IF({speed_typed}="",BEAD.REASON("TRAVEL_SUGGEST",{wall},{bead_width?},{material},{sheet_units}),BEAD.REASON("TRAVEL_RPM",{od},{speed_typed},{sheet_units}))',
  ],
  [
    "Heat input",
    "check_heat",
    '=IFERROR(BEAD.REASON("HEAT_INPUT",{volts},{amps},{speed},{heat_factor},{sheet_units}),"waits for the checks above")',
  ],
  [
    "Purge",
    "check_purge",
    '=IF(SUM({bore})>=SUM({od}),"bore must be under the outside diameter",IFERROR(BEAD.REASON("PURGE_TIME",{bore},{dam_spacing},{purge_flow},{target_ppm},{supply_ppm},{cells},{sheet_units}),"waits for the bore"))',
  ],
  ["Cycle", "check_cycle", `=IFERROR(BEAD.REASON("CYCLE_TIME",${CYCLE}),"waits for the checks above")`],
];

const CAUTIONS = [
  "Argon gives no warning and is heavier than air: a purged bore, vessel or pit is a confined space without oxygen. Ventilate, measure oxygen before anyone enters, never enter alone.",
  "Vent the purge at the top and keep the vent open: a blocked vent blows out the root and can burst a dam. An oxygen meter, not the clock, says when the bore is ready.",
  "Arc rays, shock, hot metal, fumes and cylinder pressure injure: screens, gloves, earthed work, extraction, hot-work permit, cylinders chained.",
  "The qualified procedure, local codes and the licensed people on site decide. This sheet gives starting values only.",
];

function plan(units: Units): SheetPlan {
  const form = new Layout(units);
  form.banner("Procedure sheet: orbital TIG tube weld", "title");
  form.banner("Starting values, prove on a test coupon. The qualified procedure governs.", "subtitle");
  form.cell(4, "Tinted cells are typed, the rest is computed.", "note", { columns: 4 });
  form.blocks([{ label: "System of units", name: UNITS_NAME, content: units, look: "locked", unit: "" }], []);

  form.section("Job and joint");
  form.blocks(JOB, PAPERS);
  form.section("Tube, arc and times: typed");
  form.blocks(TUBE, ARC);
  form.section("Bore purge: typed");
  form.blocks(BORE, OXYGEN_TARGET);

  form.section("Electrode and gap, travel and heat input");
  form.blocks(GAP_RESULTS, HEAT_RESULTS);

  form.section("Purge and cycle");
  const top = form.nextRow;
  form.blocks(PURGE_RESULTS, []);
  const underPurge = form.nextRow;
  form.backTo(top);
  form.table(
    "right",
    "phases",
    ["Phase", "starts, s", "lasts, s", "arc on"],
    `=BEAD.CYCLE_PHASES(${CYCLE})`,
    ["General", "0.0", "0.0", "General"],
    PHASES,
  );
  const lasts = `G${String(form.nextRow - PHASES)}:G${String(form.nextRow - 1)}`;
  form.blocks(
    [],
    [
      {
        label: "Cycle, start to start",
        name: "cycle",
        content: `=SUM(${lasts})`,
        look: "result",
        quantity: TIME,
      },
    ],
  );
  form.downTo(underPurge);

  form.section("Checks");
  for (const [label, name, formula] of CHECKS) form.wide(label, name, formula, "verdict");
  form.section("Cautions");
  for (const caution of CAUTIONS) form.banner(caution, "caution", 2);

  form.section("Release");
  for (const role of ["Prepared", "Reviewed", "Approved"]) {
    form.cell(0, role, "label");
    form.cell(1, "", "line", { columns: 3 });
    form.cell(4, "Signature, date", "label");
    form.cell(5, "", "line", { columns: 3 });
    form.nextLine();
  }
  form.wide(
    "Ringbead",
    formName("procedure"),
    '="procedure sheet, computed by version "&BEAD.VERSION()',
    "note",
  );

  return {
    template: "procedure",
    title: "Procedure sheet",
    units,
    widths: WIDTHS,
    cells: form.finished(),
    names: form.names,
    lists: form.lists,
    charts: [],
    frozenRows: 3,
    print: { area: `A1:H${String(form.lastRow)}`, landscape: false },
  };
}

export const procedure: Template = {
  id: "procedure",
  title: "Procedure sheet",
  purpose: "Starting values for one tube joint on a page: gap, travel, heat input, purge and cycle.",
  plan,
};
