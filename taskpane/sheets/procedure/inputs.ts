/** What a person types on the procedure sheet. The example is invented and says so. */

import { DESIGNATIONS } from "../../../src/metal/material";
import {
  ANGLE,
  BORE_PRESSURE,
  COUNT,
  CURRENT,
  FLOW,
  HEAT_INPUT,
  LENGTH,
  OXYGEN,
  SHARE,
  SPEED,
  TEMPERATURE,
  TIME,
  VOLTAGE,
} from "../../../src/quantity";
import type { Row } from "../layout";
import { ofTube } from "../starting-values";

export const JOB: Row[] = [
  { label: "Job", name: "job", content: "Invented: Fennel Island creamery", look: "inputText" },
  { label: "Joint", name: "joint", content: "Skid 3, joint 12 (invented)", look: "inputText" },
  { label: "Heat numbers", name: "heat_numbers", content: "A-0001 / A-0002 (invented)", look: "inputText" },
];

export const PAPERS: Row[] = [
  { label: "Qualified procedure", name: "procedure_no", content: "WPS-000 (invented)", look: "inputText" },
  { label: "Head, collets", name: "head", content: "", look: "inputText" },
  { label: "Date", name: "sheet_date", content: "", look: "inputText" },
];

export const TUBE: Row[] = [
  {
    label: "Outside diameter",
    name: "od",
    content: { US: 1, SI: 25.4 },
    look: "input",
    quantity: LENGTH,
  },
  { label: "Wall", name: "wall", content: { US: 0.065, SI: 1.65 }, look: "input", quantity: LENGTH },
  {
    label: "Material",
    name: "material",
    content: "316L",
    look: "inputText",
    unit: "",
    allowed: DESIGNATIONS,
  },
  { label: "Bead width (blank: common)", name: "bead_typed", content: "", look: "input", quantity: LENGTH },
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
];

export const ARC: Row[] = [
  {
    label: "Style",
    name: "style",
    content: "pulsed",
    look: "inputText",
    unit: "",
    allowed: ["pulsed", "steady"],
  },
  {
    label: "Peak, sector 1 (blank: by wall)",
    name: "peak_typed",
    content: "",
    look: "input",
    quantity: CURRENT,
  },
  { label: "Background, share of peak", name: "back_share", content: 0.3, look: "input", quantity: SHARE },
  {
    label: "Arc voltage (blank: estimate)",
    name: "volts_typed",
    content: "",
    look: "input",
    quantity: VOLTAGE,
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
    label: "Start dwell (blank: heat flow)",
    name: "dwell_typed",
    content: "",
    look: "input",
    quantity: TIME,
  },
  { label: "Prepurge", name: "prepurge", content: 30, look: "input", quantity: TIME },
  { label: "Postpurge", name: "postpurge", content: 15, look: "input", quantity: TIME },
  { label: "Handling", name: "handling", content: 240, look: "input", quantity: TIME },
];

export const BORE: Row[] = [
  { label: "Bore", name: "bore", content: `=${ofTube("{od}-2*{wall}")}`, look: "input", quantity: LENGTH },
  {
    label: "Dam spacing",
    name: "dam_spacing",
    content: { US: 24, SI: 600 },
    look: "input",
    quantity: LENGTH,
  },
  {
    label: "Dam stands up to",
    name: "dam_limit",
    content: { US: 212, SI: 100 },
    look: "input",
    quantity: TEMPERATURE,
  },
  {
    label: "Vent hole fitted",
    name: "vent",
    content: { US: 0.1875, SI: 5 },
    look: "input",
    quantity: LENGTH,
  },
  {
    label: "Bore pressure wanted",
    name: "pressure_wanted",
    content: { US: 0.3, SI: 0.75 },
    look: "input",
    quantity: BORE_PRESSURE,
  },
];

export const OXYGEN_TARGET: Row[] = [
  { label: "Purge flow", name: "purge_flow", content: { US: 15, SI: 7 }, look: "input", quantity: FLOW },
  { label: "Oxygen to reach", name: "target_ppm", content: 50, look: "input", quantity: OXYGEN },
  { label: "Oxygen in the purge gas", name: "supply_ppm", content: 0, look: "input", quantity: OXYGEN },
  { label: "Mixed cells (1 is safe)", name: "cells", content: 1, look: "input", quantity: COUNT },
];
