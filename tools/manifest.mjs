/** Fills the manifest in and checks it: order of elements, lengths, every resid, every address present in the build. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { XMLParser } from "fast-xml-parser";

import { identityAt, root, VERSION } from "./project.mjs";

/** @param {string} url */
export function writeManifest(url) {
  return filledIn("manifest/manifest.xml", url);
}

/**
 * A file with every {{name}} in it filled in.
 * @param {string} file @param {string} url where the add-in is served
 */
export function filledIn(file, url) {
  const values = { ...identityAt(url), version: `${VERSION}.0`, url };
  return readFileSync(path.join(root, file), "utf8").replace(/\{\{(\w+)\}\}/g, (_, name) => {
    const value = /** @type {Record<string, string>} */ (values)[name];
    if (value === undefined) throw new Error(`${file} asks for {{${name}}}, which nothing fills`);
    return value.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
  });
}

/** An element in document order. @typedef {{ name: string, attributes: Record<string, string>, text: string, children: Element[] }} Element */

/** Children that an element may have, in the order the format demands. */
const ORDER = {
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
const LONGEST = { id: 32, "bt:ShortStrings": 125, "bt:LongStrings": 250, namespace: 32, url: 2048 };

/**
 * What is wrong with a manifest; empty when nothing is.
 * @param {string} xml
 * @param {string} url where it says it is served
 * @param {(file: string) => boolean} exists whether the build holds a file
 * @returns {string[]}
 */
export function manifestErrors(xml, url, exists) {
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

/** @param {string} xml @returns {Element} */
function parse(xml) {
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: "",
    parseAttributeValue: false,
    parseTagValue: false,
  });
  const [app] = convert(parser.parse(xml)).filter(({ name }) => name === "OfficeApp");
  if (app === undefined) throw new Error("the manifest has no OfficeApp");
  return app;
}

/** @param {any[]} nodes @returns {Element[]} */
function convert(nodes) {
  return nodes.flatMap((node) => {
    const name = Object.keys(node).find((key) => key !== ":@" && key !== "#text");
    if (name === undefined) return [];
    const inside = node[name];
    const text = inside
      .map((/** @type {any} */ child) => child["#text"] ?? "")
      .join("")
      .trim();
    return [{ name, attributes: node[":@"] ?? {}, text, children: convert(inside) }];
  });
}

/** @param {Element} element @returns {Iterable<Element>} */
function* everything(element) {
  yield element;
  for (const child of element.children) yield* everything(child);
}

/** @param {Element} element */
function isResource({ name, attributes }) {
  return attributes.id !== undefined && /^bt:(Image|Url|String)$/.test(name);
}

/** @param {Element} element @returns {string[]} */
function orderErrors({ name, attributes, children }) {
  const kind = attributes["xsi:type"] ?? "";
  const order = /** @type {Record<string, string[]>} */ (ORDER)[name in ORDER ? name : kind];
  if (order === undefined) return [];
  const places = children.map((child) => order.indexOf(child.name));
  return children.flatMap((child, i) => {
    const place = places[i] ?? -1;
    if (place < 0) return [`${name}: ${child.name} does not belong there`];
    return place < Math.max(...places.slice(0, i), 0) ? [`${name}: ${child.name} stands too late`] : [];
  });
}

/** @param {Element} app */
function identityErrors(app) {
  const text = (/** @type {string} */ name) => app.children.find((child) => child.name === name)?.text ?? "";
  const errors = [];
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(text("Id"))) errors.push("Id is not a GUID");
  if (!/^\d{1,5}(\.\d{1,5}){0,3}$/.test(text("Version"))) errors.push("Version is not 1 to 4 numbers");
  const sets = [...everything(app)]
    .filter(({ name }) => name === "Set")
    .map(({ attributes }) => [attributes.Name, attributes.MinVersion]);
  for (const [name, version] of Object.entries(REQUIRED_SETS)) {
    if (!sets.some(([set, least]) => set === name && least === version))
      errors.push(`requirement ${name} ${version} is missing`);
  }
  return errors;
}

/** @param {Element} element @param {Map<string, Element>} resources */
function referenceErrors({ name, attributes }, resources) {
  const { resid } = attributes;
  return resid === undefined || resources.has(resid) ? [] : [`${name}: nothing has the id ${resid}`];
}

/** @param {Element} element */
function lengthErrors({ name, attributes, children }) {
  const errors = [];
  for (const key of ["id", "resid"]) {
    const value = attributes[key] ?? "";
    if (value.length > LONGEST.id) errors.push(`${name}: ${value} is over ${LONGEST.id} characters`);
  }
  const most = /** @type {Record<string, number>} */ (LONGEST)[name];
  if (most === undefined) return errors;
  for (const { attributes: inside } of children) {
    const limit = inside.id === "Functions.Namespace" ? LONGEST.namespace : most;
    if ((inside.DefaultValue ?? "").length > limit) errors.push(`${inside.id}: over ${limit} characters`);
  }
  return errors;
}

/** @param {Element[]} all @param {string} url @param {(file: string) => boolean} exists */
function addressErrors(all, url, exists) {
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

/**
 * The shared runtime needs one page for everything.
 * @param {Element[]} all @param {Map<string, Element>} resources @param {string} namespace
 */
function runtimeErrors(all, resources, namespace) {
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
        errors.push(`${element.name}/${name}: must use ${page}, as the Runtime does`);
    }
  }
  if (resources.get("Functions.Namespace")?.attributes.DefaultValue !== namespace)
    errors.push(`the namespace is not ${namespace}`);
  return errors;
}
