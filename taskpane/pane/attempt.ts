/** What a button asks for: gives the sentence to show at its end, and may say what it waits for meanwhile. */

export type Work = (say: (text: string) => void) => Promise<string>;

/** Makes of it what a button runs; a failure is stated, never swallowed. */
export type Attempt = (work: Work) => () => Promise<void>;
