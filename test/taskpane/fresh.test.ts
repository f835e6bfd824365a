import { withoutChance } from "../../tools/build/fresh-loader";

test("the first workbook is the same in every build: ids made up by the engine are counted", () => {
  const [chart, rule] = ["3a9aa67e-edb4-43bb-a23d-01658b6f1ac7", "00000000-0000-4000-8000-000000000000"];
  const data = `{"id":"ringbead-1-1795732731190","rules":["${rule}","${chart}"],"of":"ringbead-1-1795732731190"}`;
  expect(withoutChance(data)).toBe('{"id":"fresh-1","rules":["fresh-2","fresh-3"],"of":"fresh-1"}');
  const words = '"Ringbead, ringbead-1 and 3a9aa67e"';
  expect(withoutChance(words)).toBe(words);
});
