/** What is wrong with one answer of a host, in plain words and with what follows from it. */

import type { Answer } from "./answer";
import { EXCEL_ORIGIN } from "./answer";

export const OFFICE = "https://appsforoffice.microsoft.com";
/** Names of Office's own pages, one of which frames the pane. */
const OFFICE_PAGES =
  /^(?:https?:\/\/)?(?:\*\.)?(?:[\w-]+\.)*(?:officeapps\.live|office|microsoft|cloud\.microsoft|office365)\b/;

const TYPES: Readonly<
  Record<string, { readonly allowed: RegExp; readonly name: string; readonly else: string }>
> = {
  html: { allowed: /^text\/html\b/, name: "text/html", else: "a browser shows its text instead of the page" },
  js: {
    allowed: /^(?:text|application)\/(?:x-)?javascript\b/,
    name: "text/javascript",
    else: "a browser refuses to run it",
  },
  json: { allowed: /^application\/json\b/, name: "application/json", else: "Excel may refuse to read it" },
  css: { allowed: /^text\/css\b/, name: "text/css", else: "a browser refuses to use it" },
  png: { allowed: /^image\/png\b/, name: "image/png", else: "the button has no picture" },
  xml: {
    allowed: /^(?:text|application)\/xml\b/,
    name: "application/xml",
    else: "a browser may show it wrongly",
  },
};

/** Whether the file came at all, and as what it is. */
export function fileFaults({ address, status, headers }: Answer): string[] {
  if (status === 401 || status === 403)
    return [`status ${String(status)}: it asks for a login, which Excel has none for`];
  if (status === 404) return ["status 404: it is not there; upload all of dist/"];
  if (status !== 200) return [`status ${String(status)}, where 200 is expected`];
  const type = headers["content-type"] ?? "none";
  const wanted = TYPES[/\.(\w+)$/.exec(new URL(address).pathname)?.[1] ?? ""];
  if (wanted === undefined || wanted.allowed.test(type)) return [];
  return [`its type is ${type}, not ${wanted.name}: ${wanted.else}`];
}

/** Excel on the web reads the list of formulas from a page of its own: without leave from here a browser hides it. */
export function originFaults({ headers }: Answer): string[] {
  const allowed = headers["access-control-allow-origin"];
  if (allowed === "*" || allowed === EXCEL_ORIGIN) return [];
  if (allowed === undefined)
    return [
      "it has no Access-Control-Allow-Origin header: Excel on the web opens the pane and answers no formula",
    ];
  const why = allowed.includes(",") ? "a browser takes a single value" : "that is not Excel on the web";
  return [`its Access-Control-Allow-Origin is ${allowed}: ${why}, so no formula is answered; set it to *`];
}

/** Excel on the web shows the pane in a frame of another site. */
export function frameFaults({ headers }: Answer): string[] {
  const ancestors = directive(headers, "frame-ancestors");
  const inFrame = "Excel on the web shows the pane in a frame of another site and leaves it blank";
  if (ancestors !== undefined) {
    const isOpen = ancestors.some((one) => one === "*" || one === "https:" || OFFICE_PAGES.test(one));
    return isOpen
      ? []
      : [
          `its Content-Security-Policy allows frames of ${ancestors.join(" ")} only: ${inFrame}; allow https:`,
        ];
  }
  const frames = headers["x-frame-options"];
  return frames === undefined ? [] : [`its X-Frame-Options is ${frames}: ${inFrame}; remove that header`];
}

/** Headers under which the page cannot load Office's script. */
export function scriptFaults({ headers }: Answer): string[] {
  const scripts = directive(headers, "script-src") ?? directive(headers, "default-src");
  const isOpen =
    scripts === undefined ||
    scripts.some((one) => one === "*" || one === "https:" || one.replace("*.", "").includes("microsoft.com"));
  const embedder = headers["cross-origin-embedder-policy"];
  return [
    ...(isOpen
      ? []
      : [`its Content-Security-Policy keeps out the script of ${OFFICE}: the pane cannot start`]),
    ...(embedder === undefined || embedder === "unsafe-none"
      ? []
      : [`its Cross-Origin-Embedder-Policy is ${embedder}: Office's script is kept out; remove that header`]),
  ];
}

/** What an update waits for, or "". */
export function keptFor({ headers }: Answer): string {
  const control = headers["cache-control"];
  if (control === undefined)
    return "no Cache-Control header: browsers decide how long they keep it; send no-cache, so that updates arrive";
  if (/no-cache|no-store|max-age=0/.test(control)) return "";
  return `Cache-Control is ${control}: an update reaches people only after that; send no-cache`;
}

function directive(headers: Answer["headers"], name: string): string[] | undefined {
  const parts = (headers["content-security-policy"] ?? "")
    .split(/[;,]/)
    .map((one) => one.trim().split(/\s+/));
  return parts.find(([first]) => first?.toLowerCase() === name)?.slice(1);
}
