/**
 * Text in the form that the file format demands (ECMA-376, ST_Xstring): a character that XML cannot hold is written as
 * _xHHHH_ with its number, and so is the first sign of a text that would read like that by itself. What the file writer
 * does so already is left to it.
 */

/** Characters that a cell takes. */
const LONGEST = 32_767;
/** Letters that a formula takes. */
export const LONGEST_FORMULA = 8_192;

/** Half of a pair without the other half, and the two places of Unicode that are no character. */
const UNWRITABLE = /[\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;
/** What XML holds in no form. */
const UNREADABLE = /(?![\t\n\r])\p{Cc}/gu;
const LIKE_A_NUMBER = /_(?=x[\dA-Fa-f]{4}_)/g;

export function storedText(text: string): string {
  return text.replace(LIKE_A_NUMBER, numbered).replace(UNWRITABLE, numbered);
}

/** The same for a cell, cut to what one takes, and never in the middle of a character. */
export function storedCellText(text: string): string {
  const cut = text.slice(0, LONGEST);
  const isHalved = text.length > LONGEST && /[\uD800-\uDBFF]$/.test(cut);
  return storedText(isHalved ? cut.slice(0, -1) : cut);
}

/** For places that know no such numbers, such as the name of a sheet: what cannot be written is left out. */
export function plainText(text: string): string {
  return text.replace(UNWRITABLE, "").replace(LIKE_A_NUMBER, "-");
}

/** The same as XML of our own writing: an element's text or an attribute in double quotes. */
export function markup(text: string): string {
  return plainText(text)
    .replace(UNREADABLE, "")
    .replace(/[&<>"\t\r\n]/g, (sign) => `&#${String(sign.charCodeAt(0))};`);
}

/** The text that was stored so: of a formula, which the file's reader leaves as it is. */
export function unstoredText(text: string): string {
  return text.replace(/_x([\dA-Fa-f]{4})_/g, (_, digits: string) =>
    String.fromCharCode(parseInt(digits, 16)),
  );
}

function numbered(sign: string): string {
  return `_x${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;
}
