/** The how-to pages: files of docs/how-to/, in the order of the job, and what each is called among the built pages. */

export const HOW_TO = [
  "procedure",
  "sizes",
  "program",
  "coupons",
  "heat-input",
  "gas",
  "bid",
  "shift",
  "log",
] as const;

export function howToFile(name: string): string {
  return `how-to-${name}.html`;
}
