/** The bar above the grid: which workbook this is, whether it is stored, and what can be done with all of it. */

import { button, element } from "../../pane/dom";
import { actionsMenu } from "./actions-menu";
import type { Origin } from "./workbook/workbooks";
import { clockTime } from "./workbook/clock";

export interface BarActions {
  readonly openFile: () => void;
  readonly save: () => Promise<void>;
  readonly print: () => void;
  readonly togglePane: () => void;
  readonly toggleLock: () => void;
  readonly startAfresh: () => Promise<void>;
}

export interface Bar {
  /** Says something once, until the next thing is said. */
  say(text: string): void;
  /** Says how the workbook came here, with the way back. */
  tellOrigin(name: string, origin: Origin): void;
}

export function buildBar(
  bar: HTMLElement,
  parts: { readonly menu: HTMLElement; readonly storing: HTMLElement; readonly view: HTMLElement },
  actions: BarActions,
): Bar {
  const notice = element("p", { id: "notice", role: "status", hidden: "" });
  const text = element("span");
  const afresh = button("Start afresh", () => actions.startAfresh());
  notice.append(
    text,
    afresh,
    button("Close", () => {
      notice.hidden = true;
    }),
  );
  const say = (words: string, offersFresh = false): void => {
    text.textContent = words;
    afresh.hidden = !offersFresh;
    notice.hidden = words === "";
  };
  const press = (id: string, label: string, work: () => Promise<void> | void): HTMLButtonElement => {
    const made = button(label, work);
    made.id = id;
    return made;
  };
  bar.replaceChildren(
    element("strong", {}, "Ringbead"),
    parts.menu,
    parts.storing,
    parts.view,
    ...actionsMenu(
      press("open", "Open a file…", actions.openFile),
      press("save", "Save as .xlsx", actions.save),
      press("print", "Print this sheet", actions.print),
      press("lock", "Unlock this sheet", actions.toggleLock),
      element("a", { href: "../notices.html", target: "_blank", rel: "license noopener" }, "Licenses"),
    ),
    press("pane-toggle", "Hide the pane", actions.togglePane),
  );
  bar.after(notice);
  return {
    say,
    tellOrigin: (name, origin) => {
      if (origin.how === "restored") say(`Restored from ${clockTime(origin.at)}.`, true);
      else if (origin.how === "elsewhere")
        say(`“${origin.name}” is open in another tab. This tab has its own workbook, “${name}”.`);
      else if (origin.how === "file") say(origin.remark);
      else say("");
    },
  };
}
