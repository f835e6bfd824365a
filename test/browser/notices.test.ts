/** Whoever uses the browser sheet finds what it is made of, under which licenses, and where the sources are. */

import { installed, SHIPPED } from "../../tools/build/shipped";
import { openPage } from "./open-page";

test("from the pane and from the page to the notices, and on to each license", async () => {
  const open = await openPage();
  const { page, errors, foreign } = open;
  for (const link of [
    page.locator("#pane").getByRole("link", { name: "Licenses and notices" }),
    page.locator("#bar").getByRole("link", { name: "Licenses" }),
  ]) {
    const opening = page.waitForEvent("popup");
    await link.click();
    const notices = await opening;
    await notices.getByRole("heading", { name: "Licenses and notices" }).waitFor();
    for (const { name } of SHIPPED) {
      const row = notices.getByRole("row").filter({ hasText: name }).first();
      expect(await row.textContent()).toContain(installed(name).version);
      const address = await row.getByRole("link").first().getAttribute("href");
      const text = await notices.request.get(new URL(address ?? "", notices.url()).href);
      expect([name, text.status()]).toEqual([name, 200]);
      expect(await text.text()).toMatch(/permi(t|ssion)/i);
    }
    await notices.getByRole("heading", { name: "Another version of the engine" }).waitFor();
    await notices.close();
  }
  const script = await page.locator("script[src]").first().getAttribute("src");
  expect(script).toMatch(/^sheet\./);
  const beside = await page.request.get(new URL("sheet.js.LICENSE.txt", page.url()).href);
  expect(await beside.text()).toContain(`@odoo/o-spreadsheet ${installed("@odoo/o-spreadsheet").version}`);
  expect([errors, foreign]).toEqual([[], []]);
  await open.close();
});
