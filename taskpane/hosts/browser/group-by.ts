/** The engine groups its commands by Object.groupBy, which Node 20 and browsers before 2024 do not have. */

export function offerGroupBy(): void {
  if ("groupBy" in Object) return;
  Object.assign(Object, {
    groupBy: <Item>(items: Iterable<Item>, keyOf: (item: Item) => string): Record<string, Item[]> => {
      const groups: Record<string, Item[]> = {};
      for (const item of items) (groups[keyOf(item)] ??= []).push(item);
      return groups;
    },
  });
}
