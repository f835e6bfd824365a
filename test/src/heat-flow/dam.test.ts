/** Peak temperatures along the tube against explicit finite differences of the same rod: other method, own code. */

import { number, refusal } from "../../bead";
import { BY_HAND, INDEPENDENT, evidence } from "../../evidence";
import { rodPeaks } from "../../finite-differences";
import { integralBetween } from "../../quadrature";

/** 316L cold, Mills 2002 at 298 K. */
const STEEL = { conductivity: 13.757, heatCapacity: 3.8402e6 };
const AMBIENT = 20;
const CELL = 0.0005;
/** The peak at 60 mm comes near x²/(2κ) = 503 s. */
const WATCHED = 700;

/** od, wall, speed in mm and mm/min; amps, volts, extra seconds. */
const CASES = [
  { od: 25.4, wall: 1.65, amps: 46, volts: 9.4, speed: 130, extra: 0 },
  { od: 12.7, wall: 1.24, amps: 35, volts: 9.2, speed: 160, extra: 6 },
  { od: 50.8, wall: 1.65, amps: 46, volts: 9.4, speed: 130, extra: 10 },
];

describe.each(CASES)("$od × $wall mm", ({ od, wall, amps, volts, speed, extra }) => {
  const seconds = (Math.PI * od) / (speed / 60) + extra;
  const power = 0.78 * amps * volts;
  const section = Math.PI * (od - wall) * wall * 1e-6;
  let peaks: ArrayLike<number> = [];
  let heat = NaN;
  beforeAll(() => {
    ({ peaks, heat } = rodPeaks({
      ...STEEL,
      section,
      power,
      seconds,
      length: 0.3,
      cell: CELL,
      until: WATCHED,
    }));
  });
  const tube = [od, wall, amps, volts, speed, extra, 0.78, "316L", AMBIENT, "SI"] as const;

  test("the finite differences keep the heat they were given", () => {
    expect(Math.abs(heat / (power * seconds) - 1)).toBeLessThan(1e-9);
  });

  describe(
    evidence("DAM_TEMPERATURE", INDEPENDENT, "explicit finite differences of the same rod, within 1 %"),
    () => {
      test.each([0, 2, 5, 10, 20, 40, 60])("peak at %p mm", (distance) => {
        const rise = peaks[Math.round(distance / (CELL * 1000))] ?? NaN;
        const found = number("DAM_TEMPERATURE", distance, ...tube) - AMBIENT;
        expect(Math.abs(found / rise - 1)).toBeLessThan(0.01);
      });
    },
  );

  describe(
    evidence("DAM_DISTANCE", INDEPENDENT, "explicit finite differences of the same rod, within 1 %"),
    () => {
      test.each([20, 40, 60])("the peak of %p mm is found there", (distance) => {
        const rise = peaks[Math.round(distance / (CELL * 1000))] ?? NaN;
        const found = number("DAM_DISTANCE", AMBIENT + rise, ...tube);
        expect(Math.abs(found / distance - 1)).toBeLessThan(0.01);
      });
    },
  );

  test.each([60, 100, 300, 800])("DAM_DISTANCE of %p °C leads back to it", (limit) => {
    const distance = number("DAM_DISTANCE", limit, ...tube);
    expect(distance).toBeGreaterThan(0);
    expect(Math.abs(number("DAM_TEMPERATURE", distance, ...tube) - limit)).toBeLessThan(1e-9);
  });
});

const TUBE = [25.4, 1.65, 46, 9.4, 130, 0, 0.78, "316L", AMBIENT, "SI"] as const;

describe(
  evidence(
    "DAM_TEMPERATURE",
    INDEPENDENT,
    "instant plane sources ([carslaw-jaeger-1959] §10.3), quadrature and search",
  ),
  () => {
    /**
     * The same rise added up from instant plane sources, q/(A·ρc)/√(4πκs)·exp(−x²/4κs), s = r² (Carslaw & Jaeger §10.3), at
     * closely spaced times: from where the peak is all but the end of the heat to where the heat is all but one instant.
     */
    test.each([0.5, 2, 10, 40, 150, 250, 600])("peak at %p mm", (distance) => {
      const seconds = (Math.PI * 25.4) / (130 / 60);
      const kappa = STEEL.conductivity / STEEL.heatCapacity;
      const strength =
        (0.78 * 46 * 9.4) /
        (Math.PI * (25.4 - 1.65) * 1.65e-6 * STEEL.heatCapacity) /
        Math.sqrt(Math.PI * kappa);
      const x = distance / 1000;
      // Between the end of the heat and well after x²/2κ.
      const last = Math.log(1 + (2 * x * x) / (2 * kappa * seconds) + 1);
      let peak = 0;
      for (let i = 0; i <= 2000; i += 1) {
        const time = seconds * (1 + Math.expm1((last * i) / 2000) ** 2);
        const root = Math.sqrt(time - seconds);
        peak = Math.max(
          peak,
          strength *
            integralBetween((r) => Math.exp((-x * x) / (4 * kappa * r * r)), root, Math.sqrt(time), 60),
        );
      }
      const found = number("DAM_TEMPERATURE", distance, ...TUBE) - AMBIENT;
      expect(Math.abs(found / peak - 1)).toBeLessThan(2e-5);
    });
  },
);

describe(
  evidence("DAM_TEMPERATURE", BY_HAND, "far away, heat from one instant ([carslaw-jaeger-1959] §10.3)"),
  () => {
    test("far away: q·t/(A·ρc·x·√(2πe))", () => {
      const energy = 0.78 * 46 * 9.4 * ((Math.PI * 25.4) / (130 / 60));
      const section = Math.PI * (25.4 - 1.65) * 1.65 * 1e-6;
      for (const [distance, tolerance] of [
        [20, 1e-4],
        [1000, 1e-6],
        [1e6, 1e-6],
      ] as const) {
        const rise = number("DAM_TEMPERATURE", distance * 1000, ...TUBE) - AMBIENT;
        const instant = energy / (section * 3.8402e6 * distance * Math.sqrt(2 * Math.PI * Math.E));
        expect(Math.abs(rise - instant)).toBeLessThan(tolerance * instant + 1e-12);
      }
    });
  },
);

describe(
  evidence(
    "DAM_TEMPERATURE DAM_DISTANCE",
    BY_HAND,
    "the weld itself at the end of the heat ([carslaw-jaeger-1959] §2.9)",
  ),
  () => {
    test("at the weld: q/(A·k)·√(κt/π)", () => {
      const seconds = (Math.PI * 25.4) / (130 / 60);
      const section = Math.PI * (25.4 - 1.65) * 1.65 * 1e-6;
      const rise =
        ((0.78 * 46 * 9.4) / (section * 13.757)) * Math.sqrt(((13.757 / 3.8402e6) * seconds) / Math.PI);
      expect(Math.abs((number("DAM_TEMPERATURE", 0, ...TUBE) - AMBIENT) / rise - 1)).toBeLessThan(1e-12);
      expect(number("DAM_DISTANCE", AMBIENT + rise * (1 - 1e-9), ...TUBE)).toBeLessThan(1e-4);
      expect(refusal("DAM_DISTANCE", AMBIENT + rise * 1.001, ...TUBE)).toMatch(/^#N\/A limit = /);
    });
  },
);

test("further is cooler; more arc time, current or a thinner wall is hotter", () => {
  const distances = [0, 0.01, 0.1, 1, 10, 50, 150, 500, 5000];
  const temperatures = distances.map((distance) => number("DAM_TEMPERATURE", distance, ...TUBE));
  expect([...temperatures].sort((a, b) => b - a)).toEqual(temperatures);
  const at100 = number("DAM_TEMPERATURE", 100, ...TUBE);
  expect(number("DAM_TEMPERATURE", 100, 25.4, 1.65, 46, 9.4, 130, 5, "", "", AMBIENT, "SI")).toBeGreaterThan(
    at100,
  );
  expect(number("DAM_TEMPERATURE", 100, 25.4, 1.65, 50, 9.4, 130, 0, "", "", AMBIENT, "SI")).toBeGreaterThan(
    at100,
  );
  expect(number("DAM_TEMPERATURE", 100, 25.4, 1.5, 46, 9.4, 130, 0, "", "", AMBIENT, "SI")).toBeGreaterThan(
    at100,
  );
});
