import { expectNear, expectPrinted, number } from "../bead";
import { BY_HAND, MEMORY, PUBLISHED, evidence } from "../evidence";

const PER_SECOND = 60; // mm/min in one mm/s

describe("arc energy of a steady arc", () => {
  describe(evidence("HEAT_INPUT", BY_HAND, "U·I/v, 20·300/2.5 J/mm"), () => {
    test("20 V, 300 A, 2.5 mm/s: 2.4 kJ/mm", () => {
      expectPrinted(number("HEAT_INPUT", 20, 300, 2.5 * PER_SECOND, 1, "SI"), "2.4");
    });
  });

  describe(evidence("HEAT_INPUT", BY_HAND, "60·U·I/v, 60·29·325/12.5 J/in"), () => {
    test("29 V, 325 A, 25 in in 2 min: 45.24 kJ/in", () => {
      expectPrinted(number("HEAT_INPUT", 29, 325, 25 / 2), "45.24");
    });
  });

  describe(evidence("HEAT_INPUT", BY_HAND, "60·U·I/v, 60·39·425/8.75 J/in"), () => {
    test("39 V, 425 A, 35 in in 4 min: 994.5/8.75 kJ/in", () => {
      expectPrinted(number("HEAT_INPUT", 39, 425, 35 / 4), "113.657142857");
    });
  });

  describe(evidence("HEAT_INPUT", BY_HAND, "60·U·I/v, 60·24·120/10 J/in"), () => {
    test("24 V, 120 A, 10 in/min: 17 280 J/in", () => {
      expectPrinted(number("HEAT_INPUT", 24, 120, 10) * 1000, "17280");
    });
  });

  describe(
    evidence("HEAT_INPUT", PUBLISHED, "welding-handbook-1", "example of 20 V, 200 A and 5 mm/s"),
    () => {
      test("20 V, 200 A, 5 mm/s, efficiency 0.9: 720 J/mm", () => {
        expectPrinted(number("HEAT_INPUT", 20, 200, 5 * PER_SECOND, 0.9, "SI") * 1000, "720");
      });
    },
  );

  describe(evidence("HEAT_INPUT", PUBLISHED, "kalpakjian-schmid", "example 30.1"), () => {
    // v = e·V·I/(u·A).
    test.each([
      ["aluminium", 2.9, "34.5"],
      ["steel", 9.7, "10.3"],
      ["titanium", 14.3, "7.0"],
    ])("20 V, 200 A, 75 %%, a bead of 30 mm² in %s: the printed speed", (_, meltEnergy, speed) => {
      const joulesPerMillimeter = number("HEAT_INPUT", 20, 200, 1 * PER_SECOND, 0.75, "SI") * 1000;
      expectPrinted(joulesPerMillimeter / (meltEnergy * 30), speed);
    });
  });

  describe(evidence("HEAT_INPUT", MEMORY, "groover-manufacturing", "example 29.2"), () => {
    test("3500 W, 0.7 × 0.5, 20 mm² at 10.3 J/mm³: 5.95 mm/s", () => {
      const joulesPerMillimeter = number("HEAT_INPUT", 35, 100, 1 * PER_SECOND, 0.7 * 0.5, "SI") * 1000;
      expectPrinted(joulesPerMillimeter / (10.3 * 20), "5.95");
    });
  });

  describe(evidence("HEAT_INPUT", MEMORY, "groover-manufacturing", "example 30.1"), () => {
    test("300 A, 20 V, 0.7 × 0.5: 2100 J/s, and 210 mm³/s at 10 J/mm³", () => {
      const joulesPerSecond = number("HEAT_INPUT", 20, 300, 1 * PER_SECOND, 0.7 * 0.5, "SI") * 1000;
      expectPrinted(joulesPerSecond, "2100");
      expectPrinted(joulesPerSecond / 10, "210");
    });
  });

  describe(
    evidence("HEAT_INPUT", BY_HAND, "efficiency 0.6, the factor k of [en-1011-1] for processes 141 and 142"),
    () => {
      test("0.6 of the arc energy for TIG", () => {
        // 0.6 · 2.4 kJ/mm of the first example.
        expectPrinted(number("HEAT_INPUT", 20, 300, 150, 0.6, "SI"), "1.44");
      });
    },
  );

  describe(evidence("HEAT_INPUT", BY_HAND, "45.24 kJ/in over 25.4 mm/in"), () => {
    test("45.24 kJ/in are 45.24/25.4 = 1.781102 kJ/mm", () => {
      expectPrinted(number("HEAT_INPUT", 29, 325, 12.5 * 25.4, 1, "SI"), "1.781102");
    });
  });
});

describe("a pulsed arc", () => {
  describe(
    evidence(
      "HEAT_PULSED",
      BY_HAND,
      "mean power by [iso-tr-18491-2015] and [asme-ix-2010], QW-409.1(c): the mean of U·I",
    ),
    () => {
      test("100 A at 10 V and 30 A at 9 V in equal halves: (1000 + 270)/2 = 635.0 W", () => {
        // 60 mm/min is 1 mm/s, so J/mm read as W.
        const watts = number("HEAT_PULSED", 10, 100, 0.5, 9, 30, 0.5, 60, 1, "SI") * 1000;
        expectPrinted(watts, "635.0");
      });

      test("the product of the mean volts and amps is 9.5·65 = 617.5 W, short of it by 2.8 %", () => {
        const watts = number("HEAT_PULSED", 10, 100, 0.5, 9, 30, 0.5, 60, 1, "SI") * 1000;
        expectPrinted((617.5 / watts - 1) * 100, "-2.8");
      });
    },
  );

  describe(
    evidence("AMPS_MEAN PULSE_SHARE", BY_HAND, "time-weighted mean, pulse levels of [yelamasetti-2021]"),
    () => {
      test("180 and 90 A in equal halves at 4 Hz: mean 135 A", () => {
        expectNear(number("AMPS_MEAN", 180, 0.125, 90, 0.125), 135);
        expectNear(number("PULSE_SHARE", 135, 180, 90), 0.5);
      });
    },
  );
});

describe(
  evidence(
    "HEAT_METERED HEAT_PULSED",
    BY_HAND,
    "[asme-ix-2010], QW-409.1(c) and appendix H: energy over length and power × time over length",
  ),
  () => {
    test("the two forms are one: 25 400 J over 80 mm", () => {
      // 635 W for 40 s over 80 mm; by hand 25 400 J/80 mm = 317.5 J/mm.
      expectPrinted(number("HEAT_METERED", 635 * 40, 80, 1, "SI") * 1000, "317.5");
      // The same arc at 80 mm in 40 s, 120 mm/min.
      expectPrinted(number("HEAT_PULSED", 10, 100, 0.5, 9, 30, 0.5, 120, 1, "SI") * 1000, "317.5");
    });
  },
);
