/** Serves dist/ on the loopback interface only, for a browser or, over https, for an Excel on this machine. */

import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { createServer as createSecureServer } from "node:https";
import path from "node:path";

import { dist } from "./project.mjs";

const TYPES = {
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
const MOST_PORTS_TRIED = 20;

/** @param {import("node:http").IncomingMessage} request @param {import("node:http").ServerResponse} response */
function handle(request, response) {
  const { pathname } = new URL(request.url ?? "/", "http://loopback");
  if (pathname === "/" || pathname === "/sheet") return redirect(response, "/sheet/");
  const asked = decodeURIComponent(pathname.endsWith("/") ? `${pathname}index.html` : pathname);
  const file = path.join(dist, path.normalize(asked));
  if (!file.startsWith(dist + path.sep) || !isFile(file)) return plain(response, 404, "not found");
  const type =
    /** @type {Record<string, string>} */ (TYPES)[path.extname(file)] ?? "application/octet-stream";
  response.writeHead(200, {
    "Content-Type": type,
    "Cache-Control": "no-cache",
    "X-Content-Type-Options": "nosniff",
  });
  createReadStream(file).pipe(response);
}

/** @param {string} file */
function isFile(file) {
  return statSync(file, { throwIfNoEntry: false })?.isFile() === true;
}

/** @param {import("node:http").ServerResponse} response @param {string} to */
function redirect(response, to) {
  response.writeHead(302, { Location: to }).end();
}

/** @param {import("node:http").ServerResponse} response @param {number} status @param {string} text */
function plain(response, status, text) {
  response.writeHead(status, { "Content-Type": "text/plain" }).end(text);
}

/**
 * As above, to pages of any origin: Excel on the web asks from its own.
 * @param {import("node:http").IncomingMessage} request @param {import("node:http").ServerResponse} response
 */
function handleForExcel(request, response) {
  response.setHeader("Access-Control-Allow-Origin", "*");
  handle(request, response);
}

/**
 * Listens on the port, or on the next free one of as many as are tried. With a key and a certificate it speaks https.
 * @param {number} port @param {(line: string) => void} [say]
 * @param {{ tls?: { key: string, cert: string }, ports?: number }} [options]
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serve(port, say = () => undefined, { tls, ports = MOST_PORTS_TRIED } = {}) {
  for (let candidate = port; candidate < port + ports; candidate += 1) {
    const server = tls === undefined ? createServer(handle) : createSecureServer(tls, handleForExcel);
    const problem = await new Promise((resolve) => {
      server.once("error", resolve);
      server.listen(candidate, LOOPBACK, () => resolve(undefined));
    });
    if (problem === undefined) {
      const bound = server.address();
      const actual = typeof bound === "object" && bound !== null ? bound.port : candidate;
      return {
        address: tls === undefined ? `http://${LOOPBACK}:${actual}` : `https://localhost:${actual}`,
        close: () =>
          new Promise((resolve) => {
            server.close(() => resolve(undefined));
            server.closeAllConnections();
          }),
      };
    }
    if (problem.code !== "EADDRINUSE") throw problem;
    if (candidate + 1 < port + ports)
      say(`port ${candidate} is taken by another program; trying ${candidate + 1}`);
  }
  throw new Error(
    ports === 1
      ? `port ${port} is taken by another program, and this address is the one that must be served: close that program`
      : `ports ${port} to ${port + ports - 1} are all taken; close a program or set --port`,
  );
}
