/** Moisture of gas and oxygen of a room. */

import { dewPointOf, moistureAt } from "../../src/air/moisture";
import { MOISTURE, si, TEMPERATURE } from "../../src/quantity";
import { expectNear, expectPrinted, number } from "../bead";
import { BY_HAND, evidence, MEMORY, PUBLISHED, WEB_PAGE } from "../evidence";

/** Vapor pressure, Pa, at a temperature in K, from the moisture at 1 atm. */
function pressureAt(kelvin: number): number {
  return (moistureAt(si(kelvin, TEMPERATURE)) * 101_325) / 1e6;
}

describe(evidence("MOISTURE_PPM", PUBLISHED, "murphy-koop-2005", "Table 1"), () => {
  test.each([
    [180, "0.0053975"],
    [210, "0.70202"],
    [240, "27.272"],
    [273.15, "611.154"],
    [273.16, "611.657"],
    [300, "3536.8"],
  ])("%d K: %s Pa", (kelvin, printed) => {
    expectPrinted(pressureAt(kelvin), printed);
  });
});

// From memory, as steam tables print the saturation of water, hPa; over ice it would be 2 and 5 % more.
test.each([
  [2, 7.06],
  [5, 8.726],
])("above the triple point it is water that evaporates: %d °C, %d hPa", (celsius, hectopascals) => {
  expectNear(pressureAt(273.15 + celsius), 100 * hectopascals, 1e-3);
});

describe(evidence("DEW_POINT", PUBLISHED, "murphy-koop-2005", "Table 1, backward"), () => {
  test.each([
    [180, 0.0053975],
    [210, 0.70202],
    [240, 27.272],
    [300, 3536.8],
  ])("%d K from %d Pa", (kelvin, pascals) => {
    // Half the last digit of the pressure is at most 1e-3 K of the point.
    expect(Math.abs(dewPointOf(si((pascals / 101_325) * 1e6, MOISTURE)) - kelvin)).toBeLessThan(1e-3);
  });
});

describe(
  evidence("MOISTURE_PPM", WEB_PAGE, "dew-point-page", "within 0.06 %: its pressure is 1013 hPa"),
  () => {
    test.each([
      [0, 6033],
      [-20, 1019],
      [-30, 375.3],
      [-40, 126.8],
      [-50, 38.89],
      [-60, 10.68],
      [-70, 2.584],
      [-80, 0.541],
      [-90, 0.09564],
    ])("%d °C: %d ppm", (celsius, ppm) => {
      expect(Math.abs(number("MOISTURE_PPM", celsius, "SI") / ppm - 1)).toBeLessThan(6e-4);
    });
  },
);

describe(evidence("ROOM_OXYGEN", WEB_PAGE, "fermilab-2013", "160 L of liquid nitrogen in a hall"), () => {
  test("700 × 160 L into 70 × 70 × 10 ft: under 19.5 %, though all mixed", () => {
    const volume = 70 * 70 * 10;
    const gas = (700 * 0.16) / 0.3048 ** 3;
    const mixed = number("ROOM_OXYGEN", volume, gas, 0, 1);
    expect(mixed).toBeLessThan(19.5);
    // Pushed out unmixed it is 19.2589 %, the worse of the two.
    expect(mixed).toBeGreaterThan((20.95 * (volume - gas)) / volume);
  });
});

describe(evidence("ROOM_OXYGEN", MEMORY, "odh-model"), () => {
  test("10 L/min into 50 m³ with one change an hour: 20.7919 % after 1 h, 20.7016 % in the end", () => {
    expectPrinted(number("ROOM_OXYGEN", 50_000, 10, 1, 1, "SI"), "20.7919");
    expectPrinted(number("ROOM_OXYGEN", 50_000, 10, 1, null, "SI"), "20.7016");
  });
});

describe(evidence("ROOM_OXYGEN", BY_HAND, "20.95·e^(−R·t/V)"), () => {
  test("a cylinder of 10.668 m³ into 50 m³ within an hour: 20.95·e^(−0.21336) = 16.9248", () => {
    expectPrinted(number("ROOM_OXYGEN", 50_000, 10_668 / 60, 0, 1, "SI"), "16.925");
  });
  test("no argon, and no time: the oxygen of air", () => {
    expectNear(number("ROOM_OXYGEN", 1000, 0, 0, 5), 20.95);
    expectNear(number("ROOM_OXYGEN", 1000, 20, 0, 0), 20.95);
  });
});
