/** Elements of an SVG as native shapes, worked out by hand from ECMA-376, DrawingML: EMU, angles in 60,000ths of a degree. */

import { readFileSync } from "node:fs";

import { pathCommands, pointCommands } from "../../taskpane/files/drawn-path";
import { drawnShapes, PRINTED } from "../../taskpane/files/drawn-shapes";
import { ACCENT, HOT, INK, METAL, PALE, shape } from "../../taskpane/pictures/shape";
import type { Shape } from "../../taskpane/pictures/shape";

/** One pixel is a point, 12,700 EMU; the drawing's corner lies 100 and 200 EMU into its group. */
function drawn(...parts: readonly Shape[]): string {
  let id = 6;
  const svg = shape("svg", { role: "img", "aria-label": "", viewBox: "0 0 264 100" }, ...parts);
  return drawnShapes(svg, { left: 100, top: 200, emu: 12_700, letters: 2, nextId: () => (id += 1) });
}

const LINE = shape("line", { x1: 1, y1: 2, x2: 3, y2: 5, stroke: INK });

describe("places and sizes", () => {
  test("a line goes from one corner of its box to the opposite one", () => {
    const falls = drawn(LINE);
    expect(falls).toContain(
      '<a:xfrm><a:off x="12800" y="25600"/><a:ext cx="25400" cy="38100"/></a:xfrm><a:prstGeom prst="line">',
    );
    expect(falls).toContain('<xdr:cNvPr id="7" name="line"/>');
  });

  test.each([
    ["down to the left", { x1: 3, y1: 2, x2: 1, y2: 5 }],
    ["up to the right", { x1: 1, y1: 5, x2: 3, y2: 2 }],
  ])("a line that goes %s is the same box turned over", (_, ends) => {
    expect(drawn(shape("line", { ...ends, stroke: INK }))).toContain(
      '<a:xfrm flipV="1"><a:off x="12800" y="25600"/><a:ext cx="25400" cy="38100"/></a:xfrm>',
    );
  });

  test("a circle is an ellipse in its square, a rectangle is its own box", () => {
    expect(drawn(shape("circle", { cx: 10, cy: 20, r: 4, fill: INK }))).toContain(
      '<a:off x="76300" y="203400"/><a:ext cx="101600" cy="101600"/></a:xfrm><a:prstGeom prst="ellipse">',
    );
    expect(drawn(shape("rect", { x: 1, y: 2, width: 3, height: 4, fill: METAL }))).toContain(
      '<a:off x="12800" y="25600"/><a:ext cx="38100" cy="50800"/></a:xfrm><a:prstGeom prst="rect">',
    );
  });

  test("a path has the whole drawing for its box, and so the drawing's own points", () => {
    const path = drawn(shape("polygon", { points: "0,0 10,0 10,5", fill: INK }));
    expect(path).toContain('<a:off x="100" y="200"/><a:ext cx="3352800" cy="1270000"/>');
    expect(path).toContain(
      '<a:path w="3352800" h="1270000"><a:moveTo><a:pt x="0" y="0"/></a:moveTo><a:lnTo><a:pt x="127000" y="0"/></a:lnTo>' +
        '<a:lnTo><a:pt x="127000" y="63500"/></a:lnTo><a:close/></a:path>',
    );
    expect(drawn(shape("polyline", { points: "0,0 10,5", fill: "none", stroke: HOT }))).not.toContain(
      "close",
    );
  });
});

describe("looks", () => {
  test("a dash is counted in widths of its line: 6 and 3 px of 1.5 px are 400 % and 200 %", () => {
    const dashed = drawn(
      shape("line", { ...LINE.attributes, "stroke-width": 1.5, "stroke-dasharray": "6 3" }),
    );
    expect(dashed).toContain('<a:ln w="19050" cap="flat">');
    expect(dashed).toContain('<a:custDash><a:ds d="400000" sp="200000"/></a:custDash>');
  });

  test("fill and its opacity; what has no line has none", () => {
    const hot = drawn(shape("rect", { x: 0, y: 0, width: 1, height: 1, fill: HOT, "fill-opacity": 0.55 }));
    expect(hot).toContain(
      '<a:solidFill><a:srgbClr val="C4532D"><a:alpha val="55000"/></a:srgbClr></a:solidFill>',
    );
    expect(hot).toContain("<a:ln><a:noFill/></a:ln>");
  });

  test("colors are those that the browser sheet prints with", () => {
    const css = readFileSync("taskpane/hosts/browser/page.css", "utf8");
    const of = (name: string): string | undefined =>
      new RegExp(`--${name}: #([0-9a-f]{6});`).exec(css)?.[1]?.toUpperCase();
    expect([INK, PALE, ACCENT, HOT, METAL].map((color) => PRINTED[color])).toEqual(
      ["ink", "faint", "accent", "arc", "metal"].map(of),
    );
  });
});

describe("words", () => {
  const words = (more: Readonly<Record<string, string | number>>, text = "gap"): string =>
    drawn(shape("text", { x: 50, y: 60, "font-size": 10, fill: PALE, ...more }, text));

  test.each([
    ["start", "l", 0],
    ["middle", "ctr", 0.5],
    ["end", "r", 1],
  ])(
    "%s: the point lies at that side of the box, and the text at that side of it",
    (anchor, side, before) => {
      const text = words({ "text-anchor": anchor });
      const [, left, width] = /<a:off x="(\d+)" y="\d+"\/><a:ext cx="(\d+)"/.exec(text) ?? [];
      expect(Math.abs(Number(left) + before * Number(width) - (100 + 50 * 12_700))).toBeLessThanOrEqual(1);
      expect(text).toContain(`<a:pPr algn="${side}"/>`);
    },
  );

  test("10 px at twice their size are 20 points, and their foot is inside of their box", () => {
    const text = words({ "font-weight": 600 });
    expect(text).toContain('sz="2000" b="1"');
    const [, top, height] = /<a:off x="\d+" y="(\d+)"\/><a:ext cx="\d+" cy="(\d+)"/.exec(text) ?? [];
    const foot = 200 + 60 * 12_700;
    expect(Number(top)).toBeLessThan(foot);
    expect(Number(top) + Number(height)).toBeGreaterThan(foot);
  });

  test("no word is markup, and no sign is one that XML does not hold", () => {
    const text = words({}, 'a<b>&"\u0007\uFFFE\u0085_x0041_');
    expect(text).toContain("<a:t>a&#60;b&#62;&#38;&#34;-x0041_</a:t>");
  });
});

describe("paths", () => {
  const spots = (x: number, y: number): string => `<a:pt x="${String(x)}" y="${String(y)}"/>`;

  test("to a point, along a straight line, along a curve, and back", () => {
    expect(pathCommands("M1 2L3 4C5 6 7 8 9.5 -1Z", 10)).toBe(
      `<a:moveTo>${spots(10, 20)}</a:moveTo><a:lnTo>${spots(30, 40)}</a:lnTo>` +
        `<a:cubicBezTo>${spots(50, 60)}${spots(70, 80)}${spots(95, -10)}</a:cubicBezTo><a:close/>`,
    );
  });

  // Angles from the right, clockwise: the top is at 270°.
  test.each([
    ["a quarter from the top to the right", "M100 50A50 50 0 0 1 150 100", 270, 90],
    ["the same way back", "M150 100A50 50 0 0 0 100 50", 0, -90],
    ["half of it, from the top down", "M100 50A50 50 0 0 1 100 150", 270, 180],
    ["half of it, the other way", "M100 50A50 50 0 0 0 100 150", 270, -180],
    ["a twelfth from the right down", `M150 100A50 50 0 0 1 ${String(100 + 25 * Math.sqrt(3))} 125`, 0, 30],
  ])("an arc: %s", (_, d, start, swing) => {
    const [, radius, high, from, turned] =
      /<a:arcTo wR="(\d+)" hR="(\d+)" stAng="(\d+)" swAng="(-?\d+)"\/>/.exec(pathCommands(d, 10)) ?? [];
    expect([radius, high]).toEqual(["500", "500"]);
    expect(Math.abs(Number(from) / 60_000 - start)).toBeLessThan(1e-3);
    expect(Math.abs(Number(turned) / 60_000 - swing)).toBeLessThan(1e-3);
  });

  test.each(["L1 1", "M1 2Q3 4 5 6", "M1 2l3 4", "M1 2L3", "M1 2L3 4 5 6", "M1 2L3 x", "M1 2A5 6 0 0 1 3 4"])(
    "%s is refused",
    (d) => {
      expect(() => pathCommands(d, 1)).toThrow(/path|arc/);
    },
  );

  test.each(["M1 2A5 5 30 0 1 3 4", "M1 2A5 5 0 1 1 3 4", "M1 2A0 0 0 0 1 3 4", "M1 2A5 5 0 0 1 1 2"])(
    "an arc that it cannot tell is refused: %s",
    (d) => {
      expect(() => pathCommands(d, 1)).toThrow("an arc");
    },
  );

  test.each(["1,2", "1,2 3", "1,2 3,4,5", "1,2 3,a", ""])("points %j are refused", (points) => {
    expect(() => pointCommands(points, 1)).toThrow(/point/);
  });
});

describe("nothing is left out silently", () => {
  const box = { x: 0, y: 0, width: 1, height: 1, fill: INK };
  test.each<[string, Shape, string]>([
    ["an element", shape("g", {}, LINE), "a drawing has a g"],
    ["an attribute", shape("rect", { ...box, transform: "rotate(3)" }), "a rect has transform"],
    ["an attribute of another element", shape("line", { ...LINE.attributes, r: 1 }), "a line has r"],
    ["a color", shape("rect", { ...box, fill: "red" }), "a drawing has the color red"],
    ["no color", shape("rect", { x: 0, y: 0, width: 1, height: 1 }), "a drawing has the color undefined"],
    [
      "a color of words",
      shape("text", { x: 0, y: 0, "font-size": 11, fill: "red" }, "a"),
      "a text has the color red",
    ],
    ["a number", shape("rect", { ...box, width: "wide" }), "“wide” for a number"],
    ["no number", shape("rect", { x: 0, y: 0, width: 1, fill: INK }), "a rect has no height"],
    ["words in a shape", shape("rect", box, "a"), "a rect has something in it"],
    ["a shape in words", shape("text", { x: 0, y: 0, "font-size": 11, fill: INK }, LINE), "other than words"],
    [
      "another side",
      shape("text", { x: 0, y: 0, "font-size": 11, fill: INK, "text-anchor": "top" }, "a"),
      "at the top",
    ],
    ["a dash without a gap", shape("line", { ...LINE.attributes, "stroke-dasharray": "2 2 2" }), "no gap"],
  ])("%s is refused", (_, part, why) => {
    expect(() => drawn(part)).toThrow(why);
  });

  test("a drawing is an SVG with a size, of elements", () => {
    const placing = { left: 0, top: 0, emu: 1, letters: 1, nextId: () => 1 };
    expect(() => drawnShapes(LINE, placing)).toThrow("a drawing is a line");
    expect(() => drawnShapes(shape("svg", { viewBox: "0 0 5" }), placing)).toThrow("no size");
    expect(() => drawnShapes(shape("svg", { viewBox: "0 0 5 5" }, "words"), placing)).toThrow("bare words");
  });
});
