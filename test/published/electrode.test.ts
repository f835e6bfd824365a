import { number, refusal } from "../bead";
import { COMMON_PRACTICE, MEMORY, PUBLISHED, evidence } from "../evidence";

/** Direct current, electrode negative, in argon: inch size, mm size, A, A. */
const AWS_A5_12 = [
  [0.02, 0.5, 5, 20],
  [0.04, 1.0, 15, 80],
  [1 / 16, 1.6, 70, 150],
  [3 / 32, 2.4, 150, 250],
  [1 / 8, 3.2, 250, 400],
  [5 / 32, 4.0, 400, 500],
] as const;
/** Just beyond what rounding may leave. */
const SLIGHT = 1e-8;

describe("the smallest size whose published range holds the current", () => {
  describe(
    evidence("ELECTRODE_DIAMETER", MEMORY, "aws-a5.12", "current ranges of tungsten electrodes in argon"),
    () => {
      test.each(AWS_A5_12)("%d in | %d mm up to its maximum current", (inches, millimeters, _, most) => {
        expect(number("ELECTRODE_DIAMETER", most)).toBe(inches);
        expect(number("ELECTRODE_DIAMETER", most, "SI")).toBe(millimeters);
      });

      test.each(AWS_A5_12.slice(1))("%d in | %d mm from just over the size below", (inches, millimeters) => {
        const below = AWS_A5_12[AWS_A5_12.findIndex(([size]) => size === inches) - 1]?.[3] ?? NaN;
        expect(number("ELECTRODE_DIAMETER", below * (1 + SLIGHT))).toBe(inches);
        expect(number("ELECTRODE_DIAMETER", below * (1 + SLIGHT), "SI")).toBe(millimeters);
      });

      test("the table begins at 5 A and ends at 500 A", () => {
        expect(number("ELECTRODE_DIAMETER", 5)).toBeCloseTo(0.02, 12);
        expect(refusal("ELECTRODE_DIAMETER", 5 * (1 - SLIGHT))).toMatch(/^#N\/A amps = /);
        expect(refusal("ELECTRODE_DIAMETER", 500 * (1 + SLIGHT))).toMatch(/^#N\/A amps = /);
      });
    },
  );

  describe(
    evidence("ELECTRODE_DIAMETER", PUBLISHED, "gas-company-handbook", "oxide-type tungsten in argon"),
    () => {
      // Argon, DCEN: 1.0 mm 15–80, 1.6 mm 50–150, 2.4 mm 100–250, 3.2 mm 200–400 A.
      test.each([
        [1.0, 80],
        [1.6, 150],
        [2.4, 250],
        [3.2, 400],
      ])("%d mm ends at %d A", (millimeters, most) => {
        expect(number("ELECTRODE_DIAMETER", most, "SI")).toBeCloseTo(millimeters, 12);
      });
    },
  );
});

describe("at the gap", () => {
  describe(evidence("STANDOFF", COMMON_PRACTICE, "half the wall and ten thousandths of an inch"), () => {
    test("half of 0.065 in and ten thousandths: 0.0425 in", () => {
      expect(number("STANDOFF", 0.065)).toBeCloseTo(0.0425, 14);
    });
  });

  describe(
    evidence(
      "ARC_VOLTS",
      MEMORY,
      "lancaster-physics",
      "0.5 to 1.0 V/mm in argon; 8.5 to 11 V at 1 to 2 mm are common practice",
    ),
    () => {
      test("8.5 to 11 V at 1 to 2 mm in argon, 0.5 to 1.0 V/mm", () => {
        const [at1, at2] = [number("ARC_VOLTS", 1, "", "SI"), number("ARC_VOLTS", 2, "", "SI")];
        expect(at1).toBeGreaterThanOrEqual(8.5);
        expect(at2).toBeLessThanOrEqual(11);
        expect(at2 - at1).toBeGreaterThanOrEqual(0.5);
        expect(at2 - at1).toBeLessThanOrEqual(1.0);
      });
    },
  );
});
