import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";

import { developedWith, installed, locked, noticePage } from "../../tools/docs/notice";
import { LICENCE_COPIES, licenceErrors, SHIPPED } from "../../tools/build/shipped";

/** Licences that let anyone use, change and pass on what is under them. */
const OPEN = [
  "(OFL-1.1 AND MIT)",
  "0BSD",
  "Apache-2.0",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "ISC",
  "LGPL-3.0-only",
  "LGPL-3.0-or-later",
  "MIT",
  "MPL-2.0",
];

const json = (file: string): unknown => JSON.parse(readFileSync(file, "utf8"));
interface Lock {
  readonly packages: Readonly<
    Record<string, { readonly version?: string; readonly resolved?: string; readonly integrity?: string }>
  >;
}

test("NOTICE.md is what the installed packages make; if not, run `npm run docs`", () => {
  expect(readFileSync("NOTICE.md", "utf8")).toBe(noticePage());
});

test.each([
  ...SHIPPED.map(({ name }) => [name, installed(name).license]),
  ...developedWith().map(([name, { license }]) => [name, license]),
])("%s is under an open licence", (_, license) => {
  expect(OPEN).toContain(license);
});

test("every shipped package has a licence text of its own that goes with it", () => {
  for (const { name, text } of SHIPPED) {
    expect([name, existsSync(text)]).toEqual([name, true]);
    expect(readFileSync(text, "utf8")).toMatch(/permi(t|ssion)/i);
  }
  expect(Object.keys(LICENCE_COPIES)).toHaveLength(SHIPPED.length);
  expect(new Set(Object.values(LICENCE_COPIES)).size).toBe(SHIPPED.length);
});

test.each(["", "tools/mutation"])(
  "every version in %p is pinned and locked by its content, not by a host",
  (folder) => {
    const { devDependencies } = json(path.join(folder, "package.json")) as {
      devDependencies: Record<string, string>;
    };
    const { packages } = json(path.join(folder, "package-lock.json")) as Lock;
    expect(Object.keys(devDependencies).length).toBeGreaterThan(0);
    for (const [name, version] of Object.entries(devDependencies)) {
      expect([name, version]).toEqual([name, expect.stringMatching(/^\d+\.\d+\.\d+$/)]);
      expect([name, locked(name, folder).version]).toEqual([name, version]);
    }
    for (const [place, { resolved, integrity }] of Object.entries(packages)) {
      if (place === "") continue;
      expect([place, resolved ?? ""]).toEqual([place, expect.not.stringMatching(/:\/\//)]);
      expect([place, integrity]).toEqual([place, expect.stringMatching(/^sha512-/)]);
    }
  },
);

test("what is installed is what is locked", () => {
  const { devDependencies } = json("package.json") as { devDependencies: Record<string, string> };
  for (const [name, version] of Object.entries(devDependencies))
    expect([name, installed(name).version]).toEqual([name, version]);
});

describe("the licences of a build", () => {
  let dist: string;
  beforeEach(() => {
    dist = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
    mkdirSync(path.join(dist, "sheet"));
  });
  afterEach(() => {
    rmSync(dist, { recursive: true });
  });
  const map = (...sources: string[]): void => {
    writeFileSync(path.join(dist, "sheet", "sheet.js.map"), JSON.stringify({ sources }));
  };
  const one = [{ name: "@a/b", text: "node_modules/@a/b/LICENSE", copy: "sheet/b-licence.txt" }];

  test("are right where each package of the source maps has its text", () => {
    map("webpack://x/./node_modules/@a/b/dist/b.js", "webpack://x/./src/own.ts");
    writeFileSync(path.join(dist, "sheet", "b-licence.txt"), "as you like");
    expect(licenceErrors(dist, one)).toEqual([]);
  });

  test("are wrong where a text is missing, a package is not named, or a named one is not there", () => {
    map("webpack://x/./node_modules/@a/b/dist/b.js", "webpack://x/./node_modules/c/c.js");
    expect(licenceErrors(dist, one)).toEqual([
      "c is bundled, and no licence text is named for it",
      "sheet/b-licence.txt, the licence of @a/b, is missing",
    ]);
    map("webpack://x/./src/own.ts");
    expect(licenceErrors(dist, one)).toContain("@a/b is said to be bundled and is not");
  });
});
