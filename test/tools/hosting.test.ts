/** Hosts that serve the add-in wrongly, each on the loopback interface, and what the check says of them. */

import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import { createServer } from "node:http";
import { createServer as createSecureServer } from "node:https";
import type { AddressInfo } from "node:net";
import os from "node:os";
import path from "node:path";

import { filledIn, writeManifest } from "../../tools/build/manifest";
import { hostingFiles } from "../../tools/build/hosting";
import { certificates } from "../../tools/dev/certificates";
import { distrustInWords } from "../../tools/dev/hosted/certificate";
import type { Report } from "../../tools/dev/hosted/hosted";
import { examine } from "../../tools/dev/hosted/hosted";
import { addressFrom, reportLines } from "../../tools/dev/hosted/report";
import { VERSION } from "../../taskpane/pane/help";
import { serve } from "../../tools/dev/serve";
import { ruled } from "./headers-file";
import { ownCertificate } from "./own-certificate";

const FOLDER = "/ringbead";
const TYPES: Readonly<Record<string, string>> = {
  html: "text/html",
  js: "text/javascript",
  json: "application/json",
  png: "image/png",
  xml: "application/xml",
  css: "text/css",
};

interface Sent {
  status: number;
  headers: Record<string, string | string[]>;
  body: string;
}
/** Changes an answer, or leaves it as a right host gives it. */
type Change = (name: string, sent: Sent) => void;

/** What stands at an address, by name. */
function filesAt(url: string): Map<string, string> {
  return new Map([
    ["manifest.xml", writeManifest(url)],
    ["taskpane.html", filledIn("taskpane/hosts/excel/taskpane.html", url)],
    ["functions.json", JSON.stringify({ functions: [{ id: "STANDOFF" }, { id: "VERSION" }] })],
    ["functions.js", `associate("STANDOFF"); associate("VERSION", () => "${VERSION}");`],
    ["help.json", JSON.stringify({ version: VERSION })],
    ["help.html", "help"],
    ...["listen.js", "pane.css", "taskpane.js"].map((name): [string, string] => [name, "x"]),
    ...[16, 32, 64, 80].map((size): [string, string] => [`icon-${String(size)}.png`, "x"]),
  ]);
}

interface Host {
  readonly url: string;
  readonly close: () => Promise<unknown>;
}

const folder = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
let tls: { key: string; cert: string };
let authority: string;

beforeAll(async () => {
  // The generator reports on the console.
  jest.spyOn(console, "log").mockImplementation(() => undefined);
  const made = await certificates(folder);
  tls = made;
  authority = readFileSync(made.authority, "utf8");
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

type Secured = typeof tls | "none";

async function host(change: Change, secured: Secured = tls): Promise<Host> {
  let url = "";
  const answer = (request: IncomingMessage, response: ServerResponse): void => {
    const pathname = request.url ?? "";
    const name = pathname.slice(FOLDER.length + 1);
    const body = filesAt(url).get(name);
    const ending = path.extname(name).slice(1);
    const sent: Sent = {
      status: body === undefined ? 404 : 200,
      headers: {
        "Content-Type": TYPES[ending] ?? "text/plain",
        ...ruled(hostingFiles(url).get("_headers") ?? "", pathname),
      },
      body: body ?? "not found",
    };
    change(name, sent);
    response.writeHead(sent.status, sent.headers).end(sent.body);
  };
  const server = secured === "none" ? createServer(answer) : createSecureServer(secured, answer);
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  url = `${secured === "none" ? "http" : "https"}://localhost:${String(port)}${FOLDER}`;
  return {
    url,
    close: () => {
      server.closeAllConnections();
      return new Promise((resolve) => server.close(resolve));
    },
  };
}

const RIGHT: Change = () => undefined;

async function reportOn(change: Change, secured?: Secured, trusted = authority): Promise<Report> {
  const { url, close } = await host(change, secured);
  try {
    const report = await examine(url, { version: VERSION, authority: trusted });
    const plain = (lines: readonly string[]): string[] => lines.map((line) => line.replaceAll(url, "URL"));
    return { url, files: plain(report.files), faults: plain(report.faults), remarks: plain(report.remarks) };
  } finally {
    await close();
  }
}

const on =
  (names: string | readonly string[], change: (sent: Sent) => void): Change =>
  (name, sent) => {
    if ([names].flat().includes(name)) change(sent);
  };

test("a host that follows the build's _headers has no fault, and every file that Excel needs was asked for", async () => {
  const { files, faults, remarks } = await reportOn(RIGHT);
  expect(faults).toEqual([]);
  expect(remarks).toEqual([]);
  const asked = files.map((line) => line.replace(/: 200 .*/, ""));
  expect(asked.sort()).toEqual([...filesAt("https://localhost").keys()].sort());
});

const CORS =
  "functions.json: it has no Access-Control-Allow-Origin header: Excel on the web opens the pane and answers no formula";
const BLANK = "Excel on the web shows the pane in a frame of another site and leaves it blank";

test.each<[string, Change, string[]]>([
  ["no leave for other origins", (_, { headers }) => delete headers["Access-Control-Allow-Origin"], [CORS]],
  [
    "leave for another site only",
    on("functions.json", ({ headers }) => (headers["Access-Control-Allow-Origin"] = "https://other.example")),
    [
      "functions.json: its Access-Control-Allow-Origin is https://other.example: that is not Excel on the web, so no formula is answered; set it to *",
    ],
  ],
  [
    "leave given twice",
    on("functions.json", ({ headers }) => (headers["Access-Control-Allow-Origin"] = ["*", "*"])),
    [
      "functions.json: its Access-Control-Allow-Origin is *, *: a browser takes a single value, so no formula is answered; set it to *",
    ],
  ],
  [
    "wrong types",
    on(["functions.js", "taskpane.html"], ({ headers }) => (headers["Content-Type"] = "text/plain")),
    [
      "taskpane.html: its type is text/plain, not text/html: a browser shows its text instead of the page",
      "functions.js: its type is text/plain, not text/javascript: a browser refuses to run it",
    ],
  ],
  [
    "framing forbidden",
    on("taskpane.html", ({ headers }) => (headers["X-Frame-Options"] = "SAMEORIGIN")),
    [`taskpane.html: its X-Frame-Options is SAMEORIGIN: ${BLANK}; remove that header`],
  ],
  [
    "framing forbidden by a policy",
    on("taskpane.html", ({ headers }) => (headers["Content-Security-Policy"] = "frame-ancestors 'self'")),
    [`taskpane.html: its Content-Security-Policy allows frames of 'self' only: ${BLANK}; allow https:`],
  ],
  [
    "Office's script kept out",
    on("taskpane.html", ({ headers }) =>
      Object.assign(headers, {
        "Content-Security-Policy": "default-src 'self'; frame-ancestors https:",
        "Cross-Origin-Embedder-Policy": "require-corp",
      }),
    ),
    [
      "taskpane.html: its Content-Security-Policy keeps out the script of https://appsforoffice.microsoft.com: the pane cannot start",
      "taskpane.html: its Cross-Origin-Embedder-Policy is require-corp: Office's script is kept out; remove that header",
    ],
  ],
  [
    "a redirect to http",
    on("taskpane.html", (sent) => {
      sent.status = 301;
      sent.headers.Location = "http://localhost/ringbead/taskpane.html";
    }),
    [
      "taskpane.html: it redirects to http://localhost/ringbead/taskpane.html, which is not https: Excel loads nothing from there",
    ],
  ],
  [
    "a redirect to another host",
    on("functions.json", (sent) => {
      sent.status = 302;
      sent.headers.Location = "https://login.example/";
    }),
    [
      "functions.json: it redirects to another host, https://login.example/: Excel takes the pane only from the address in the manifest",
    ],
  ],
  [
    "a redirect without end",
    on("help.html", (sent) => {
      sent.status = 302;
      sent.headers.Location = "help.html";
    }),
    ["help.html: it redirects without end"],
  ],
  [
    "a file that is not there, one that asks for a login, one that fails",
    (name, sent) => {
      const status = { "functions.json": 404, "icon-32.png": 403, "help.html": 500 }[name];
      if (status !== undefined) sent.status = status;
    },
    [
      "functions.json: status 404: it is not there; upload all of dist/",
      "icon-32.png: status 403: it asks for a login, which Excel has none for",
      "help.html: status 500, where 200 is expected",
    ],
  ],
  [
    "an old version",
    (_, sent) => (sent.body = sent.body.replaceAll(VERSION, "0.0.9")),
    [
      `manifest.xml: it is version 0.0.9, expected is ${VERSION}; upload all of dist/ again`,
      `help.json: it is version 0.0.9, expected is ${VERSION}; upload all of dist/ again`,
      `functions.js: it is not version ${VERSION}; upload all of dist/ again`,
    ],
  ],
  [
    "files of two builds",
    on("functions.json", (sent) => (sent.body = '{"functions":[{"id":"STANDOFF"},{"id":"NEWER"}]}')),
    ["functions.js: it lacks NEWER, which functions.json names: the two are of different builds"],
  ],
  [
    "one page for every address",
    (_, sent) => {
      sent.status = 200;
      sent.body = "<p>Welcome</p>";
      sent.headers["Content-Type"] = "text/html";
    },
    [
      "manifest.xml: its type is text/html, not application/xml: a browser may show it wrongly",
      "functions.json: its type is text/html, not application/json: Excel may refuse to read it",
      "functions.js: its type is text/html, not text/javascript: a browser refuses to run it",
      "help.json: its type is text/html, not application/json: Excel may refuse to read it",
      "taskpane.html: it is another page than the pane's: a login, or what the host shows for any address",
      "manifest.xml: it tells no version; something else answers in its place",
      "help.json: it tells no version; something else answers in its place",
      `functions.js: it is not version ${VERSION}; upload all of dist/ again`,
      "functions.json: it is no list of formulas; something else answers in its place",
    ],
  ],
  [
    "a manifest of another address",
    on("manifest.xml", (sent) => (sent.body = writeManifest("https://addins.example/ringbead"))),
    [
      "manifest.xml: names https://addins.example/ringbead/icon-32.png, which is not under URL; build with --env url=URL and upload that",
    ],
  ],
])("%s", async (_, change, expected) => {
  expect((await reportOn(change)).faults).toEqual(expected);
});

test.each<[string, string]>([
  ["https:", "any"],
  ["https://*.officeapps.live.com", "Office's pages"],
])("a policy that lets %s frame the pane is right (%s)", async (allowed) => {
  const change = on(
    "taskpane.html",
    ({ headers }) => (headers["Content-Security-Policy"] = `frame-ancestors 'self' ${allowed}`),
  );
  // Such a policy stands in for the older header.
  const both: Change = (name, sent) => {
    change(name, sent);
    sent.headers["X-Frame-Options"] = "DENY";
  };
  expect((await reportOn(both)).faults).toEqual([]);
});

test("a redirect within the host is followed, and what a browser keeps is told without being a fault", async () => {
  const { files, faults, remarks } = await reportOn((name, sent) => {
    if (name === "icon-64.png") Object.assign(sent, { status: 301, headers: { Location: "icon-32.png" } });
    if (name === "functions.js") sent.headers["Cache-Control"] = "max-age=86400";
    if (name === "functions.json") delete sent.headers["Cache-Control"];
  });
  expect(faults).toEqual([]);
  expect(files).toContain("icon-64.png: 301 to URL/icon-32.png → 200 image/png");
  expect(remarks).toEqual([
    "functions.json: no Cache-Control header: browsers decide how long they keep it; send no-cache, so that updates arrive",
    "functions.js: Cache-Control is max-age=86400: an update reaches people only after that; send no-cache",
  ]);
});

test("this project's own servers have no fault, over https for Excel and over http for the browser sheet", async () => {
  const dist = path.join(folder, "dist");
  mkdirSync(dist);
  for (const settings of [{ tls }, {}]) {
    const { address, close } = await serve(4880, undefined, { ...settings, folder: dist });
    for (const [name, body] of filesAt(address)) writeFileSync(path.join(dist, name), body);
    const report = await examine(address, { version: VERSION, authority });
    await close();
    expect([address, report.faults]).toEqual([address, []]);
    expect(report.files.length).toBe(filesAt(address).size);
  }
});

describe("certificates", () => {
  test("one that signed itself is a fault, and hides no other", async () => {
    const { faults } = await reportOn(
      (_, { headers }) => delete headers["Access-Control-Allow-Origin"],
      ownCertificate(),
    );
    expect(faults).toEqual([
      "the certificate is signed by itself; get one from an authority that computers trust",
      CORS,
    ]);
  });

  test("one of an authority that nobody knows, with that authority's own or without", async () => {
    const stranger = ownCertificate().cert;
    const [alone] = (await reportOn(RIGHT, tls, stranger)).faults;
    expect(alone).toMatch(/^the certificate comes without the ones between it and its authority/);
    const chained = await reportOn(RIGHT, { ...tls, cert: tls.cert + authority }, stranger);
    expect(chained.faults).toEqual([
      "the certificate comes from an authority of its own, which other computers do not know; get one from an authority that computers trust",
    ]);
  });

  test.each([
    ["CERT_HAS_EXPIRED", "the certificate has expired; renew it"],
    [
      "ERR_TLS_CERT_ALTNAME_INVALID",
      "the certificate is for another name than this host's; get one for this name",
    ],
    ["CERT_REVOKED", "the certificate is not trusted (CERT_REVOKED)"],
  ])("%s in words", (code, words) => {
    expect(distrustInWords(code)).toBe(words);
  });
});

test("a host that does not answer", async () => {
  const { url, close } = await host(RIGHT);
  await close();
  const { faults } = await examine(url, { version: VERSION, authority });
  expect(faults).toHaveLength(5);
  expect(faults[0]).toMatch(/^manifest\.xml: no answer \(.*ECONNREFUSED/);
});

describe("over http", () => {
  test("a server of this machine is looked through as far as http goes", async () => {
    const change: Change = (_, { headers }) => {
      delete headers["Access-Control-Allow-Origin"];
      headers["X-Frame-Options"] = "DENY";
    };
    const report = await reportOn(change, "none");
    expect(report.faults).toEqual([]);
    expect(report.remarks).toEqual([
      "this is http, which only a test on this machine may be: Excel loads add-ins from https",
    ]);
    expect(reportLines(report).at(-1)).toBe("no fault found in the files");
  });

  test("any other is a fault, whatever else it answers", async () => {
    const { faults } = await examine("http://nowhere.invalid", { version: VERSION });
    expect(faults[0]).toBe("the address is http: Excel loads add-ins from https only");
  });
});

test("the address may be copied with the file's name; what is none is refused", () => {
  for (const given of [
    "https://a.example/x",
    "https://a.example/x/",
    "https://a.example/x/manifest.xml?y#z",
  ]) {
    expect(addressFrom([given])).toBe("https://a.example/x");
  }
  for (const given of [[], ["a.example"], ["file:///x"], ["https://a.example", "b"]]) {
    expect(() => addressFrom(given)).toThrow("npm run check -- https://addins.example/ringbead");
  }
});

test("the lines end with a count of faults, and the command with an error", async () => {
  expect(reportLines({ url: "https://a", files: ["f: 200"], faults: ["x", "y"], remarks: ["r"] })).toEqual([
    "  f: 200",
    "note: r",
    "fault: x",
    "fault: y",
    "2 faults: Excel will stumble over what is said above",
  ]);
  const { url, close } = await host(RIGHT);
  await close();
  const { status, stdout } = spawnSync(process.execPath, ["tools/run.mjs", "check", url], {
    encoding: "utf8",
  });
  expect(status).toBe(1);
  expect(stdout).toMatch(/^fault: manifest\.xml: no answer/m);
});
