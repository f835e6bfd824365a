/** Light or dark: as the program around the pane is, which may differ from the system it runs on. */

export type Theme = "light" | "dark";

/** The theme of a background color such as #262626, by its perceived lightness; undefined for what is no color. */
export function themeOf(background: string | undefined): Theme | undefined {
  const digits = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(background ?? "");
  if (digits === null) return undefined;
  const [red = 0, green = 0, blue = 0] = digits.slice(1).map((pair) => parseInt(pair, 16));
  // Shares of the three colors in what the eye sees (ITU-R BT.601).
  return 0.299 * red + 0.587 * green + 0.114 * blue < 128 ? "dark" : "light";
}

/** Gives an element the theme of its surroundings, and where these are not known the system's, also when it changes. */
export function wear(element: HTMLElement, surroundings: Theme | undefined): void {
  const system = matchMedia("(prefers-color-scheme: dark)");
  const dress = (): void => {
    element.dataset.theme = surroundings ?? (system.matches ? "dark" : "light");
  };
  system.addEventListener("change", dress);
  dress();
}
