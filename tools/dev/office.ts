/** Finds a LibreOffice for the checks of the exported files, or installs one where that is sure to work. */

import { existsSync } from "node:fs";
import path from "node:path";

import { run } from "./program";

const PROGRAMS = ["soffice", "libreoffice", "localc"];
const APPLICATIONS = [
  "/Applications/LibreOffice.app/Contents/MacOS/soffice",
  "C:\\Program Files\\LibreOffice\\program\\soffice.exe",
];

/** Path of a LibreOffice that is there, or undefined. */
export function findOffice(): string | undefined {
  const folders = (process.env.PATH ?? "").split(path.delimiter);
  const onPath = PROGRAMS.flatMap((program) => folders.map((folder) => path.join(folder, program)));
  return [...onPath, ...APPLICATIONS].find((file) => existsSync(file));
}

/** Path of a LibreOffice: Debian's, installed first, where this is root on Debian; undefined elsewhere without one. */
export function ensureOffice(): string | undefined {
  const found = findOffice();
  if (found !== undefined) return found;
  if (process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) return undefined;
  console.log("installing Debian's LibreOffice Calc to open the exported files (about two minutes, once)");
  run("apt-get", ["update", "-qq"]);
  run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "libreoffice-calc", "poppler-utils"]);
  return findOffice();
}
