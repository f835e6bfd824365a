import { quotedText } from "../../src/quoted-text";

test.each([
  ["2 in", '"2 in"'],
  ["line\nbreak\ttab", '"line break tab"'],
  ["a\u2028b\u2029c", '"a b c"'],
  ["half \ud800 a pair", '"half   a pair"'],
  ["a whole pair \u{1f527}", '"a whole pair \u{1f527}"'],
  ["x".repeat(40), `"${"x".repeat(40)}"`],
  ["x".repeat(41), `"${"x".repeat(40)}…"`],
  // Cut between signs, never through the pair that makes one.
  ["\u{1f527}".repeat(41), `"${"\u{1f527}".repeat(40)}…"`],
  ["x".repeat(100_000), `"${"x".repeat(40)}…"`],
])("quotes %#", (typed, quoted) => {
  expect(quotedText(typed)).toBe(quoted);
});
