/** What the molten root can hold, and the surface tension behind it. */

import { MATERIALS } from "../../src/metal/material";
import { blowOutPressure } from "../../src/purge/puddle";
import { expectPrinted, number } from "../bead";
import { BY_HAND, INPUT_DATA, evidence } from "../evidence";
import { LENGTH, si } from "../../src/quantity";

describe(evidence("PURGE_CEILING", BY_HAND, "Young–Laplace for a half-cylinder, 2σ/w at 1.6 N/m"), () => {
  const surfaceTension = { value: 1.6, standing: "estimate", source: "a round figure" } as const;
  test.each([
    [2, "1600.0"],
    [3, "1066.7"],
    [4, "800.0"],
    [5, "640.0"],
  ])("%d mm: %s Pa", (millimeters, printed) => {
    expectPrinted(
      blowOutPressure(si(millimeters / 1000, LENGTH), { ...MATERIALS["316L"], surfaceTension }),
      printed,
    );
  });
});

describe("surface tension near the liquidus, N/m", () => {
  describe(evidence("PURGE_CEILING", INPUT_DATA, "pichler-2022", "surface tension of 316L at 1708 K"), () => {
    test("316L: 1.593 + 1.9e-4·(T − 1708) at 1708 K", () => {
      // A root 2 mm wide holds σ·1000 Pa = σ·10 mbar.
      expectPrinted(number("PURGE_CEILING", 2, "316L", "SI") / 10, "1.593");
    });
  });
  describe(
    evidence(
      "PURGE_CEILING MATERIALS",
      INPUT_DATA,
      "mills-2005",
      "surface tension of stainless steels with sulfur, from memory",
    ),
    () => {
      test("stainless steels: 1.840 − 4e-4(T − 1823) − 5.6e-5·T·ln(1 + S·e^(28798/T − 8.5647))", () => {
        const temperature = 1823;
        const mills =
          1.84 - 5.6e-5 * temperature * Math.log(1 + 0.01 * Math.exp(28_798 / temperature - 8.5647));
        expectPrinted(mills, "1.5647");
        expect(Math.abs(MATERIALS["304L"].surfaceTension.value - mills)).toBeLessThan(0.0005);
        expect(Math.abs(MATERIALS["2205"].surfaceTension.value - mills)).toBeLessThan(0.0005);
      });
    },
  );
  describe(
    evidence(
      "PURGE_CEILING MATERIALS",
      INPUT_DATA,
      "sahoo-1988",
      "surface tension of iron with sulfur, from memory",
    ),
    () => {
      test("iron with 0.03 % sulfur at 1809 K", () => {
        const [temperature, gasConstant] = [1809, 8314.3];
        const adsorbed = 3.18e-3 * 0.03 * Math.exp(1.66e8 / (gasConstant * temperature));
        const sahoo = 1.943 - gasConstant * temperature * 1.3e-8 * Math.log(1 + adsorbed);
        expectPrinted(sahoo, "1.5646");
        expect(Math.abs(MATERIALS.CS.surfaceTension.value - sahoo)).toBeLessThan(0.0005);
      });
    },
  );
  describe(
    evidence(
      "PURGE_CEILING MATERIALS",
      INPUT_DATA,
      "iida-guthrie-1988",
      "surface tension of pure nickel and copper, and of titanium by [paradis-2002], from memory",
    ),
    () => {
      test("pure metals bound their alloys: titanium 1.557–1.65, nickel 1.778, copper 1.285", () => {
        const tension = (metal: keyof typeof MATERIALS): number => MATERIALS[metal].surfaceTension.value;
        expect(tension("TI-2")).toBeGreaterThanOrEqual(1.557);
        expect(tension("TI-2")).toBeLessThanOrEqual(1.65);
        expect(tension("TI-6-4")).toBeLessThan(tension("TI-2"));
        (["625", "C-276"] as const).forEach((metal) => {
          expect(tension(metal)).toBeLessThan(1.778);
          expect(tension(metal)).toBeGreaterThan(1.6);
        });
        (["C12200", "C70600"] as const).forEach((metal) => {
          expect(Math.abs(tension(metal) - 1.285)).toBeLessThan(0.0005);
        });
      });
    },
  );
});
