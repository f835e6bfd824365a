/** Every number of a source file, made wrong by a hundredth: what a test must notice of a constant. */

import ts from "typescript";

export interface Literal {
  readonly start: number;
  readonly end: number;
  readonly code: string;
  readonly becomes: string;
}

/** A number that is nothing cannot grow by a part of itself. */
const WRONG_ZERO = "0.01";
const FACTOR = "1.01";

export function literalsOf(file: string, text: string): Literal[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: Literal[] = [];
  const visit = (node: ts.Node): void => {
    // A number in a type is checked by the compiler, a name is none.
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node)) return;
    if (ts.isNumericLiteral(node) && !isName(node)) {
      const code = node.getText(source);
      const becomes = Number(node.text) === 0 ? WRONG_ZERO : `(${code} * ${FACTOR})`;
      found.push({ start: node.getStart(source), end: node.getEnd(), code, becomes });
    }
    node.forEachChild(visit);
  };
  visit(source);
  return found;
}

function isName(node: ts.NumericLiteral): boolean {
  return ts.isPropertyAssignment(node.parent) && node.parent.name === node;
}

export function mutated(text: string, { start, end, becomes }: Literal): string {
  return text.slice(0, start) + becomes + text.slice(end);
}
