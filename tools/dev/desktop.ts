/** Opens an address in the person's own browser, where there is a desktop. */

import { spawn } from "node:child_process";

export function openInBrowser(address: string): void {
  if (!hasDesktop()) return;
  const [program, ...args] = openerOf(address);
  const child = spawn(program, args, { stdio: "ignore", detached: true });
  child.on("error", () => {
    console.log("No browser could be opened from here; open the address yourself.");
  });
  child.unref();
}

function hasDesktop(): boolean {
  if (process.platform !== "linux") return true;
  return process.env.DISPLAY !== undefined || process.env.WAYLAND_DISPLAY !== undefined;
}

function openerOf(address: string): [program: string, ...args: string[]] {
  if (process.platform === "darwin") return ["open", address];
  if (process.platform === "win32") return ["cmd", "/c", "start", "", address];
  return ["xdg-open", address];
}
