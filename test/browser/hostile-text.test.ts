/** Text from a cell is never read as a page: typed or pasted, in every sheet, as a name, a material or an argument. */

import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { insert } from "./working";

const HOSTILE = [
  '<img src=x onerror="window.escaped=1">',
  '"><script>window.escaped=1</script>',
  "<svg onload=window.escaped=1>",
  "</textarea><iframe srcdoc='<script>top.escaped=1</script>'>",
  "javascript:window.escaped=1",
] as const;

let open: OpenPage;
let dialogs: string[];
beforeAll(async () => {
  open = await openPage();
  dialogs = [];
  open.page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  await open.page.evaluate(watchElements);
});
beforeEach(async () => {
  await open.newWorkbook();
});
afterAll(async () => {
  await open.close();
});

/** As arguments of a call: without quotes, which the engine escapes in a way of its own. */
const QUOTABLE = [
  "<img src=x onerror=window.escaped=1>",
  "<svg onload=window.escaped=1>",
  "<script>a()</script>",
];

/** Notes every element of the payloads' kinds that appears anywhere in the page. Runs in the page. */
function watchElements(): void {
  const seen: string[] = [];
  Object.assign(globalThis, { seen });
  const hostile = (node: Node): boolean =>
    node instanceof Element &&
    (node.matches("script, iframe, img[src='x'], svg[onload]") ||
      node.querySelector("script, iframe, img[src='x'], svg[onload]") !== null);
  const note = (records: MutationRecord[]): void => {
    for (const { addedNodes } of records)
      for (const node of addedNodes) if (hostile(node)) seen.push((node as Element).outerHTML.slice(0, 200));
  };
  const roots = [document, document.querySelector("#pane")?.shadowRoot];
  for (const root of roots)
    if (root) new MutationObserver(note).observe(root, { childList: true, subtree: true });
}

async function expectHarmless(): Promise<void> {
  const found = await open.page.evaluate(() => {
    const { seen } = globalThis as unknown as { seen: string[] };
    return { seen, escaped: "escaped" in globalThis };
  });
  expect(found).toEqual({ seen: [], escaped: false });
  // The sheet itself says what a cell with a list does not take, in a dialog of the browser.
  expect(dialogs.filter((message) => !message.startsWith("The data you entered in"))).toEqual([]);
  expect(open.foreign).toEqual([]);
  // The engine reads what is pasted in a document where nothing runs; the policy reports the handlers it sees there.
  expect(open.errors.filter((error) => !error.startsWith("Executing inline event handler violates"))).toEqual(
    [],
  );
}

/** Key by key, or all of it in one event as from a method of input: a key costs the page more than an edit does. */
type Way = "type" | "insertText";

/** In place of what is in the cell. */
async function write(name: string, text: string, way: Way = "type"): Promise<void> {
  await open.startEditing(name);
  await open.page.keyboard[way](text);
  await open.page.keyboard.press("Enter");
}

function paneText(): Promise<string> {
  return open.page.evaluate(() => document.querySelector("#pane")?.shadowRoot?.textContent ?? "");
}

/** Pastes as a browser hands over what was copied elsewhere: as plain text and as a page. */
async function paste(text: string): Promise<void> {
  await open.page.evaluate((copied) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", copied);
    clipboardData.setData("text/html", copied);
    const target = document.activeElement ?? document.body;
    target.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, text);
}

const PLACES = [
  ["Procedure sheet", "job", "wall", "standoff", "type"],
  ["Gas estimate", "bid", "torch_flow", "gas_used", "insertText"],
  ["Cycle plan", "job", "shop_heads", "shift_steady", "insertText"],
] as const;

test.each(PLACES)("%s: typed as a name and as an argument", async (template, name, argument, result, way) => {
  if (template !== "Procedure sheet") await insert(open, template);
  for (const text of HOSTILE) {
    await write(name, text, way);
    expect(await open.value(name)).toBe(text);
    await open.select(name);
    await write(argument, text, way);
    expect(await open.value(argument)).toBe(text);
    await open.select(result);
  }
  await expectHarmless();
});

test("a refusal that quotes it shows it as text, in the pane and over the cell", async () => {
  for (const text of QUOTABLE) {
    await write("job", `=BEAD.AMPS_WALL(0.065, "${text}")`);
    await open.select("job");
    await open.page
      .locator("#pane")
      .getByText(/refuses\. material = /)
      .filter({ hasText: `material = "${text.slice(0, 40)}` })
      .waitFor();
    expect(await paneText()).toContain(`material = "${text.slice(0, 40)}`);
    const { x, y } = await open.pointOf("job");
    await open.page.mouse.move(x + 5, y + 2);
    const over = open.page
      .locator(".o-error-tooltip")
      .filter({ hasText: `material = "${text.slice(0, 40)}` });
    await over.waitFor();
  }
  await expectHarmless();
});

test("the material of the procedure sheet", async () => {
  for (const text of HOSTILE) {
    await write("material", text, "insertText");
    await open.select("speed");
  }
  await expectHarmless();
});

test("pasted, as text and as a page", async () => {
  for (const text of HOSTILE) {
    await open.select("job");
    await paste(text);
    await open.select("wall");
  }
  expect(String(await open.value("job"))).toContain(HOSTILE[4]);
  await expectHarmless();
});
