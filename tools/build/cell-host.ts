/** The part of a host that the functions see: the error class, and the place where each function reports in. */

export type CellFunction = (...cells: unknown[]) => unknown;

export class CellError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
};

export interface CellHost {
  readonly CustomFunctions: object;
  /** What reported in, by its id. */
  readonly associated: ReadonlyMap<string, CellFunction>;
}

/** A global as a host has it. */
export function cellHost(): CellHost {
  const associated = new Map<string, CellFunction>();
  const associate = (id: string, formula: CellFunction): void => {
    associated.set(id, formula);
  };
  return { CustomFunctions: { Error: CellError, ErrorCode, associate }, associated };
}

/** Lets formulas that are imported refuse as they do in a host. */
export function provideCellHost(): void {
  const { CustomFunctions } = cellHost();
  Object.assign(globalThis, { CustomFunctions });
}
