import { filledIn, writeManifest } from "../../tools/build/manifest";
import { manifestErrors } from "../../tools/build/manifest-errors";
import { DEVELOPMENT_URL, identityAt } from "../../tools/build/project";

const FILE = "taskpane/hosts/excel/taskpane.html";
const RELEASE = "https://addins.example/ringbead";
const OFFICE = "https://appsforoffice.microsoft.com";

function policy(page: string): Map<string, string[]> {
  const content = /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(page)?.[1] ?? "";
  return new Map(
    content.split(";").map((part) => {
      const [directive = "", ...sources] = part.trim().split(/\s+/);
      return [directive, sources];
    }),
  );
}

describe("the pane's page", () => {
  const page = filledIn(FILE, RELEASE);

  test("takes scripts from itself and the Office network only, and runs none written into a page", () => {
    const rules = policy(page);
    expect(rules.get("default-src")).toEqual(["'none'"]);
    expect(rules.get("script-src")).toEqual(["'self'", OFFICE]);
    expect(rules.get("connect-src")).toEqual(["'self'", OFFICE]);
    // Its question about a server that Office does not know comes in a frame.
    expect(rules.get("frame-src")).toEqual([OFFICE]);
    // Office's script writes styles of its own into the page.
    expect(rules.get("style-src")).toEqual(["'self'", "'unsafe-inline'"]);
    expect([...rules.values()].flat().filter((source) => /unsafe-eval|\*|http:/.test(source))).toEqual([]);
    expect(page).not.toMatch(/<script(?![^>]*\ssrc=)|\son\w+=|javascript:/i);
    for (const [, source = ""] of page.matchAll(/(?:src|href)="([^"]+)"/g)) {
      expect([source, source.startsWith(`${OFFICE}/`) || !source.includes(":")]).toEqual([source, true]);
    }
  });

  test("loads Office first, then the listener, then the functions, then the pane", () => {
    const scripts = [...page.matchAll(/<script[^>]* src="([^"]+)"/g)].map(([, source = ""]) => source);
    expect(scripts.map((source) => source.replace(/^.*\//, ""))).toEqual([
      "office.js",
      "listen.js",
      "functions.js",
      "taskpane.js",
    ]);
  });

  test("has words on it before any script is asked for, and loads none above them", () => {
    const [above = "", below = ""] = page.split("</main>");
    expect(above).toMatch(
      /<main class="pane" id="starting">\s*<h1>Ringbead<\/h1>\s*<p role="status">\s*Waiting for Excel\./,
    );
    expect(above).not.toContain("<script");
    expect(below.match(/<script /g)?.length).toBe(4);
  });

  test("is told its namespace and title by the build", () => {
    expect(page).not.toContain("{{");
    expect(page).toContain('name="ringbead-namespace" content="BEAD"');
    expect(page).toContain("<title>Ringbead</title>");
  });
});

describe("a build for development", () => {
  test("differs from a released one in id, title and namespace", () => {
    const [release, development] = [identityAt(RELEASE), identityAt(DEVELOPMENT_URL)];
    expect(release.id).not.toBe(development.id);
    expect(release.title).not.toBe(development.title);
    expect(development.namespace).toMatch(/^[A-Z]{3,32}$/);
    expect(release.namespace).toBe("BEAD");
    expect(development.namespace).not.toBe("BEAD");
    expect(filledIn(FILE, DEVELOPMENT_URL)).toContain(`content="${development.namespace}"`);
  });

  test("has a manifest that is right, under its own names", () => {
    const manifest = writeManifest(DEVELOPMENT_URL);
    expect(manifestErrors(manifest, DEVELOPMENT_URL, () => true)).toEqual([]);
    expect(manifest).toContain(identityAt(DEVELOPMENT_URL).id);
    expect(manifest).not.toContain(identityAt(RELEASE).id);
    expect(manifestErrors(writeManifest(RELEASE), RELEASE, () => true)).toEqual([]);
  });
});
