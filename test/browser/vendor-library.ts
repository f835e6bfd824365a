/**
 * The add-in platform's own script, from its npm package: it may be used to develop and test, not be passed on, so it is fetched
 * when a test asks for it and kept in .cache/, which nothing takes along.
 */

import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import path from "node:path";

import { gunzipSync } from "fflate";

const PACKAGE = "@microsoft/office-js";
const VERSION = "1.1.110";
const SHA512 = "80nZ3gGUq6Fb22sX8tBdktfulM7uYnrdQu32bpsb3waTeKoakc+j6H6+L21xRV4plDBrufnRMVH3ULMt/06Jwg==";
const FOLDER = path.join(".cache", "office-js");
const ARCHIVE = path.join(FOLDER, `microsoft-office-js-${VERSION}.tgz`);
/** A registry that does not answer in this time, ms, is not there. */
const PATIENCE = 120_000;

/** Files of the package's dist/ by name, or why there are none. */
export type VendorLibrary = ReadonlyMap<string, string> | { readonly missing: string };

export function vendorLibrary(names: readonly string[]): VendorLibrary {
  if (!existsSync(ARCHIVE)) fetchArchive();
  if (!existsSync(ARCHIVE)) return { missing: `${PACKAGE} ${VERSION} could not be fetched from npm` };
  const packed = readFileSync(ARCHIVE);
  if (createHash("sha512").update(packed).digest("base64") !== SHA512)
    throw new Error(`${ARCHIVE} is not ${PACKAGE} ${VERSION}: delete it`);
  return filesIn(
    gunzipSync(packed),
    names.map((name) => `package/dist/${name}`),
  );
}

function fetchArchive(): void {
  mkdirSync(FOLDER, { recursive: true });
  spawnSync(
    "npm",
    ["pack", `${PACKAGE}@${VERSION}`, "--pack-destination", FOLDER, "--ignore-scripts", "--silent"],
    {
      timeout: PATIENCE,
      shell: process.platform === "win32",
    },
  );
}

/** A tar archive is a block of 512 bytes a file with its name and its size in octal, then its bytes in whole blocks. */
function filesIn(tar: Uint8Array, wanted: readonly string[]): Map<string, string> {
  const BLOCK = 512;
  const text = (from: number, length: number): string =>
    Buffer.from(tar.subarray(from, from + length))
      .toString("latin1")
      .replace(/\0.*$/s, "");
  const found = new Map<string, string>();
  for (let at = 0; at + BLOCK <= tar.length && tar[at] !== 0;) {
    const size = parseInt(text(at + 124, 12).trim(), 8);
    const name = text(at, 100);
    const from = at + BLOCK;
    if (wanted.includes(name))
      found.set(path.posix.basename(name), Buffer.from(tar.subarray(from, from + size)).toString("utf8"));
    at = from + Math.ceil(size / BLOCK) * BLOCK;
  }
  return found;
}
