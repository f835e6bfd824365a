/** The finite-source queue M/M/c//N: heads that call at random, and operators who serve whichever called first. */

/** A shop of heads that all look alike; times are means, s. */
export interface Source {
  readonly heads: number;
  /** One operator, from a call to being free for the next. */
  readonly service: number;
  /** One head, from the end of its service to its next call. */
  readonly run: number;
}

/** A state this much less likely than the likeliest adds nothing to a sum of 1e5 of them. */
const NEGLIGIBLE = 1e-22;

/**
 * Joints per second of one operator. Mean value analysis ([reiser-lavenberg-1980]) adds one head at a time: a head that
 * calls finds the queue of a shop with one head fewer. All terms are positive and bounded, so nothing cancels or overflows.
 */
export function rateOfOne({ heads, service, run }: Source): number {
  let rate = 0;
  let calling = 0;
  for (let head = 1; head <= heads; head += 1) {
    const stopped = service * (1 + calling);
    rate = head / (run + stopped);
    calling = rate * stopped;
  }
  return rate;
}

/**
 * Joints per second of several operators. With n heads calling the next state is (N − n)·r/min(n + 1, c) times as
 * likely, r = service/run, a ratio that falls with n: states are added outward from the likeliest, each measured by it,
 * so nothing overflows and what underflows is nothing. Joints are counted where they are few times a mean: as ends of
 * runs where runs are long, as ends of services where those are.
 */
export function rateOfSeveral(source: Source, operators: number): number {
  const { heads, service, run } = source;
  const ratio = service / run;
  const serving = (calling: number): number => Math.min(calling, operators);
  const likeliest = likeliestState(source, operators);
  let [all, running, busy] = [1, heads - likeliest, serving(likeliest)];
  const add = (likelihood: number, calling: number): void => {
    all += likelihood;
    running += likelihood * (heads - calling);
    busy += likelihood * serving(calling);
  };
  for (let n = likeliest + 1, p = 1; n <= heads && p > NEGLIGIBLE; n += 1) {
    p *= ((heads - n + 1) * ratio) / serving(n);
    add(p, n);
  }
  for (let n = likeliest - 1, p = 1; n >= 0 && p > NEGLIGIBLE; n -= 1) {
    p *= serving(n + 1) / ((heads - n) * ratio);
    add(p, n);
  }
  return ratio <= 1 ? running / all / run : busy / all / service;
}

/** How many heads most likely call: the first state whose next is no likelier. */
function likeliestState({ heads, service, run }: Source, operators: number): number {
  let [low, high] = [0, heads];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if ((heads - middle) * (service / run) > Math.min(middle + 1, operators)) low = middle + 1;
    else high = middle;
  }
  return low;
}
