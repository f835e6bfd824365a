/** Asks the process that runs the tests, and starts another when it does not answer or ends. */

import { fork } from "node:child_process";
import path from "node:path";

import { root } from "../../build/project";
import type { Answer, Question } from "../mutant-tester";

/** The process does not answer at all after this long and a hundred times what its tests take, ms. */
const PATIENCE = 60_000;

interface Outcome {
  readonly status: string;
  readonly test?: string;
}

export class Tester {
  #child: ReturnType<typeof fork> | undefined;

  ask(question: Question): Promise<Outcome> {
    if (question.runs.length === 0) return Promise.resolve({ status: "Survived" });
    const child = (this.#child ??= fork(path.join(root, "tools", "run.mjs"), ["mutant-tester"]));
    const takes = question.runs.reduce((sum, run) => sum + run.takes, 0);
    return new Promise((resolve) => {
      const done = (answer: Outcome): void => {
        clearTimeout(timer);
        child.removeAllListeners();
        resolve(answer);
      };
      const given = (): void => {
        this.#child = undefined;
        child.kill("SIGKILL");
        done({ status: "Timeout" });
      };
      const timer = setTimeout(given, PATIENCE + 100 * takes);
      child.once("message", (answer: Answer) => {
        done(answer);
      });
      child.once("exit", given);
      child.send(question);
    });
  }

  end(): void {
    this.#child?.kill();
  }
}
