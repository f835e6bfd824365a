/** One operator, several machines: published charts and queue tables. */

import { expectPrinted, number } from "../bead";
import { BY_HAND, MEMORY, PUBLISHED, WEB_PAGE, evidence } from "../evidence";

const MINUTE = 60;

describe(evidence("CREW_HEADS", WEB_PAGE, "operator-machine-page", "three exercises"), () => {
  test.each([
    [2, 15, 0.5, 6],
    [1.5, 8, 0.3, 5],
    [3, 12, 1, 3],
  ])("load %d, machine %d, walk %d: %d", (load, machine, walk, heads) => {
    expect(number("CREW_HEADS", load * MINUTE, machine * MINUTE, walk * MINUTE)).toBe(heads);
  });
});

describe("machine 1.90 min, service 0.35, walk 0.15", () => {
  const perHour = (machines: number): number =>
    number("CREW_OUTPUT", machines, 0.35 * MINUTE, 1.9 * MINUTE, 1, 1, "steady", 0.15 * MINUTE);
  describe(
    evidence("CREW_HEADS", BY_HAND, "(1.90 + 0.35)/(0.35 + 0.15), figures of a problem of [groover-work]"),
    () => {
      test("4.5 machines: four keep the operator busy", () => {
        expect(number("CREW_HEADS", 0.35 * MINUTE, 1.9 * MINUTE, 0.15 * MINUTE)).toBe(4);
      });
    },
  );
  describe(
    evidence("CREW_OUTPUT", BY_HAND, "figures of a problem of [groover-work]: cost a piece and idle time"),
    () => {
      // $12/h for the worker and $18/h a machine, two pieces a cycle.
      test.each([
        [2, "0.45000"],
        [4, "0.39375"],
        [5, "0.42500"],
      ])("%d machines: $%s a piece", (machines, printed) => {
        expectPrinted((12 + 18 * machines) / (2 * perHour(machines)), printed);
      });
      test.each([
        [2, "0.555556"],
        [4, "0.111111"],
      ])("%d machines: the worker idle for %s of the time", (machines, printed) => {
        expectPrinted(1 - (perHour(machines) * 0.5) / 60, printed);
      });
    },
  );
});

/** Joints a second of `machines` with service factor X = T/(T + U); T + U is 1 s. */
function rate(machines: number, factor: number, operators = 1): number {
  return number("CREW_OUTPUT", machines, factor, 1 - factor, 1, 1, "random", 0, operators) / 3600;
}

describe("several operators, random stops", () => {
  const efficiency = (machines: number, factor: number, operators: number): number =>
    rate(machines, factor, operators) / machines;
  /**
   * What stops finds the others as if it were not there, and waits when all operators are busy with them. With N machines
   * the share that runs is (1 − X)·F, so the chance of n busy of two follows from p0 and p1 of the others, written out.
   */
  const delayOfTwo = (machines: number, factor: number): number => {
    const [others, r] = [machines - 1, factor / (1 - factor)];
    let [weight, all, free] = [1, 1, 1];
    for (let n = 1; n <= others; n += 1) {
      weight *= ((others - n + 1) * r) / Math.min(n, 2);
      all += weight;
      if (n < 2) free += weight;
    }
    return 1 - free / all;
  };

  describe(evidence("CREW_OUTPUT", PUBLISHED, "peck-hazelwood-1958", "two operators"), () => {
    test.each([
      [5, 0.06, "0.020", "0.999"],
      [5, 0.07, "0.027", "0.999"],
      [5, 0.08, "0.035", "0.998"],
      [5, 0.09, "0.044", "0.998"],
      [5, 0.1, "0.054", "0.997"],
      [6, 0.05, "0.023", "0.999"],
      [7, 0.05, "0.034", "0.999"],
    ])("N %d, X %d: D %s, F %s", (machines, factor, waits, runs) => {
      expectPrinted(delayOfTwo(machines, factor), waits);
      expectPrinted(efficiency(machines, factor, 2), runs);
    });

    // 45 min run, 5 min service.
    test.each([
      [1, "0.500"],
      [2, "0.878"],
      [3, "0.975"],
      [4, "0.995"],
      [5, "0.999"],
    ])("N 20, X .10, %d operators: F %s", (operators, runs) => {
      expectPrinted(efficiency(20, 0.1, operators), runs);
    });
  });

  describe(
    evidence("CREW_OUTPUT", MEMORY, "heizer-render", "example of five printers, two technicians"),
    () => {
      test("run 20 h, service 2 h: 4.54 of them run", () => {
        const perHour = number("CREW_OUTPUT", 5, 2 * 3600, 20 * 3600, 1, 1, "random", 0, 2);
        // The table is entered at X .090 for 1/11; the exact share of it prints 4.54 as well.
        expectPrinted(perHour * 20, "4.54");
      });
    },
  );
});

describe("one operator, random stops", () => {
  /** Running or being served, over all: what goes through in the time of a cycle without waiting. */
  const efficiency = (machines: number, factor: number): number => rate(machines, factor) / machines;
  /** A machine that stops waits when the operator is busy with the others. */
  const delay = (machines: number, factor: number): number => rate(machines - 1, factor) * factor;

  describe(evidence("CREW_OUTPUT", PUBLISHED, "peck-hazelwood-1958", "one operator"), () => {
    test.each([
      [5, 0.012, "0.048", "0.999"],
      [5, 0.025, "0.100", "0.997"],
      [5, 0.05, "0.198", "0.989"],
      [5, 0.06, "0.237", "0.983"],
      [5, 0.07, "0.275", "0.977"],
      [5, 0.08, "0.313", "0.969"],
      [5, 0.09, "0.350", "0.960"],
      [5, 0.1, "0.386", "0.950"],
      [4, 0.05, "0.149", "0.992"],
      [6, 0.05, "0.247", "0.985"],
      // N 7: the table prints D .296, the exact 0.2955 rounds to it.
      [7, 0.05, "0.296", "0.981"],
    ])("N %d, X %d: D %s, F %s", (machines, factor, waits, runs) => {
      expectPrinted(delay(machines, factor), waits);
      expectPrinted(efficiency(machines, factor), runs);
    });

    test("N 20, X .10 (45 min run, 5 min service): F .500 with one operator", () => {
      expectPrinted(efficiency(20, 0.1), "0.500");
    });
  });

  describe(evidence("CREW_OUTPUT", MEMORY, "heizer-render", "example of five printers"), () => {
    test("five printers, run 20 h, service 2 h: 4.36 of them run", () => {
      const perHour = number("CREW_OUTPUT", 5, 2 * 3600, 20 * 3600, 1, 1, "random");
      expectPrinted(perHour * 20, "4.36");
    });
  });
});

/**
 * Machines that run when service is constant and stops are random: Ashcroft 1950, written out from his formula,
 * with p the service over the run.
 */
function ashcroft(machines: number, p: number): number {
  let [sum, product, choose] = [0, 1, 1];
  for (let j = 0; j < machines; j += 1) {
    if (j > 0) {
      product *= Math.expm1(j * p);
      choose *= (machines - j) / j;
    }
    sum += choose * product;
  }
  return (1 - 1 / (1 + machines * p * sum)) / p;
}

describe(
  evidence(
    "CREW_OUTPUT",
    BY_HAND,
    "the queue of [peck-hazelwood-1958] for exponential service; steady times above [ashcroft-1950]",
  ),
  () => {
    // Running machines by either, recomputed.
    test.each([
      [2, 0.1, "1.8102", "1.8033"],
      [4, 0.1, "3.5791", "3.5334"],
      [6, 0.1, "5.2779", "5.1549"],
      [8, 0.1, "6.8532", "6.6168"],
      [10, 0.1, "8.2100", "7.8542"],
      [5, 0.05, "4.7361", "4.7128"],
      [10, 0.05, "9.3675", "9.2407"],
      [4, 0.2, "3.1234", "3.0083"],
    ])(
      "N %d, p %d: %s run with constant service, %s with exponential",
      (machines, p, constant, exponential) => {
        // One run lasts 1 s here, so as many machines run as joints go through a second.
        const running = (pattern: string): number =>
          number("CREW_OUTPUT", machines, p, 1, 1, 1, pattern) / 3600;
        expectPrinted(ashcroft(machines, p), constant);
        expectPrinted(running("random"), exponential);
        expect(running("steady")).toBeGreaterThan(Number(constant));
      },
    );
  },
);
