/** Small helpers to build a page. Text always goes in as text, never as markup. */

export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Readonly<Record<string, string>> = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

export function button(label: string, onPress: () => Promise<void> | void): HTMLButtonElement {
  const made = element("button", { type: "button" }, label);
  made.addEventListener("click", () => void onPress());
  return made;
}

/** Label and text in pairs. */
export function facts(pairs: readonly (readonly [label: string, text: string])[]): HTMLElement {
  const list = element("dl");
  for (const [label, text] of pairs) {
    if (text !== "") list.append(element("dt", {}, label), element("dd", {}, text));
  }
  return list;
}
