/** A source file without the words that are told of its records and numbers. */

import ts from "typescript";

/** Properties of a record that are told of it and have no part in what it gives. */
const TOLD: readonly string[] = [
  "meaning",
  "detail",
  "tex",
  "equation",
  "where",
  "validity",
  "assumptions",
  "source",
  "unconfirmed",
  "unchecked",
  "related",
  "synonyms",
  "figure",
  "example",
];
/** What makes a number with its source, in the files that import it from there. */
const SOURCED = /\/sourced$/;
/** What makes an argument or a result, and which of what it takes are words of the help. */
const WORDS_AT: ReadonlyMap<string, readonly number[]> = new Map([
  ["number", [0, 2]],
  ["word", [0]],
  ["requiredWord", [0]],
  ["text", [0]],
  ["numbers", [0, 2]],
  ["someNumbers", [0]],
  ["rows", [0]],
  ["rest", [0]],
  ["family", [0]],
  ["orComputed", [1]],
  ["entries", [0]],
  ["column", [0]],
  ["columnOrBlank", [0]],
  ["columnOrWords", [0]],
  ["typedColumn", [0]],
  ["wordsColumn", [0]],
]);
/** The files they are made in: elsewhere the same name may be another function. */
const MAKERS = /\/(?:argument|formula|gives)$/;
/** Calls with a table's own words in an object: what stands in front of its columns and behind them. */
const TABLE = "table";

interface Change {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The text without them, on the same lines. */
export function untold(file: string, text: string): string {
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const changes: Change[] = [];
  const makers = importedFrom(tree, MAKERS);
  const sourced = importedFrom(tree, SOURCED);
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const { text: name } = node.expression;
      if (makers.has(name)) changes.push(...ofCall(name, node.arguments));
      else if (sourced.has(name)) changes.push(...ofNumber(node));
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return changed(text, changes);
}

function importedFrom(tree: ts.SourceFile, files: RegExp): Set<string> {
  const names = tree.statements.flatMap((statement) => {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) return [];
    const bindings = statement.importClause?.namedBindings;
    if (!files.test(statement.moduleSpecifier.text) || bindings === undefined) return [];
    return ts.isNamedImports(bindings) ? bindings.elements.map(({ name }) => name.text) : [];
  });
  return new Set(names);
}

function ofCall(name: string, given: ts.NodeArray<ts.Expression>): Change[] {
  const [first, second] = given;
  if (name === "formula" && first !== undefined && ts.isObjectLiteralExpression(first))
    return ofRecord(first);
  if (name === TABLE && second !== undefined && ts.isObjectLiteralExpression(second)) {
    return [replaced(second, "{}")];
  }
  return (WORDS_AT.get(name) ?? []).flatMap((at) => {
    const words = given[at];
    return words !== undefined && isText(words) ? [replaced(words, '""')] : [];
  });
}

function ofRecord(record: ts.ObjectLiteralExpression): Change[] {
  return record.properties
    .filter((property) => TOLD.includes(property.name?.getText() ?? ""))
    .map((property) => replaced(property, ""));
}

/** A number keeps its value. */
function ofNumber(call: ts.CallExpression): Change[] {
  const [value] = call.arguments;
  return value === undefined ? [] : [replaced(call, `{ value: ${value.getText()} }`)];
}

function isText(node: ts.Expression): boolean {
  return ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);
}

/** A property goes with its comma; its lines stay, so that the map of the bundle still leads to them. */
function replaced(node: ts.Node, text: string): Change {
  const source = node.getSourceFile().text;
  const end = node.getEnd();
  const to = text === "" && source[end] === "," ? end + 1 : end;
  const lines = source.slice(node.getStart(), to).split("\n").length - 1;
  return { from: node.getStart(), to, text: text + "\n".repeat(lines) };
}

function changed(text: string, changes: readonly Change[]): string {
  return [...changes]
    .sort((a, b) => b.from - a.from)
    .reduce((so, { from, to, text: put }) => so.slice(0, from) + put + so.slice(to), text);
}
