/** A test environment that skips what comes after the first failure: one is enough to say that a mutant was seen. */

const { TestEnvironment } = require("jest-environment-node");

class FirstFailure extends TestEnvironment {
  #failed = false;

  /** @param {{ name: string, test: { mode?: string, errors: unknown[] } }} event */
  handleTestEvent(event) {
    if (event.name === "test_start" && this.#failed) event.test.mode = "skip";
    if (event.name === "test_done" && event.test.errors.length > 0) this.#failed = true;
  }
}

module.exports = FirstFailure;
