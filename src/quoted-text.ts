const LONGEST = 40;
/** Line breaks and other control signs, and halves of a surrogate pair. */
const UNPRINTABLE = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u;

/** Text as a sentence may quote it, in quotation marks. */
export function quotedText(typed: string): string {
  return `"${shortText(typed)}"`;
}

/**
 * Text as a sentence may repeat it: one line, well formed and short, whatever was typed. Only the beginning of a long
 * text is looked at.
 */
export function shortText(typed: string): string {
  const signs = Array.from(typed.slice(0, 2 * LONGEST), (sign) => (UNPRINTABLE.test(sign) ? " " : sign));
  const start = signs.slice(0, LONGEST).join("");
  return typed.length > start.length ? `${start}…` : start;
}
