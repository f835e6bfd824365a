/** A host gone through as Excel does: its manifest, what the manifest names, what the page loads; and whether all of it fits. */

import { XMLParser } from "fast-xml-parser";

import type { Answer } from "./answer";
import { ask } from "./answer";
import { distrustInWords } from "./certificate";
import { fileFaults, frameFaults, keptFor, originFaults, scriptFaults } from "./faults";
import { followed } from "./followed";
import { idFaults, versionFaults } from "./versions";

export interface Report {
  readonly url: string;
  /** A line for each file that was asked for. */
  readonly files: readonly string[];
  readonly faults: readonly string[];
  /** What is no fault, but good to know. */
  readonly remarks: readonly string[];
}

interface Settings {
  /** The version that the host should have. */
  readonly version: string;
  /** A certificate to trust besides those that Node knows. */
  readonly authority?: string | undefined;
}

const [MANIFEST, PAGE, LIST, SCRIPT, HELP] = [
  "manifest.xml",
  "taskpane.html",
  "functions.json",
  "functions.js",
  "help.json",
];
const HTTP_HERE = "this is http, which only a test on this machine may be: Excel loads add-ins from https";

/** `url`: where the add-in is served, without a slash at the end. */
export async function examine(url: string, { version, authority }: Settings): Promise<Report> {
  const files: string[] = [];
  const faults = new Set<string>();
  const remarks = new Set<string>();
  const isExcels = url.startsWith("https:");
  if (!isExcels && isThisMachine(url)) remarks.add(HTTP_HERE);
  else if (!isExcels) faults.add("the address is http: Excel loads add-ins from https only");
  const got = new Map<string, Answer>();

  const fetched = async (address: string): Promise<Answer | undefined> => {
    const name = address.startsWith(`${url}/`) ? address.slice(url.length + 1) : address;
    const known = got.get(name);
    if (known !== undefined) return known;
    try {
      const { answer, steps, faults: onTheWay } = await followed(address, (one) => ask(one, authority));
      files.push(
        `${name}: ${[...steps, String(answer.status)].join(" → ")} ${answer.headers["content-type"] ?? ""}`.trim(),
      );
      for (const one of onTheWay) faults.add(`${name}: ${one}`);
      if (answer.distrust !== "") faults.add(distrustInWords(answer.distrust));
      if (onTheWay.length > 0) return undefined;
      for (const one of fileFaults(answer)) faults.add(`${name}: ${one}`);
      got.set(name, answer);
      return answer;
    } catch (problem) {
      const why = problem instanceof Error ? problem.message : String(problem);
      files.push(`${name}: no answer`);
      faults.add(`${name}: no answer (${why})`);
      return undefined;
    }
  };

  const manifest = await fetched(`${url}/${MANIFEST}`);
  const named = manifest?.status === 200 ? addressesIn(manifest.body) : [];
  const elsewhere = named.filter((address) => !address.startsWith(`${url}/`));
  const [other] = elsewhere;
  if (other !== undefined && isExcels)
    faults.add(
      `${MANIFEST}: names ${other}, which is not under ${url}; build with --env url=${url} and upload that`,
    );
  else if (other !== undefined) remarks.add(`${MANIFEST}: is for another address, such as ${other}`);
  const inside = new Set([PAGE, LIST, SCRIPT, HELP].map((name) => `${url}/${name}`));
  for (const address of named.filter((one) => one.startsWith(`${url}/`))) inside.add(address);
  for (const address of inside) await fetched(address);

  const page = got.get(PAGE);
  if (page?.status === 200) {
    if (!page.body.includes('name="ringbead-namespace"'))
      faults.add(
        `${PAGE}: it is another page than the pane's: a login, or what the host shows for any address`,
      );
    for (const path of loadedBy(page.body)) await fetched(new URL(path, `${url}/`).href);
    if (isExcels)
      for (const one of [...frameFaults(page), ...scriptFaults(page)]) faults.add(`${PAGE}: ${one}`);
  }
  const list = got.get(LIST);
  if (isExcels && list !== undefined) for (const one of originFaults(list)) faults.add(`${LIST}: ${one}`);
  for (const name of [PAGE, LIST, SCRIPT]) {
    const answer = got.get(name);
    const kept = answer?.status === 200 ? keptFor(answer) : "";
    if (kept !== "") remarks.add(`${name}: ${kept}`);
  }
  const bodyOf = (name: string): string | undefined => {
    const answer = got.get(name);
    return answer?.status === 200 ? answer.body : undefined;
  };
  for (const one of versionFaults(
    { manifest: bodyOf(MANIFEST), help: bodyOf(HELP), script: bodyOf(SCRIPT) },
    version,
  ))
    faults.add(one);
  for (const one of idFaults(bodyOf(LIST), bodyOf(SCRIPT))) faults.add(one);
  return { url, files, faults: [...faults], remarks: [...remarks] };
}

function isThisMachine(url: string): boolean {
  return ["localhost", "127.0.0.1", "[::1]"].includes(new URL(url).hostname);
}

/** Every address that a manifest names, each once. */
function addressesIn(manifest: string): string[] {
  const found = new Set<string>();
  const walk = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    for (const [key, value] of Object.entries(node)) {
      if (key === "DefaultValue" && typeof value === "string" && /^https?:\/\//.test(value)) found.add(value);
      else walk(value);
    }
  };
  const parser = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: "" });
  walk(parser.parse(manifest));
  return [...found];
}

/** What the pane's page loads from its own host. */
function loadedBy(page: string): string[] {
  return [...page.matchAll(/<(?:script|link)\b[^>]*\b(?:src|href)="([^":]+)"/g)].map(([, path = ""]) => path);
}
