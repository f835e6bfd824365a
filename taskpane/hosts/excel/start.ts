/**
 * What the pane's page says until Excel answers, and where it never does. The page brings a first text with it, which
 * stands there whatever fails; this puts plainer words in its place, and the pane when Excel has answered.
 */

/** Long for a slow line, short for a person who looks at it. */
const PATIENCE = 10_000;

export const WORDS = {
  noScript:
    "Office’s own script did not load from appsforoffice.microsoft.com, so the pane cannot reach Excel. Check the network connection, and whether a firewall or a content blocker stops that address; then close this pane and open it again.",
  silent:
    "Excel has not answered yet. If Office shows a question about trusting this server, answer it: the pane goes on by itself. Otherwise part of Office’s script may be blocked by a firewall or a content blocker, or Excel is busy: close this pane, open it again from the Home tab, and if that does not help, restart Excel.",
  elsewhere:
    "This page is the pane of an add-in and works inside Excel only. To use the formulas without Excel, open the browser sheet.",
  framed:
    "Another site shows this page in a frame of its own. Outside Excel it reaches no workbook and does nothing: do not follow what that site asks you to do with it.",
  broken: "The pane could not start",
} as const;

/** Where to go on, for words that end with it. */
const BROWSER_SHEET = { href: "sheet/", text: "Open the browser sheet" };

/** Waits for Excel and gives the pane the page; says why where there is nothing to wait for. */
export function start(mount: () => void): void {
  if (typeof Office === "undefined") {
    say(WORDS.noScript);
    return;
  }
  const silence = setTimeout(() => {
    say(WORDS.silent);
  }, PATIENCE);
  void Office.onReady()
    .then(({ host }) => {
      clearTimeout(silence);
      // The typings have it a number; it is a word, and null outside of Office.
      if (String(host) !== "Excel") sayElsewhere();
      else mountInstead(mount);
    })
    .catch((problem: unknown) => {
      clearTimeout(silence);
      say(`${WORDS.broken}: ${problem instanceof Error ? problem.message : String(problem)}.`);
    });
}

function mountInstead(mount: () => void): void {
  mount();
  starting()?.remove();
}

function sayElsewhere(): void {
  const isFramed = window.top !== window;
  say(isFramed ? WORDS.framed : WORDS.elsewhere);
  if (isFramed) return;
  const link = document.createElement("a");
  link.href = BROWSER_SHEET.href;
  link.textContent = BROWSER_SHEET.text;
  starting()?.append(link);
}

function say(text: string): void {
  const line = starting()?.querySelector("p");
  if (line !== null && line !== undefined) line.textContent = text;
}

function starting(): HTMLElement | null {
  return document.querySelector<HTMLElement>("#starting");
}
