/** Events of the fake Excel, and how it writes what a name stands for. */

import type { FakeContext } from "./excel-fake";

/** What can be listened to; heard from the next sync on. */
export function events(context: FakeContext, ...names: readonly string[]): Record<string, object> {
  const add =
    (name: string) =>
    (listener: () => Promise<void>): void => {
      context.call(`${name}.add`, () => {
        context.excel.listeners.set(name, [...(context.excel.listeners.get(name) ?? []), listener]);
      });
    };
  return Object.fromEntries(names.map((name) => [name, { add: add(name) }]));
}

export function absolute(address: string): string {
  return address.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
}
