/** One file of a host as Excel asks for it, with all that its answer says: nothing is followed, nothing is believed. */

import type { IncomingMessage } from "node:http";
import { request as plainRequest } from "node:http";
import { request as secureRequest } from "node:https";
import { rootCertificates, TLSSocket } from "node:tls";

/** Excel on the web lives under names like this one, several of them. */
export const EXCEL_ORIGIN = "https://excel.officeapps.live.com";
const LONGEST_WAIT = 15_000;
const LARGEST = 10_000_000;

export interface Answer {
  readonly address: string;
  readonly status: number;
  /** By name in small letters; one that came twice is joined with a comma. */
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string;
  /** Why the certificate is not trusted, in the words of TLS, or "". */
  readonly distrust: string;
}

/** Throws where no answer comes. `authority`: a certificate to trust besides those that Node knows. */
export function ask(address: string, authority?: string): Promise<Answer> {
  const secure = address.startsWith("https:");
  const options = {
    agent: false,
    headers: { Origin: EXCEL_ORIGIN },
    // Looked at below, so that a certificate that is not trusted hides no other fault.
    rejectUnauthorized: false,
    ...(authority === undefined ? {} : { ca: [authority, ...rootCertificates] }),
  };
  return new Promise((resolve, reject) => {
    const asked = (secure ? secureRequest : plainRequest)(address, options, (response) => {
      const distrust = response.socket instanceof TLSSocket ? distrustOf(response.socket) : "";
      let body = "";
      response.setEncoding("utf8");
      response.on("data", (text: string) => {
        body += text;
        if (body.length > LARGEST) asked.destroy(new Error("it sends far more than any file of ours"));
      });
      response.on("end", () => {
        const { statusCode: status = 0 } = response;
        resolve({ address, status, headers: headersOf(response), body, distrust });
      });
      response.on("error", reject);
    });
    asked.setTimeout(LONGEST_WAIT, () => {
      asked.destroy(new Error(`no answer within ${String(LONGEST_WAIT / 1000)} s`));
    });
    asked.on("error", reject);
    asked.end();
  });
}

/** A header that came twice counts twice, which Node otherwise hides for some. */
function headersOf({ rawHeaders }: IncomingMessage): Record<string, string> {
  const headers: Record<string, string> = {};
  for (let i = 0; i + 1 < rawHeaders.length; i += 2) {
    const [name = "", value = ""] = [rawHeaders[i]?.toLowerCase(), rawHeaders[i + 1]];
    headers[name] = name in headers ? `${headers[name] ?? ""}, ${value}` : value;
  }
  return headers;
}

/** The typings promise an error; what comes is its code. */
function distrustOf({ authorized, authorizationError }: TLSSocket): string {
  const problem: unknown = authorizationError;
  if (authorized) return "";
  return typeof problem === "string" ? problem : "unknown reason";
}
