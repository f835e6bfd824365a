import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";

import { contentName, nameByContent } from "../../tools/build/content-names";

test("a page loads files named by their content, and the fixed names stay", () => {
  const dist = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
  mkdirSync(path.join(dist, "sheet"));
  const write = (file: string, text: string): void => {
    writeFileSync(path.join(dist, file), text);
  };
  write(
    "taskpane.html",
    '<script src="functions.js"></script><script src="listen.js"></script><link href="pane.css"><script src="taskpane.js">',
  );
  write("help.html", '<link href="help.css"><script src="help-search.js"></script>');
  write("sheet/index.html", '<link href="sheet.css"><script src="sheet.js">');
  const files = [
    "functions.js",
    "listen.js",
    "pane.css",
    "taskpane.js",
    "help.css",
    "help-search.js",
    "sheet/sheet.css",
    "sheet/sheet.js",
  ];
  for (const file of files) write(file, `content of ${file}`);
  nameByContent(dist);

  const page = readFileSync(path.join(dist, "taskpane.html"), "utf8");
  const name = contentName("taskpane.js", Buffer.from("content of taskpane.js"));
  expect(name).toMatch(/^taskpane\.[0-9a-f]{10}\.js$/);
  expect(page).toContain(`"${name}"`);
  expect(page).toContain('"functions.js"');
  expect(page).not.toMatch(/"(listen|taskpane)\.js"|"pane\.css"/);
  const there = readdirSync(dist);
  expect(there).toEqual(expect.arrayContaining([name, "functions.js", "pane.css"]));
  expect(there).not.toContain("taskpane.js");
  rmSync(dist, { recursive: true });
});

test("other content, another name", () => {
  expect(contentName("a.js", Buffer.from("1"))).not.toBe(contentName("a.js", Buffer.from("2")));
});
