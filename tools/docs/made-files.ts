/** The pages of the repository that are generated and not written; `npm test` fails on one that is no longer so. */

import { existsSync, readFileSync } from "node:fs";
import path from "node:path";

import { root } from "../build/project";
import type { CheckRecord } from "./check-records";
import { checksPage } from "./checks";
import { factsOf } from "./facts";
import { nearness } from "../../test/nearness";
import { nearnessPage } from "./nearness";
import { nearnessFigure } from "./nearness-figure";
import { noticePage } from "./notice";
import { readmePage } from "./readme";
import { referencePage } from "./reference";
import { refusalsPage } from "./refusals";
import { sourcesPage } from "./sources";
import { ulpsPage } from "./ulps";

/** By their path in the repository. */
export function madeFiles(records: readonly CheckRecord[]): Map<string, string> {
  const facts = factsOf(records);
  const near = nearness();
  return new Map([
    ["docs/checks.json", `${JSON.stringify(records, null, 1)}\n`],
    ["docs/reference.md", referencePage(facts)],
    ["docs/how-the-numbers-are-checked.md", checksPage(facts)],
    ["docs/refusals.md", refusalsPage()],
    ["docs/sources.md", sourcesPage()],
    ["docs/special-functions.md", ulpsPage()],
    ["docs/how-near-the-amps-are.md", nearnessPage(near)],
    ["docs/help/figures/nearness.svg", nearnessFigure(near.places)],
    ["NOTICE.md", noticePage()],
    ["README.md", readmePage(committed("README.md") ?? "")],
  ]);
}

/** Files whose committed text is not what is made now. */
export function stale(made: ReadonlyMap<string, string>): string[] {
  return [...made].filter(([file, text]) => committed(file) !== text).map(([file]) => file);
}

function committed(file: string): string | undefined {
  const place = path.join(root, file);
  return existsSync(place) ? readFileSync(place, "utf8") : undefined;
}
