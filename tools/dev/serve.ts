/** Serves a folder on the loopback interface only, for a browser or, over https, for an Excel on this machine. */

import { createReadStream, statSync } from "node:fs";
import type { IncomingMessage, Server, ServerResponse } from "node:http";
import { createServer } from "node:http";
import { createServer as createSecureServer } from "node:https";
import path from "node:path";

import { dist } from "../build/project";

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
    if (tls !== undefined) response.setHeader("Access-Control-Allow-Origin", "*");
    const { pathname } = new URL(request.url ?? "/", "http://loopback");
    if (!first(pathname, response)) sendFile(pathname, response, folder);
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
    server.once("error", resolve);
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

function sendFile(pathname: string, response: ServerResponse, folder: string): void {
  if (pathname === "/" || pathname === "/sheet") {
    response.writeHead(302, { Location: "/sheet/" }).end();
    return;
  }
  const asked = decodeURIComponent(pathname.endsWith("/") ? `${pathname}index.html` : pathname);
  const file = path.join(folder, path.normalize(asked));
  if (!file.startsWith(folder + path.sep) || !isFile(file)) {
    response.writeHead(404, { "Content-Type": "text/plain" }).end("not found");
    return;
  }
  response.writeHead(200, {
    "Content-Type": TYPES[path.extname(file)] ?? "application/octet-stream",
    "Cache-Control": "no-cache",
    "X-Content-Type-Options": "nosniff",
  });
  createReadStream(file).pipe(response);
}

function isFile(file: string): boolean {
  return statSync(file, { throwIfNoEntry: false })?.isFile() === true;
}
