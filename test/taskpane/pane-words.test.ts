import { hint } from "../../taskpane/pane/explain";
import { repairedInWords } from "../../taskpane/pane/trouble";

describe("what the pane says of a host's own error", () => {
  test.each([
    ["#NAME?", /^: Excel does not know the formula yet; press “Repair formulas” below\.$/],
    [
      "#CALC!",
      /^: Excel cannot calculate it as it stands: a range where .* press “Repair formulas” below\.$/,
    ],
    [
      "#CONNECT!",
      /^: Excel has lost touch with the functions: keep this pane open, .* “Recalculate this sheet” below\.$/,
    ],
    ["#BUSY!", /^: still calculating/],
    ["#SPILL!", /^: the cells that the answer has to fill are not empty\.$/],
    ["#VALUE!", /BEAD\.REASON/],
    ["0.0425", /^$/],
  ])("%s", (shown, words) => {
    expect(hint({ shown, message: "" }, "Excel")).toMatch(words);
  });

  test("nothing where a refusal explains it", () => {
    expect(hint({ shown: "#CALC!", message: "wall = -1 in: must be above 0" }, "Excel")).toBe("");
  });
});

describe("what the pane says after a repair", () => {
  test.each([
    [{ count: 0, refused: [] }, "This sheet has no Ringbead formulas; there is nothing to repair."],
    [{ count: 1, refused: [] }, "Re-entered 1 formula on this sheet."],
    [
      { count: 12, refused: ["B4", "C9"] },
      "Re-entered 12 formulas on this sheet. Excel refused 2 formulas, left as before: B4, C9. Select each and look at what its formula refers to.",
    ],
    [
      { count: 0, refused: ["B4"] },
      "Re-entered 0 formulas on this sheet. Excel refused 1 formula, left as before: B4. Select each and look at what its formula refers to.",
    ],
  ])("%j", (repaired, words) => {
    expect(repairedInWords(repaired, "Excel")).toBe(words);
  });

  test("of many addresses as many as one reads", () => {
    const refused = Array.from({ length: 15 }, (_, i) => `A${String(i + 1)}`);
    expect(repairedInWords({ count: 0, refused }, "Excel")).toContain("A11, A12 and 3 more. Select");
  });
});
