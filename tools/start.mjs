/** npm start: installs what is missing, builds, serves the browser sheet on this machine and opens it. */

import { spawn } from "node:child_process";
import { parseArgs } from "node:util";

import { installPackages } from "./install.mjs";

const FIRST_PORT = 4180;

async function start() {
  const { values } = parseArgs({
    options: {
      "no-open": { type: "boolean", default: false },
      port: { type: "string", default: String(FIRST_PORT) },
    },
  });
  const port = Number(values.port);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    throw new Error(`--port ${values.port}: must be 1 to 65535`);
  installPackages();
  // Only now are the packages there that these need.
  const { build } = await import("./build.mjs");
  const { serve } = await import("./serve.mjs");
  console.log("building (about twenty seconds the first time)");
  await build(undefined, (line) => console.log(`  ${line}`));
  const { address } = await serve(port, console.log);
  console.log(`\nRingbead's browser sheet: ${address}/sheet/\nStop it with Ctrl+C.`);
  if (!values["no-open"] && hasDesktop()) openInBrowser(`${address}/sheet/`);
}

function hasDesktop() {
  if (process.platform !== "linux") return true;
  return process.env.DISPLAY !== undefined || process.env.WAYLAND_DISPLAY !== undefined;
}

/** @param {string} address */
function openInBrowser(address) {
  const [program, args] =
    process.platform === "darwin"
      ? ["open", [address]]
      : process.platform === "win32"
        ? ["cmd", ["/c", "start", "", address]]
        : ["xdg-open", [address]];
  const child = spawn(/** @type {string} */ (program), /** @type {string[]} */ (args), {
    stdio: "ignore",
    detached: true,
  });
  child.on("error", () => console.log("No browser could be opened from here; open the address yourself."));
  child.unref();
}

start().catch((problem) => {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 1;
});
