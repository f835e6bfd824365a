/** The steps of a check of everything: each asks one question, and tells its answer and how long it took. */

export interface Counted {
  readonly passed: number;
  readonly failed: number;
}

/** What a step found: how many checks it counts for, and what there is to read. */
export interface Found extends Counted {
  readonly output?: string;
}

export interface Step {
  readonly question: string;
  /** Throws where the answer is no. */
  readonly ask: () => Promise<Found>;
}

/** A question that is answered with yes or not at all. */
export const YES: Found = { passed: 1, failed: 0 };

/** Goes through each lane from its start to its end, all lanes side by side, and adds up what was counted. */
export async function goThrough(
  lanes: readonly (readonly Step[])[],
  say: (line: string) => void = console.log,
): Promise<Counted> {
  const counted = await Promise.all(
    lanes.map(async (steps) => {
      const found: Counted[] = [];
      for (const step of steps) found.push(await answered(step, say));
      return found;
    }),
  );
  const all = counted.flat();
  const sum = (of: (one: Counted) => number): number => all.reduce((total, one) => total + of(one), 0);
  return { passed: sum(({ passed }) => passed), failed: sum(({ failed }) => failed) };
}

/** One that fails counts as failed at least once. What it wrote stands together, also where others run beside it. */
async function answered({ question, ask }: Step, say: (line: string) => void): Promise<Counted> {
  const began = performance.now();
  const told = (answer: string, output: string): void => {
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    const lines = output.trim() === "" ? "" : `\n${output.trimEnd()}`;
    say(`\n== ${question}\n   ${answer}, ${seconds} s${lines}`);
  };
  try {
    const { passed, failed, output = "" } = await ask();
    told(failed > 0 ? `NO: ${String(failed)} of ${String(passed + failed)} failed` : said(passed), output);
    return { passed, failed };
  } catch (problem) {
    told("NO", problem instanceof Error ? problem.message : String(problem));
    return { passed: 0, failed: 1 };
  }
}

function said(passed: number): string {
  if (passed === 0) return "not asked";
  return passed === 1 ? "yes" : `yes, ${String(passed)} tests`;
}
