/**
 * The formulas' namespace in this Excel. Sheets and help say BEAD; an add-in under development has a namespace of its
 * own, so that both can be loaded at once, and only this file translates.
 */

const PLANNED = "BEAD";
const QUOTED = /("(?:[^"]|"")*")/;
/**
 * Where Excel took a name of ours for that of another add-in or workbook: X.XLL!, [2]!, 'C:\Add-ins\X.xla'!. No sheet
 * stands before a function, so whatever stands there is such a prefix.
 */
const FOREIGN = String.raw`(?:'(?:[^']|'')*'|\[\d+\]|[^\s'"!()+\-*/^&=<>,;{}@]+)!`;

export class Naming {
  constructor(readonly namespace: string = PLANNED) {}

  /** A planned formula as this Excel knows it. */
  toExcel(formula: string): string {
    return renamed(formula, PLANNED, this.namespace);
  }

  /** A formula read from this Excel as sheets and help have it. */
  toPlan(formula: string): string {
    return renamed(this.repaired(formula), this.namespace, PLANNED);
  }

  /** Whether a cell's content calls one of ours, in either of the two spellings Excel has for it. */
  isOurs(content: unknown): content is string {
    if (typeof content !== "string" || !content.startsWith("=")) return false;
    return new RegExp(`(?:\\b_xldudf_${this.namespace}_|\\b${this.namespace}\\.)\\w+\\s*\\(`, "i").test(
      outsideQuotes(content, () => "").join(""),
    );
  }

  /**
   * The spelling in which Excel stores a formula whose add-in was absent, turned back into the one people type, without
   * the name of another add-in before it.
   */
  repaired(formula: string): string {
    const stored = new RegExp(
      `(?:${FOREIGN})?\\b_xldudf_${this.namespace}_(\\w+)(?=\\s*\\()|${FOREIGN}${this.namespace}\\.(\\w+)(?=\\s*\\()`,
      "gi",
    );
    return outsideQuotes(
      formula,
      (text) => text,
      (text) =>
        text.replace(
          stored,
          (_, id: string | undefined, typed: string | undefined) =>
            `${this.namespace}.${(id ?? typed ?? "").toUpperCase()}`,
        ),
    ).join("");
  }
}

function renamed(formula: string, from: string, to: string): string {
  if (from === to || !formula.startsWith("=")) return formula;
  const name = new RegExp(`\\b${from}\\.(?=[A-Z])`, "gi");
  return outsideQuotes(
    formula,
    (text) => text,
    (text) => text.replace(name, `${to}.`),
  ).join("");
}

/** The pieces of a formula, what stands in quotes and what does not each treated in its own way. */
function outsideQuotes(
  formula: string,
  quoted: (text: string) => string,
  plain: (text: string) => string = (text) => text,
): string[] {
  return formula.split(QUOTED).map((text, i) => (i % 2 === 1 ? quoted(text) : plain(text)));
}
