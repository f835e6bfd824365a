/** Pictures of the joint on the sheet being shown; they follow it as it changes. */

import type { Host } from "../hosts/host";
import { picturesOf } from "../pictures";
import { BLOCKS } from "../pictures/joint";
import { element } from "./dom";
import { part } from "./part";
import { figure } from "./figure";

/** Changes that come within this time are drawn at once, ms: typing and what is calculated after it. */
const TOGETHER = 150;
const NONE = "Drawn from a procedure sheet, when one is shown.";

export function picturesPart(host: Host): HTMLElement {
  const body = element("div", { class: "pictures" });
  let last = "";
  const show = async (): Promise<void> => {
    const pictures = picturesOf(await host.namedCells(BLOCKS));
    const key = JSON.stringify(pictures ?? NONE);
    if (key === last) return;
    last = key;
    body.replaceChildren(...(pictures?.map(figure) ?? [element("p", {}, NONE)]));
  };
  follow(host, show);
  return part("Pictures of this joint", body);
}

/** Once for all changes of a moment, and never while the one before is still being read. */
function follow(host: Host, show: () => Promise<void>): void {
  let isWaiting = false;
  let isStale = true;
  const run = async (): Promise<void> => {
    while (isStale) {
      isStale = false;
      // What cannot be read just now is read at the next change.
      await show().catch(() => undefined);
    }
    isWaiting = false;
  };
  host.onChange(() => {
    isStale = true;
    if (isWaiting) return;
    isWaiting = true;
    setTimeout(() => void run(), TOGETHER);
  });
  isWaiting = true;
  void run();
}
