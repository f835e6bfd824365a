/** Wrong records that must not compile: what the kinds of quantity and the typed records are there for. */

import path from "node:path";

import ts from "typescript";

const FOLDER = path.resolve("functions");
const FILE = path.join(FOLDER, "wrong-record.ts");
const HEAD = `
import { number, orDefault } from "./argument";
import { OD, WALL } from "./arguments";
import { formula } from "./formula";
import { column, row, scalar } from "./gives";
import { ANGLE, CURRENT, LENGTH, SPEED, si } from "../src/quantity";
import { standoff } from "../src/gap/electrode";
import { travelTime } from "../src/travel/travel";
const facts = { meaning: "Half", validity: "any", source: "made up", related: [], example: { args: [1], gives: "1" } };
`;
const RIGHT = `
export const HALF = formula({
  ...facts,
  id: "HALF",
  args: { wall: WALL, allowance: orDefault(number("Added", LENGTH), si(0, LENGTH)) },
  gives: scalar(LENGTH),
  calc: ({ wall, allowance }) => standoff(wall, allowance),
});
export const PAIR = formula({
  ...facts,
  id: "PAIR",
  args: { wall: WALL },
  gives: row({ least: column("least", LENGTH), turn: column("turn", ANGLE) }),
  calc: ({ wall }) => ({ least: wall, turn: si(5, ANGLE) }),
});
`;

const { options } = ts.getParsedCommandLineOfConfigFile(
  path.join(FOLDER, "tsconfig.json"),
  {},
  {
    ...ts.sys,
    onUnRecoverableConfigFileDiagnostic: () => undefined,
  },
) ?? { options: {} };
const host = ts.createCompilerHost(options);
const readAsIs = host.getSourceFile.bind(host);
/** Files that are read once serve every program. */
const read = new Map<string, ts.SourceFile | undefined>();
let program: ts.Program | undefined;

/** What the compiler says of a file of records. */
function saidOf(records: string): string[] {
  host.getSourceFile = (name, ...rest) => {
    if (path.resolve(name) === FILE) return ts.createSourceFile(name, HEAD + records, ts.ScriptTarget.ES2022);
    if (!read.has(name)) read.set(name, readAsIs(name, ...rest));
    return read.get(name);
  };
  host.fileExists = (name) => path.resolve(name) === FILE || ts.sys.fileExists(name);
  program = ts.createProgram([FILE], options, host, program);
  const file = program.getSourceFile(FILE);
  return program
    .getSemanticDiagnostics(file)
    .filter(({ code }) => code !== UNUSED)
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, "\n"));
}
const UNUSED = 6133;

test("right records compile", () => {
  expect(saidOf(RIGHT)).toEqual([]);
});

test.each([
  [
    "one quantity taken for another",
    RIGHT.replace('number("Added", LENGTH), si(0, LENGTH)', 'number("Added", CURRENT), si(0, CURRENT)'),
    /'Of<"current">' is not assignable to parameter of type 'Length'/,
  ],
  [
    "a result of another kind",
    RIGHT.replace("gives: scalar(LENGTH)", "gives: scalar(SPEED)"),
    /not assignable to type 'Of<"speed">'/,
  ],
  [
    "a default of another kind",
    RIGHT.replace("si(0, LENGTH)", "si(0, SPEED)"),
    /'Of<"speed">' is not assignable to (?:parameter of )?type 'Of<"length">'/,
  ],
  [
    "a misspelled argument",
    RIGHT.replace("({ wall, allowance })", "({ wal, allowance })"),
    /Property 'wal' does not exist/,
  ],
  [
    "a plain number for a quantity",
    RIGHT.replace("standoff(wall, allowance)", "wall / 2"),
    /Type 'number' is not assignable to type 'Length'|'number' is not assignable to type 'Of<"length">'/,
  ],
  [
    "another quantity as the last argument of a calculation",
    RIGHT.replace("turn: si(5, ANGLE)", "turn: si(travelTime(wall, si(1, SPEED), wall), ANGLE)"),
    /'Of<"length">' is not assignable to parameter of type 'Angle'/,
  ],
  [
    "a column of another kind",
    RIGHT.replace("turn: si(5, ANGLE)", "turn: wall"),
    /Type '"length"' is not assignable to type '"angle"'/,
  ],
  ["a column that is missing", RIGHT.replace("least: wall, ", ""), /Property 'least' is missing/],
])("%s does not compile", (_, records, says) => {
  const said = saidOf(records);
  expect(said.join("\n")).toMatch(says);
});
