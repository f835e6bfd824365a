import { themeOf } from "../../taskpane/pane/theme";

test.each([
  ["#FFFFFF", "light"],
  ["#f0f0f0", "light"],
  ["262626", "dark"],
  ["#0A0A0A", "dark"],
  ["#666666", "dark"],
  ["#00FF00", "light"],
  ["#0000FF", "dark"],
])("%s is a %s background", (background, theme) => {
  expect(themeOf(background)).toBe(theme);
});

test("no color, no theme: the system decides", () => {
  for (const background of [undefined, "", "white", "#FFF"]) expect(themeOf(background)).toBeUndefined();
});
