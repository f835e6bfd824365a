/** The pictures of the joint in a file: native shapes beside the charts, on cells that are free, printed below the release. */

import { XMLParser } from "fast-xml-parser";
import { strFromU8, unzipSync } from "fflate";

import { placeOf } from "../../taskpane/sheets/addresses";
import { AS_STORED } from "../../taskpane/files/drawn-pictures";
import { snapshotOf } from "../../taskpane/hosts/browser/engine-sheet";
import { opened } from "../../taskpane/hosts/browser/open-workbook";
import { fileOf } from "../../taskpane/hosts/browser/save";
import { TEMPLATES } from "../../taskpane/sheets";
import { procedure } from "../../taskpane/sheets/procedure";
import { Model } from "@odoo/o-spreadsheet";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

interface Picture {
  readonly name: string;
  readonly says: string;
  readonly row: number;
  readonly xml: string;
}

interface Parts {
  readonly drawing: string;
  readonly pictures: readonly Picture[];
  /** Of the words below them. */
  readonly remarkRow: number;
  readonly area: string;
}

const XML = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: "" });

async function fileParts(model: Model): Promise<Parts> {
  const parts = unzipSync(await fileOf(model));
  const part = (path: string): string => strFromU8(parts[path] ?? new Uint8Array());
  const drawing = part("xl/drawings/drawing1.xml");
  expect(unread(drawing)).toBe("");
  const anchors = [...drawing.matchAll(/<xdr:oneCellAnchor>.*?<\/xdr:oneCellAnchor>/gs)].map(([xml]) => xml);
  const rowOf = (xml: string): number => Number(/<xdr:row>(\d+)</.exec(xml)?.[1]);
  const pictures = anchors
    .filter((xml) => xml.includes("<xdr:grpSp>"))
    .map((xml) => {
      const [, tag = ""] = /<xdr:nvGrpSpPr>(<xdr:cNvPr [^>]*\/>)/.exec(xml) ?? [];
      const { name, descr } =
        (XML.parse(tag) as Record<string, { name: string; descr: string }>)["xdr:cNvPr"] ?? {};
      return { name: name ?? "", says: descr ?? "", row: rowOf(xml), xml };
    });
  const remark = anchors.find((xml) => xml.includes(AS_STORED)) ?? "";
  const area = /_xlnm\.Print_Area"[^>]*>[^<]*!([^<]*)</.exec(part("xl/workbook.xml"))?.[1] ?? "";
  return { drawing, pictures, remarkRow: rowOf(remark), area: area.replaceAll("$", "") };
}

/** What is no XML of elements that are closed in order, with double quotes and numbered signs; "" where all is. */
function unread(xml: string): string {
  const open: string[] = [];
  const rest = xml
    .replace(/^<\?xml [^?]*\?>\s*/, "")
    .replace(
      /<(\/?)([\w:]+)((?:\s[\w:]+="(?:[^"<&]|&#?\w+;)*")*)(\/?)>|(?:[^<&]|&#?\w+;)+/g,
      (part, closes: string | undefined, tag: string | undefined, _, isEmpty: string | undefined) => {
        if (tag === undefined || isEmpty === "/") return "";
        if (closes !== "/") open.push(tag);
        else if (open.pop() !== tag) return part;
        return "";
      },
    );
  return rest + open.join(" ");
}

test("what is no XML is found", () => {
  const all = ['<a b="1"><c/>d&#38;</a>', "<a><b></a>", '<a b="<"/>', "<a>&</a>", "<a>"];
  expect(all.map((xml) => unread(xml) === "")).toEqual([true, false, false, false, false]);
});

/** The row, from 1, that the print area ends with. */
function printedTo(area: string): number {
  return placeOf(area.replace(/^.*:/, "")).row + 1;
}

function planned(): number {
  return printedTo(procedure.plan("US").print.area);
}

/** Rows, from 0, of a block of cells that hold anything. */
function filledRows(open: OpenSheet, from: number, to: number): string[] {
  return snapshotOf(open.model, open.model.getters.getActiveSheetId())
    .cells.filter(({ at, value, formula }) => {
      const { row, column } = placeOf(at);
      return row >= from && row <= to && column < 8 && (value !== "" || formula !== undefined);
    })
    .map(({ at }) => at);
}

test.each(["US", "SI"] as const)(
  "the procedure sheet has three, named and told in words, in %s",
  async (units) => {
    const { pictures, drawing } = await fileParts((await openSheet(procedure, units)).model);
    expect(pictures).toHaveLength(3);
    const [section, ring, purge] = pictures;
    expect(section?.name).toMatch(/^Melts through all around; narrowest root /);
    expect(section?.says).toContain(units === "US" ? "wall 0.0650 in" : "wall 1.650 mm");
    expect(ring?.name).toMatch(/^The last quarter needs \d+ % less current than the first$/);
    expect(ring?.says).toContain("Sector 4, 270 to 360°: ");
    expect(purge?.name).toMatch(/^Down to 50 ppm after /);
    expect(purge?.says).toContain("100,000 ppm");
    // Words of the drawing itself.
    expect(ring?.xml).toContain("<a:t>travel</a:t>");
    expect(purge?.xml).toContain("<a:t>purge time, s</a:t>");
    expect(drawing.match(/<c:chart /g)).toHaveLength(2);
    expect(drawing).not.toContain("pictures of sheet");
  },
);

test("no two shapes of a drawing have the same number", async () => {
  const { drawing } = await fileParts((await openSheet(procedure, "US")).model);
  const ids = [...drawing.matchAll(/<xdr:cNvPr id="(\d+)"/g)].map(([, id]) => id);
  expect(ids.length).toBeGreaterThan(50);
  expect(new Set(ids).size).toBe(ids.length);
});

test("they stand below the release, on free cells, and are printed on the page of the release", async () => {
  const open = await openSheet(procedure, "US");
  const { pictures, remarkRow, area } = await fileParts(open.model);
  const last = printedTo(area) - 1;
  for (const { row } of pictures) expect(row).toBe(planned());
  expect(remarkRow).toBeGreaterThan(planned());
  expect(remarkRow).toBeLessThanOrEqual(last);
  expect(filledRows(open, planned(), last)).toEqual([]);
  // A row further down something stands that was there before.
  expect(filledRows(open, planned(), last + 10).length).toBeGreaterThan(0);
});

test("of every other sheet a file has none", async () => {
  for (const template of TEMPLATES.filter(({ id }) => id !== "procedure")) {
    const parts = unzipSync(await fileOf((await openSheet(template, "US")).model));
    expect(strFromU8(parts["xl/drawings/drawing1.xml"] ?? new Uint8Array())).not.toContain("grpSp");
  }
});

test("opened and saved again: three still, in the same rows, and as much is printed", async () => {
  const first = await openSheet(procedure, "US");
  const before = await fileParts(first.model);
  const { data, remark } = await opened(await fileOf(first.model), "joint.xlsx");
  expect(remark).toBe("Opened “joint.xlsx”.");
  const after = await fileParts(new Model(data));
  expect(after.pictures.map(({ name, says, row }) => [name, says, row])).toEqual(
    before.pictures.map(({ name, says, row }) => [name, says, row]),
  );
  expect([after.area, after.remarkRow]).toEqual([before.area, before.remarkRow]);
});

test("they show what is typed, and rows that are inserted take them along", async () => {
  const open = await openSheet(procedure, "US");
  open.type("target_ppm", "20");
  open.insertRow("style");
  const { pictures, area } = await fileParts(open.model);
  expect(pictures[2]?.name).toMatch(/^Down to 20 ppm after /);
  expect(pictures[0]?.row).toBe(planned() + 1);
  expect(printedTo(area)).toBeGreaterThan(planned() + 1);
});

test("where something was typed into their room they stand below everything, and are not printed", async () => {
  const open = await openSheet(procedure, "US");
  const at = `B${String(planned() + 5)}`;
  open.typeAt(at, "note");
  const { pictures, area } = await fileParts(open.model);
  const row = pictures[0]?.row ?? 0;
  expect(filledRows(open, row - 1, row + 100)).toEqual([]);
  expect(row).toBeGreaterThan(planned() + 100);
  expect(printedTo(area)).toBe(planned());
});

test("a number that is missing is told in words, a drawing that can be drawn is drawn", async () => {
  const open = await openSheet(procedure, "US");
  open.type("wall", "-0.065");
  const { pictures } = await fileParts(open.model);
  const [section, ring] = pictures;
  expect(section?.name).toBe("Section of the bead");
  expect(section?.says).toMatch(
    /^Section of the bead Not drawn\. Missing: wall \(-0\.0650 is out of range\)/,
  );
  expect(section?.xml).toContain("wall = -0.065 in: must be above 0");
  expect(section?.xml).not.toContain("custGeom");
  expect(ring?.xml).toContain("Not drawn. Missing: ");
});

test("text that looks like markup stays text", async () => {
  const open = await openSheet(procedure, "US");
  open.type("wall", '</a:t><b a="1">&amp;');
  const { pictures } = await fileParts(open.model);
  expect(pictures).toHaveLength(3);
  expect(pictures[0]?.xml).not.toContain("<b a=");
  expect(pictures[0]?.xml).toContain("&#60;b a=&#34;1&#34;&#62;");
});

test("a sheet whose charts were deleted has its pictures all the same", async () => {
  const open = await openSheet(procedure, "US");
  for (const { id } of open.model.getters.getFigures(open.model.getters.getActiveSheetId())) {
    open.command("DELETE_FIGURE", { figureId: id });
  }
  const { pictures, drawing } = await fileParts(open.model);
  expect(pictures).toHaveLength(3);
  expect(drawing).not.toContain("<c:chart ");
});
