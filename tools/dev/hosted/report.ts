/** What `npm run check` is asked, and what it says. */

import type { Report } from "./hosted";

const USAGE = "say which address to check: npm run check -- https://addins.example/ringbead";

/** The address, without what people copy along with it. */
export function addressFrom(given: readonly string[]): string {
  const [text] = given;
  if (text === undefined || given.length > 1) throw new Error(USAGE);
  const address = URL.canParse(text) ? new URL(text) : undefined;
  if (address === undefined || !/^https?:$/.test(address.protocol))
    throw new Error(`${text} is no address; ${USAGE}`);
  return `${address.origin}${address.pathname}`.replace(/\/(?:manifest\.xml|taskpane\.html)?$/, "");
}

export function reportLines({ url, files, faults, remarks }: Report): string[] {
  return [
    ...files.map((line) => `  ${line}`),
    ...remarks.map((line) => `note: ${line}`),
    ...faults.map((line) => `fault: ${line}`),
    faults.length === 0
      ? `no fault found${url.startsWith("https:") ? ": Excel can load the add-in from there" : " in the files"}`
      : `${String(faults.length)} ${faults.length === 1 ? "fault" : "faults"}: Excel will stumble over what is said above`,
  ];
}
