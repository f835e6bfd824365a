/** Runs another program in the project's folder. */

import { spawn, spawnSync } from "node:child_process";

import { root } from "../build/project";

export interface Outcome {
  readonly status: number | null;
  /** What it wrote, both streams. */
  readonly output: string;
}

/** Its output goes straight through; throws where it fails. */
export function run(program: string, args: readonly string[], env: NodeJS.ProcessEnv = {}): void {
  const { status, error } = spawnSync(program, args, {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, ...env },
    shell: process.platform === "win32",
  });
  if (error !== undefined) throw error;
  if (status !== 0) throw new Error(`${program} ${args.join(" ")} failed`);
}

/** One of the programs that the packages bring, while other work goes on. */
export function runPackaged(
  program: string,
  args: readonly string[],
  env: NodeJS.ProcessEnv = {},
): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    const child = spawn("npx", ["--no-install", program, ...args], {
      cwd: root,
      stdio: ["ignore", "pipe", "pipe"],
      env: { ...process.env, ...env },
      shell: process.platform === "win32",
    });
    let output = "";
    const hear = (chunk: Buffer): void => {
      output += chunk.toString();
    };
    child.stdout.on("data", hear);
    child.stderr.on("data", hear);
    child.on("error", reject);
    child.on("close", (status) => {
      resolve({ status, output });
    });
  });
}
