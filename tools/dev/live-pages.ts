/** The pages of the browser sheet while it is worked on: from the sources, and loaded anew after each change. */

import { readFileSync } from "node:fs";
import type { ServerResponse } from "node:http";
import path from "node:path";

import { generated, root } from "../build/project";
import type { Answerer } from "./serve";

const SOURCES: ReadonlyMap<string, readonly [file: string, type: string]> = new Map([
  ["/functions.json", [path.join(generated, "functions.json"), "application/json"]],
  ["/pane.css", [path.join(root, "taskpane/pane/pane.css"), "text/css"]],
  ["/help.css", [path.join(root, "docs/help/help.css"), "text/css"]],
  ["/icon-32.png", [path.join(root, "manifest/icon-32.png"), "image/png"]],
]);
export const PAGE = path.join(root, "taskpane/hosts/browser/index.html");
/** The page's policy lets it run a script of its own address and nothing written into it. */
const RELOADER = 'new EventSource("/changes").onmessage = () => location.reload();\n';

export interface LivePages {
  readonly answer: Answerer;
  /** Has every open page load anew, and tells how many there are. */
  readonly reload: () => number;
}

export function livePages(): LivePages {
  const open = new Set<ServerResponse>();
  return {
    answer: (pathname, response) => {
      const source = SOURCES.get(pathname);
      if (pathname === "/changes") listen(open, response);
      else if (pathname === "/reload.js") send(response, "text/javascript", RELOADER);
      else if (pathname === "/sheet/") send(response, "text/html; charset=utf-8", page());
      else if (source !== undefined) send(response, source[1], readFileSync(source[0]));
      else return false;
      return true;
    },
    reload: () => {
      for (const response of open) response.write("data: changed\n\n");
      return open.size;
    },
  };
}

function page(): string {
  return readFileSync(PAGE, "utf8").replace(
    "</head>",
    '  <script defer src="/reload.js"></script>\n  </head>',
  );
}

function listen(open: Set<ServerResponse>, response: ServerResponse): void {
  response.writeHead(200, { "Content-Type": "text/event-stream", "Cache-Control": "no-store" });
  response.write(": listening\n\n");
  open.add(response);
  response.on("close", () => {
    open.delete(response);
  });
}

function send(response: ServerResponse, type: string, content: string | Buffer): void {
  response.writeHead(200, { "Content-Type": type, "Cache-Control": "no-store" }).end(content);
}
