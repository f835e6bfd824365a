/** Help in one system of units says that one only, and says it of every pair. */

import { FORMULAS } from "../../taskpane/pane/help";
import { inSystem } from "../../taskpane/pane/in-system";

test.each([
  ["Wall thickness, in | mm", "Wall thickness, in", "Wall thickness, mm"],
  ["Travel, in/min | mm/min: as set", "Travel, in/min: as set", "Travel, mm/min: as set"],
  ["Flow, ft³/h | L/min", "Flow, ft³/h", "Flow, L/min"],
  ["Gas, ft³ | L.", "Gas, ft³.", "Gas, L."],
  ["Heat input, kJ/in | kJ/mm", "Heat input, kJ/in", "Heat input, kJ/mm"],
  [
    "Ambient, °F | °C; 70 °F | 15 °C if omitted",
    "Ambient, °F; 70 °F if omitted",
    "Ambient, °C; 15 °C if omitted",
  ],
  [
    "off, in | mm; 0.0005 in | 0.01 mm if omitted",
    "off, in; 0.0005 in if omitted",
    "off, mm; 0.01 mm if omitted",
  ],
  [
    "as a real gas, at 70 °F, 1 atm | 15 °C, 1 bar, ft³ | L.",
    "as a real gas, at 70 °F, 1 atm, ft³.",
    "as a real gas, at 15 °C, 1 bar, L.",
  ],
  ["0.01 in (0.254 mm) if omitted", "0.01 in (0.254 mm) if omitted", "0.01 in (0.254 mm) if omitted"],
])("%s", (both, us, other) => {
  expect([inSystem(both, "US"), inSystem(both, "SI")]).toEqual([us, other]);
});

test("no meaning, argument or column of any formula is left with both", () => {
  for (const { id, meaning, parameters, table } of FORMULAS) {
    for (const text of [meaning, table.more, ...parameters.map(({ description }) => description)]) {
      for (const units of ["US", "SI"] as const)
        expect([id, inSystem(text, units)]).toEqual([id, expect.not.stringContaining(" | ")]);
    }
    for (const { heading, US, SI } of table.columns)
      expect([id, `${heading} ${US} ${SI}`]).toEqual([id, expect.not.stringContaining("|")]);
  }
});
