/**
 * The workbook that a newcomer starts with, as its text: the build puts it here (tools/build/fresh-loader.ts), so that
 * the page need not write the sheet cell by cell. "" in a page that is being worked on, which writes it.
 */
export const FRESH = "" as string;
