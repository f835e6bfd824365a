/** The options of the tools that serve: `-- --port 4200 --no-open`. */

import { parseArgs } from "node:util";

const FIRST_PORT = 4180;

export interface ServeOptions {
  readonly port: number;
  readonly open: boolean;
}

export function serveOptions(): ServeOptions {
  const { values } = parseArgs({
    options: {
      "no-open": { type: "boolean", default: false },
      port: { type: "string", default: String(FIRST_PORT) },
    },
  });
  const port = Number(values.port);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    throw new Error(`--port ${values.port}: must be 1 to 65535`);
  return { port, open: !values["no-open"] };
}
