/**
 * Sampling plans against the tables of MIL-STD-105E as a statistics library codes them, every cell and every boundary of
 * the lots.
 */

import { LEVELS } from "../../src/inspection/plan-table";
import { table } from "../bead";
import { evidence, PUBLISHED, REFERENCE_LIBRARY } from "../evidence";

/** Smallest and largest lot of a row, then the letter at S-1, S-2, S-3, S-4, I, II and III. */
const LETTERS = [
  "2;8;A;A;A;A;A;A;B",
  "9;15;A;A;A;A;A;B;C",
  "16;25;A;A;B;B;B;C;D",
  "26;50;A;B;B;C;C;D;E",
  "51;90;B;B;C;C;C;E;F",
  "91;150;B;B;C;D;D;F;G",
  "151;280;B;C;D;E;E;G;H",
  "281;500;B;C;D;E;F;H;J",
  "501;1200;C;C;E;F;G;J;K",
  "1201;3200;C;D;E;G;H;K;L",
  "3201;10000;C;D;F;G;J;L;M",
  "10001;35000;C;D;F;H;K;M;N",
  "35001;150000;D;E;G;J;L;N;P",
  "150001;500000;D;E;G;J;M;P;Q",
  "500001;;D;E;H;K;N;Q;R",
];

/** Letter, then sample/acceptance number at each limit, arrows followed. */
const LIMITS = [0.1, 0.15, 0.25, 0.4, 0.65, 1.0, 1.5, 2.5, 4.0, 6.5, 10];
const NORMAL = [
  "A;125/0;80/0;50/0;32/0;20/0;13/0;8/0;5/0;3/0;2/0;5/1",
  "B;125/0;80/0;50/0;32/0;20/0;13/0;8/0;5/0;3/0;2/0;5/1",
  "C;125/0;80/0;50/0;32/0;20/0;13/0;8/0;5/0;3/0;8/1;5/1",
  "D;125/0;80/0;50/0;32/0;20/0;13/0;8/0;5/0;13/1;8/1;8/2",
  "E;125/0;80/0;50/0;32/0;20/0;13/0;8/0;20/1;13/1;13/2;13/3",
  "F;125/0;80/0;50/0;32/0;20/0;13/0;32/1;20/1;20/2;20/3;20/5",
  "G;125/0;80/0;50/0;32/0;20/0;50/1;32/1;32/2;32/3;32/5;32/7",
  "H;125/0;80/0;50/0;32/0;80/1;50/1;50/2;50/3;50/5;50/7;50/10",
  "J;125/0;80/0;50/0;125/1;80/1;80/2;80/3;80/5;80/7;80/10;80/14",
  "K;125/0;80/0;200/1;125/1;125/2;125/3;125/5;125/7;125/10;125/14;125/21",
  "L;125/0;315/1;200/1;200/2;200/3;200/5;200/7;200/10;200/14;200/21;125/21",
  "M;500/1;315/1;315/2;315/3;315/5;315/7;315/10;315/14;315/21;200/21;125/21",
  "N;500/1;500/2;500/3;500/5;500/7;500/10;500/14;500/21;315/21;200/21;125/21",
  "P;800/2;800/3;800/5;800/7;800/10;800/14;800/21;500/21;315/21;200/21;125/21",
  "Q;1250/3;1250/5;1250/7;1250/10;1250/14;1250/21;800/21;500/21;315/21;200/21;125/21",
  "R;2000/5;2000/7;2000/10;2000/14;2000/21;1250/21;800/21;500/21;315/21;200/21;125/21",
];
const TIGHTENED = [
  "A;200/0;125/0;80/0;50/0;32/0;20/0;13/0;8/0;5/0;3/0;8/1",
  "B;200/0;125/0;80/0;50/0;32/0;20/0;13/0;8/0;5/0;3/0;8/1",
  "C;200/0;125/0;80/0;50/0;32/0;20/0;13/0;8/0;5/0;13/1;8/1",
  "D;200/0;125/0;80/0;50/0;32/0;20/0;13/0;8/0;20/1;13/1;8/1",
  "E;200/0;125/0;80/0;50/0;32/0;20/0;13/0;32/1;20/1;13/1;13/2",
  "F;200/0;125/0;80/0;50/0;32/0;20/0;50/1;32/1;20/1;20/2;20/3",
  "G;200/0;125/0;80/0;50/0;32/0;80/1;50/1;32/1;32/2;32/3;32/5",
  "H;200/0;125/0;80/0;50/0;125/1;80/1;50/1;50/2;50/3;50/5;50/8",
  "J;200/0;125/0;80/0;200/1;125/1;80/1;80/2;80/3;80/5;80/8;80/12",
  "K;200/0;125/0;315/1;200/1;125/1;125/2;125/3;125/5;125/8;125/12;125/18",
  "L;200/0;500/1;315/1;200/1;200/2;200/3;200/5;200/8;200/12;200/18;125/18",
  "M;800/1;500/1;315/1;315/2;315/3;315/5;315/8;315/12;315/18;200/18;125/18",
  "N;800/1;500/1;500/2;500/3;500/5;500/8;500/12;500/18;315/18;200/18;125/18",
  "P;800/1;800/2;800/3;800/5;800/8;800/12;800/18;500/18;315/18;200/18;125/18",
  "Q;1250/2;1250/3;1250/5;1250/8;1250/12;1250/18;800/18;500/18;315/18;200/18;125/18",
  "R;2000/3;2000/5;2000/8;2000/12;2000/18;1250/18;800/18;500/18;315/18;200/18;125/18",
];

const ROWS = LETTERS.map((line) => line.split(";")).map(([from = "", to = "", ...letters]) => ({
  from: Number(from),
  to: to === "" ? 1_000_000_000 : Number(to),
  letters,
}));

/** A lot and a level with that letter: the largest such lot, so that no sample is as large as it. */
function lotOf(letter: string): [lot: number, level: string] {
  for (const { to, letters } of [...ROWS].reverse()) {
    const place = letters.lastIndexOf(letter);
    if (place >= 0) return [to, LEVELS[place] ?? ""];
  }
  throw new Error(`no lot has letter ${letter}`);
}

describe(evidence("SAMPLE_PLAN", REFERENCE_LIBRARY, "aqlschemes-1.7", "Table I of [mil-std-105e]"), () => {
  test.each(ROWS)("lots of $from to $to", ({ from, to, letters }) => {
    LEVELS.forEach((level, i) => {
      for (const lot of [from, to]) expect(table("SAMPLE_PLAN", lot, 1, level)[0]?.[0]).toBe(letters[i]);
    });
  });
});

function expectPlans(severity: string, lines: readonly string[]): void {
  test.each(lines)("%s", (line) => {
    const [letter = "", ...plans] = line.split(";");
    const [lot, level] = lotOf(letter);
    expect(plans).toHaveLength(LIMITS.length);
    plans.forEach((plan, i) => {
      const [sample = 0, accept = 0] = plan.split("/").map(Number);
      expect(table("SAMPLE_PLAN", lot, LIMITS[i], level, severity)).toEqual([
        [letter, Math.min(sample, lot), accept, accept + 1],
      ]);
    });
  });
}

describe(
  evidence("SAMPLE_PLAN", REFERENCE_LIBRARY, "aqlschemes-1.7", "Table II-A of [mil-std-105e], normal"),
  () => {
    expectPlans("normal", NORMAL);
  },
);

describe(
  evidence("SAMPLE_PLAN", REFERENCE_LIBRARY, "aqlschemes-1.7", "Table II-B of [mil-std-105e], tightened"),
  () => {
    expectPlans("tightened", TIGHTENED);
  },
);

describe(evidence("SAMPLE_PLAN", PUBLISHED, "kiermeier-2008", "a lot of 51 to 90 at level II"), () => {
  test.each([51, 90])("a lot of %d: letter E", (lot) => {
    expect(table("SAMPLE_PLAN", lot, 4)[0]?.[0]).toBe("E");
  });
});

describe("a sample as large as the lot is all of it", () => {
  test.each([
    [2, 0.1, 2],
    [125, 0.1, 125],
    [126, 0.1, 125],
    [80, 0.15, 80],
    [13, 4, 3],
  ])("lot %d, limit %d %: %d", (lot, aql, sample) => {
    expect(table("SAMPLE_PLAN", lot, aql)[0]?.[1]).toBe(sample);
  });
});
