/** A call and the refusal that it meets. */

/** A call as typed, with the code and sentence of its refusal. */
export type Refused = readonly [call: string, sentence: string];

/** Beyond what can be typed: the call as a reader would write it, and what stands in the cells. */
export type RefusedCells = readonly [call: string, cells: readonly unknown[], sentence: string];

export interface Example {
  readonly call: string;
  readonly cells?: readonly unknown[];
  readonly says: string;
}
