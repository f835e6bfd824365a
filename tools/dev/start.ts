/** npm start: builds, serves the browser sheet on this machine and opens it. */

import { build } from "../build/built-site";
import { openInBrowser } from "./desktop";
import { serveOptions } from "./options";
import { serve } from "./serve";

const { port, open } = serveOptions();
console.log("building (about twenty seconds the first time)");
await build(undefined, (line) => {
  console.log(`  ${line}`);
});
const { address } = await serve(port, console.log);
console.log(`\nRingbead's browser sheet: ${address}/sheet/\nStop it with Ctrl+C.`);
if (open) openInBrowser(`${address}/sheet/`);
