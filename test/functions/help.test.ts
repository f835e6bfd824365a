import { HELP } from "../../functions/help";
import { VERSION } from "../../functions/catalogue";
import { bead, refusal, table } from "../bead";

/** REASON as a host calls it: each argument after the id arrives as rows of cells. */
function reason(id: unknown, ...cells: unknown[]): unknown {
  return bead(
    "REASON",
    id,
    cells.map((cell) => (Array.isArray(cell) ? (cell as unknown[]) : [[cell]])),
  );
}

describe("ABOUT", () => {
  test.each(HELP.map((about) => [about.id, about] as const))(
    "%s: five rows, each with its text",
    (id, about) => {
      const rows = table("ABOUT", id);
      expect(rows.map(([label]) => label)).toEqual(["meaning", "equation", "validity", "source", "example"]);
      const [meaning, equation, validity, source, example] = rows.map(([, text]) => String(text));
      expect([meaning, equation, example]).toEqual([
        about.meaning,
        about.equation,
        `${about.example} → ${about.result}`,
      ]);
      for (const [text, first, second] of [
        [validity, about.validity, about.assumptions],
        [source, about.source, about.unconfirmed],
      ] as const) {
        // Parts stand apart by ". " or, after a full stop, by a blank.
        expect(text).toBe(second === "" ? first : `${first}${first.endsWith(".") ? " " : ". "}${second}`);
      }
      expect([about.meaning, about.validity, about.source, about.example, about.result]).not.toContain("");
    },
  );

  test.each(["BEAD.STANDOFF", "bead_standoff", "=BEAD.STANDOFF", " Standoff ", [["STANDOFF"]]])(
    "takes %j for STANDOFF",
    (id) => {
      expect(table("ABOUT", id)).toEqual(table("ABOUT", "STANDOFF"));
    },
  );

  test("an unknown name is no answer, with the names that begin alike", () => {
    expect(refusal("ABOUT", "STANDOF")).toBe(
      '#N/A id = "STANDOF": no formula has this name; did you mean STANDOFF, STANDOFF_SPREAD?',
    );
    expect(refusal("ABOUT", "WALDO")).toBe('#N/A id = "WALDO": no formula has this name');
    expect(refusal("ABOUT", 12)).toBe('#N/A id = "12": no formula has this name');
  });
});

describe("REASON", () => {
  test("gives the sentence of the formula, without its code", () => {
    expect(reason("STANDOFF", -0.065)).toBe("wall = -0.065 in: must be above 0");
    expect(reason("BEAD.STANDOFF", -1.651, null, "SI")).toBe("wall = -1.651 mm: must be above 0");
    expect(reason("bead_purge_changes", 5, 5)).toBe(
      "ppm = 5 ppm: cannot be reached; must be above supplyPpm, 5 ppm",
    );
  });

  test("says fine where the formula answers", () => {
    expect(reason("STANDOFF", 0.065)).toBe("fine");
    expect(reason("VERSION")).toBe("fine");
    expect(bead("REASON", "VERSION", null)).toBe("fine");
  });

  test("hands a range to an argument that takes one, and refuses it elsewhere", () => {
    expect(reason("FEELER_STACK", 0.05, [[0.03, 0.02]])).toBe("fine");
    expect(reason("FEELER_STACK", 0.05, [[0.03], ["leaf"]])).toBe(
      'leaves = "leaf": must be a number or a size such as 1.5, 1-1/2 or 38.1 mm',
    );
    expect(reason("STANDOFF", [[0.065], [0.083]])).toBe("wall = a range: takes one cell, not 2 × 1 cells");
  });

  test("missing arguments are blank ones", () => {
    expect(reason("STANDOFF")).toBe("wall = blank: needs a number (in)");
  });

  test("more arguments than the formula has", () => {
    expect(reason("STANDOFF", 1, 2, "US", 4)).toBe("STANDOFF takes 3 arguments, not 4");
    expect(reason("ABOUT", "STANDOFF", 2)).toBe("ABOUT takes 1 argument, not 2");
    expect(reason("VERSION", 1)).toBe("VERSION takes 0 arguments, not 1");
  });

  test("a cell that holds an error is named", () => {
    expect(reason("STANDOFF", { type: "Error", basicValue: "#N/A" })).toBe(
      "wall = #N/A: the referenced cell contains an error; fix it first",
    );
  });

  test("an unknown name is refused", () => {
    expect(() => reason("WALDO", 1)).toThrow('id = "WALDO": no formula has this name');
  });

  test("asked of itself it passes all the arguments on", () => {
    expect(reason("REASON", "STANDOFF", -1)).toBe("fine");
    expect(reason("REASON", "WALDO", -1)).toBe('id = "WALDO": no formula has this name');
  });
});

test("VERSION is the version the build was made with", () => {
  expect(bead("VERSION")).toBe(VERSION);
  expect(VERSION).toMatch(/^\d+\.\d+\.\d+$/);
});
