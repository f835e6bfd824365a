/**
 * Certificates for this machine's own https server. They are only made and kept in .cache/, never put into the system's
 * store: whether to trust the authority that signed them is for the person to decide.
 */

import { X509Certificate } from "node:crypto";
import { chmodSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import path from "node:path";

import { generateCertificates } from "office-addin-dev-certs";

import { root } from "../build/project";

const DAYS = 90;
/** The key is for its owner alone, and so is the folder, before there is a key in it. */
const OWNER_ONLY = { folder: 0o700, file: 0o600 };

export interface Certificates {
  readonly key: string;
  readonly cert: string;
  /** Path of the file to trust. */
  readonly authority: string;
}

/** Key and certificate for localhost, made when they are missing or about to run out. */
export async function certificates(
  folder = path.join(root, ".cache", "certificates"),
): Promise<Certificates> {
  const authority = path.join(folder, "ringbead-authority.crt");
  const [cert, key] = [path.join(folder, "localhost.crt"), path.join(folder, "localhost.key")];
  mkdirSync(folder, { recursive: true, mode: OWNER_ONLY.folder });
  chmodSync(folder, OWNER_ONLY.folder);
  if (![authority, cert, key].every((file) => existsSync(file)) || isOld(cert))
    await generateCertificates(authority, cert, key, DAYS, ["localhost", "127.0.0.1"]);
  chmodSync(key, OWNER_ONLY.file);
  return { key: readFileSync(key, "utf8"), cert: readFileSync(cert, "utf8"), authority };
}

function isOld(file: string): boolean {
  const tomorrow = Date.now() + 24 * 60 * 60 * 1000;
  return Date.parse(new X509Certificate(readFileSync(file)).validTo) < tomorrow;
}
