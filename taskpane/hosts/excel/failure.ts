/** What went wrong in Excel, in words and with what to do about it. Fragments: the pane makes sentences of them. */

const BY_CODE: Record<string, string> = {
  InvalidOperationInCellEditMode: "a cell is being edited: press Enter or Esc in the sheet, then try again",
  AccessDenied:
    "Excel does not allow it: the workbook or the sheet is protected with a password or open read-only",
  GeneralException: "Excel gave no reason: bring this workbook to the front and try again",
  RequestAborted: "Excel canceled it: try again",
  ApiNotFound: "this version of Excel is too old for it",
  NotImplemented: "this version of Excel is too old for it",
  InvalidSelection: "another workbook is in front: bring this one to the front and try again",
  UndoNotSupported: "Excel cannot do it as one step of Undo",
};

export const WORKBOOK_PROTECTED =
  "the structure of this workbook is protected, so no sheet can be added: remove that protection on the Review tab first";

/** A failure that is already stated in words. */
export class HostFailure extends Error {}

/** What a person can put right, and what trying again another way cannot: what is said in words already, too. */
const PERSONS = ["InvalidOperationInCellEditMode", "AccessDenied"];

export function isPersons(problem: unknown): boolean {
  return problem instanceof HostFailure || PERSONS.includes(codeOf(problem));
}

export function codeOf(problem: unknown): string {
  const { code } = (problem ?? {}) as { code?: unknown };
  return typeof code === "string" ? code : "";
}

export function inWords(problem: unknown): string {
  if (problem instanceof HostFailure) return problem.message;
  const known = BY_CODE[codeOf(problem)];
  if (known !== undefined) return known;
  const said = problem instanceof Error ? problem.message : String(problem);
  return codeOf(problem) === "" ? said : `Excel says “${said.replace(/[.\s]+$/, "")}”`;
}
