/** Installs what package-lock.json asks for when it is not there yet. Uses nothing but Node itself. */

import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
const LEAST_NODE = [20, 19];

export function installPackages() {
  checkNode();
  const lock = createHash("sha256")
    .update(readFileSync(path.join(root, "package-lock.json")))
    .digest("hex");
  const mark = path.join(root, "node_modules", ".ringbead-installed");
  if (existsSync(mark) && readFileSync(mark, "utf8") === lock) return;
  console.log("installing packages (about half a minute, once)");
  run("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"]);
  writeFileSync(mark, lock);
}

function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  const [leastMajor = 0, leastMinor = 0] = LEAST_NODE;
  if (major > leastMajor || (major === leastMajor && minor >= leastMinor)) return;
  throw new Error(
    `Node ${process.versions.node} is too old: Ringbead needs ${LEAST_NODE.join(".")} or newer`,
  );
}

/** Runs a program in the project's folder, its output going straight through. @param {string} program @param {string[]} args */
export function run(program, args) {
  const { status, error } = spawnSync(program, args, {
    cwd: root,
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (error !== undefined) throw error;
  if (status !== 0) throw new Error(`${program} ${args.join(" ")} failed`);
}
