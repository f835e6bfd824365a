/** What a mill certificate says of a weld. */

import type { Source } from "../source";

export const MILL_SOURCES = {
  "aidun-martin-1997": {
    short: "Aidun & Martin 1997",
    author: "D. K. Aidun and S. A. Martin",
    title: "Effect of sulfur and oxygen on weld penetration (wording of the title not noted)",
    where: "Journal of Materials Engineering and Performance 6, 496",
    edition: "1997",
    standing: "paper",
    access: "copy",
    note: "Only the abstract was read.",
  },
  "hammar-svensson-1979": {
    short: "Hammar & Svensson 1979",
    author: "Ö. Hammar and U. Svensson",
    title: "Influence of steel composition on segregation and microstructure during solidification",
    where: "Solidification and Casting of Metals, The Metals Society, London",
    edition: "1979",
    standing: "paper",
    access: "memory",
  },
  "korinko-malene-2001": {
    short: "Korinko & Malene 2001",
    author: "P. S. Korinko and S. H. Malene",
    title: "Considerations for the weldability of types 304L and 316L stainless steel",
    where: "Savannah River Site report WSRC-MS-2001-00544",
    edition: "2001",
    standing: "report",
    access: "copy",
    note: "Its summary was read; which equivalents its ratios use was not.",
  },
  "kotecki-siewert-1992": {
    short: "Kotecki & Siewert 1992",
    author: "D. J. Kotecki and T. A. Siewert",
    title: "WRC-1992 Constitution Diagram for Stainless Steel Weld Metals",
    where: "Welding Journal 71(5)",
    edition: "1992",
    standing: "paper",
    access: "second-hand",
    note: "The equivalents as several public pages that agree give them.",
  },
  "schaeffler-1949": {
    short: "Schaeffler 1949",
    author: "A. L. Schaeffler",
    title: "Constitution Diagram for Stainless Steel Weld Metal",
    where: "Metal Progress 56, 680",
    edition: "1949",
    standing: "paper",
    access: "memory",
  },
} as const satisfies Record<string, Source>;
