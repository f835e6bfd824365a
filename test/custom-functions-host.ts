/** The part of a host that the functions see: the error class and the place where each function reports in. */

const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
};

class CellError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

Object.assign(globalThis, { CustomFunctions: { Error: CellError, ErrorCode, associate: () => undefined } });
