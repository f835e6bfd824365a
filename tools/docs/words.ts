/** Plain words as Markdown says them. */

export function linkTo(id: string): string {
  return `[${id}](#${id.toLowerCase()})`;
}

export function text(plain: string): string {
  return plain.replace(/[\\`*<>[\]$~]/g, "\\$&");
}

export function inTable(plain: string): string {
  return text(plain).replaceAll("|", "\\|");
}

export function code(plain: string): string {
  return `\`${plain}\``;
}
