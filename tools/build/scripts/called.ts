/**
 * The side of a pasted script that its host calls: cells as the host hands them over become what the formulas take, and a
 * refusal becomes an error whose message is its sentence. It is compiled by itself and stands in front of the functions in
 * the script, so it imports nothing and looks up nothing that is not of the language.
 */

export interface ScriptSide {
  /** What functions.js finds in place of the global of the same name. */
  readonly CustomFunctions: object;
  /**
   * `places`: how many arguments the formula has. With `repeats`, that many stand before those that repeat, each of which
   * the formula takes as rows of cells.
   */
  readonly call: (id: string, given: ArrayLike<unknown>, places: number, repeats?: boolean) => unknown;
}

export function scriptSide(): ScriptSide {
  const formulas = new Map<string, (...cells: unknown[]) => unknown>();

  class CellError extends Error {
    constructor(code: string, message?: string) {
      super(message);
      Object.assign(this, { code });
    }
  }

  /** An error in a cell arrives as its name; the formulas know it by its code. */
  const received = (cell: unknown): unknown => {
    if (Array.isArray(cell)) return cell.map(received);
    return typeof cell === "string" && /^#(?:N\/A|DIV\/0!|[A-Z]+[!?])$/.test(cell) ? { code: cell } : cell;
  };
  /** The formulas speak of each other with a dot, which no name in a script can have. */
  const renamed = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(renamed);
    return typeof value === "string" ? value.replace(/\bBEAD\.(?=[A-Z])/g, "BEAD_") : value;
  };
  /** What nobody gave at the end was not given. */
  const withoutTail = (cells: readonly unknown[]): unknown[] => {
    let end = cells.length;
    while (end > 0 && cells[end - 1] === undefined) end -= 1;
    return cells.slice(0, end);
  };

  return {
    CustomFunctions: {
      Error: CellError,
      ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
      associate: (id: string, formula: (...cells: unknown[]) => unknown) => formulas.set(id, formula),
    },
    call: (id, given, places, repeats = false) => {
      const cells = withoutTail(Array.from(given, received));
      if (!repeats && cells.length > places) {
        const takes = `${String(places)} argument${places === 1 ? "" : "s"}`;
        throw new Error(`BEAD_${id} takes ${takes}, not ${String(cells.length)}`);
      }
      const rest = cells.slice(places).map((cell) => (Array.isArray(cell) ? (cell as unknown[]) : [[cell]]));
      const formula = formulas.get(id);
      if (formula === undefined) throw new Error(`BEAD_${id} is not in this script`);
      try {
        return renamed(repeats ? formula(...cells.slice(0, places), rest) : formula(...cells));
      } catch (problem) {
        throw new Error(String(renamed((problem as Error).message)), { cause: problem });
      }
    },
  };
}
