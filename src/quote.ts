/** What was typed, as a sentence may quote it: one line of well-formed text, however long and whatever it holds. */

const LONGEST_QUOTE = 40;
/** Line breaks and other control signs, and halves of a surrogate pair. */
const UNPRINTABLE = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u;

/** Only the beginning of a long text is looked at. */
export function quotedText(typed: string): string {
  const signs = Array.from(typed.slice(0, 2 * LONGEST_QUOTE), (sign) =>
    UNPRINTABLE.test(sign) ? " " : sign,
  );
  const start = signs.slice(0, LONGEST_QUOTE).join("");
  return `"${typed.length > start.length ? `${start}…` : start}"`;
}
