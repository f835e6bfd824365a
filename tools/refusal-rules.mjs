/** Every rule by which a formula may say no, read from the sources: its words, with … where a value is filled in. */

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import ts from "typescript";

import { root } from "./project.mjs";

/** @typedef {{ words: string, file: string }} RefusalRule */

export const GAP = "…";
const ROOMS = ["src", "functions"];
/** The function behind REASON, which says one thing that no formula says: how many arguments there are. */
const REASON = "refusalOf";

/** @returns {RefusalRule[]} */
export function refusalRules() {
  return ROOMS.flatMap((room) => filesIn(path.join(root, room))).flatMap((file) => {
    const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true);
    const name = path.relative(root, file).split(path.sep).join("/");
    return [...new Set(rulesIn(source))].map((words) => ({ words, file: name }));
  });
}

/** @param {string} folder @returns {string[]} */
function filesIn(folder) {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => path.join(folder, file));
}

/** @param {ts.SourceFile} source @returns {string[]} */
export function rulesIn(source) {
  /** @type {string[]} */
  const found = [];
  /** @param {ts.Node} node */
  const visit = (node) => {
    // A rule that has a name is a part of others and comes with them.
    if (isRule(node) && !ts.isVariableDeclaration(node.parent)) found.push(...textsOf(node));
    if (ts.isNewExpression(node) && node.expression.getText() === "Refusal") {
      const words = node.arguments?.[2];
      if (words !== undefined && ts.isArrayLiteralExpression(words)) found.push(...textsOf(words));
    }
    if (ts.isFunctionDeclaration(node) && node.name?.text === REASON) found.push(...returned(node));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found.filter((words) => words.replaceAll(GAP, "").trim() !== "");
}

/** @param {ts.Node} node @returns {node is ts.TaggedTemplateExpression} */
function isRule(node) {
  return ts.isTaggedTemplateExpression(node) && node.tag.getText() === "rule";
}

/** What an expression may read, in all its branches. @param {ts.Node} node @returns {string[]} */
function textsOf(node) {
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (isRule(node)) return textsOf(node.template);
  if (ts.isTemplateExpression(node)) {
    return [[node.head.text, ...node.templateSpans.map(({ literal }) => GAP + literal.text)].join("")];
  }
  if (ts.isConditionalExpression(node)) return [...textsOf(node.whenTrue), ...textsOf(node.whenFalse)];
  if (ts.isSpreadElement(node)) return textsOf(node.expression);
  if (ts.isArrayLiteralExpression(node)) {
    return node.elements.map(textsOf).reduce(
      (starts, ends) => {
        return starts.flatMap((start) => ends.map((end) => start + end));
      },
      [""],
    );
  }
  if (ts.isCallExpression(node)) {
    const called = declared(node, node.expression.getText());
    return called !== undefined && ts.isFunctionDeclaration(called) ? returned(called) : [GAP];
  }
  if (ts.isIdentifier(node)) return textsOfName(node);
  return [GAP];
}

/** A constant of the file, or an argument of the function around, as its callers give it. @param {ts.Identifier} name */
function textsOfName(name) {
  const constant = declared(name, name.text);
  if (constant !== undefined && ts.isVariableDeclaration(constant) && constant.initializer !== undefined) {
    return textsOf(constant.initializer);
  }
  const around = ts.findAncestor(name, ts.isFunctionDeclaration);
  const place = around?.parameters.findIndex((parameter) => parameter.name.getText() === name.text) ?? -1;
  if (around === undefined || place < 0) return [GAP];
  return all(name.getSourceFile(), ts.isCallExpression)
    .filter((call) => call.expression.getText() === around.name?.text)
    .flatMap(({ arguments: given }) => (given[place] === undefined ? [] : textsOf(given[place])));
}

/** @param {ts.FunctionDeclaration} body @returns {string[]} */
function returned(body) {
  return all(body, ts.isReturnStatement)
    .filter(({ expression }) => expression !== undefined)
    .flatMap(({ expression }) => (expression === undefined ? [] : textsOf(expression)));
}

/** @param {ts.Node} near @param {string} name */
function declared(near, name) {
  const source = near.getSourceFile();
  return (
    all(source, ts.isFunctionDeclaration).find((one) => one.name?.text === name) ??
    all(source, ts.isVariableDeclaration).find((one) => one.name.getText() === name)
  );
}

/**
 * @template {ts.Node} Kind
 * @param {ts.Node} within @param {(node: ts.Node) => node is Kind} isKind
 * @returns {Kind[]}
 */
function all(within, isKind) {
  /** @type {Kind[]} */
  const found = [];
  /** @param {ts.Node} node */
  const visit = (node) => {
    if (isKind(node)) found.push(node);
    ts.forEachChild(node, visit);
  };
  visit(within);
  return found;
}
