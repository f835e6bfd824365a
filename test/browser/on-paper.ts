/** What comes out of the printer: pages of a PDF, the smallest letters of the page that is set out for it, its words. */

import type { OpenPage } from "./open-page";

type Page = OpenPage["page"];

export async function pagesOf(page: Page, format: "Letter" | "A4"): Promise<number> {
  const pdf = await page.pdf({ format, printBackground: true });
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

export interface OnPaper {
  readonly text: string;
  /** Points. */
  readonly smallest: number;
  /** Text of each line of the list. */
  readonly lines: readonly string[];
  /** How many of the lines are filled as grayed ones are. */
  readonly gray: readonly string[];
}

/** What is set out for paper now. */
export async function onPaper(page: Page): Promise<OnPaper> {
  await page.emulateMedia({ media: "print" });
  const found = await page.evaluate(setOut);
  await page.emulateMedia({ media: null });
  return found;
}

/** Runs in the page; stands alone. */
function setOut(): OnPaper {
  window.dispatchEvent(new Event("beforeprint"));
  const paper = document.getElementById("print-page");
  const cells = [...(paper?.querySelectorAll("td") ?? [])].filter(({ textContent }) => textContent !== "");
  const sizes = cells.map((cell) => Number.parseFloat(getComputedStyle(cell).fontSize) * 0.75);
  const rows = [...(paper?.querySelectorAll("tbody.lines tr") ?? [])];
  const textOf = (row: Element): string =>
    [...row.querySelectorAll("td")].map(({ textContent }) => textContent).join("|");
  const found = {
    text: paper?.textContent ?? "",
    smallest: Math.min(...sizes),
    lines: rows.map(textOf),
    gray: rows
      .filter((row) => {
        const cell = row.querySelector("td");
        return cell !== null && getComputedStyle(cell).backgroundColor === "rgb(230, 234, 236)";
      })
      .map(textOf),
  };
  window.dispatchEvent(new Event("afterprint"));
  return found;
}
