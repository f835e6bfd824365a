/**
 * The records as a source that Excel's own open metadata tool reads: a JSDoc comment and a bare function for each. What
 * the tool makes of it becomes functions.json, and must be what the records say, so that the two cannot drift apart.
 */

import { rmSync, writeFileSync } from "node:fs";

import type { IFunction } from "custom-functions-metadata";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";

import type { Gives } from "../../functions/gives";
import type { FormulaHelp, ParameterHelp } from "../../functions/help-text";

export interface Twin {
  readonly help: Pick<FormulaHelp, "id" | "meaning" | "parameters" | "returns">;
  readonly type: Gives<unknown>["type"];
}

/** A definition of functions.json. */
export type Definition = Pick<IFunction, "id" | "name" | "description" | "parameters" | "result" | "helpUrl">;

const RESULTS = { number: "number", text: "string", numbers: "number[][]", table: "unknown[][]" } as const;

/** The source. Its functions are declared and never called. */
export function twinSource(twins: readonly Twin[]): string {
  return twins.map(twinOf).join("\n");
}

function twinOf({ help: { id, meaning, parameters, returns }, type }: Twin): string {
  const tags = [
    meaning,
    `@customfunction ${id}`,
    ...parameters.map(
      ({ name, description, optional }) => `@param ${optional ? `[${name}]` : name} ${description}`,
    ),
    ...(returns === "" ? [] : [`@returns ${returns}`]),
  ];
  const typed = parameters.map((one) => `${one.name}${one.optional ? "?" : ""}: ${typeOf(one)}`);
  return [
    "/**",
    ...tags.map((line) => ` * ${line}`),
    " */",
    `export declare function ${id.toLowerCase()}(${typed.join(", ")}): ${RESULTS[type]};`,
    "",
  ].join("\n");
}

function typeOf({ range, repeating }: ParameterHelp): string {
  return repeating ? "unknown[][][]" : range ? "unknown[][]" : "unknown";
}

/** What the tool makes of the twins, written to the file for it to read; throws where it is not what the records say. */
export async function readTwins(twins: readonly Twin[], file: string): Promise<Definition[]> {
  writeFileSync(file, twinSource(twins));
  const { errors, metadataJson } = await generateCustomFunctionsMetadata(file, false);
  if (errors.length > 0)
    throw new Error(`Excel's metadata tool refuses the formulas:\n  ${errors.join("\n  ")}`);
  const { functions } = JSON.parse(metadataJson) as { functions: IFunction[] };
  const wrong = twinErrors(twins, functions);
  if (wrong.length > 0) {
    rmSync(file);
    throw new Error(`Excel's metadata tool reads the formulas otherwise:\n  ${wrong.join("\n  ")}`);
  }
  return functions;
}

/** Every field in which the tool's definitions differ from the records, a line each. */
export function twinErrors(twins: readonly Twin[], read: readonly Definition[]): string[] {
  const strangers = read.filter(({ id }) => !twins.some(({ help }) => help.id === id));
  return [
    ...strangers.map(({ id }) => `${id}: is no record`),
    ...twins.flatMap((twin) => {
      const { id } = twin.help;
      const found = read.filter((one) => one.id === id);
      const [first] = found;
      if (first === undefined || found.length > 1) return [`${id}: is read ${String(found.length)} times`];
      return differences(fields(definitionOf(twin)), fields(first)).map((what) => `${id}: ${what}`);
    }),
  ];
}

/** What functions.json has to say of a record. */
function definitionOf({ help: { id, meaning, parameters }, type }: Twin): Definition {
  return {
    id,
    name: id,
    description: meaning,
    parameters: parameters.map(({ name, description, optional, range, repeating }) => ({
      name,
      description,
      type: "any",
      ...(optional ? { optional } : {}),
      ...(range ? { dimensionality: "matrix" } : {}),
      ...(repeating ? { repeating } : {}),
    })),
    result: {
      ...(type === "numbers" || type === "table" ? { dimensionality: "matrix" } : {}),
      ...(type === "table" ? {} : { type: type === "text" ? "string" : "number" }),
    },
  };
}

/** A definition as its single facts, by their path: `parameters.0.name`. */
function fields(value: unknown, path = ""): Map<string, string> {
  if (typeof value !== "object" || value === null) return new Map([[path, JSON.stringify(value)]]);
  const inside = Object.entries(value).map(([key, one]) => fields(one, path === "" ? key : `${path}.${key}`));
  return new Map(inside.flatMap((one) => [...one]));
}

function differences(wanted: ReadonlyMap<string, string>, read: ReadonlyMap<string, string>): string[] {
  const paths = [...new Set([...wanted.keys(), ...read.keys()])];
  return paths
    .filter((path) => wanted.get(path) !== read.get(path))
    .map((path) => `${path} is ${wanted.get(path) ?? "nothing"}, read as ${read.get(path) ?? "nothing"}`);
}
