/** Every rule by which a formula may say no, read from the sources: its words, with … where a value is filled in. */

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import ts from "typescript";

import { root } from "../build/project";

export interface RefusalRule {
  readonly words: string;
  readonly file: string;
}

export const GAP = "…";
const ROOMS = ["src", "functions"];
/** The function behind REASON, which says one thing that no formula says: how many arguments there are. */
const REASON = "refusalOf";

export function refusalRules(): RefusalRule[] {
  return ROOMS.flatMap((room) => filesIn(path.join(root, room))).flatMap((file) => {
    const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true);
    const name = path.relative(root, file).split(path.sep).join("/");
    return [...new Set(rulesIn(source))].map((words) => ({ words, file: name }));
  });
}

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => path.join(folder, file));
}

export function rulesIn(source: ts.SourceFile): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    // A rule that has a name is a part of others and comes with them.
    if (isRule(node) && !ts.isVariableDeclaration(node.parent)) found.push(...textsOf(node));
    if (ts.isNewExpression(node) && node.expression.getText() === "Refusal") {
      const words = node.arguments?.[2];
      const list = words !== undefined && ts.isIdentifier(words) ? initializerOf(words) : words;
      if (list !== undefined && ts.isArrayLiteralExpression(list)) found.push(...textsOf(list));
    }
    // A reader that refuses nothing itself tells why; what it tells may have a name of its own.
    if (ts.isPropertyAssignment(node) && node.name.getText() === "why")
      found.push(...textsOf(node.initializer));
    if (
      ts.isVariableDeclaration(node) &&
      node.name.getText().endsWith("_HINT") &&
      node.initializer !== undefined
    ) {
      found.push(...textsOf(node.initializer));
    }
    if (ts.isFunctionDeclaration(node) && node.name?.text === REASON) found.push(...returned(node));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found.filter((words) => words.replaceAll(GAP, "").trim() !== "");
}

function initializerOf(name: ts.Identifier): ts.Expression | undefined {
  const constant = declared(name, name.text);
  return constant !== undefined && ts.isVariableDeclaration(constant) ? constant.initializer : undefined;
}

function isRule(node: ts.Node): node is ts.TaggedTemplateExpression {
  return ts.isTaggedTemplateExpression(node) && node.tag.getText() === "rule";
}

/** What an expression may read, in all its branches. */
function textsOf(node: ts.Node): string[] {
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (isRule(node)) return textsOf(node.template);
  if (ts.isTemplateExpression(node)) {
    return [[node.head.text, ...node.templateSpans.map(({ literal }) => GAP + literal.text)].join("")];
  }
  if (ts.isConditionalExpression(node)) return [...textsOf(node.whenTrue), ...textsOf(node.whenFalse)];
  if (ts.isSpreadElement(node)) return textsOf(node.expression);
  if (ts.isArrayLiteralExpression(node)) {
    return node.elements
      .map(textsOf)
      .reduce((starts, ends) => starts.flatMap((start) => ends.map((end) => start + end)), [""]);
  }
  if (ts.isCallExpression(node)) {
    const called = declared(node, node.expression.getText());
    return called !== undefined && ts.isFunctionDeclaration(called) ? returned(called) : [GAP];
  }
  if (ts.isIdentifier(node)) return textsOfName(node);
  return [GAP];
}

/** A constant of the file, or an argument of the function around, as its callers give it. */
function textsOfName(name: ts.Identifier): string[] {
  // A name that is told by way of itself is filled in.
  if (told.has(name.text)) return [GAP];
  told.add(name.text);
  try {
    return textsBehind(name);
  } finally {
    told.delete(name.text);
  }
}
const told = new Set<string>();

function textsBehind(name: ts.Identifier): string[] {
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

function returned(body: ts.FunctionDeclaration): string[] {
  return all(body, ts.isReturnStatement)
    .filter(({ expression }) => expression !== undefined)
    .flatMap(({ expression }) => (expression === undefined ? [] : textsOf(expression)));
}

function declared(near: ts.Node, name: string): ts.FunctionDeclaration | ts.VariableDeclaration | undefined {
  const source = near.getSourceFile();
  return (
    all(source, ts.isFunctionDeclaration).find((one) => one.name?.text === name) ??
    all(source, ts.isVariableDeclaration).find((one) => one.name.getText() === name)
  );
}

function all<Kind extends ts.Node>(within: ts.Node, isKind: (node: ts.Node) => node is Kind): Kind[] {
  const found: Kind[] = [];
  const visit = (node: ts.Node): void => {
    if (isKind(node)) found.push(node);
    ts.forEachChild(node, visit);
  };
  visit(within);
  return found;
}
