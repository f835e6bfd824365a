/**
 * What a static host has to be told, in three forms: `_headers`, `web.config` and a piece for nginx. Excel on the web asks
 * for functions.json from another origin, so a page of any origin may read these files; and the names that never change
 * are asked for anew each time, so that an update is not mixed with what a browser kept.
 */

/** Names that a manifest, a workbook or a person relies on. */
export const FIXED_NAMES = [
  "taskpane.html",
  "functions.js",
  "functions.json",
  "help.html",
  "help.json",
  "manifest.xml",
  "scripts/google-sheets.js",
  "scripts/javascript-macros.js",
] as const;

const TYPES: Readonly<Record<string, string>> = {
  json: "application/json",
  svg: "image/svg+xml",
  woff: "font/woff",
  woff2: "font/woff2",
};
const EVERYWHERE: Readonly<Record<string, string>> = {
  "Access-Control-Allow-Origin": "*",
  "X-Content-Type-Options": "nosniff",
};
const ASK_AGAIN = "no-cache";

/** Files of dist/ by name, for an add-in that is served at `url`. */
export function hostingFiles(url: string): ReadonlyMap<string, string> {
  const folder = new URL(url).pathname.replace(/\/$/, "");
  return new Map([
    ["_headers", headersFile(folder)],
    ["web.config", webConfig()],
    ["nginx.conf", nginxPiece(folder)],
  ]);
}

/** A path a line, its headers indented below. */
function headersFile(folder: string): string {
  const rule = (path: string, headers: Readonly<Record<string, string>>): string =>
    [`${folder}/${path}`, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`)].join(
      "\n",
    );
  const rules = [
    rule("*", EVERYWHERE),
    ...FIXED_NAMES.map((name) => rule(name, { "Cache-Control": ASK_AGAIN })),
  ];
  return `# Read by static hosts that know this file. It belongs at the top of the site.\n${rules.join("\n")}\n`;
}

function webConfig(): string {
  const types = Object.entries(TYPES).map(
    ([ending, type]) =>
      `      <remove fileExtension=".${ending}" />\n      <mimeMap fileExtension=".${ending}" mimeType="${type}" />`,
  );
  const headers = Object.entries(EVERYWHERE).map(
    ([name, value]) => `        <remove name="${name}" />\n        <add name="${name}" value="${value}" />`,
  );
  const fixed = FIXED_NAMES.map(
    (name) =>
      `  <location path="${name}">\n    <system.webServer>\n      <staticContent>\n        <clientCache cacheControlMode="DisableCache" />\n      </staticContent>\n    </system.webServer>\n  </location>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<!-- Read by IIS in the folder it lies in. DisableCache sends "Cache-Control: ${ASK_AGAIN}". -->
<configuration>
  <system.webServer>
    <staticContent>
${types.join("\n")}
    </staticContent>
    <httpProtocol>
      <customHeaders>
${headers.join("\n")}
        <remove name="X-Frame-Options" />
      </customHeaders>
    </httpProtocol>
  </system.webServer>
${fixed.join("\n")}
</configuration>
`;
}

/** Headers stand in both places, since nginx takes none over into a location that has its own. */
function nginxPiece(folder: string): string {
  const headers = (more: Readonly<Record<string, string>>, indent: string): string =>
    Object.entries({ ...EVERYWHERE, ...more })
      .map(([name, value]) => `${indent}add_header ${name} "${value}" always;`)
      .join("\n");
  const names = FIXED_NAMES.map((name) => name.replaceAll(".", "\\.")).join("|");
  return `# Goes into the server block of the https site. The files lie in /srv/www${folder}/ here: write your own folder.
location ${folder}/ {
    root /srv/www;
${headers({}, "    ")}

    location ~ /(?:${names})$ {
${headers({ "Cache-Control": ASK_AGAIN }, "        ")}
    }
}
`;
}
