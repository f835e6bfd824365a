/** An address followed through redirects, as far as Excel would go along. */

import type { Answer } from "./answer";

const MOST_STEPS = 5;

export interface Followed {
  readonly answer: Answer;
  /** The statuses and addresses on the way. */
  readonly steps: readonly string[];
  readonly faults: readonly string[];
}

export async function followed(
  address: string,
  ask: (address: string) => Promise<Answer>,
): Promise<Followed> {
  const steps: string[] = [];
  let answer = await ask(address);
  while (answer.status >= 300 && answer.status < 400 && answer.headers.location !== undefined) {
    const next = new URL(answer.headers.location, answer.address);
    steps.push(`${String(answer.status)} to ${next.href}`);
    const fault = redirectFault(new URL(answer.address), next);
    if (fault !== undefined) return { answer, steps, faults: [fault] };
    if (steps.length > MOST_STEPS) return { answer, steps, faults: ["it redirects without end"] };
    answer = await ask(next.href);
  }
  return { answer, steps, faults: [] };
}

function redirectFault(from: URL, to: URL): string | undefined {
  if (from.protocol === "https:" && to.protocol !== "https:")
    return `it redirects to ${to.href}, which is not https: Excel loads nothing from there`;
  if (from.host !== to.host)
    return `it redirects to another host, ${to.href}: Excel takes the pane only from the address in the manifest`;
  return undefined;
}
