/** Sizes as people write them, as numbers. */

import { atLeast0 } from "../../src/limits";
import { LENGTH } from "../../src/quantity";
import { number, withTyped } from "../argument";
import { family, formula } from "../formula";
import { asTyped } from "../gives";

const SIZE = formula({
  id: "SIZE",
  meaning: "Length that a size says as people write it",
  args: { text: withTyped(number("Size such as 1/2, 1-1/2, 1 1/2 in, 1.5 or 38.1 mm", LENGTH)) },
  gives: asTyped(LENGTH),
  validity:
    "Every argument that is a length reads sizes like this. A fraction without a mark is inches in US and refused in SI; a comma and a date are refused.",
  source: "Arithmetic",
  unchecked: "Arithmetic alone: the check is written out by hand",
  related: ["PIPE_OD", "PIPE_WALL", "TAKEOFF"],
  synonyms: [
    "fraction",
    "inch to mm",
    "convert",
    "decimal",
    "metric",
    "fractional",
    "conversion",
    "inches to millimetres",
    "decimal equivalent",
  ],
  example: { args: ["1-1/2 in", "SI"], gives: "38.1" },
  calc: ({ text }) => ({ ...text, base: atLeast0("text", text.base, LENGTH) }),
});

export const SIZES = family("Sizes", [SIZE]);
