/** Every number of a source file, made wrong by a hundredth: what a test must notice of a constant. */

import ts from "typescript";

import type { Edit } from "./edit";
import { CALLED } from "./edit";

/** A number that is nothing cannot grow by a part of itself. */
const WRONG_ZERO = "0.01";
const FACTOR = "1.01";

export function literalsOf(file: string, text: string): Edit[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: Edit[] = [];
  const visit = (node: ts.Node): void => {
    // A number in a type is checked by the compiler, a name is none.
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node)) return;
    if (ts.isNumericLiteral(node) && !isName(node)) {
      const code = node.getText(source);
      const becomes = Number(node.text) === 0 ? WRONG_ZERO : `(${code} * ${FACTOR})`;
      found.push({ start: node.getStart(source), end: node.getEnd(), becomes });
    }
    node.forEachChild(visit);
  };
  visit(source);
  return found;
}

function isName(node: ts.NumericLiteral): boolean {
  return ts.isPropertyAssignment(node.parent) && node.parent.name === node;
}

/** The source with a call beside each number, which tells that it was read: `(globalThis.x(7), 0.5)`. */
export function tellingLiterals(text: string, literals: readonly Edit[], from: number): string {
  return literals
    .map((edit, index) => ({ ...edit, id: from + index }))
    .reverse()
    .reduce(
      (so, { start, end, id }) =>
        `${so.slice(0, start)}(globalThis.${CALLED}(${String(id)}), ${so.slice(start, end)})${so.slice(end)}`,
      text,
    );
}
