/** What a person does, counted: each action with the operators of the keystroke-level model that it takes. */

import { pagesOf } from "./on-paper";
import type { OpenPage } from "./open-page";
import type { Columns } from "./working";
import { clearLines, insert, pasteLines } from "./working";

/**
 * Seconds of a practiced person, by Card, Moran and Newell, Communications of the ACM 23 (1980), 396 to 410, from memory:
 * a key of an average typist, a point at something, a press or release of the button, hand to the other device, a thought.
 */
const SECONDS = { key: 0.28, point: 1.1, button: 0.1, hand: 0.4, thought: 1.35 } as const;
type Operators = Readonly<Partial<Record<keyof typeof SECONDS, number>>>;

export interface Action {
  readonly what: string;
  readonly seconds: number;
}

function timeOf(operators: Operators): number {
  return Object.entries(operators).reduce(
    (sum, [name, count]) => sum + count * SECONDS[name as keyof typeof SECONDS],
    0,
  );
}

export class Person {
  readonly actions: Action[] = [];

  constructor(readonly open: OpenPage) {}

  get seconds(): number {
    return this.actions.reduce((sum, { seconds }) => sum + seconds, 0);
  }

  #did(what: string, operators: Operators): void {
    this.actions.push({ what, seconds: timeOf(operators) });
  }

  /** Chooses a sheet in the pane and inserts it. */
  async insert(title: string): Promise<void> {
    await insert(this.open, title);
    this.#did(`insert ${title}`, { thought: 2, hand: 1, point: 3, button: 6 });
  }

  async type(name: string, typed: string): Promise<void> {
    await this.open.edit(name, typed);
    this.#did(`type ${name}`, { thought: 1, hand: 2, point: 1, button: 4, key: typed.length + 1 });
  }

  /** Presses a button of the bar. */
  async press(button: string): Promise<void> {
    await this.open.page.locator("#bar").getByRole("button", { name: button, exact: true }).click();
    this.#did(`press ${button}`, { thought: 1, hand: 1, point: 1, button: 2 });
  }

  /** Drags over the invented lines of a list, deletes them and pastes others, which were copied elsewhere. */
  async paste(
    name: string,
    columns: Columns,
    invented: number,
    lines: readonly (readonly string[])[],
  ): Promise<void> {
    await clearLines(this.open, name, columns, invented);
    const copied = lines.map((cells) => cells.join("	"));
    await pasteLines(this.open, name, columns[0], copied);
    this.#did(`paste ${String(lines.length)} lines`, { thought: 2, hand: 3, point: 3, button: 4, key: 3 });
  }

  /** Reads a number: looks for it, and takes it in. */
  async read(name: string): Promise<string | number | boolean> {
    this.#did(`read ${name}`, { thought: 1 });
    return this.open.value(name);
  }

  /** Pages of the print, on Letter. */
  async print(): Promise<number> {
    const pages = await pagesOf(this.open.page, "Letter");
    this.#did("print", { thought: 1, hand: 1, key: 2, point: 1, button: 2 });
    return pages;
  }
}
