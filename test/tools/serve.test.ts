/** The server as any program on this machine, or any page in its browser, may speak to it: bytes over a socket. */

import type { ChildProcess } from "node:child_process";
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { connect } from "node:net";
import os from "node:os";
import path from "node:path";
import { connect as connectSecurely } from "node:tls";

import fc from "fast-check";

import { certificates } from "../../tools/dev/certificates";
import { serve } from "../../tools/dev/serve";

const SECRET = "not for anyone";
const outside = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
const folder = path.join(outside, "dist");
const PAGES: Readonly<Record<string, string>> = {
  "help.html": "<p>help</p>",
  "taskpane.html": "<p>pane</p>",
  "sheet/index.html": "<p>sheet</p>",
};

interface Started {
  readonly process: ChildProcess;
  readonly port: number;
}

/** The server in a process of its own: an error nobody catches ends that one and not the test. */
async function start(...certificate: readonly string[]): Promise<Started> {
  const child = spawn(
    process.execPath,
    ["--import", "tsx", path.join("test", "tools", "served.ts"), folder, ...certificate],
    { stdio: ["pipe", "pipe", "inherit"] },
  );
  const [line] = (await once(child.stdout, "data")) as [Buffer];
  return { process: child, port: Number(new URL(line.toString().trim()).port) };
}

let server: Started;
let secure: Started;
let authority: string;

beforeAll(async () => {
  jest.spyOn(console, "log").mockImplementation(() => undefined);
  mkdirSync(path.join(folder, "sheet"), { recursive: true });
  for (const [file, text] of Object.entries(PAGES)) writeFileSync(path.join(folder, file), text);
  writeFileSync(path.join(outside, "secret.txt"), SECRET);
  const keys = path.join(outside, "keys");
  ({ authority } = await certificates(keys));
  server = await start();
  secure = await start(path.join(keys, "localhost.key"), path.join(keys, "localhost.crt"));
});
afterAll(async () => {
  for (const { process: child } of [server, secure]) {
    const ended = once(child, "exit");
    child.stdin?.end();
    expect(await ended).toEqual([0, null]);
  }
  rmSync(outside, { recursive: true });
});

/** Sends the bytes and gives all that comes back until the other side closes or has been silent for a while. */
function send(bytes: string | Uint8Array, to = server): Promise<string> {
  return new Promise((resolve) => {
    const socket =
      to === secure
        ? connectSecurely({
            port: to.port,
            host: "127.0.0.1",
            servername: "localhost",
            ca: readFileSync(authority),
          })
        : connect(to.port, "127.0.0.1");
    const received: Buffer[] = [];
    const end = (): void => {
      socket.destroy();
      resolve(Buffer.concat(received).toString("latin1"));
    };
    socket.on("data", (data: Buffer) => received.push(data));
    // Only what arrives counts here; that a socket is cut off is an answer, too.
    socket.on("error", end).on("close", end);
    socket.setTimeout(300, end);
    socket.end(bytes);
  });
}

interface Asked {
  readonly method?: string;
  readonly host?: string;
  readonly to?: Started;
}

/** One request, whose address goes out as it is written here. */
function request(address: string, { method = "GET", to = server, host }: Asked = {}): Promise<string> {
  const name = host ?? `localhost:${String(to.port)}`;
  return send(`${method} ${address} HTTP/1.1\r\nHost: ${name}\r\nConnection: close\r\n\r\n`, to);
}

const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d{3}) /.exec(answer)?.[1]);
const bodyOf = (answer: string): string => answer.slice(answer.indexOf("\r\n\r\n") + 4);
const headerOf = (answer: string, name: string): string | undefined =>
  new RegExp(`^${name}: (.*)\r$`, "im").exec(answer.slice(0, answer.indexOf("\r\n\r\n") + 2))?.[1];

async function expectAlive(): Promise<void> {
  expect(server.process.exitCode).toBeNull();
  const answer = await request("/help.html");
  expect([statusOf(answer), bodyOf(answer)]).toEqual([200, PAGES["help.html"]]);
}

describe("an address that is none", () => {
  test.each([
    "/help.html/",
    "/help.html/help.html",
    "/%",
    "/%zz",
    "/%00",
    "/help.html%00",
    "/%C0%AF",
    "//[",
    "//",
    "//127.0.0.1/help.html",
    "http://[",
    "http://elsewhere.example/help.html",
    "*",
    "help.html",
    "/../secret.txt",
    "/sheet/../../secret.txt",
    "/%2e%2e/secret.txt",
    "/.%2e/secret.txt",
    "/sheet/..%2f..%2fsecret.txt",
    "/..%5csecret.txt",
    "/..\\secret.txt",
    "/sheet\\..\\..\\secret.txt",
    "/%5c%5c127.0.0.1%5cc$",
    "/c:/secret.txt",
    "/help.html::$DATA",
    "/nothing",
    "/sheet/nothing/",
    `/${"a".repeat(300)}`,
    `/${"a/".repeat(400)}`,
    `/${"a".repeat(5000)}`,
    `/${"%61".repeat(5000)}`,
    `/${"a".repeat(100_000)}`,
    "/help.html HTTP/1.1\r\nHost: localhost\r\nHost: other",
    "/\u0000",
    "/\u00e9",
  ])("is refused and ends nothing: %j", async (address) => {
    const answer = await request(address);
    const status = statusOf(answer);
    expect([address, status >= 400 && status < 500]).toEqual([address, true]);
    expect(answer).not.toContain(SECRET);
    await expectAlive();
  });

  test("whatever bytes arrive, the process answers the next request", async () => {
    const start = fc.constantFrom("", "GET ", "GET /", "HEAD //", "GET /%", "GET http://", "POST /");
    const bytes = fc.tuple(
      start,
      fc.uint8Array({ maxLength: 200 }),
      fc.constantFrom("", " HTTP/1.1\r\n\r\n"),
    );
    await fc.assert(
      fc.asyncProperty(bytes, async ([head, middle, tail]) => {
        const answer = await send(Buffer.concat([Buffer.from(head), middle, Buffer.from(tail)]));
        // Nothing at all, where the bytes are no whole request.
        if (answer !== "") expect(statusOf(answer)).toBeGreaterThanOrEqual(400);
        expect(server.process.exitCode).toBeNull();
      }),
      { numRuns: 150 },
    );
    await expectAlive();
  });

  test("so does an address of any characters that a request may have", async () => {
    const characters = fc.constantFrom(
      ..."/ % . \\ ? # [ ] @ : ; & = + ~ a b 0 2 e f 5 c".split(" "),
      "%2e",
      "%2F",
      "..",
      "sheet",
    );
    const address = fc.array(characters, { maxLength: 40 }).map((parts) => `/${parts.join("")}`);
    await fc.assert(
      fc.asyncProperty(address, async (one) => {
        const answer = await request(one);
        expect([one, [200, 302, 400, 404, 414]]).toEqual([one, expect.arrayContaining([statusOf(answer)])]);
        expect(answer).not.toContain(SECRET);
      }),
      { numRuns: 150 },
    );
    await expectAlive();
  });
});

describe("a request", () => {
  test("for a page gets it, also with a query behind the address", async () => {
    const answer = await request("/sheet/?a=%&b=..#c");
    expect([statusOf(answer), bodyOf(answer)]).toEqual([200, PAGES["sheet/index.html"]]);
    const home = await request("/");
    expect([statusOf(home), headerOf(home, "Location")]).toEqual([302, "/sheet/"]);
  });

  test("HEAD gets the headers of GET and no body", async () => {
    const [head, get] = [await request("/help.html", { method: "HEAD" }), await request("/help.html")];
    expect([statusOf(head), bodyOf(head)]).toEqual([200, ""]);
    expect(headerOf(head, "Content-Length")).toBe(String(PAGES["help.html"]?.length));
    expect(headerOf(head, "Content-Type")).toBe(headerOf(get, "Content-Type"));
    expect(bodyOf(await request("/nothing", { method: "HEAD" }))).toBe("");
  });

  test.each(["POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "PROPFIND"])(
    "%s is not done",
    async (method) => {
      const answer = await request("/help.html", { method });
      expect([statusOf(answer), headerOf(answer, "Allow")]).toEqual([405, "GET, HEAD"]);
      expect(answer).not.toContain("<p>");
    },
  );

  test("CONNECT leads nowhere", async () => {
    expect(await request("elsewhere.example:443", { method: "CONNECT" })).toBe("");
    await expectAlive();
  });

  test.each(["localhost", "LOCALHOST", "127.0.0.1", "[::1]"])(
    "comes by the name %s and its port",
    async (name) => {
      const named = await request("/help.html", { host: `${name}:${String(server.port)}` });
      expect(statusOf(named)).toBe(200);
      for (const wrong of [name, `${name}:80`, `${name}:${String(server.port)}.elsewhere.example`])
        expect([wrong, statusOf(await request("/help.html", { host: wrong }))]).toEqual([wrong, 421]);
    },
  );

  test.each([
    "elsewhere.example",
    "localhost.elsewhere.example",
    "0.0.0.0",
    "127.0.0.2",
    "localhost.",
    "",
    "@localhost",
  ])("by the name %j is sent away, as from a page whose name was made to lead here", async (name) => {
    for (const host of [name, `${name}:${String(server.port)}`]) {
      const answer = await request("/help.html", { host });
      expect([host, statusOf(answer)]).toEqual([host, 421]);
      expect(answer).not.toContain("<p>");
    }
  });

  test("without a name is none", async () => {
    expect(statusOf(await send("GET /help.html HTTP/1.1\r\n\r\n"))).toBe(400);
    expect(statusOf(await send("GET /help.html HTTP/1.0\r\n\r\n"))).toBe(421);
  });
});

describe("what no page of another origin may do", () => {
  test.each(["/help.html", "/sheet/", "/taskpane.html", "/nothing", "/%"])("frame %s", async (address) => {
    const answer = await request(address);
    expect(headerOf(answer, "Content-Security-Policy")).toBe("frame-ancestors 'self'");
    expect(headerOf(answer, "X-Frame-Options")).toBe("SAMEORIGIN");
    expect(headerOf(answer, "X-Content-Type-Options")).toBe("nosniff");
    expect(headerOf(answer, "Access-Control-Allow-Origin")).toBeUndefined();
  });

  test("the same at the server for Excel, but for the pane, which Excel on the web frames", async () => {
    for (const address of ["/help.html", "/sheet/"]) {
      const answer = await request(address, { to: secure });
      expect([statusOf(answer), headerOf(answer, "Content-Security-Policy")]).toEqual([
        200,
        "frame-ancestors 'self'",
      ]);
      expect(headerOf(answer, "X-Frame-Options")).toBe("SAMEORIGIN");
    }
    const pane = await request("/taskpane.html", { to: secure });
    expect([statusOf(pane), bodyOf(pane)]).toEqual([200, PAGES["taskpane.html"]]);
    expect(headerOf(pane, "Content-Security-Policy")).toBe("frame-ancestors 'self' https:");
    expect(headerOf(pane, "X-Frame-Options")).toBeUndefined();
    expect(headerOf(pane, "X-Content-Type-Options")).toBe("nosniff");
    expect(statusOf(await request("//[", { to: secure }))).toBe(400);
    expect(secure.process.exitCode).toBeNull();
  });
});

test("takes the next port when one is taken, and says so", async () => {
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
  const { port } = other.address() as AddressInfo;
  const said: string[] = [];
  const next = await serve(port, (line) => said.push(line));
  expect(next.address).toBe(`http://127.0.0.1:${String(port + 1)}`);
  expect(said).toEqual([`port ${String(port)} is taken by another program; trying ${String(port + 1)}`]);
  await next.close();
  await new Promise((resolve) => other.close(resolve));
});
