/** Serves dist/ on the loopback interface only, for a browser on this machine. */

import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
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
 * Listens on the port, or on the next free one.
 * @param {number} port @param {(line: string) => void} [say]
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serve(port, say = () => undefined) {
  for (let candidate = port; candidate < port + MOST_PORTS_TRIED; candidate += 1) {
    const server = createServer(handle);
    const problem = await new Promise((resolve) => {
      server.once("error", resolve);
      server.listen(candidate, LOOPBACK, () => resolve(undefined));
    });
    if (problem === undefined) {
      const bound = server.address();
      const actual = typeof bound === "object" && bound !== null ? bound.port : candidate;
      return {
        address: `http://${LOOPBACK}:${actual}`,
        close: () =>
          new Promise((resolve) => {
            server.close(() => resolve(undefined));
            server.closeAllConnections();
          }),
      };
    }
    if (problem.code !== "EADDRINUSE") throw problem;
    say(`port ${candidate} is taken by another program; trying ${candidate + 1}`);
  }
  throw new Error(
    `ports ${port} to ${port + MOST_PORTS_TRIED - 1} are all taken; close a program or set --port`,
  );
}
