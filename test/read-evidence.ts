/** What the tests say of themselves, read from their source: every call of evidence(), whether it ran or not. */

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import ts from "typescript";

import * as standings from "./evidence";

export interface Claim {
  readonly file: string;
  readonly formulas: readonly string[];
  readonly standing: string;
  /** The key of a work, or words where none is held against. */
  readonly told: string;
  readonly detail: string;
}

export const ROOT = path.join(__dirname, "..");

/** Every TypeScript file of a folder of the project and of the folders in it, from the root. */
export function sourcesIn(folder: string): string[] {
  return readdirSync(path.join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => path.join(folder, name));
}

/** The claims of all tests but the test of evidence itself, which invents its own. */
export function claims(): Claim[] {
  return sourcesIn("test")
    .filter((file) => file.endsWith(".test.ts") && !file.endsWith("evidence.test.ts"))
    .flatMap(claimsOf);
}

function claimsOf(file: string): Claim[] {
  const found: Claim[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && node.expression.getText() === "evidence") {
      found.push(claim(file, node.arguments));
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, readFileSync(path.join(ROOT, file), "utf8"), ts.ScriptTarget.Latest, true));
  return found;
}

function claim(file: string, [formulas, standing, told, detail]: readonly ts.Expression[]): Claim {
  return {
    file,
    formulas: textOf(file, formulas).split(" "),
    standing: standingOf(file, standing),
    told: textOf(file, told),
    detail: detail === undefined ? "" : textOf(file, detail),
  };
}

function textOf(file: string, node: ts.Expression | undefined): string {
  if (node !== undefined && ts.isStringLiteralLike(node)) return node.text;
  throw new Error(`${file}: evidence(${node?.getText() ?? ""}) must be written out as text`);
}

function standingOf(file: string, node: ts.Expression | undefined): string {
  const value = Object.entries(standings).find(([name]) => name === node?.getText())?.[1];
  if (typeof value === "string") return value;
  throw new Error(`${file}: ${node?.getText() ?? "no standing"} is no standing of test/evidence.ts`);
}
