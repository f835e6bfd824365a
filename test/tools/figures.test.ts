import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import { XMLParser } from "fast-xml-parser";

import { bead, table } from "../bead";

const FOLDER = "docs/help/figures";
const FILES = readdirSync(FOLDER).sort();

type Node = Record<string, unknown>;

/** Every element in the order of the file: its name, its attributes, the text straight inside it. */
function elements(svg: string): { name: string; attributes: Record<string, string>; text: string }[] {
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: "",
    trimValues: true,
    parseTagValue: false,
    parseAttributeValue: false,
  });
  const found: ReturnType<typeof elements> = [];
  const walk = (nodes: Node[]): void => {
    for (const node of nodes) {
      const name = Object.keys(node).find((key) => key !== ":@" && key !== "#text");
      if (name === undefined) continue;
      const inside = node[name] as Node[];
      const text = inside.map((child) => (typeof child["#text"] === "string" ? child["#text"] : "")).join("");
      found.push({ name, attributes: (node[":@"] ?? {}) as Record<string, string>, text });
      walk(inside);
    }
  };
  // The second argument has the parser refuse what is not well-formed.
  // eslint-disable-next-line @typescript-eslint/no-deprecated -- what replaces it is one more package
  walk(parser.parse(svg, true) as Node[]);
  return found;
}

/** Shapes, text and paint: nothing that runs, fetches, or holds a picture made of dots. */
const DRAWN = ["svg", "title", "desc", "style", "defs", "pattern", "path", "rect", "circle", "text", "tspan"];

/** What keeps a drawing from being a figure of the help pages. */
function faults(svg: string): string[] {
  let all: ReturnType<typeof elements>;
  try {
    all = elements(svg);
  } catch (error) {
    return [`not well-formed: ${String(error)}`];
  }
  const wrong: string[] = [];
  const root = all[0];
  if (root?.name !== "svg") return ["no svg"];
  if (!/^0 0 \d+ \d+$/.test(root.attributes.viewBox ?? "")) wrong.push("viewBox");
  if (root.attributes.role !== "img") wrong.push("role");
  for (const name of ["title", "desc", "style"]) {
    const its = all.filter((element) => element.name === name);
    if (its.length !== 1 || its[0]?.text === "") wrong.push(name);
  }
  const ids = all.flatMap(({ attributes }) => attributes.id ?? []);
  if (new Set(ids).size !== ids.length) wrong.push("an id twice");
  const style = all.find(({ name }) => name === "style")?.text ?? "";
  const [light = "", dark = ""] = style.split("@media (prefers-color-scheme: dark)");
  if (dark === "") wrong.push("no dark variant");
  if (/@import|url\(/.test(style)) wrong.push("style that fetches");
  for (const [, size = ""] of light.matchAll(/(\d+(?:\.\d+)?)px/g)) {
    if (Number(size) < 13) wrong.push(`text of ${size} px`);
  }
  const rules = (part: string): Set<string> => new Set(part.match(/(?<=^|[\s,])\.[a-z]+/g));
  for (const { name, attributes } of all) {
    if (!DRAWN.includes(name)) wrong.push(`<${name}>`);
    for (const [key, value] of Object.entries(attributes)) {
      if (/^on/i.test(key)) wrong.push(key);
      if (/href$|^src$/i.test(key)) wrong.push(key);
      if (key !== "xmlns" && /\w+:|\/\//.test(value)) wrong.push(`${key} that fetches`);
      const target = /url\((.*)\)/.exec(value)?.[1];
      if (target !== undefined && !ids.includes(target.replace(/^#/, ""))) wrong.push(`${key} to nowhere`);
      if (["aria-labelledby", "aria-describedby"].includes(key) && !ids.includes(value)) wrong.push(key);
      if (key === "class") {
        for (const one of value.split(" ")) if (!rules(light).has(`.${one}`)) wrong.push(`no rule .${one}`);
      }
      if (/^(fill|stroke|style|color)$/.test(key) && !value.startsWith("url(#"))
        wrong.push(`${key} of its own`);
    }
  }
  // A class that sets a colour for white paper needs one for dark paper.
  for (const [, rule = "", body = ""] of light.matchAll(/(\.[a-z]+) \{([^}]*)\}/g)) {
    if (body.includes("#") && !rules(dark).has(rule)) wrong.push(`${rule} has no dark ink`);
  }
  return wrong;
}

function inches(width: unknown): string {
  return `${Number(width).toFixed(3)} in`;
}

/** What of some words the description of a drawing does not tell. */
function untoldIn(drawing: ReturnType<typeof elements>, words: readonly string[]): string[] {
  const told = drawing.find(({ name }) => name === "desc")?.text.replace(/\s+/g, " ") ?? "";
  return words.filter((word) => !told.includes(word));
}

function pairsIn(way: string): [x: number, y: number][] {
  return [...way.matchAll(/(-?[\d.]+) (-?[\d.]+)(?=[LAZ]|$)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

/** Corners of the path of a class. */
function pointsOf(drawing: ReturnType<typeof elements>, look: string): [x: number, y: number][] {
  return pairsIn(drawing.find(({ attributes }) => attributes.class === look)?.attributes.d ?? "");
}

/** Width between the corners at the topmost and at the lowest line of a path. */
function spans(points: readonly [x: number, y: number][]): [y: number, width: number][] {
  const lines = points.map(([, y]) => y);
  return [Math.min(...lines), Math.max(...lines)].map((line) => {
    const across = points.filter(([, y]) => y === line).map(([x]) => x);
    return [line, Math.max(...across) - Math.min(...across)];
  });
}

/** Between two corners that are each drawn to a tenth of a pixel: within a tenth, 10^−0.69/2. */
function nearPixels(length: number): number {
  return expect.closeTo(length, 0.69) as number;
}

/** "1, 2 and 3 in" */
function listed(numbers: readonly string[], unit: string): string {
  return `${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1) ?? ""} ${unit}`;
}

describe("the figures of the help pages", () => {
  test("are drawings and nothing else", () => {
    expect(FILES.length).toBeGreaterThan(0);
    for (const file of FILES) expect(file).toMatch(/^[a-z]+(-[a-z]+)*\.svg$/);
  });

  test.each(FILES)("%s stands alone, tells what it shows, and reads on white and on dark paper", (file) => {
    expect(faults(readFileSync(path.join(FOLDER, file), "utf8"))).toEqual([]);
  });

  test("are told apart by their titles", () => {
    const titles = FILES.map(
      (file) =>
        elements(readFileSync(path.join(FOLDER, file), "utf8")).find(({ name }) => name === "title")?.text,
    );
    expect(new Set(titles).size).toBe(FILES.length);
  });

  test("show the current of each sector as the formula has it, in figures and in thickness of line", () => {
    const svg = readFileSync(path.join(FOLDER, "sectors.svg"), "utf8");
    const amps = table("AMPS_SECTORS", 1, 0.065, 5, 4, 20).map((row) => Number(row[2]));
    const shown = elements(svg).flatMap(({ name, text }) =>
      name === "text" ? (/([\d.]+) A$/.exec(text)?.[1] ?? []) : [],
    );
    expect(shown).toEqual(amps.map((each) => each.toFixed(1)));
    const widths = elements(svg)
      .filter(({ attributes }) => attributes.class === "way")
      .map(({ attributes }) => Number(attributes["stroke-width"]));
    expect(widths).toHaveLength(amps.length);
    amps.forEach((each, index) => {
      expect(widths[index]).toBeCloseTo(each / 5, 1);
    });
    for (const each of amps) expect(svg).toMatch(new RegExp(`<desc[^]*${each.toFixed(1)}[^]*</desc>`));
  });

  test("show face, root and minimum current of the section as the formulas have them, told and drawn", () => {
    const drawing = elements(readFileSync(path.join(FOLDER, "bead-section.svg"), "utf8"));
    const [[face, root] = []] = table("MELT_SECTION", 0.065, 50, 5);
    const through = Number(bead("AMPS_THROUGH", 0.065, 5));
    const [[leastFace] = []] = table("MELT_SECTION", 0.065, through, 5);
    const told = drawing.filter(({ name }) => name === "text").map(({ text }) => text);
    expect(told).toContain(`face ${inches(face)}`);
    expect(told).toContain(`root ${inches(root)}`);
    expect(told).toContain(`shaded: 50 A; dashed: ${through.toFixed(1)} A, the minimum through`);
    expect(
      untoldIn(drawing, [inches(face), inches(root), inches(leastFace), `${through.toFixed(1)} A`]),
    ).toEqual([]);
    const scale = 1600;
    const melt = pointsOf(drawing, "melt");
    expect(spans(melt)).toEqual([
      [110, nearPixels(Number(face) * scale)],
      [214, nearPixels(Number(root) * scale)],
    ]);
    expect(0.065 * scale).toBe(214 - 110);
    expect(spans(pointsOf(drawing, "hidden"))[0]).toEqual([110, nearPixels(Number(leastFace) * scale)]);
  });

  test("show the bead and the warmth around the ring as the formula has them, told and drawn", () => {
    const drawing = elements(readFileSync(path.join(FOLDER, "ring.svg"), "utf8"));
    const quarters = table("RING_BEAD", 1, 0.065, 5, [[50, 50, 50, 50]]).map((row) => row.map(Number));
    const faces = quarters.map(([, , , face = NaN]) => face.toFixed(3));
    const warmths = quarters.map(([, , , , , warmth = NaN]) => warmth.toFixed(0));
    const told = drawing.filter(({ name }) => name === "text").map(({ text }) => text);
    expect(told.filter((text) => text.endsWith(" in"))).toEqual(faces.map((face) => `${face} in`));
    expect(told.filter((text) => text.endsWith(" °F"))).toEqual(warmths.map((warmth) => `${warmth} °F`));
    expect(untoldIn(drawing, [`is ${listed(faces, "in")} wide`, listed(warmths, "°F")])).toEqual([]);
    const twelfths = table("RING_BEAD", 1, 0.065, 5, [Array.from({ length: 12 }, () => 50)]).map((row) =>
      row.map(Number),
    );
    const [widths, scale, left, base] = [pointsOf(drawing, "melt"), 300, 44, 300];
    const curve = drawing.find(
      ({ attributes: { class: look, d = "" } }) => look === "bold" && d.split("L").length > 9,
    );
    const warmth = pairsIn(curve?.attributes.d ?? "");
    expect(warmth).toHaveLength(twelfths.length);
    twelfths.forEach(([, to = NaN, , face = NaN, , rise = NaN], i) => {
      const across = widths.filter(([x]) => x === left + to).map(([, y]) => y);
      expect(Math.max(...across) - Math.min(...across)).toEqual(nearPixels(face * scale));
      expect(warmth[i]).toEqual([left + to, nearPixels(base - rise / 4)]);
    });
  });
});

describe("the check of a figure", () => {
  const good = readFileSync(path.join(FOLDER, "pulse.svg"), "utf8");

  test.each([
    ["a tag left open", (svg: string) => svg.replace("</svg>", "<g></svg>")],
    ["no title", (svg: string) => svg.replace(/<title[^]*<\/title>/, "")],
    ["an empty desc", (svg: string) => svg.replace(/(<desc[^>]*>)[^]*(<\/desc>)/, "$1$2")],
    ["no viewBox", (svg: string) => svg.replace(/ viewBox="[^"]*"/, "")],
    ["a script", (svg: string) => svg.replace("</svg>", "<script>0</script></svg>")],
    ["an event", (svg: string) => svg.replace("<path ", '<path onclick="0" ')],
    ["a reference", (svg: string) => svg.replace("<path ", '<path href="other.svg" ')],
    [
      "a raster picture",
      (svg: string) => svg.replace("</svg>", '<image href="data:image/png;base64,"/></svg>'),
    ],
    ["a font from outside", (svg: string) => svg.replace("<style>", "<style>@import 'other.css';")],
    ["paint from outside", (svg: string) => svg.replace("<path ", '<path fill="url(other.svg#a)" ')],
    ["no dark variant", (svg: string) => svg.replace("prefers-color-scheme: dark", "print")],
    ["a colour for white paper only", (svg: string) => svg.replace(/\.mean \{ stroke: [^}]*\}/, "")],
    ["small print", (svg: string) => svg.replace("15px", "12px")],
  ])("refuses %s", (_what, spoil) => {
    expect(spoil(good)).not.toBe(good);
    expect(faults(spoil(good))).not.toEqual([]);
  });
});
