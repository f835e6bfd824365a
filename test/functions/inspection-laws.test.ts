/** Laws of sampling, intervals, coverage, moisture and rooms. */

import fc from "fast-check";

import { QUALITY_LIMITS } from "../../src/inspection/plan-table";
import { expectNear, number, refusal, table } from "../bead";

const lots = fc.integer({ min: 2, max: 100_000 });
const shares = fc.double({ min: 0.001, max: 0.999, noNaN: true });

test("a plan asks for no more than the lot, and rejects from one more than it accepts", () => {
  fc.assert(
    fc.property(
      lots,
      fc.constantFrom(...QUALITY_LIMITS),
      fc.constantFrom("normal", "tightened"),
      (lot, aql, severity) => {
        const [, sample, accept, reject] = table("SAMPLE_PLAN", lot, aql, "II", severity)[0] ?? [];
        expect(Number(sample)).toBeLessThanOrEqual(lot);
        expect(Number(reject)).toBe(Number(accept) + 1);
      },
    ),
  );
});

test("tightened inspection passes no lot more easily than normal", () => {
  fc.assert(
    fc.property(fc.constantFrom(...QUALITY_LIMITS), shares, (aql, bad) => {
      const odds = (severity: string): number => {
        const [, sample, accept] = table("SAMPLE_PLAN", 1e9, aql, "II", severity)[0] ?? [];
        return number("SAMPLE_ODDS", sample, accept, bad);
      };
      expect(odds("tightened")).toBeLessThanOrEqual(odds("normal") + 1e-12);
    }),
  );
});

test("a larger sample with the same acceptance number passes less often, more allowed more often", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.nat(20), shares, (sample, accept, bad) => {
      fc.pre(accept < sample);
      const odds = number("SAMPLE_ODDS", sample, accept, bad);
      expect(number("SAMPLE_ODDS", sample + 1, accept, bad)).toBeLessThanOrEqual(odds * (1 + 1e-12));
      expect(number("SAMPLE_ODDS", sample, accept + 1, bad)).toBeGreaterThanOrEqual(odds * (1 - 1e-12));
    }),
  );
});

test("odds add up by Pascal's rule: one joint more is good or bad", () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 2000 }), fc.nat(100), shares, (sample, accept, bad) => {
      fc.pre(accept >= 1 && accept < sample);
      const all = number("SAMPLE_ODDS", sample + 1, accept, bad);
      // Below this a number has fewer digits.
      fc.pre(all > 1e-290);
      const good = (1 - bad) * number("SAMPLE_ODDS", sample, accept, bad);
      expectNear(good + bad * number("SAMPLE_ODDS", sample, accept - 1, bad), all, 1e-11);
    }),
  );
});

test("a lot that is inspected whole passes when it has no more bad joints than accepted", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 300 }), fc.nat(300), fc.nat(300), (lot, bad, accept) => {
      fc.pre(bad <= lot && accept <= lot);
      expect(number("SAMPLE_ODDS", lot, accept, bad, lot)).toBe(bad <= accept ? 1 : 0);
    }),
  );
});

test("none bad or all bad leave nothing to chance", () => {
  expect(number("SAMPLE_ODDS", 20, 0, 0)).toBe(1);
  expect(number("SAMPLE_ODDS", 20, 19, 1)).toBe(0);
  expect(number("SAMPLE_ODDS", 20, 20, 1)).toBe(1);
  expect(number("SAMPLE_ODDS", 20, 0, 0, 100)).toBe(1);
  expect(number("SAMPLE_ODDS", 20, 0, 81, 100)).toBe(0);
});

/** ln C(n, k) by adding up, for the exact chance of a small lot. */
function choose(n: number, k: number): number {
  if (k < 0 || k > n) return 0;
  let product = 1;
  for (let i = 0; i < k; i += 1) product = (product * (n - i)) / (i + 1);
  return product;
}

test("one lot against the chances counted out", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 60 }),
      fc.nat(60),
      fc.nat(60),
      fc.nat(60),
      (lot, drawn, bad, accept) => {
        fc.pre(drawn >= 1 && drawn <= lot && bad <= lot && accept <= drawn);
        let ways = 0;
        for (let i = 0; i <= accept; i += 1) ways += choose(bad, i) * choose(lot - bad, drawn - i);
        const expected = ways / choose(lot, drawn);
        expect(Math.abs(number("SAMPLE_ODDS", drawn, accept, bad, lot) - expected)).toBeLessThan(1e-11);
      },
    ),
  );
});

test("one very large lot is as good as a running process", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 100 }),
      fc.nat(10),
      fc.integer({ min: 1, max: 99 }),
      (sample, accept, percent) => {
        fc.pre(accept <= sample);
        const lot = 1e9;
        const one = number("SAMPLE_ODDS", sample, accept, (percent / 100) * lot, lot);
        expect(Math.abs(one - number("SAMPLE_ODDS", sample, accept, percent / 100))).toBeLessThan(1e-5);
      },
    ),
  );
});

test("the sample proves what it says, and one less does not", () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 5000 }), fc.nat(50), shares, (lot, fewer, confidence) => {
      const bad = 1 + (fewer % lot);
      const sample = number("SAMPLE_SIZE", lot, bad, confidence);
      const none = (n: number): number => (n === 0 ? 1 : number("SAMPLE_ODDS", n, 0, bad, lot));
      expect(none(sample)).toBeLessThanOrEqual((1 - confidence) * (1 + 1e-8));
      expect(none(sample - 1)).toBeGreaterThan((1 - confidence) * (1 - 1e-8));
    }),
  );
});

test("a larger sample proves more: fewer bad ones, or more confidence", () => {
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 1e6 }), fc.integer({ min: 1, max: 9 }), (lot, bad) => {
      expect(number("SAMPLE_SIZE", lot, bad)).toBeGreaterThanOrEqual(number("SAMPLE_SIZE", lot, bad + 1));
      expect(number("SAMPLE_SIZE", lot, bad, 0.99)).toBeGreaterThanOrEqual(number("SAMPLE_SIZE", lot, bad));
    }),
  );
});

describe("the interval of the reject rate holds the true rate as often as it says", () => {
  test.each([
    [5, 0.9],
    [10, 0.95],
    [30, 0.95],
    [60, 0.99],
  ])("every outcome of %d joints counted out, confidence %d", (inspected, confidence) => {
    const intervals = Array.from(
      { length: inspected + 1 },
      (_, rejected) => table("REJECT_RATE", rejected, inspected, confidence)[0] ?? [],
    );
    for (let rate = 0.01; rate < 1; rate += 0.01) {
      let covered = 0;
      intervals.forEach(([low, , high], k) => {
        const chance = choose(inspected, k) * rate ** k * (1 - rate) ** (inspected - k);
        if (Number(low) <= rate && rate <= Number(high)) covered += chance;
      });
      expect(covered).toBeGreaterThanOrEqual(confidence - 1e-12);
    }
  });
});

test("the interval turns about with good and bad, and narrows with the count", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 400 }), fc.nat(400), (inspected, some) => {
      const rejected = some % (inspected + 1);
      const [low, estimate, high] = (table("REJECT_RATE", rejected, inspected)[0] ?? []).map(Number);
      const [goodLow, , goodHigh] = (table("REJECT_RATE", inspected - rejected, inspected)[0] ?? []).map(
        Number,
      );
      expect(Math.abs(Number(low) + Number(goodHigh) - 1)).toBeLessThan(1e-9);
      expect(Math.abs(Number(high) + Number(goodLow) - 1)).toBeLessThan(1e-9);
      expect(Number(low)).toBeLessThanOrEqual(Number(estimate));
      expect(Number(high)).toBeGreaterThanOrEqual(Number(estimate));
      const [tenLow, , tenHigh] = (table("REJECT_RATE", 10 * rejected, 10 * inspected)[0] ?? []).map(Number);
      expect(Number(tenHigh) - Number(tenLow)).toBeLessThan(Number(high) - Number(low));
    }),
  );
});

test("the joints started give enough with the confidence, and one less does not", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      fc.double({ min: 0.05, max: 0.99, noNaN: true }),
      shares,
      (good, share, confidence) => {
        const started = number("JOINTS_START", good, share, confidence);
        const enough = (n: number): number => (n < good ? 0 : 1 - number("SAMPLE_ODDS", n, good - 1, share));
        // Good joints are what is counted here.
        expect(enough(started)).toBeGreaterThanOrEqual(confidence * (1 - 1e-8));
        expect(enough(started - 1)).toBeLessThan(confidence * (1 + 1e-8));
      },
    ),
  );
});

test("every joint good: as many as are needed; tiny confidence never less than that", () => {
  expect(number("JOINTS_START", 100, 1, 0.999)).toBe(100);
  expect(number("JOINTS_START", 100, 0.5, 1e-40)).toBe(100);
  expect(number("JOINTS_START", 100_000, 0.9, 0.95)).toBeGreaterThan(111_111);
  expect(refusal("JOINTS_START", 100_000, 1e-5, 0.5)).toMatch(/^#N\/A yield = 0.00001: is so small/);
});

test("a coupon more often is no fewer coupons", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 24, noNaN: true }),
      fc.double({ min: 0.2, max: 12, noNaN: true }),
      (hours, every) => {
        const coupons = number("COUPONS", hours, every);
        expect(coupons).toBeGreaterThanOrEqual(2);
        expect(number("COUPONS", hours, every / 2)).toBeGreaterThanOrEqual(coupons);
        // Welding on for no longer than the time between coupons never needs more than one between.
        expect(coupons - 2).toBeLessThan(hours / every);
      },
    ),
  );
});

describe("what a coupon covers holds the coupon", () => {
  const inside = (id: string, coupon: number, rule: string, units: string): void => {
    const [least = "", most = ""] = table(id, coupon, rule, units)[0] ?? [];
    if (least !== "") expect(Number(least)).toBeLessThanOrEqual(coupon * (1 + 1e-12));
    if (most !== "") expect(Number(most)).toBeGreaterThanOrEqual(coupon * (1 - 1e-12));
  };
  test.each([
    ["COVER_WALL", "ASME IX", 0.1, 25.4],
    ["COVER_WALL", "ISO 15614-1", 0.1, 25.4],
    ["COVER_WALL", "ISO 9606-1", 0.1, 25.4],
    ["COVER_OD", "ASME IX", 3, 500],
    ["COVER_OD", "ISO 9606-1", 3, 500],
    ["COVER_HEAT", "ASME IX", 0.01, 10],
    ["COVER_HEAT", "ISO 15614-1", 0.01, 10],
  ])("%s by %s", (id, rule, from, to) => {
    fc.assert(
      fc.property(fc.double({ min: from, max: to, noNaN: true }), (coupon) => {
        inside(id, coupon, rule, "SI");
        if (id !== "COVER_HEAT") inside(id, coupon / 25.4, rule, "US");
        else inside(id, coupon * 25.4, rule, "US");
      }),
    );
  });
});

test("moisture of the dew point of a moisture is that moisture, both ways", () => {
  fc.assert(
    fc.property(fc.double({ min: -100, max: 50, noNaN: true }), (celsius) => {
      const ppm = number("MOISTURE_PPM", celsius, "SI");
      expect(Math.abs(number("DEW_POINT", ppm, "SI") - celsius)).toBeLessThan(1e-5);
      expectNear(number("MOISTURE_PPM", number("DEW_POINT", ppm, "SI"), "SI"), ppm, 1e-6);
    }),
  );
  expect(number("DEW_POINT", number("MOISTURE_PPM", -100, "SI"), "SI")).toBeCloseTo(-100, 9);
  expect(number("DEW_POINT", number("MOISTURE_PPM", 50, "SI"), "SI")).toBeCloseTo(50, 9);
});

test("wetter gas has the higher dew point, across the triple point too", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -100, max: 49, noNaN: true }),
      fc.double({ min: 0.001, max: 1, noNaN: true }),
      (celsius, more) => {
        expect(number("MOISTURE_PPM", celsius + more, "SI")).toBeGreaterThan(
          number("MOISTURE_PPM", celsius, "SI"),
        );
      },
    ),
  );
  expect(number("MOISTURE_PPM", 0.0101, "SI")).toBeGreaterThan(number("MOISTURE_PPM", 0.0099, "SI"));
});

describe("a room", () => {
  const rooms = fc.tuple(
    fc.double({ min: 1000, max: 1e6, noNaN: true }),
    fc.double({ min: 1, max: 100, noNaN: true }),
    fc.double({ min: 0, max: 20, noNaN: true }),
    fc.double({ min: 0.01, max: 24, noNaN: true }),
  );
  test("more air changes, more oxygen; more argon or more time, less; never more than air, never less than none", () => {
    fc.assert(
      fc.property(rooms, ([volume, flow, changes, hours]) => {
        const oxygen = number("ROOM_OXYGEN", volume, flow, changes, hours, "SI");
        expect(oxygen).toBeGreaterThanOrEqual(0);
        expect(oxygen).toBeLessThanOrEqual(20.95);
        const up = oxygen * (1 + 1e-12);
        expect(number("ROOM_OXYGEN", volume, flow, changes + 1, hours, "SI")).toBeGreaterThanOrEqual(
          oxygen * (1 - 1e-12),
        );
        expect(number("ROOM_OXYGEN", volume, flow * 2, changes, hours, "SI")).toBeLessThanOrEqual(up);
        expect(number("ROOM_OXYGEN", volume, flow, changes, hours * 2, "SI")).toBeLessThanOrEqual(up);
        expect(number("ROOM_OXYGEN", volume * 2, flow, changes, hours, "SI")).toBeGreaterThanOrEqual(
          oxygen * (1 - 1e-12),
        );
      }),
    );
  });
  test("any time is the end of a long time", () => {
    fc.assert(
      fc.property(rooms, ([volume, flow, changes]) => {
        const end = number("ROOM_OXYGEN", volume, flow, changes + 1, null, "SI");
        expectNear(number("ROOM_OXYGEN", volume, flow, changes + 1, 1000, "SI"), end);
      }),
    );
  });
  test("mixed is the best case: pushed out first, the gas leaves less", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (part) => {
        expect(number("ROOM_OXYGEN", 1000, 1000 * part, 0, 1)).toBeGreaterThan(20.95 * (1 - part));
      }),
    );
  });
  test("sizes at the end of all numbers stay numbers", () => {
    expect(number("ROOM_OXYGEN", 1e-300, 1e300, 1, 1)).toBe(0);
    expect(number("ROOM_OXYGEN", 1e300, 1e-300, 1e300, 1e300)).toBeCloseTo(20.95, 12);
  });
});

test("a room without argon, or before any has come, has the oxygen of air", () => {
  expect(number("ROOM_OXYGEN", 30, 0, 2)).toBe(20.95);
  expect(number("ROOM_OXYGEN", 30, 10, 2, 0)).toBe(20.95);
});
