/** The workbooks by name: the open one's name, the others to open, a new one, and what is stored to be forgotten. */

import { button, element } from "../../../pane/dom";
import { clockTime } from "./clock";
import type { Workbooks } from "./workbooks";

const TOLD =
  "Workbooks are stored in this browser on this computer only, as you work. Clearing the browser's data forgets them: save a file of what you need to keep.";

export function workbookMenu(workbooks: Workbooks, tell: (text: string) => void): HTMLDetailsElement {
  const summary = element("summary", { id: "workbook-name" }, workbooks.name);
  const list = element("ul");
  const name = element("input", { id: "workbook-rename", maxlength: "60", autocomplete: "off" });
  const body = element("div", { class: "menu" });
  const menu = element("details", { id: "workbooks" }, summary, body);

  /** Carries out what was asked for and shows how things are then; a failure is told. */
  const run =
    (work: () => Promise<void>, closes = true) =>
    async (): Promise<void> => {
      try {
        await work();
      } catch (problem) {
        tell(`That failed: ${problem instanceof Error ? problem.message : String(problem)}.`);
      }
      summary.textContent = workbooks.name;
      if (closes) menu.open = false;
      else await fill();
    };

  const fill = async (): Promise<void> => {
    name.value = workbooks.name;
    const kept = await workbooks.list();
    list.replaceChildren(
      ...kept.map(({ name: one, at }) => {
        const isOpen = one === workbooks.name;
        const about = isOpen ? "open now" : `stored ${clockTime(at)}`;
        return element(
          "li",
          {},
          isOpen
            ? element("strong", {}, one)
            : button(
                one,
                run(() => workbooks.open(one)),
              ),
          element("span", {}, about),
          ...(isOpen
            ? []
            : [
                button(
                  "Forget",
                  run(() => workbooks.forget(one), false),
                ),
              ]),
        );
      }),
    );
  };

  body.append(
    list,
    element(
      "div",
      { class: "line" },
      element("label", { for: name.id }, "Name"),
      name,
      button(
        "Rename",
        run(() => workbooks.rename(name.value)),
      ),
    ),
    element(
      "div",
      { class: "line" },
      button(
        "New workbook",
        run(() => workbooks.startAfresh()),
      ),
      button(
        "Forget all that is stored",
        run(async () => {
          await workbooks.forgetAll();
          tell(
            "Nothing is stored in this browser any more. The open workbook stays until you close the page.",
          );
        }, false),
      ),
    ),
    element("p", {}, TOLD),
  );
  menu.addEventListener("toggle", () => {
    if (menu.open) void fill();
  });
  // A press anywhere else closes it, as with any menu.
  document.addEventListener("pointerdown", ({ target }) => {
    if (target instanceof Node && !menu.contains(target)) menu.open = false;
  });
  menu.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape") return;
    menu.open = false;
    summary.focus();
  });
  return menu;
}
