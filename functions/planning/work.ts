/** What one joint asks of the operator and of the machine, as the formulas of the crew take it. */

import { si, TIME } from "../../src/quantity";
import { number, orDefault } from "../argument";

export const LOAD = number("Operator at the head per joint", TIME, "unload, load, start");
export const MACHINE = number("Machine time per joint", TIME, "purge, weld, purge");
export const WALK = orDefault(number("Walk to the next head", TIME), si(0, TIME));
