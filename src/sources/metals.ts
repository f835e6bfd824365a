/** Properties of metals. */

import type { Source } from "../source";
import { NOT_NOTED } from "../source";

export const METAL_SOURCES = {
  "asm-handbook": {
    short: "ASM handbook",
    author: "ASM International",
    title: "Handbook, properties of wrought stainless steels (volume not noted)",
    where: "ASM International",
    edition: NOT_NOTED,
    standing: "handbook",
    access: "memory",
  },
  "capriccioli-frosi-2009": {
    short: "Capriccioli & Frosi 2009",
    author: "A. Capriccioli and P. Frosi",
    title: "Multipurpose ANSYS FE procedure for welding processes simulation",
    where: "Fusion Engineering and Design 84, 546",
    edition: "2009",
    standing: "paper",
    access: "second-hand",
    note: "Its equations for alloy 625 were read in a public material file; title and page are from memory.",
  },
  "cda-copper": {
    short: "Copper Development Association",
    author: "Copper Development Association",
    title: "Alloy data of C12200",
    where: "Copper Development Association",
    edition: NOT_NOTED,
    standing: "producer sheet",
    access: "memory",
  },
  "iida-guthrie-1988": {
    short: "Iida & Guthrie",
    author: "T. Iida and R. I. L. Guthrie",
    title: "The Physical Properties of Liquid Metals",
    where: "Clarendon Press, Oxford",
    edition: "1988",
    standing: "handbook",
    access: "memory",
  },
  "incropera-dewitt": {
    short: "Incropera & DeWitt",
    author: "F. P. Incropera and D. P. DeWitt",
    title: "Fundamentals of Heat and Mass Transfer",
    where: "Wiley, Table A.1",
    edition: NOT_NOTED,
    standing: "textbook",
    access: "memory",
  },
  "kim-1975": {
    short: "Kim 1975",
    author: "C. S. Kim",
    title: "Thermophysical Properties of Stainless Steels",
    where: "Argonne National Laboratory, ANL-75-55",
    edition: "1975",
    standing: "report",
    access: "second-hand",
    note: "Heat capacity and density of 316L were read where others quote them; conductivity and all of 304L are from memory.",
  },
  "mills-2002": {
    short: "Mills 2002",
    author: "K. C. Mills",
    title: "Recommended Values of Thermophysical Properties for Selected Commercial Alloys",
    where: "Woodhead Publishing",
    edition: "2002",
    standing: "handbook",
    access: "second-hand",
    note: "Type 316 was read as polynomial fits published by Idaho National Laboratory; Ti-6Al-4V is from memory.",
  },
  "mills-2004": {
    short: "Mills, Su, Li & Brooks 2004",
    author: "K. C. Mills, Y. Su, Z. Li and R. F. Brooks",
    title: "Equations for the Calculation of the Thermo-physical Properties of Stainless Steel",
    where: "ISIJ International 44, 1661",
    edition: "2004",
    standing: "paper",
    access: "memory",
  },
  "mills-2005": {
    short: "Mills 2005",
    author: "K. C. Mills and others",
    title: "Equation to estimate the surface tensions of stainless steels",
    where: "Journal of Materials Science 40",
    edition: "2005",
    standing: "paper",
    access: "memory",
    note: "The abstract was read; the constants of the equation are from memory.",
  },
  "paradis-2002": {
    short: "Paradis, Ishikawa & Yoda 2002",
    author: "P.-F. Paradis, T. Ishikawa and S. Yoda",
    title:
      "Non-contact measurements of surface tension and viscosity of niobium, zirconium, and titanium using an electrostatic levitation furnace",
    where: "International Journal of Thermophysics 23, 825",
    edition: "2002",
    standing: "paper",
    access: "memory",
  },
  "pichler-2022": {
    short: "Pichler et al. 2022",
    author: "P. Pichler and others",
    title: "Surface Tension and Thermal Conductivity of NIST SRM 1155a (AISI 316L Stainless Steel)",
    where: "International Journal of Thermophysics 43, doi 10.1007/s10765-022-02991-5",
    edition: "2022",
    standing: "paper",
    access: "second-hand",
    note: "Its equations were read in the material tests of an open simulation program.",
  },
  "sahoo-1988": {
    short: "Sahoo, DebRoy & McNallan 1988",
    author: "P. Sahoo, T. DebRoy and M. J. McNallan",
    title:
      "Surface tension of binary metal–surface active solute systems under conditions relevant to welding metallurgy",
    where: "Metallurgical Transactions B 19B, 483",
    edition: "1988",
    standing: "paper",
    access: "memory",
  },
  "sheet-2205": sheet("2205", "second-hand"),
  "sheet-625": sheet("625", "second-hand", "The melting range was read; the conductivities are from memory."),
  "sheet-c-276": sheet("C-276", "memory"),
  "sheet-c70600": sheet(
    "C70600",
    "second-hand",
    "A mill's sheet; its values in both systems of units agree.",
  ),
  "sheet-titanium": sheet("titanium grade 2", "memory", "Several producers' sheets."),
} as const satisfies Record<string, Source>;

/** A producer is not named: its alloy is. */
function sheet(alloy: string, access: Source["access"], note?: string): Source {
  return {
    short: `producer sheet of ${alloy}`,
    title: `Data sheet of ${alloy}`,
    where: "a producer of the alloy",
    edition: NOT_NOTED,
    standing: "producer sheet",
    access,
    ...(note === undefined ? {} : { note }),
  };
}
