import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import { noticesPage, noticesText } from "../../tools/build/notices";
import { installed, LICENCE_COPIES, licenceErrors, SHIPPED, sourceOf } from "../../tools/build/shipped";
import { developedWith, locked, noticePage } from "../../tools/docs/notice";

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
/** Of what only tests use and nothing passes on: what such a package is part of would have to be under its licence. */
const TESTED_WITH: Readonly<Record<string, string>> = { hyperformula: "GPL-3.0-only" };

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
])("%s is under an open licence", (name, license) => {
  expect([...OPEN, ...(TESTED_WITH[name] === license ? [license] : [])]).toContain(license);
});

test("what is only tested with is named by no source that is shipped", () => {
  for (const name of Object.keys(TESTED_WITH)) {
    expect(SHIPPED.map((one) => one.name)).not.toContain(name);
    for (const room of ["src", "functions", "taskpane", "tools", "manifest"]) {
      const naming = readdirSync(room, { recursive: true, encoding: "utf8" })
        .filter((file) => file.endsWith(".ts"))
        .filter((file) => readFileSync(path.join(room, file), "utf8").includes(`"${name}`));
      expect([room, naming]).toEqual([room, []]);
    }
  }
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

describe("the notices of a build", () => {
  /** Every file that webpack puts into each bundle, told by a run of its own. */
  let files: Readonly<Record<string, readonly string[]>>;
  beforeAll(() => {
    const { stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", "test/tools/bundled.ts"], {
      encoding: "utf8",
      maxBuffer: 1e8,
    });
    expect(stderr).toBe("");
    files = JSON.parse(stdout) as typeof files;
  });
  /** The package whose file it is; webpack's own lines have no file. */
  const packageOf = (file: string): string | undefined =>
    /.*[\\/]node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)/.exec(file)?.[1]?.replace("\\", "/") ??
    /^webpack(?=\/runtime\/)/.exec(file)?.[0];
  const packagesOf = (bundle: string): string[] => [
    ...new Set((files[bundle] ?? []).flatMap((file) => packageOf(file) ?? [])),
  ];

  test("name every package of the browser sheet, and there is none in the functions and the pane", () => {
    expect(Object.keys(files)).toEqual(["functions", "pane", "sheet"]);
    for (const bundle of Object.values(files)) expect(bundle.length).toBeGreaterThan(0);
    expect([packagesOf("functions"), packagesOf("pane")]).toEqual([[], []]);
    const own = SHIPPED.filter(({ inside }) => inside === undefined).map(({ name }) => name);
    expect(packagesOf("sheet").sort()).toEqual([...own].sort());
    expect(packagesOf("sheet")).toEqual(expect.arrayContaining(["@odoo/o-spreadsheet", "@odoo/owl"]));
  });

  test("name what the engine brings in its own file", () => {
    const engine = readFileSync("node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js", "utf8");
    const regions = [...engine.matchAll(/^\/\/#region .*node_modules\/((?:@[^/]+\/)?[^/]+)\//gm)];
    const brought = regions.map(([, name]) => name);
    const inside = SHIPPED.filter((one) => one.inside === "@odoo/o-spreadsheet").map(({ name }) => name);
    expect(brought).toContain("rbush");
    // quickselect is in the one file of rbush.
    expect(inside).toEqual([...new Set([...brought, "quickselect"])]);
  });

  test("tell each package with its version, its license and where its source is, as a page and beside the script", () => {
    const bundled = { title: "In the browser sheet", packages: packagesOf("sheet") };
    const [page, text] = [noticesPage([bundled]), noticesText(bundled, "/*! kept */")];
    const rows = page.split("<tr>").slice(2);
    expect(rows).toHaveLength(SHIPPED.length);
    for (const { name, copy } of SHIPPED) {
      const { version, license } = installed(name);
      const row = rows.find((one) => one.startsWith(`<td>${name}`));
      expect(row).toContain(
        `<td>${version}</td><td><a href="${copy}">${license}</a></td><td><a href="https://`,
      );
      expect(text).toMatch(new RegExp(`^${name}(, .*)? ${version.replaceAll(".", "\\.")}\n  License: `, "m"));
    }
    for (const shown of [page, text]) {
      expect(shown).toMatch(
        /@odoo\/o-spreadsheet [\d.]+ .*@odoo\/owl [\d.]+ .*Lesser General Public License/,
      );
      expect(shown).toContain("https://github.com/odoo/o-spreadsheet");
      expect(shown).toContain("https://github.com/odoo/owl");
    }
    expect(page).toContain('<section id="rebuild">');
    expect(text).toContain("notices.html#rebuild");
    expect(text).toContain("/*! kept */");
  });

  test("of a bundle without packages say so", () => {
    expect(noticesPage([{ title: "In the pane", packages: [] }])).toContain("No package is in it");
  });

  const one = [{ name: "@a/b", text: "node_modules/@a/b/LICENSE", copy: "sheet/b-licence.txt" }];
  test("are right where each bundled package has its text", () => {
    expect(licenceErrors(["@a/b"], () => true, one)).toEqual([]);
  });

  test("are wrong where a text is missing, a package is not named, or a named one is not there", () => {
    expect(licenceErrors(["@a/b", "c"], () => false, one)).toEqual([
      "c is bundled, and no license text is named for it",
      "sheet/b-licence.txt, the license of @a/b, is missing",
    ]);
    expect(licenceErrors([], () => true, one)).toEqual(["@a/b is said to be bundled and is not"]);
  });
});

test.each(SHIPPED.map((one) => [one.name, one] as const))("%s says where its source is", (name, one) => {
  expect(sourceOf(one)).toMatch(/^https:\/\/github\.com\/[\w-]+\/[\w.-]+$/);
  // What this project adds is only for a package that says nothing itself.
  expect([name, one.source === undefined]).toEqual([name, installed(name).repository !== undefined]);
});

test("the LGPL's text comes with the GPL's, which it adds to", () => {
  for (const name of ["@odoo/o-spreadsheet", "@odoo/owl"]) {
    const text = readFileSync(SHIPPED.find((one) => one.name === name)?.text ?? "", "utf8");
    expect(text).toMatch(/^\s*GNU LESSER GENERAL PUBLIC LICENSE$/m);
    expect(text).toMatch(/^\s*GNU GENERAL PUBLIC LICENSE$/m);
  }
});
