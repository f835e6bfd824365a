/** Checks a manifest: order of elements, lengths, every resid, every address present in the build. */

import { XMLParser } from "fast-xml-parser";

import { identityAt } from "./project";

/** An element in document order. */
interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
  readonly children: readonly Element[];
}

/** Children that an element may have, in the order the format demands. */
const ORDER: Readonly<Record<string, readonly string[]>> = {
  OfficeApp: [
    "Id",
    "AlternateId",
    "Version",
    "ProviderName",
    "DefaultLocale",
    "DisplayName",
    "Description",
    "IconUrl",
    "HighResolutionIconUrl",
    "SupportUrl",
    "AppDomains",
    "Hosts",
    "Requirements",
    "DefaultSettings",
    "Permissions",
    "VersionOverrides",
  ],
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources", "WebApplicationInfo"],
  Workbook: ["Runtimes", "AllFormFactors", "DesktopFormFactor"],
  CustomFunctions: ["Script", "Page", "Metadata", "Namespace"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  Group: ["Label", "Icon", "Control"],
  Control: ["Label", "Supertip", "Icon", "Action"],
  Supertip: ["Title", "Description"],
  Action: ["TaskpaneId", "SourceLocation"],
  Resources: ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"],
};
const REQUIRED_SETS = { SharedRuntime: "1.1", CustomFunctionsRuntime: "1.3", ExcelApi: "1.9" };
/** Texts of a resource, by the element that holds them. */
const LONGEST_TEXT: Readonly<Record<string, number>> = { "bt:ShortStrings": 125, "bt:LongStrings": 250 };
const LONGEST = { id: 32, namespace: 32, url: 2048 };

/** What is wrong with a manifest of an add-in that is served at `url`, of a build that holds the files; empty when nothing is. */
export function manifestErrors(xml: string, url: string, exists: (file: string) => boolean): string[] {
  const app = parse(xml);
  const all = [...everything(app)];
  const resources = new Map(all.filter(isResource).map((element) => [element.attributes.id ?? "", element]));
  return [
    ...all.flatMap(orderErrors),
    ...identityErrors(app),
    ...all.flatMap((element) => referenceErrors(element, resources)),
    ...all.flatMap(lengthErrors),
    ...addressErrors(all, url, exists),
    ...runtimeErrors(all, resources, identityAt(url).namespace),
  ];
}

function parse(xml: string): Element {
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: "",
    parseAttributeValue: false,
    parseTagValue: false,
  });
  const [app] = convert(parser.parse(xml) as Node[]).filter(({ name }) => name === "OfficeApp");
  if (app === undefined) throw new Error("the manifest has no OfficeApp");
  return app;
}

/** An element as the parser gives it: what is in it under its name, its attributes under ":@", a text under "#text". */
type Node = Readonly<Record<string, unknown>>;

function convert(nodes: readonly Node[]): Element[] {
  return nodes.flatMap((node) => {
    const name = Object.keys(node).find((key) => key !== ":@" && key !== "#text");
    if (name === undefined) return [];
    const inside = node[name] as Node[];
    const text = inside.map((child) => (typeof child["#text"] === "string" ? child["#text"] : "")).join("");
    const attributes = (node[":@"] ?? {}) as Record<string, string>;
    return [{ name, attributes, text: text.trim(), children: convert(inside) }];
  });
}

function* everything(element: Element): Iterable<Element> {
  yield element;
  for (const child of element.children) yield* everything(child);
}

function isResource({ name, attributes }: Element): boolean {
  return attributes.id !== undefined && /^bt:(Image|Url|String)$/.test(name);
}

function orderErrors({ name, attributes, children }: Element): string[] {
  const kind = attributes["xsi:type"] ?? "";
  const order = ORDER[name in ORDER ? name : kind];
  if (order === undefined) return [];
  const places = children.map((child) => order.indexOf(child.name));
  return children.flatMap((child, i) => {
    const place = places[i] ?? -1;
    if (place < 0) return [`${name}: ${child.name} does not belong there`];
    return place < Math.max(...places.slice(0, i), 0) ? [`${name}: ${child.name} stands too late`] : [];
  });
}

function identityErrors(app: Element): string[] {
  const text = (name: string): string => app.children.find((child) => child.name === name)?.text ?? "";
  const errors = [];
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(text("Id"))) errors.push("Id is not a GUID");
  if (!/^\d{1,5}(\.\d{1,5}){0,3}$/.test(text("Version"))) errors.push("Version is not 1 to 4 numbers");
  const sets: readonly (readonly (string | undefined)[])[] = [...everything(app)]
    .filter(({ name }) => name === "Set")
    .map(({ attributes }) => [attributes.Name, attributes.MinVersion]);
  for (const [name, version] of Object.entries(REQUIRED_SETS)) {
    if (!sets.some(([set, lowest]) => set === name && lowest === version))
      errors.push(`requirement ${name} ${version} is missing`);
  }
  return errors;
}

function referenceErrors({ name, attributes }: Element, resources: ReadonlyMap<string, Element>): string[] {
  const { resid } = attributes;
  return resid === undefined || resources.has(resid) ? [] : [`${name}: nothing has the id ${resid}`];
}

function lengthErrors({ name, attributes, children }: Element): string[] {
  const errors = [];
  for (const key of ["id", "resid"]) {
    const value = attributes[key] ?? "";
    if (value.length > LONGEST.id) errors.push(`${name}: ${value} is over ${String(LONGEST.id)} characters`);
  }
  const most = LONGEST_TEXT[name];
  if (most === undefined) return errors;
  for (const { attributes: inside } of children) {
    const limit = inside.id === "Functions.Namespace" ? LONGEST.namespace : most;
    if ((inside.DefaultValue ?? "").length > limit)
      errors.push(`${inside.id ?? ""}: over ${String(limit)} characters`);
  }
  return errors;
}

function addressErrors(all: readonly Element[], url: string, exists: (file: string) => boolean): string[] {
  return all
    .filter(({ name }) => /Url$|^SourceLocation$|^bt:Image$/.test(name))
    .flatMap(({ attributes }) => attributes.DefaultValue ?? [])
    .flatMap((address) => {
      if (!address.startsWith("https://")) return [`${address} is not https`];
      if (address.length > LONGEST.url) return [`${address} is too long`];
      if (!address.startsWith(`${url}/`)) return [`${address} is not under ${url}`];
      return exists(address.slice(url.length + 1)) ? [] : [`${address} is not in the build`];
    });
}

/** The shared runtime needs one page for everything. */
function runtimeErrors(
  all: readonly Element[],
  resources: ReadonlyMap<string, Element>,
  namespace: string,
): string[] {
  const runtime = all.find(({ name }) => name === "Runtime");
  if (runtime === undefined) return ["no Runtime: the functions would not share the pane's runtime"];
  const errors = runtime.attributes.lifetime === "long" ? [] : ["Runtime: lifetime is not long"];
  const page = runtime.attributes.resid;
  for (const element of all) {
    const pages =
      element.name === "Page" || element.name === "Action"
        ? element.children
        : element.name === "FunctionFile"
          ? [element]
          : [];
    for (const { name, attributes } of pages) {
      if (attributes.resid !== page)
        errors.push(`${element.name}/${name}: must use ${page ?? "none"}, as the Runtime does`);
    }
  }
  if (resources.get("Functions.Namespace")?.attributes.DefaultValue !== namespace)
    errors.push(`the namespace is not ${namespace}`);
  return errors;
}
