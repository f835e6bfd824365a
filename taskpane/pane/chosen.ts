/** The system of units that is chosen in the pane, for those who tell it and those who follow it. */

import type { Units } from "../../src/quantity";

export class Chosen {
  #units: Units = "US";
  readonly #followers: (() => void)[] = [];

  now(): Units {
    return this.#units;
  }

  choose(units: Units): void {
    this.#units = units;
    for (const follow of this.#followers) follow();
  }

  onChange(follow: () => void): void {
    this.#followers.push(follow);
  }
}
