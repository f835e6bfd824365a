/** One work of the bibliography. */

/** What kind of work it is, the kinds that bind most first. */
export const KINDS = [
  "standard",
  "paper",
  "report",
  "handbook",
  "textbook",
  "reference library",
  "producer sheet",
  "web page",
  "common practice",
] as const;

/**
 * How the project knows it. `copy`: the passage used was read in a copy. `second-hand`: it was read where another work
 * quotes it. `memory`: nothing of it was read.
 */
export const ACCESS = ["copy", "second-hand", "memory"] as const;

export interface Source {
  /** As other texts cite it, "Rosenthal 1946". */
  readonly short: string;
  /** Persons or the body that answers for it; absent where none is named. */
  readonly author?: string;
  readonly title: string;
  /** Journal with volume and first page, publisher, or number of a standard. */
  readonly where: string;
  /** Year, edition or version. */
  readonly edition: string;
  readonly standing: (typeof KINDS)[number];
  readonly access: (typeof ACCESS)[number];
  /** What a reader has to know of the copy or of the part used. */
  readonly note?: string;
}

/** For a work whose edition was not written down when it was used. */
export const NOT_NOTED = "edition not noted";
