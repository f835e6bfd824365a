import { HELP } from "../../functions/catalogue";
import { disagreement, parseCall } from "../../tools/example.mjs";
import { bead } from "../bead";

describe("every worked example of the help gives what it says", () => {
  test.each(HELP.map(({ id, example, result }) => [id, example, result]))("%s", (id, example, result) => {
    const call = parseCall(example);
    expect(call.id).toBe(id);
    const about = HELP.find((formula) => formula.id === id);
    const repeats = about?.parameters.findIndex(({ repeating }) => repeating) ?? -1;
    const args = repeats < 0 ? call.args : [...call.args.slice(0, repeats), call.args.slice(repeats)];
    expect(disagreement(bead(id, ...args), result)).toBeUndefined();
  });
});
