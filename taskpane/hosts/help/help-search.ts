/** The search of the help page: the same as the pane's, its finds as links to their places on the page. */

import { search } from "../../pane/search";

/** As many as fit under the field; what is more wants another word. */
const SHOWN = 12;

function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no ${id}`);
  return found;
}

const [form, list, told] = [byId("search"), byId("search-found"), byId("search-told")];
const field = byId("search-words") as HTMLInputElement;

function show(): void {
  const typed = field.value.trim();
  const { formulas, remark } = typed === "" ? { formulas: [], remark: "" } : search(typed);
  list.replaceChildren(
    ...formulas.slice(0, SHOWN).map(({ id, meaning }) => {
      const link = document.createElement("a");
      link.href = `#${id}`;
      link.textContent = id;
      const item = document.createElement("li");
      item.append(link, ` ${meaning}`);
      return item;
    }),
  );
  const more = formulas.length - SHOWN;
  const none = typed !== "" && formulas.length === 0 ? "No formula has these words." : "";
  told.textContent = [remark, none, more > 0 ? `and ${String(more)} more` : ""].filter(Boolean).join(" ");
}

field.addEventListener("input", show);
// Without scripts there is no search to show.
form.hidden = false;
show();
