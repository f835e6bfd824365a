import { HELP } from "../../functions/help";
import { disagreement } from "../../tools/docs/stated-result";
import { typedCall } from "../../tools/docs/typed-call";
import { bead, exampleCells } from "../bead";

describe("every worked example of the help gives what it says", () => {
  test.each(HELP.map((about) => [about.id, about] as const))("%s", (id, about) => {
    expect(typedCall(about.example).id).toBe(id);
    expect(disagreement(bead(id, ...exampleCells(about)), about.result)).toBeUndefined();
  });
});
