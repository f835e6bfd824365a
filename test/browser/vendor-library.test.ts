/**
 * The built functions.js under the platform's own scripts, in Chromium: they keep what is associated, call it as Excel's
 * messages ask, and send back what came of it. Excel's end of the bridge is played here, so this proves the scripts and not an
 * Excel. Without their package, offline for one, the file says so in its output and checks nothing else.
 */

import type { Browser, Page } from "playwright-core";

import { FORMULAS } from "../../functions/catalogue";
import { WORDS } from "../../taskpane/hosts/excel/start";
import { serve } from "../../tools/dev/serve";
import { launch } from "./launch";
import { asRange, exampleCells } from "../../tools/docs/example-cells";
import { disagreement } from "../../tools/docs/stated-result";
import { typedCall } from "../../tools/docs/typed-call";
import { REFUSED } from "../refused";
import { vendorLibrary } from "./vendor-library";

const OFFICE = "https://appsforoffice.microsoft.com/";
const RUNTIME = "custom-functions-runtime.js";
const library = vendorLibrary([RUNTIME, "office.js", "o15apptofilemappingtable.js"]);

/** What one call sends back: whether it succeeded, the value or the sentence, and the number of the error. */
interface Sent {
  readonly succeeded: boolean;
  readonly value: unknown;
  readonly code: number | undefined;
}

/** The numbers by which the runtime tells Excel its errors. */
const CODES: Readonly<Record<number, string>> = { 1: "#N/A", 7: "#VALUE!" };

/** Excel's end of the bridge: every request is answered, and the results in it are kept. Runs in the page. */
const EXCEL = `(() => {
  window.results = {};
  const bridge = {
    sendMessageToHost: (text) => {
      const { id, message } = JSON.parse(text);
      const body = typeof message.body === "string" ? JSON.parse(message.body) : message.body;
      for (const { Name, ArgumentInfo } of body.Actions) {
        if (Name !== "SetInvocationArrayResults") continue;
        for (const [call, succeeded, value, code] of ArgumentInfo.Arguments[0])
          window.results[call] = { succeeded, value, code };
      }
      const answer = { id, type: 2, message: { statusCode: 200, headers: {}, body: JSON.stringify({ Results: [] }) } };
      setTimeout(() => bridge.onMessageFromHost(JSON.stringify(answer)));
    },
  };
  window._richApiNativeBridge = bridge;
})();`;

if ("missing" in library) {
  test(`not checked: ${library.missing}`, () => {
    console.warn(`NOT CHECKED: the functions under the platform's own scripts; ${library.missing}`);
    expect(library.missing).not.toBe("");
  });
} else {
  describe("under the platform's own scripts", () => {
    let browser: Browser;
    let page: Page;
    let address: string;
    let close: () => Promise<void>;
    const foreign: string[] = [];
    const errors: string[] = [];

    beforeAll(async () => {
      ({ address, close } = await serve(4680));
      browser = await launch();
      page = await browser.newPage();
      page.on("pageerror", ({ message }) => errors.push(message));
      const pages = `<script src="${RUNTIME}"></script><script src="functions.js"></script>`;
      await page.route("**/*", (route) => {
        const url = route.request().url();
        const file = url.split("/").at(-1) ?? "";
        const script = library.get(file);
        if (file === "functions.html") return route.fulfill({ contentType: "text/html", body: pages });
        if (script !== undefined && (url.startsWith(OFFICE) || url.startsWith(address)))
          return route.fulfill({ contentType: "text/javascript", body: script });
        if (url.startsWith(address)) return route.continue();
        foreign.push(url);
        return route.abort();
      });
      await page.addInitScript(EXCEL);
      await page.goto(`${address}/functions.html`);
    });
    afterAll(async () => {
      await browser.close();
      await close();
    });

    /** Calls as one message of Excel's, and what each sends back. */
    async function called(
      calls: readonly (readonly [id: string, cells: readonly unknown[]])[],
    ): Promise<Sent[]> {
      // A message of the kind "call a function", whose parts are its number, the function, the cells, where it stands, and flags.
      const entries = calls.map(([id, cells], i) => [1, 1000, "", [i + 1, id, cells, "Sheet1!A1", 0], i]);
      await page.evaluate(
        `window.results = {}; window._richApiNativeBridge.onMessageFromHost(${JSON.stringify(
          JSON.stringify({ type: 3, message: { entries } }),
        )})`,
      );
      await page.waitForFunction(`Object.keys(window.results).length === ${String(calls.length)}`);
      return page.evaluate("Object.values(window.results)");
    }

    /** A typed call as Excel hands it over: every declared argument, null for what is omitted. */
    function cellsOf(typed: string): [id: string, cells: readonly unknown[]] {
      const { id, args } = typedCall(typed);
      const record = FORMULAS.find((one) => one.id === id);
      const own = Object.values(record?.args ?? {}).map(({ takes }, i) =>
        takes === "rest" ? args.slice(i).map(asRange) : (args[i] ?? null),
      );
      return [id, record?.takesUnits === true ? [...own, args[own.length] ?? null] : own];
    }

    test("every formula is associated, once and by its id", async () => {
      const names: string[] = await page.evaluate("Object.keys(CustomFunctions._association.mappings)");
      expect(names).toEqual(FORMULAS.map(({ id }) => id));
      expect(errors).toEqual([]);
    });

    test("every example gives what it says, through the messages of the host", async () => {
      const sent = await called(FORMULAS.map((record) => [record.id, exampleCells(record)]));
      const wrong = FORMULAS.flatMap(({ id, example }, i) => {
        const { succeeded = false, value } = sent[i] ?? {};
        if (!succeeded) return [`${id}: refused: ${String(value)}`];
        return disagreement(value, example.gives) ?? [];
      });
      expect(wrong).toEqual([]);
    });

    test("every refusal keeps its code and its sentence on the way to Excel", async () => {
      const sent = await called(REFUSED.map(([call]) => cellsOf(call)));
      expect(REFUSED.length).toBeGreaterThan(200);
      const wrong = REFUSED.flatMap(([call, says], i) => {
        const { succeeded, value, code = -1 } = sent[i] ?? {};
        const said = `${CODES[code] ?? String(code)} ${String(value)}`;
        return succeeded === false && said === says ? [] : [`${call}: ${said}`];
      });
      expect(wrong).toEqual([]);
    });

    test("a cell with an error, handed over because a formula may take errors, is refused by its name", async () => {
      const error = { type: "CustomFunctionError", code: "#DIV/0!" };
      const entries = [[1, 1000, "", [1, "STANDOFF", [error, null, null], "Sheet1!A1", 4], 0]];
      await page.evaluate(
        `window.results = {}; window._richApiNativeBridge.onMessageFromHost(${JSON.stringify(
          JSON.stringify({ type: 3, message: { entries } }),
        )})`,
      );
      await page.waitForFunction("window.results[1] !== undefined");
      expect(await page.evaluate("window.results[1].value")).toBe(
        "wall = #DIV/0!: the referenced cell contains an error; fix it first",
      );
    });

    test("the pane's page, with the platform's office.js outside Excel, says where it works", async () => {
      await page.goto(`${address}/taskpane.html`);
      await page.getByText(WORDS.elsewhere).waitFor();
      expect(await page.evaluate("window.ringbeadFunctions.size")).toBe(FORMULAS.length);
      expect(errors).toEqual([]);
      expect(foreign).toEqual([]);
    });
  });
}
