/**
 * Runs one of the project's tools: `node tools/run.mjs start`. Uses nothing but Node until the packages that
 * package-lock.json asks for are there; the tools themselves are TypeScript, run from their sources.
 */

import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

const root = path.resolve(import.meta.dirname, "..");
const OLDEST_NODE = [20, 19];
const ROOMS = ["dev", "build", "docs"];

/** @typedef {Record<string, { version?: string, integrity?: string, optional?: boolean }>} Packages */

// Tools and what they share with the tests name files from the root of the repository.
process.chdir(root);
try {
  checkNode();
  installPackages();
  await runTool(process.argv[2] ?? "");
} catch (problem) {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 1;
}

function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = OLDEST_NODE;
  if (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor)) return;
  throw new Error(
    `Node ${process.versions.node} is too old: Ringbead needs ${OLDEST_NODE.join(".")} or newer`,
  );
}

function installPackages() {
  if (isInstalled()) return;
  console.log("installing packages (about half a minute, once)");
  const { status, error } = spawnSync(
    "npm",
    ["ci", "--no-audit", "--no-fund", "--ignore-scripts", "--loglevel=error"],
    { cwd: root, stdio: "inherit", shell: process.platform === "win32" },
  );
  if (error !== undefined) throw error;
  if (status !== 0) throw new Error("the packages could not be installed; npm says above why");
}

/** npm keeps beside the packages a list of what it installed: all that is locked, apart from other systems' programs. */
function isInstalled() {
  const [wanted, there] = [
    packagesIn("package-lock.json"),
    packagesIn(path.join("node_modules", ".package-lock.json")),
  ];
  return (
    there !== undefined &&
    Object.entries(wanted ?? {}).every(([place, { version, integrity, optional }]) => {
      const found = there[place];
      if (place === "") return true;
      if (found === undefined) return optional === true;
      return found.version === version && found.integrity === integrity;
    })
  );
}

/** @param {string} file @returns {Packages | undefined} */
function packagesIn(file) {
  const place = path.join(root, file);
  return existsSync(place) ? JSON.parse(readFileSync(place, "utf8")).packages : undefined;
}

/** @param {string} name */
async function runTool(name) {
  const file = ROOMS.map((room) => path.join(root, "tools", room, `${name}.ts`)).find((one) =>
    existsSync(one),
  );
  if (!/^[a-z-]+$/.test(name) || file === undefined) throw new Error(`there is no tool "${name}"`);
  const { register } = await import("tsx/esm/api");
  register();
  // The tool reads its arguments as if it had been started itself.
  process.argv.splice(1, 2, file);
  await import(pathToFileURL(file).href);
}
