/** What a script that runs inside Excel may not hold: ways to run text, to reach the network, to turn text into a page. */

import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** The scripts that Excel loads; the pane's are named by their content. */
const SCRIPTS = /^(?:functions|listen|taskpane)(?:\.[0-9a-f]+)?\.js$/;

const FORBIDDEN: readonly (readonly [what: string, found: RegExp])[] = [
  ["runs text: eval", /\beval\s*\(|\(0,\s*eval\)/],
  ["runs text: Function", /\bnew\s+Function\b|[^.\w$]Function\s*\(/],
  ["runs text: a timer", /\bset(?:Timeout|Interval)\s*\(\s*["'`]/],
  ["runs text: javascript:", /javascript:/i],
  ["loads a script", /\bimportScripts\b|\bimport\s*\(/],
  ["asks the network", /\bfetch\s*\(|\bXMLHttpRequest\b|\bsendBeacon\b|\bWebSocket\b|\bEventSource\b/],
  ["makes a page of text", /\b(?:inner|outer)HTML\b|\binsertAdjacentHTML\b|\bcreateContextualFragment\b/],
  ["makes a page of text", /\bdocument\s*\.\s*write(?:ln)?\b|\bDOMParser\b|\bsetHTMLUnsafe\b/],
];
const ADDRESS = /https?:\/\/[^\s"'`)\\]*/g;
const ALLOWED_ADDRESSES = [/^https:\/\/appsforoffice\.microsoft\.com\//, /^http:\/\/www\.w3\.org\//];

/** What is wrong with a script, a line each. */
export function scriptErrors(name: string, script: string): string[] {
  const addresses = [...script.matchAll(ADDRESS)].map(([address]) => address);
  return [
    ...FORBIDDEN.filter(([, found]) => found.test(script)).map(([what]) => `${name} ${what}`),
    ...addresses
      .filter((address) => !ALLOWED_ADDRESSES.some((allowed) => allowed.test(address)))
      .map((address) => `${name} names ${address}`),
  ];
}

export function unsafeScripts(dist: string): string[] {
  return (existsSync(dist) ? readdirSync(dist) : [])
    .filter((file) => SCRIPTS.test(file))
    .flatMap((file) => scriptErrors(file, readFileSync(path.join(dist, file), "utf8")));
}
