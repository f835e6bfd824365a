/** What the checker of accessibility calls serious, in parts of the page. */

import axe from "axe-core";
import type axeModule from "axe-core";
import type { Page } from "playwright-core";

/** What a selector finds, or one inside of a shadow root. */
export type Place = string | { readonly fromShadowDom: [root: string, inside: string] };

/** Each as the rule and the elements that break it; all of the page where no part is named. */
export async function seriousViolations(page: Page, ...places: readonly Place[]): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async (parts) => {
    const { axe: checker } = globalThis as unknown as { axe: typeof axeModule };
    const { violations } = await checker.run(
      parts.length === 0 ? document : { include: [...parts] },
      // Of what holds it would else write down each element.
      { resultTypes: ["violations"] },
    );
    return violations
      .filter(({ impact }) => impact === "serious" || impact === "critical")
      .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  }, places);
}
