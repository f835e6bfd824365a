import { number, orDefault } from "../../functions/argument";
import type { Formula } from "../../functions/formula";
import { family, formula } from "../../functions/formula";
import type { FormulaHelp } from "../../functions/help-text";
import { helpOf } from "../../functions/help-text";
import { scalar } from "../../functions/gives";
import { LENGTH, si } from "../../src/quantity";
import { tellRecords } from "../../tools/build/generate";
import type { Told } from "../../tools/build/record-errors";
import { recordErrors } from "../../tools/build/record-errors";

const TWICE: Formula = formula({
  id: "TWICE",
  meaning: "Twice a length",
  args: { length: number("A length", LENGTH), more: orDefault(number("More", LENGTH), si(0, LENGTH)) },
  gives: scalar(LENGTH),
  validity: "any",
  source: "Arithmetic",
  related: [],
  example: { args: [2], gives: "4" },
  calc: ({ length }) => si(2 * length, LENGTH),
});
const HELP = helpOf(TWICE, family("Made up", [TWICE]));

function told(help: Partial<FormulaHelp> = {}, related: readonly string[] = []): Told {
  return { formula: { related }, help: { ...HELP, ...help } };
}

test("the records in functions/ are right", () => {
  expect(recordErrors(tellRecords())).toEqual([]);
});

test("a record with everything in it is right", () => {
  expect(recordErrors([told()])).toEqual([]);
});

const [length, more, units] = HELP.parameters;
if (length === undefined || more === undefined || units === undefined) throw new Error("no arguments");

test.each<[string, readonly Told[], string]>([
  ["an id used twice", [told(), told()], "TWICE: the id is used twice"],
  ["a missing validity", [told({ validity: "" })], "TWICE: validity is missing"],
  ["a missing source", [told({ source: "" })], "TWICE: source is missing"],
  ["an example without a result", [told({ result: "" })], "TWICE: the example says no result"],
  ["a missing description", [told({ meaning: "" })], "TWICE: the description is missing"],
  [
    "an argument without a description",
    [told({ parameters: [{ ...length, description: "" }] })],
    "TWICE: the description of length is missing",
  ],
  [
    "a description over 128 characters",
    [told({ meaning: "x".repeat(129) })],
    "TWICE: the description is over 128 characters",
  ],
  [
    "an argument description over 128",
    [told({ parameters: [{ ...length, description: "x".repeat(129) }] })],
    "TWICE: the description of length is over 128 characters",
  ],
  [
    "argument names over 200 characters together",
    [told({ parameters: [{ ...length, name: "x".repeat(201) }] })],
    "TWICE: the argument names are too long together",
  ],
  ["an id that reads as a cell", [told({ id: "TW1" })], "TW1: the id reads as a cell address"],
  ["an id too short", [told({ id: "TW" })], "TW: the id is too short or too long"],
  ["an id too long", [told({ id: "T".repeat(65) })], `${"T".repeat(65)}: the id is too short or too long`],
  ["an id in small letters", [told({ id: "Twice" })], "Twice: an id is upper case"],
  [
    "units before the last argument",
    [told({ parameters: [units, length] })],
    "TWICE: units is not the last argument",
  ],
  ["a stranger beside it", [told({}, ["THRICE"])], "TWICE: related names THRICE, which is no other formula"],
  ["itself beside it", [told({}, ["TWICE"])], "TWICE: related names TWICE, which is no other formula"],
])("finds %s", (_, records, expected) => {
  const errors = recordErrors(records);
  expect(errors).toHaveLength(1);
  expect(errors[0]).toContain(expected);
});

test("texts of exactly the length that hosts take are right", () => {
  const parameters = [{ ...length, name: "x".repeat(200), description: "x".repeat(128) }];
  expect(recordErrors([told({ id: "T".repeat(64), meaning: "x".repeat(128), parameters })])).toEqual([]);
});
