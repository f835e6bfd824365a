/**
 * What a request asks of the server on this machine: the path of a file, or the answer that refuses it. Anything can
 * arrive here, also from a page of another origin whose name was made to lead to this machine.
 */

import type { IncomingMessage } from "node:http";

const METHODS = ["GET", "HEAD"];
/** Ours are short; every file system takes names of this length. */
const LONGEST_ADDRESS = 1000;
const LONGEST_NAME = 200;
const OWN_NAMES = ["localhost", "127.0.0.1", "[::1]"];

export interface Refused {
  readonly status: number;
  readonly why: string;
  readonly headers?: Readonly<Record<string, string>>;
}

/** The path asked for, decoded, starting with a slash and without a step up in it; or why there is no answer. */
export function asked(request: IncomingMessage): string | Refused {
  if (!isOwnName(request.headers.host, request.socket.localPort))
    return { status: 421, why: "this server answers by the name of this machine only" };
  if (!METHODS.includes(request.method ?? ""))
    return { status: 405, why: "only GET and HEAD", headers: { Allow: METHODS.join(", ") } };
  const address = request.url ?? "";
  if (address.length > LONGEST_ADDRESS) return { status: 414, why: "address too long" };
  return pathOf(address) ?? { status: 400, why: "not an address of this server" };
}

/** Undefined where it is none: not from the root, wrongly encoded, or with anything in it that no file here is called. */
function pathOf(address: string): string | undefined {
  const path = decoded(address.replace(/[?#].*$/s, ""));
  if (path?.startsWith("/") !== true || /[\p{Cc}\\:]|\/\//u.test(path)) return undefined;
  const names = path.split("/");
  return names.some((name) => name === ".." || name.length > LONGEST_NAME) ? undefined : path;
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}

/** Names this machine and the port in use; a page that comes by any other name is not one of ours. */
function isOwnName(host: string | undefined, port: number | undefined): boolean {
  return OWN_NAMES.some((name) => host?.toLowerCase() === `${name}:${String(port)}`);
}
