/** One line in the bar: whether all that was done is stored, and when it was. */

import { element } from "../../../pane/dom";
import type { StoringState } from "./autosave";
import { clockTime } from "./clock";

export interface StoringLine {
  readonly line: HTMLElement;
  readonly show: (state: StoringState) => void;
}

export function storingLine(): StoringLine {
  const line = element("span", { id: "stored", role: "status" }, "Stored on this computer as you work");
  return {
    line,
    show: (state) => {
      line.classList.toggle("failed", state.state === "failed");
      line.replaceChildren(...wordsFor(state));
    },
  };
}

function wordsFor(state: StoringState): (string | Node)[] {
  if (state.state === "waiting") return ["Storing…"];
  if (state.state === "stored") return [`Stored on this computer ${clockTime(state.at)}`];
  // A small screen has no room for the reason.
  const reason = element("span", { class: "reason" }, ` (${state.reason})`);
  return ["▲ Not stored", reason, ": save a file before you close the page"];
}
