/** The scripts for other spreadsheets as the build makes them of today's sources. */

import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";

import type { SCRIPTS } from "../../tools/build/scripts/written";

export type ScriptFile = keyof typeof SCRIPTS;
export type BuiltScripts = Readonly<Record<ScriptFile | "functions.js", string>>;

/** Made in a process of its own: the bundler does not run inside a test. */
export function builtScripts(): BuiltScripts {
  const folder = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
  try {
    const { status, stderr } = spawnSync(
      process.execPath,
      ["--import", "tsx", "test/tools/make-scripts.ts", folder],
      { encoding: "utf8" },
    );
    if (status !== 0) throw new Error(stderr);
    const read = (...file: readonly string[]): string => readFileSync(path.join(folder, ...file), "utf8");
    return {
      "functions.js": read("functions.js"),
      "google-sheets.js": read("scripts", "google-sheets.js"),
      "javascript-macros.js": read("scripts", "javascript-macros.js"),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
