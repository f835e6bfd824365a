/** The cell whose formula fills another one. */

/** Undefined in an Excel that cannot tell: it has no formulas that fill other cells either. */
export function spillParentOf(cell: Excel.Range): Excel.Range | undefined {
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.12")) return undefined;
  return cell.getSpillParentOrNullObject();
}
