import { functionsHeard, listenIn } from "../../taskpane/hosts/excel/associated";

test("the pane hears every function that reports in, and the host hears it unchanged", () => {
  const heardByHost: unknown[][] = [];
  Object.assign(CustomFunctions, {
    associate: function (this: unknown, ...reported: unknown[]) {
      heardByHost.push([this === CustomFunctions, ...reported]);
    },
  });
  listenIn();
  const twice = (x: unknown): number => 2 * Number(x);
  CustomFunctions.associate("TWICE", twice);
  const several = { THRICE: twice };
  CustomFunctions.associate(several);
  // As any script of the page may call it.
  const report = CustomFunctions.associate as unknown as (...reported: unknown[]) => void;
  report("NO_FUNCTION", 2);
  report(2, twice);
  expect(heardByHost).toEqual([
    [true, "TWICE", twice],
    [true, several],
    [true, "NO_FUNCTION", 2],
    [true, 2, twice],
  ]);
  expect(functionsHeard().get("TWICE")?.(4)).toBe(8);
  expect(functionsHeard().size).toBe(1);
});

test("a page without the host's global is left alone", () => {
  const there = CustomFunctions;
  Object.assign(globalThis, { CustomFunctions: undefined });
  expect(listenIn).not.toThrow();
  Object.assign(globalThis, { CustomFunctions: there });
});
