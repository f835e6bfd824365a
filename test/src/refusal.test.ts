import { LENGTH, OXYGEN, SHARE } from "../../src/quantity";
import { amount, orRefusal, Refusal, rule } from "../../src/refusal";

const HALF_MILLIMETER = amount(0.0005, LENGTH);

test("a rule keeps its words and amounts in order", () => {
  const limit = amount(0.0254, LENGTH);
  expect(rule`must be above 0`).toEqual(["must be above 0"]);
  expect(rule`between ${limit} and ${HALF_MILLIMETER}`).toEqual([
    "between ",
    limit,
    " and ",
    HALF_MILLIMETER,
    "",
  ]);
});

test("the sentence is argument, value and limit in the reader's units", () => {
  const refusal = new Refusal("wall", amount(-0.001651, LENGTH), rule`must be above ${amount(0, LENGTH)}`);
  expect(refusal.sentence("US")).toBe("wall = -0.065 in: must be above 0 in");
  expect(refusal.sentence("SI")).toBe("wall = -1.651 mm: must be above 0 mm");
});

test("a value in words stands as it is, and a quantity without a unit has none", () => {
  expect(new Refusal("wall", "blank", ["needs a number"]).sentence("US")).toBe(
    "wall = blank: needs a number",
  );
  const share = new Refusal("overlap", amount(1, SHARE), ["must be less than 1"]);
  expect(share.sentence("SI")).toBe("overlap = 1: must be less than 1");
});

test("a refusal is impossible unless it is said to be unanswerable, and has no stack, which would cost more than the refusal", () => {
  const impossible = new Refusal("ppm", amount(5, OXYGEN), []);
  expect(impossible.kind).toBe("impossible");
  expect(new Refusal("ppm", amount(5, OXYGEN), [], "unanswerable").kind).toBe("unanswerable");
  expect(impossible.name).toBe("Refusal");
  expect(impossible.message).toBe("ppm refused");
  expect(impossible).not.toHaveProperty("stack");
});

describe("a value that rounds to the limit it broke", () => {
  test("shows the digits in which they differ: 0.019685 in is 0.499999 mm", () => {
    const refusal = new Refusal(
      "gap",
      amount(0.019685 * 0.0254, LENGTH),
      rule`must be at least ${HALF_MILLIMETER}`,
    );
    expect(refusal.sentence("US")).toBe("gap = 0.019685 in: must be at least 0.0196850393701 in");
    expect(refusal.sentence("SI")).toBe("gap = 0.499999 mm: must be at least 0.5 mm");
  });

  test("stays short where it is the limit itself", () => {
    const refusal = new Refusal(
      "wall",
      HALF_MILLIMETER,
      rule`must be less than half of od, ${HALF_MILLIMETER}`,
    );
    expect(refusal.sentence("US")).toBe("wall = 0.019685 in: must be less than half of od, 0.019685 in");
  });
});

test("a remark is the sentence without the value, its limit in as many digits", () => {
  const refusal = new Refusal(
    "gap",
    amount(0.019685 * 0.0254, LENGTH),
    rule`must be at least ${HALF_MILLIMETER}`,
  );
  expect(refusal.remark("US")).toBe("gap: must be at least 0.0196850393701 in");
  expect(refusal.remark("SI")).toBe("gap: must be at least 0.5 mm");
});

test("a refusal may take the place of the result; any other failure may not", () => {
  const refusal = new Refusal("wall", "blank", ["needs a number"]);
  const failing = (problem: Error) => (): never => {
    throw problem;
  };
  expect(orRefusal(() => 5)).toBe(5);
  expect(orRefusal(failing(refusal))).toBe(refusal);
  expect(() => orRefusal(failing(new TypeError("broken")))).toThrow("broken");
});
