/**
 * The server in a process of its own, as a person starts it: node --import tsx test/tools/served.ts FOLDER [KEY CERT].
 * Prints its address; ends when its input does.
 */

import { readFileSync } from "node:fs";

import { serve } from "../../tools/dev/serve";

const [folder = "", key, cert] = process.argv.slice(2);
const tls =
  key === undefined || cert === undefined
    ? {}
    : { tls: { key: readFileSync(key, "utf8"), cert: readFileSync(cert, "utf8") } };
const { address, close } = await serve(4780, undefined, { folder, ...tls });
console.log(address);
process.stdin.resume().on("end", () => void close());
