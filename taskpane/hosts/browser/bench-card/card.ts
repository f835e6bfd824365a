/** The bench card on the page: what a welder sets and reads at the machine, in type to be read at arm's length. */

import type { Model } from "@odoo/o-spreadsheet";

import { button, element } from "../../../pane/dom";
import { figure } from "../../../pane/figure";
import { picturesOf } from "../../../pictures";
import { BLOCKS } from "../../../pictures/joint";
import type { Picture } from "../../../pictures/picture";
import { CAUTION_IN_SHORT } from "../../../sheets/cautions";
import { SIGNS } from "../../../sheets/sheet";
import { command } from "../commands";
import { namedCells } from "../named-cells";
import type { Fact, ProcedureFacts, Refused, SectorFact } from "./procedure-facts";
import { procedureFacts } from "./procedure-facts";
import type { FormSheet } from "./shown-sheet";
import { sheetsWith, ShownSheet } from "./shown-sheet";
import { timesBar } from "./times-bar";

interface Shown {
  readonly sheetId: string;
  /** Undefined where the sheet being shown is no procedure sheet. */
  readonly facts: ProcedureFacts | undefined;
  readonly pictures: readonly Picture[];
  readonly sheets: readonly FormSheet[];
}

export interface Card {
  /** Reads the sheet being shown anew. */
  readonly follow: (model: Model) => void;
  /** The card as it stands, for paper. */
  readonly copy: () => HTMLElement;
}

export function benchCard(place: HTMLElement, showSheet: () => void): Card {
  let last = "";
  return {
    follow: (model) => {
      const shown = read(model);
      const key = JSON.stringify(shown);
      // What a person holds with the keyboard stays while nothing changes.
      if (key === last) return;
      last = key;
      const choose = (sheetIdTo: string): void => {
        command(model, "ACTIVATE_SHEET", { sheetIdFrom: model.getters.getActiveSheetId(), sheetIdTo });
      };
      place.replaceChildren(...contents(shown, choose), toSheet(showSheet));
    },
    copy: () => {
      const copy = element("div", { class: "bench-card" });
      for (const part of place.children) {
        if (part.matches("[data-screen-only]")) continue;
        copy.append(part.cloneNode(true));
      }
      return copy;
    },
  };
}

function read(model: Model): Shown {
  const sheet = new ShownSheet(model);
  return {
    sheetId: sheet.id,
    facts: sheet.template === "procedure" ? procedureFacts(sheet) : undefined,
    pictures: picturesOf(namedCells(model, BLOCKS)) ?? [],
    sheets: sheetsWith(model, "procedure"),
  };
}

function contents({ sheetId, facts, pictures, sheets }: Shown, choose: (id: string) => void): HTMLElement[] {
  if (facts === undefined) return [noProcedure(sheets, choose)];
  return [
    head(facts),
    ...(sheets.length > 1 ? [sheetChoice(sheets, sheetId, choose)] : []),
    summaryLine(facts.summary),
    ...facts.refused.map(refusal),
    numbers(facts),
    ...(facts.phases.length > 0 ? [timesBar(facts.phases)] : []),
    drawn(pictures, facts.refused),
    element("p", { class: "caution" }, CAUTION_IN_SHORT),
  ];
}

/** Not for paper, where the card takes half a page. */
function drawn(pictures: readonly Picture[], refused: readonly Refused[]): HTMLElement {
  // What the card says above of missing numbers is not said again below each picture.
  const said = new Set(refused.map(({ why }) => why));
  const figures = pictures.map((picture) =>
    figure(
      picture.missing !== undefined && said.has(picture.missing.why)
        ? { ...picture, missing: { ...picture.missing, why: "" } }
        : picture,
    ),
  );
  return element("div", { class: "pictures", "data-screen-only": "" }, ...figures);
}

function head({ tube, joint }: ProcedureFacts): HTMLElement {
  return element("header", {}, element("h1", {}, tube), element("p", {}, joint));
}

function sheetChoice(sheets: readonly FormSheet[], shown: string, choose: (id: string) => void): HTMLElement {
  const list = element("select", { id: "card-sheet" });
  for (const { id, name } of sheets) list.append(new Option(name, id, false, id === shown));
  list.addEventListener("change", () => {
    choose(list.value);
  });
  return element(
    "p",
    { class: "choice", "data-screen-only": "" },
    element("label", { for: list.id }, "Procedure sheet"),
    list,
  );
}

function summaryLine(summary: string): HTMLElement {
  const state = summary.startsWith(SIGNS.holds) ? "holds" : "attention";
  return element("p", { class: `summary ${state}` }, summary);
}

function refusal({ what, why }: Refused): HTMLElement {
  return element(
    "p",
    { class: "refused" },
    element("strong", {}, why),
    element("span", {}, `No number: ${what.join(", ")}.`),
  );
}

function numbers({ facts }: ProcedureFacts): HTMLElement {
  return element("dl", { class: "numbers" }, ...facts.map(tile));
}

function tile({ label, large, unit, details, remarks, isWide, later }: Fact): HTMLElement {
  return element(
    "div",
    isWide ? { class: "wide" } : {},
    element("dt", {}, label),
    element("dd", { class: "large" }, large, element("span", {}, unit)),
    ...details.map((detail) => element("dd", {}, detail)),
    ...(later.length > 0 ? [sectorsInOneLine(later)] : []),
    ...remarks.map((words) => element("dd", { class: "attention" }, words)),
  );
}

function sectorsInOneLine(sectors: readonly SectorFact[]): HTMLElement {
  return element(
    "dd",
    { class: "sectors" },
    ...sectors.map(({ label, amps }) =>
      element("span", {}, element("small", {}, label), element("b", {}, amps)),
    ),
  );
}

function noProcedure(sheets: readonly FormSheet[], choose: (id: string) => void): HTMLElement {
  const words =
    sheets.length > 0
      ? "The card reads a procedure sheet, and the sheet being shown is none. Choose one:"
      : "The workbook has no procedure sheet for the card to read. Insert one from the pane.";
  return element(
    "div",
    { class: "none" },
    element("h1", {}, "Bench card"),
    element("p", {}, words),
    ...sheets.map(({ id, name }) =>
      button(name, () => {
        choose(id);
      }),
    ),
  );
}

function toSheet(showSheet: () => void): HTMLElement {
  const made = button("Show the sheet", showSheet);
  made.className = "to-sheet";
  made.dataset.screenOnly = "";
  return made;
}
