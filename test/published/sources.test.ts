/** The bibliography, and what cites it. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { GASES } from "../../src/gas/gas";
import { MATERIALS } from "../../src/metal/material";
import type { Source } from "../../src/source";
import { ACCESS, KINDS } from "../../src/source";
import type { Sourced } from "../../src/sourced";
import { citation, keysCited, SOURCE_KEYS, SOURCES, withCitations } from "../../src/sources";
import { claims, ROOT, sourcesIn } from "../read-evidence";

const WORKS: [key: string, work: Source][] = Object.entries(SOURCES);

/** Source texts but the bibliography and the tests of citing. */
const TEXTS = ["src", "functions", "test"]
  .flatMap(sourcesIn)
  .filter((file) => !/^src[/\\]sources|(?:sources|evidence)\.test\.ts$/.test(file))
  .map((file) => [file, readFileSync(path.join(ROOT, file), "utf8")] as const);

describe("every work", () => {
  test.each(WORKS)("%s is told whole", (key, work) => {
    expect(key).toMatch(/^[a-z][a-z0-9]+(-[a-z0-9.]+)+$/);
    for (const part of [work.short, work.title, work.where, work.edition]) {
      expect(part).toBe(part.trim());
      expect(part).not.toBe("");
      expect(part).not.toContain("|");
    }
    expect(KINDS).toContain(work.standing);
    expect(ACCESS).toContain(work.access);
  });

  test("stands once: no two have one short form, nor one title and edition", () => {
    const told = WORKS.map(([, { title, edition }]) => `${title.toLowerCase()} (${edition})`);
    expect(new Set(told).size).toBe(WORKS.length);
    expect(new Set(WORKS.map(([, { short }]) => short)).size).toBe(WORKS.length);
  });

  test.each(SOURCE_KEYS)("%s is cited", (key) => {
    const cited = TEXTS.filter(([, text]) => text.includes(`[${key}]`) || text.includes(`"${key}"`));
    expect(cited).not.toEqual([]);
  });
});

describe("every key in brackets is one of the bibliography", () => {
  test.each(TEXTS.filter(([file]) => !file.startsWith("test")))("%s", (_, text) => {
    expect(() => keysCited(text)).not.toThrow();
  });
  test("and so in the titles of checks", () => {
    for (const { told, detail } of claims()) expect(() => keysCited(`${told} ${detail}`)).not.toThrow();
  });
});

describe("published", () => {
  const numbers = Object.entries({ ...MATERIALS, ...GASES }).flatMap(([of, properties]) =>
    Object.entries<Sourced>({ ...properties }).map(
      ([what, property]) => [`${of}: ${what}`, property] as const,
    ),
  );

  test.each(numbers)(
    "%s cites a work unless it is an estimate, and none that was only recalled",
    (_, number) => {
      expect(number.key === undefined).toBe(number.standing === "estimate");
      if (number.key === undefined || number.standing !== "published") return;
      const work: Source = SOURCES[number.key];
      expect(work.access).not.toBe("memory");
      expect(work.standing).not.toBe("web page");
    },
  );

  test.each(
    claims()
      .filter(({ standing }) => standing === "published")
      .map(({ formulas, told, detail }) => [formulas.join(" "), told, detail] as const),
  )("%s by %s, %s: a work whose passage was read, no page without an author", (_, key) => {
    const work = WORKS.find(([one]) => one === key)?.[1];
    expect(work?.access).toMatch(/^(?:copy|second-hand)$/);
    if (work?.standing === "web page") expect(work.author).toBeDefined();
  });
});

describe("a citation", () => {
  test("is the short form of the work", () => {
    expect(citation("rosenthal-1946")).toBe("Rosenthal 1946");
    expect(withCitations("by [rosenthal-1946] and [asme-b36.10m], [0.25 mm] apart")).toBe(
      "by Rosenthal 1946 and ASME B36.10M, [0.25 mm] apart",
    );
    expect(keysCited("[wells-1952], [wells-1952] and [nfpa-69]")).toEqual([
      "wells-1952",
      "wells-1952",
      "nfpa-69",
    ]);
  });

  test("of no work is refused", () => {
    expect(() => withCitations("by [no-such-1900]")).toThrow("no source [no-such-1900]");
    expect(() => keysCited("by [no-such-1900]")).toThrow("no source [no-such-1900]");
    // Not a key of the bibliography's own, though every object has it.
    expect(() => withCitations("by [to-string]")).toThrow("no source [to-string]");
  });
});
