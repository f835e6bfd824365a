/** Serves a folder on the loopback interface only, for a browser or, over https, for an Excel on this machine. */

import { readFileSync } from "node:fs";
import type { IncomingMessage, Server, ServerResponse } from "node:http";
import { createServer } from "node:http";
import { createServer as createSecureServer } from "node:https";
import path from "node:path";

import { dist } from "../build/project";
import type { Refused } from "./asked";
import { asked } from "./asked";

const TYPES: Readonly<Record<string, string>> = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".ttf": "font/ttf",
  ".txt": "text/plain; charset=utf-8",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".xml": "application/xml; charset=utf-8",
};
const LOOPBACK = "127.0.0.1";
const PORTS_TRIED = 20;
const PANE_PAGE = "/taskpane.html";

/** Answers a request, or leaves it to the files. */
export type Answerer = (pathname: string, response: ServerResponse) => boolean;

export interface Settings {
  /** With a key and a certificate it speaks https, to pages of any origin: Excel on the web asks from its own. */
  readonly tls?: { readonly key: string; readonly cert: string };
  /** How many ports to try, the one asked for and those after it. */
  readonly ports?: number;
  readonly folder?: string;
  readonly first?: Answerer;
}

export interface Serving {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Listens on the port, or on the next free one of as many as are tried. */
export async function serve(
  port: number,
  say: (line: string) => void = () => undefined,
  { tls, ports = PORTS_TRIED, folder = dist, first = () => false }: Settings = {},
): Promise<Serving> {
  const handle = (request: IncomingMessage, response: ServerResponse): void => {
    const pathname = asked(request);
    secure(response, pathname, tls !== undefined);
    if (typeof pathname !== "string") refuse(response, pathname);
    else if (!first(pathname, response)) sendFile(pathname, response, folder);
    // An answer that stays open, for news, has said all that HEAD asks for.
    if (request.method === "HEAD") response.end();
  };
  for (let candidate = port; candidate < port + ports; candidate += 1) {
    const server = tls === undefined ? createServer(handle) : createSecureServer(tls, handle);
    const problem = await listening(server, candidate);
    if (problem === undefined) return serving(server, tls !== undefined);
    if (problem.code !== "EADDRINUSE") throw problem;
    if (candidate + 1 < port + ports)
      say(`port ${String(candidate)} is taken by another program; trying ${String(candidate + 1)}`);
  }
  throw new Error(
    ports === 1
      ? `port ${String(port)} is taken by another program, and this address is the one that must be served: close that program`
      : `ports ${String(port)} to ${String(port + ports - 1)} are all taken; close a program or set --port`,
  );
}

function listening(server: Server, port: number): Promise<NodeJS.ErrnoException | undefined> {
  return new Promise((resolve) => {
    server.on("error", resolve);
    server.listen(port, LOOPBACK, () => {
      resolve(undefined);
    });
  });
}

function serving(server: Server, secure: boolean): Serving {
  const bound = server.address();
  if (bound === null || typeof bound === "string") throw new Error("the server has no port");
  return {
    address: secure ? `https://localhost:${String(bound.port)}` : `http://${LOOPBACK}:${String(bound.port)}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => {
          resolve();
        });
        server.closeAllConnections();
      }),
  };
}

/**
 * Headers that every answer has. No page of another origin may frame ours, with one exception: Excel on the web shows the
 * pane in a frame, inside pages of Microsoft's whose addresses no document lists and of which every tenant has its own.
 * So https pages may frame that one page of the server for Excel. Outside Office it reaches no workbook, and so gives a
 * page that lures clicks into it nothing to do.
 */
function secure(response: ServerResponse, pathname: string | Refused, isForExcel: boolean): void {
  response.setHeader("X-Content-Type-Options", "nosniff");
  if (isForExcel) response.setHeader("Access-Control-Allow-Origin", "*");
  if (isForExcel && pathname === PANE_PAGE) {
    response.setHeader("Content-Security-Policy", "frame-ancestors 'self' https:");
    return;
  }
  response.setHeader("Content-Security-Policy", "frame-ancestors 'self'");
  response.setHeader("X-Frame-Options", "SAMEORIGIN");
}

function refuse(response: ServerResponse, { status, why, headers = {} }: Refused): void {
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8", ...headers }).end(`${why}\n`);
}

function sendFile(pathname: string, response: ServerResponse, folder: string): void {
  if (pathname === "/" || pathname === "/sheet") {
    response.writeHead(302, { Location: "/sheet/" }).end();
    return;
  }
  const file = path.join(folder, pathname.endsWith("/") ? `${pathname}index.html` : pathname);
  const content = file.startsWith(folder + path.sep) ? contentOf(file) : undefined;
  if (content === undefined) {
    refuse(response, { status: 404, why: "not found" });
    return;
  }
  response
    .writeHead(200, {
      "Content-Type": TYPES[path.extname(file)] ?? "application/octet-stream",
      "Content-Length": content.length,
      "Cache-Control": "no-cache",
    })
    .end(content);
}

/** Undefined where there is no such file, or none any more: a build may be replacing it at this moment. */
function contentOf(file: string): Buffer | undefined {
  try {
    return readFileSync(file);
  } catch {
    return undefined;
  }
}
