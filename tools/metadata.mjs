/**
 * One JSDoc comment a formula, four results: functions.json for the host, help.json for everyone who explains a
 * formula, associate.ts which hands each function to the host, and a list of everything wrong with the comments.
 */

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import ts from "typescript";

import { NAMESPACE, root, VERSION } from "./project.mjs";

/** The strictest of the limits that hosts set. */
const LIMITS = { description: 128, parameterNames: 200, name: 64, shortestName: 3 };
const REQUIRED_TAGS = ["validity", "source", "example"];

/**
 * What the functions carry with them, for ABOUT and the pane.
 * @typedef {{ name: string, description: string, optional: boolean, range: boolean, repeating: boolean }} ParameterHelp
 * @typedef {{ id: string, family: string, meaning: string, parameters: readonly ParameterHelp[], returns: string,
 *   equation: string, validity: string, assumptions: string, source: string, unconfirmed: string,
 *   example: string, result: string }} FormulaHelp
 *
 * What only the reference prints: the equation's lines in LaTeX, its symbols, neighbours and a figure.
 * @typedef {{ id: string, math: string[], symbols: { symbol: string, meaning: string }[], related: string[],
 *   figure: string }} FormulaReference
 * @typedef {{ functionsJson: object, help: { namespace: string, version: string, formulas: FormulaHelp[] },
 *   reference: FormulaReference[], associateTs: string, errors: string[] }} Metadata
 */

/**
 * @param {string} helpPage address of the help page that every formula's help link leads to
 * @param {string} folder where the formulas are
 */
export async function readMetadata(helpPage, folder = path.join(root, "functions")) {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .sort((a, b) => path.basename(a).localeCompare(path.basename(b)))
    .map((name) => path.join(folder, name));
  const generated = await generateCustomFunctionsMetadata(files, false);
  if (generated.errors.length > 0) return refused(generated.errors);

  const { functions } = JSON.parse(generated.metadataJson);
  const tags = new Map(files.flatMap((file) => [...readTags(file)]));
  /** @type {FormulaHelp[]} */
  const formulas = [];
  /** @type {FormulaReference[]} */
  const reference = [];
  const errors = [];
  for (const [index, definition] of functions.entries()) {
    const place = generated.associate[index];
    const comment = tags.get(definition.id);
    if (comment === undefined || place === undefined) {
      errors.push(`${definition.id}: its comment could not be read`);
      continue;
    }
    definition.helpUrl = `${helpPage}#${definition.id}`;
    const about = formulaHelp(definition, comment, path.basename(place.sourceFileName, ".ts"));
    errors.push(...wrongWith(definition, comment, about));
    formulas.push(about);
    reference.push(formulaReference(definition.id, comment));
  }
  const ids = formulas.map(({ id }) => id);
  errors.push(...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `${id}: the id is used twice`));
  for (const { id, related } of reference) {
    const strangers = related.filter((other) => !ids.includes(other) || other === id);
    errors.push(...strangers.map((other) => `${id}: @related names ${other}, which is no other formula`));
  }

  return {
    // The generator always adds allowCustomDataForDataTypeAny, which crashes Office LTSC 2021: only the functions go on.
    functionsJson: { functions },
    help: { namespace: NAMESPACE, version: VERSION, formulas },
    reference,
    associateTs: associations(generated.associate),
    errors,
  };
}

/** @param {string[]} errors @returns {Metadata} */
function refused(errors) {
  return {
    functionsJson: {},
    help: { namespace: NAMESPACE, version: VERSION, formulas: [] },
    reference: [],
    associateTs: "",
    errors,
  };
}

/**
 * The tags of every formula in a file, by id; a tag may stand several times.
 * @param {string} file
 * @returns {Map<string, Map<string, string[]>>}
 */
function readTags(file) {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true);
  const found = new Map();
  source.forEachChild((node) => {
    if (!ts.isFunctionDeclaration(node)) return;
    /** @type {Map<string, string[]>} */
    const tags = new Map();
    for (const { tagName, comment } of ts.getJSDocTags(node)) {
      const texts = tags.get(tagName.text) ?? [];
      tags.set(tagName.text, [...texts, oneLine(ts.getTextOfJSDocComment(comment) ?? "")]);
    }
    const id = one(tags, "customfunction");
    if (id !== "") found.set(id, tags);
  });
  return found;
}

/** @param {Map<string, string[]>} tags @param {string} tag */
function one(tags, tag) {
  return tags.get(tag)?.[0] ?? "";
}

/** @param {string} text */
function oneLine(text) {
  return text.replace(/\s+/g, " ").trim();
}

/**
 * @param {any} definition
 * @param {Map<string, string[]>} tags
 * @param {string} family
 * @returns {FormulaHelp}
 */
function formulaHelp(definition, tags, family) {
  const [example = "", result = ""] = one(tags, "example").split(" → ");
  return {
    id: definition.id,
    family,
    meaning: definition.description ?? "",
    parameters: (definition.parameters ?? []).map((/** @type {any} */ parameter) => ({
      name: parameter.name,
      description: parameter.description ?? "",
      optional: parameter.optional === true,
      range: parameter.dimensionality === "matrix",
      repeating: parameter.repeating === true,
    })),
    returns: one(tags, "returns"),
    equation: one(tags, "equation"),
    validity: one(tags, "validity"),
    assumptions: one(tags, "assumptions"),
    source: one(tags, "source"),
    unconfirmed: one(tags, "unconfirmed"),
    example,
    result,
  };
}

/**
 * @param {string} id
 * @param {Map<string, string[]>} tags
 * @returns {FormulaReference}
 */
function formulaReference(id, tags) {
  return {
    id,
    math: tags.get("math") ?? [],
    symbols: listed(one(tags, "where"), ";").map((entry) => {
      const [symbol = "", ...meaning] = entry.split(" ");
      return { symbol, meaning: meaning.join(" ") };
    }),
    related: listed(one(tags, "related"), ","),
    figure: one(tags, "figure"),
  };
}

/** @param {string} text @param {string} mark */
function listed(text, mark) {
  return text === "" ? [] : text.split(mark).map((part) => part.trim());
}

/**
 * @param {any} definition
 * @param {Map<string, string[]>} tags
 * @param {FormulaHelp} about
 */
function wrongWith(definition, tags, about) {
  const wrong = [];
  const { id } = about;
  if (!/^[A-Z][A-Z0-9_]*$/.test(id)) wrong.push("an id is upper case letters, digits and underscores");
  if (id.length < LIMITS.shortestName || id.length > LIMITS.name)
    wrong.push("the id is too short or too long");
  if (/^[A-Z]{1,3}\d+$/.test(id) || /^R\d*C\d*$/.test(id)) wrong.push("the id reads as a cell address");
  if (definition.name !== id) wrong.push("name and id differ");
  wrong.push(...tooLong("the description", about.meaning));
  for (const { name, description } of about.parameters) {
    wrong.push(...tooLong(`the description of ${name}`, description));
  }
  const names = about.parameters.map(({ name }) => name).join("");
  if (names.length > LIMITS.parameterNames) wrong.push("the argument names are too long together");
  const units = about.parameters.findIndex(({ name }) => name === "units");
  if (units >= 0 && units !== about.parameters.length - 1) wrong.push("units is not the last argument");
  for (const tag of REQUIRED_TAGS) if (one(tags, tag) === "") wrong.push(`@${tag} is missing`);
  if (about.result === "") wrong.push("@example says no result");
  return wrong.map((what) => `${id}: ${what}`);
}

/** @param {string} what @param {string} text */
function tooLong(what, text) {
  if (text === "") return [`${what} is missing`];
  return text.length > LIMITS.description ? [`${what} is over ${LIMITS.description} characters`] : [];
}

/** @param {{ sourceFileName: string, functionName: string, id: string }[]} functions */
function associations(functions) {
  const files = [...new Set(functions.map(({ sourceFileName }) => sourceFileName))].sort();
  const imports = files.map((file) => {
    const names = functions.filter((one) => one.sourceFileName === file).map((one) => one.functionName);
    const place = path
      .relative(path.join(root, "functions"), file)
      .replace(/\.ts$/, "")
      .replaceAll("\\", "/");
    return `import { ${names.join(", ")} } from "../functions/${place}";`;
  });
  return [
    `import { offer } from "../functions/catalogue";`,
    ...imports,
    "",
    ...functions.map(({ id, functionName }) => `offer("${id}", ${functionName});`),
    "",
  ].join("\n");
}
