/** A host that reads `_headers`. */

/** The headers that a host sends which reads `_headers`: every rule whose path fits, the later over the earlier. */
export function ruled(rules: string, pathname: string): Record<string, string> {
  const headers: Record<string, string> = {};
  let fits = false;
  for (const line of rules.split("\n")) {
    if (line.startsWith("/"))
      fits = line.endsWith("*") ? pathname.startsWith(line.slice(0, -1)) : line === pathname;
    const [, name = "", value = ""] = /^\s+([\w-]+): (.*)$/.exec(line) ?? [];
    if (fits && name !== "") headers[name] = value;
  }
  return headers;
}
