import { SHARE } from "../../src/quantity";
import { COMMON_CONFIDENCE } from "../../src/shop/fit";
import { number, orDefault } from "../argument";

export const CONFIDENCE = orDefault(
  number("Confidence of both intervals, fraction", SHARE),
  COMMON_CONFIDENCE,
);
