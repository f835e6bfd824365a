import { bead, number, refusal } from "../bead";

describe("material", () => {
  test("a designation of digits alone, which a cell holds as a number", () => {
    expect(number("AMPS_WALL", 0.065, 2205)).toBe(number("AMPS_WALL", 0.065, "2205"));
    expect(number("TRAVEL_SUGGEST", 0.065, null, 625)).toBe(number("TRAVEL_SUGGEST", 0.065, null, "625"));
  });

  test("any other number is refused", () => {
    expect(refusal("AMPS_WALL", 0.065, 316)).toMatch(
      /^#VALUE! material = 316: must be one of 304L, 316L, 2205, /,
    );
  });

  test("case and surrounding blanks are ignored, and 316L stands for nothing given", () => {
    expect(number("AMPS_WALL", 0.065, " ti-6-4 ")).toBe(number("AMPS_WALL", 0.065, "TI-6-4"));
    expect(number("AMPS_WALL", 0.065)).toBe(number("AMPS_WALL", 0.065, "316L"));
    expect(bead("AMPS_WALL", 0.065, "CS")).not.toBe(bead("AMPS_WALL", 0.065));
  });
});
