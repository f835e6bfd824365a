/** Standards and codes. */

import type { Source } from "../source";
import { NOT_NOTED } from "../source";

const ASME = "American Society of Mechanical Engineers";
const AWS = "American Welding Society";
const CEN = "European Committee for Standardization";
const ISO = "International Organization for Standardization";

export const STANDARDS = {
  "asme-ix-2010": {
    short: "ASME BPVC Section IX",
    author: ASME,
    title: "Boiler and Pressure Vessel Code, Section IX: Welding, Brazing, and Fusing Qualifications",
    where: "ASME BPVC Section IX, QW-409.1 and Nonmandatory Appendix H",
    edition: "2010 edition on",
    standing: "standard",
    access: "second-hand",
    note: "QW-409.1 as the Welding Journal of June 2010 gives it.",
  },
  "asme-bpe-2012": {
    short: "ASME BPE-2012",
    author: ASME,
    title: "Bioprocessing Equipment",
    where: "ASME BPE, Table MJ-8.4-1",
    edition: "2012",
    standing: "standard",
    access: "copy",
  },
  "asme-b36.10m": {
    short: "ASME B36.10M",
    author: ASME,
    title: "Welded and Seamless Wrought Steel Pipe",
    where: "ASME B36.10M",
    edition: NOT_NOTED,
    standing: "standard",
    access: "second-hand",
    note: "Millimeters compared with a reference library; inches from memory.",
  },
  "asme-b36.19m": {
    short: "ASME B36.19M",
    author: ASME,
    title: "Stainless Steel Pipe",
    where: "ASME B36.19M",
    edition: NOT_NOTED,
    standing: "standard",
    access: "second-hand",
    note: "Millimeters compared with a reference library; inches from memory.",
  },
  "aws-a5.12": {
    short: "AWS A5.12",
    author: AWS,
    title: "Tungsten and Oxide Dispersed Tungsten Electrodes for Arc Welding and Cutting",
    where: "AWS A5.12M/A5.12 (ISO 6848 modified)",
    edition: NOT_NOTED,
    standing: "standard",
    access: "memory",
  },
  "aws-d18.2": {
    short: "AWS D18.2",
    author: AWS,
    title: "Guide to Weld Discoloration Levels on Inside of Austenitic Stainless Steel Tube",
    where: "AWS D18.2",
    edition: "1999 and 2009",
    standing: "standard",
    access: "copy",
    note: "The levels of oxygen agree in three copies.",
  },
  "en-1011-1": {
    short: "EN 1011-1",
    author: CEN,
    title:
      "Welding. Recommendations for welding of metallic materials. Part 1: General guidance for arc welding",
    where: "EN 1011-1",
    edition: NOT_NOTED,
    standing: "standard",
    access: "second-hand",
    note: "The factors k were read in a public answer of a welding institute; the clause itself is from memory.",
  },
  "en-1993-1-2": {
    short: "EN 1993-1-2",
    author: CEN,
    title: "Eurocode 3: Design of steel structures. Part 1-2: General rules. Structural fire design",
    where: "EN 1993-1-2, 3.4.1 and Annex C",
    edition: NOT_NOTED,
    standing: "standard",
    access: "copy",
    note: "3.4.1 (carbon steel) was read; Annex C (stainless steels, 1.4462 among them) is from memory.",
  },
  "iso-5167-2": {
    short: "ISO 5167-2",
    author: ISO,
    title:
      "Measurement of fluid flow by means of pressure differential devices inserted in circular cross-section conduits running full. Part 2: Orifice plates",
    where: "ISO 5167-2",
    edition: NOT_NOTED,
    standing: "standard",
    access: "memory",
    note: "Its equations reproduce the values that a reference library prints.",
  },
  "iso-tr-17671-1": {
    short: "ISO/TR 17671-1",
    author: ISO,
    title:
      "Welding. Recommendations for welding of metallic materials. Part 1: General guidance for arc welding",
    where: "ISO/TR 17671-1",
    edition: "2002",
    standing: "standard",
    access: "memory",
  },
  "iso-tr-18491-2015": {
    short: "ISO/TR 18491",
    author: ISO,
    title: "Welding and allied processes. Guidelines for measurement of welding energies",
    where: "ISO/TR 18491, clause 6 and Annex A",
    edition: "2015",
    standing: "standard",
    access: "copy",
    note: "Only its contents were read.",
  },
  "ifc-2018": {
    short: "International Fire Code 2018",
    author: "International Code Council",
    title: "International Fire Code",
    where: "IFC, Table G101.2",
    edition: "2018",
    standing: "standard",
    access: "copy",
  },
  "nfpa-69": {
    short: "NFPA 69",
    author: "National Fire Protection Association",
    title: "Standard on Explosion Prevention Systems",
    where: "NFPA 69, Annex E",
    edition: NOT_NOTED,
    standing: "standard",
    access: "second-hand",
  },
} as const satisfies Record<string, Source>;
