/**
 * What the engine proposes while a formula is being typed: our formulas first, and none of the names by which a form
 * finds its own cells. Goes through the engine's registry, whatever its providers are called there.
 */

import { registries } from "@odoo/o-spreadsheet";

import { NAME_MARK } from "../../files/spoken";

type Provider = ReturnType<typeof registries.autoCompleteProviders.get>;
type Proposal = NonNullable<Awaited<ReturnType<Provider["getProposals"]>>>[number];

/** Fewer letters could begin anything: =MA is rather MAX than our MATERIALS. */
const FEWEST_LETTERS = 3;
const FORM_NAME = new RegExp(`${NAME_MARK}\\d+$`);
const arranged = new WeakSet<Provider>();

/** For all editors of the page. Once a provider is arranged it stays so. */
export function proposeOursFirst(namespace: string): void {
  const { autoCompleteProviders } = registries;
  for (const key of autoCompleteProviders.getKeys()) {
    const provider = autoCompleteProviders.get(key);
    if (arranged.has(provider)) continue;
    const own: Provider = {
      ...provider,
      async getProposals(token, content) {
        const proposals = await provider.getProposals.call(this, token, content);
        const names = new Set(this.getters.getNamedRanges().map(({ name }) => name));
        const shown = proposals?.filter(({ text }) => !(names.has(text) && FORM_NAME.test(text)));
        return shown === undefined ? [] : oursFirst(namespace, token.value, shown);
      },
    };
    arranged.add(own);
    autoCompleteProviders.replace(key, own);
  }
}

/**
 * The engine sorts by how well the key of each fits what was typed, and leaves those alike in their order. So ours that
 * fit get the very text as their key and stand in front, in the order of the job as they were registered.
 */
export function oursFirst(namespace: string, typed: string, proposals: readonly Proposal[]): Proposal[] {
  const prefix = `${namespace}.`;
  const asked = typed.toUpperCase();
  const ours = proposals.filter(({ text }) => text.startsWith(prefix)).sort(inOrder);
  const fits = ({ text }: Proposal): boolean =>
    text.startsWith(asked) || (asked.length >= FEWEST_LETTERS && text.slice(prefix.length).startsWith(asked));
  const key = asked.startsWith(namespace) ? 0 : prefix.length;
  const others = proposals.filter(({ text }) => !text.startsWith(prefix));
  return [
    ...others.filter(({ text }) => text.toUpperCase() === asked),
    ...ours.filter(fits).map((one) => ({ ...one, fuzzySearchKey: typed })),
    ...others.filter(({ text }) => text.toUpperCase() !== asked),
    ...ours.filter((one) => !fits(one)).map((one) => ({ ...one, fuzzySearchKey: one.text.slice(key) })),
  ];
}

function inOrder(a: Proposal, b: Proposal): number {
  const names = registries.functionRegistry.getKeys();
  return names.indexOf(a.text) - names.indexOf(b.text);
}
