/** Numbers that a sheet makes of others by itself, without a formula of ours. */

import { problemName } from "./guards";

/**
 * A number made of computed cells and typed ones, or nothing where one of them is missing or a typed one is out of its
 * range: an impossible input gives no bid.
 */
export function from(computed: readonly string[], typed: readonly string[], formula: string): string {
  const all = [...computed, ...typed];
  const missing = `COUNT(${all.map((name) => `{${name}}`).join(",")})<${String(all.length)}`;
  const odd = typed.length === 0 ? [] : [`${lengthOf(typed)}>0`];
  const waits = odd.length === 0 ? missing : `OR(${[missing, ...odd].join(",")})`;
  return `IF(${waits},"",IFERROR(${formula},""))`;
}

/** True where nothing is wrong with some typed cells. */
export function sound(typed: readonly string[]): string {
  return `${lengthOf(typed)}=0`;
}

function lengthOf(typed: readonly string[]): string {
  return typed.map((name) => `LEN({${problemName(name)}})`).join("+");
}
