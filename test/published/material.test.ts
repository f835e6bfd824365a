/**
 * Every number of MATERIALS but the surface tension (puddle.test.ts), worked out again from the equation or the row
 * that its source gives.
 */

import { MATERIALS } from "../../src/metal/material";
import { expectPrinted, table } from "../bead";
import { INPUT_DATA, evidence } from "../evidence";

const HOT = { kelvin: 1200, celsius: 926.85 } as const;
const ROOM = { kelvin: 298.15, celsius: 25 } as const;

/** α in mm²/s of k in W/(m·K), ρ in kg/m³ and cp in J/(kg·K). */
const diffusivity = (k: number, density: number, cp: number): number => (k / (density * cp)) * 1e6;
/** ρ·cp in MJ/(m³·K). */
const capacity = (density: number, cp: number): number => (density * cp) / 1e6;
/** The value on the straight line through two rows of a table. */
const between = (at: number, [x1, y1]: Row, [x2, y2]: Row): number =>
  y1 + ((y2 - y1) * (at - x1)) / (x2 - x1);
type Row = readonly [x: number, y: number];

function row(designation: string): number[] {
  const found = table("MATERIALS").find(([name]) => name === designation);
  return (found ?? []).slice(1, 6) as number[];
}

/** The printed digits of the row are the expected ones' own: each value of the table rounds what the source gives. */
function expectRow(
  designation: string,
  source: readonly [hotK: number, hotAlpha: number, liquidus: number, coldK: number, coldCapacity: number],
): void {
  const shown = row(designation);
  expect(shown).toHaveLength(source.length);
  source.forEach((value, i) => {
    expectPrinted(value, String(shown[i]));
  });
}

describe(
  evidence(
    "MATERIALS",
    INPUT_DATA,
    "mills-2002",
    "316L: recommended values for 316, fits as published by Idaho National Laboratory",
  ),
  () => {
    test("316L", () => {
      const k = (T: number): number => -7.301e-6 * T ** 2 + 0.02716 * T + 6.308;
      const cp = (T: number): number => 0.1816 * T + 428.46;
      const density = (T: number): number => -4.454e-5 * T ** 2 - 0.4297 * T + 8089.4;
      const hot = diffusivity(k(HOT.kelvin), density(HOT.kelvin), cp(HOT.kelvin));
      const cold = capacity(density(ROOM.kelvin), cp(ROOM.kelvin));
      // Melting range 1385–1450 °C (Mills 2002).
      expectRow("316L", [k(HOT.kelvin), hot, 1450, k(ROOM.kelvin), cold]);
    });
  },
);

describe(
  evidence("MATERIALS", INPUT_DATA, "kim-1975", "304L, the liquidus by the [asm-handbook], from memory"),
  () => {
    test("304L", () => {
      const k = (T: number): number => 8.116 + 0.01618 * T;
      const cp = (T: number): number => 469.4 + 0.1348 * T;
      const density = (T: number): number => 7984.1 - 0.26506 * T - 1.158e-4 * T ** 2;
      const hot = diffusivity(k(HOT.kelvin), density(HOT.kelvin), cp(HOT.kelvin));
      const cold = capacity(density(ROOM.kelvin), cp(ROOM.kelvin));
      // 1400–1455 °C (ASM handbook, from memory).
      expectRow("304L", [k(HOT.kelvin), hot, 1455, k(ROOM.kelvin), cold]);
    });
  },
);

describe(
  evidence(
    "MATERIALS",
    INPUT_DATA,
    "en-1993-1-2",
    "2205: Annex C from memory, the liquidus by the [sheet-2205]",
  ),
  () => {
    test("2205 at 926.85 and 25 °C", () => {
      const k = (celsius: number): number => 14.6 + 0.0127 * celsius;
      const cp = (celsius: number): number =>
        450 + 0.28 * celsius - 2.91e-4 * celsius ** 2 + 1.34e-7 * celsius ** 3;
      // 1385–1440 °C (producer's sheet).
      expectRow("2205", [
        k(HOT.celsius),
        diffusivity(k(HOT.celsius), 7850, cp(HOT.celsius)),
        1440,
        k(ROOM.celsius),
        capacity(7850, cp(ROOM.celsius)),
      ]);
    });
  },
);

describe(
  evidence("MATERIALS", INPUT_DATA, "welding-handbook-1", "carbon steel, hot; cold by [en-1993-1-2], 3.4.1"),
  () => {
    test("carbon steel", () => {
      const cp = 425 + 0.773 * 20 - 1.69e-3 * 20 ** 2 + 2.22e-6 * 20 ** 3;
      // 0.028 J/(mm·s·K) over 0.0044 J/(mm³·K); melting temperature 1510 °C.
      expectRow("CS", [28, 0.028 / 0.0044, 1510, 54 - 0.0333 * 20, capacity(7850, cp)]);
    });
  },
);

describe(
  evidence(
    "MATERIALS",
    INPUT_DATA,
    "incropera-dewitt",
    "titanium grade 2: Table A.1 at 1200 K, the rest by the [sheet-titanium], from memory",
  ),
  () => {
    test("titanium grade 2", () => {
      expectRow("TI-2", [22.0, diffusivity(22.0, 4510, 620), 1670, 16.4, capacity(4510, 523)]);
    });
  },
);

describe(
  evidence("MATERIALS", INPUT_DATA, "mills-2002", "Ti-6Al-4V, hot the beta phase at 995 °C, from memory"),
  () => {
    test("Ti-6Al-4V", () => {
      expectRow("TI-6-4", [19.3, diffusivity(19.3, 4282, 641), 1650, 7.0, capacity(4420, 546)]);
    });
  },
);

describe(
  evidence(
    "MATERIALS",
    INPUT_DATA,
    "capriccioli-frosi-2009",
    "625; conductivity and liquidus by the [sheet-625], conductivity from memory",
  ),
  () => {
    test("625", () => {
      const cp = (T: number): number => 338.39 + 0.2441 * T;
      const hotK = between(HOT.celsius, [871, 22.8], [982, 25.2]);
      // 1290–1350 °C (producer's sheet).
      expectRow("625", [
        hotK,
        diffusivity(hotK, 8440, cp(HOT.kelvin)),
        1350,
        between(ROOM.celsius, [21, 9.8], [93, 10.8]),
        capacity(8440, cp(ROOM.kelvin)),
      ]);
    });
  },
);

describe(
  evidence(
    "MATERIALS",
    INPUT_DATA,
    "sheet-c-276",
    "rows from 25 to 500 °C from memory, the straight line nearest to them carried to 1200 K; hot cp an estimate",
  ),
  () => {
    test("C-276", () => {
      const rows: Row[] = [
        [25, 10.2],
        [100, 11.1],
        [200, 13.0],
        [300, 15.0],
        [400, 16.9],
        [500, 19],
      ];
      const mean = (values: number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
      const [meanX, meanY] = [mean(rows.map(([x]) => x)), mean(rows.map(([, y]) => y))];
      const slope =
        mean(rows.map(([x, y]) => (x - meanX) * (y - meanY))) / mean(rows.map(([x]) => (x - meanX) ** 2));
      const hotK = meanY + slope * (HOT.celsius - meanX);
      // 1323–1371 °C, 8890 kg/m³, 427 J/(kg·K) (producer's sheet, from memory); cp 580 hot is an estimate.
      expectRow("C-276", [hotK, diffusivity(hotK, 8890, 580), 1371, 10.2, capacity(8890, 427)]);
    });
  },
);

describe(
  evidence("MATERIALS", INPUT_DATA, "cda-copper", "C12200; cp at 1200 K by [incropera-dewitt], from memory"),
  () => {
    test("copper C12200", () => {
      // 196 Btu/(h·ft·°F) · 1.730734666 W/(m·K) (NIST SP 811) = 339.2, printed as 339 by the source.
      const k = 196 * 1.730734666;
      expectRow("C12200", [k, diffusivity(339, 8940, 480), 1083, k, capacity(8940, 385)]);
    });
  },
);

describe(
  evidence(
    "MATERIALS",
    INPUT_DATA,
    "sheet-c70600",
    "cold; hot an estimate by Wiedemann–Franz and Kopp–Neumann",
  ),
  () => {
    test("copper-nickel C70600", () => {
      // L·T/ρ with Sommerfeld's L = (π²/3)(k/e)² = 2.443e-8 W·Ω/K² and 25.5 µΩ·cm.
      const hotK = (2.443e-8 * HOT.kelvin) / 25.5e-8;
      // 26 Btu/(h·ft·°F); 377 J/(kg·K), which the sheet also gives as 0.09 Btu/(lb·°F); 1100–1150 °C.
      expectRow("C70600", [hotK, diffusivity(115, 8940, 491), 1150, 26 * 1.730734666, capacity(8940, 377)]);
    });
  },
);

describe(
  evidence(
    "MATERIALS",
    INPUT_DATA,
    "kim-1975",
    "316L hot k within 10 %, beside [pichler-2022] and [mills-2004]; from memory but for Pichler",
  ),
  () => {
    test("hot conductivities of 316L within 10 %, Mills' own uncertainty", () => {
      const [mills = NaN] = row("316L");
      // Kim, ANL-75-55 (from memory); Pichler et al., Int. J. Thermophys. 2022; Mills, Su, Li & Brooks, ISIJ Int. 44
      // (2004) 1661, all stainless steels (from memory); all at 1200 K.
      const others = [
        9.248 + 0.01571 * 1200,
        6.38 + 0.019 * 1200 - 2.45e-6 * 1200 ** 2,
        9.2 + 0.0175 * 1200 - 2e-6 * 1200 ** 2,
      ];
      for (const other of others) expect(Math.abs(other / mills - 1)).toBeLessThan(0.1);
    });
  },
);

test("every row names its sources and every metal is there", () => {
  const rows = table("MATERIALS");
  expect(rows.map(([name]) => name)).toEqual(
    "304L 316L 2205 CS TI-2 TI-6-4 625 C-276 C12200 C70600".split(" "),
  );
  for (const cells of rows) {
    const numbers =
      "hot k,hot α,liquidus,cold k,cold ρ·cp,surface tension,mean k,k at the liquidus,heat to the liquidus,latent heat,density";
    for (const what of numbers.split(",")) expect(cells[13]).toContain(`${what}: `);
  }
});

test("a number that is not published says so behind its source, and a published one does not", () => {
  const told = new Map<string, string>();
  for (const [name, ...cells] of table("MATERIALS")) {
    const metal = MATERIALS[String(name) as keyof typeof MATERIALS];
    const sources = String(cells[12]);
    for (const [what, { source, standing }] of [
      ["hot k", metal.hotConductivity],
      ["liquidus", metal.liquidus],
      ["surface tension", metal.surfaceTension],
      ["latent heat", metal.latentHeat],
      ["density", metal.density],
    ] as const) {
      const remark = standing === "published" ? "" : ` (${standing})`;
      expect(`${sources};`).toContain(`${what}: ${source}${remark};`);
      told.set(standing, what);
    }
  }
  expect([...told.keys()].sort()).toEqual(["estimate", "memory", "published"]);
});
