/** The item of a list at a place that is known to be in it: the loop or search around the call is the proof. */
export function itemAt<T>(list: ArrayLike<T>, place: number): T {
  return list[place] as T;
}
