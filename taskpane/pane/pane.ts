/** The task pane: the same in Excel and beside the browser sheet; all it knows of either is the host interface. */

import type { Units } from "../../src/quantity";
import type { Host } from "../hosts/host";
import { TEMPLATES } from "../sheets";
import { convert } from "../sheets/convert";
import { CAUTIONS } from "../sheets/cautions";
import { Chosen } from "./chosen";
import type { Attempt } from "./attempt";
import { button, element } from "./dom";
import { part } from "./part";
import { formulaFinder } from "./finder";
import { VERSION } from "./help";
import { cellExplainer } from "./explain";
import { picturesPart } from "./pictures";
import type { Theme } from "./theme";
import { wear } from "./theme";
import { troublePart } from "./trouble";

const SYSTEM_NAMES: Record<Units, string> = {
  US: "US: inches, ft³/h, psi",
  SI: "SI: millimeters, L/min, bar",
};

/** Builds the pane inside `root`, light or dark as its surroundings are. */
export function mountPane(root: ParentNode & Node, host: Host, helpPage: string, surroundings?: Theme): void {
  const status = element("p", { role: "status", class: "status" });
  const say = (text: string): void => {
    status.textContent = text;
  };
  /** Runs what a button asks for; a failure is stated, never swallowed. */
  const attempt: Attempt = (work) => async () => {
    say("Working…");
    try {
      say(await work(say));
    } catch (problem) {
      say(
        `That failed: ${problem instanceof Error ? problem.message : String(problem)}. Nothing else was changed.`,
      );
    }
  };

  const chosen = new Chosen();
  const pane = element(
    "main",
    { class: "pane" },
    element("h1", {}, "Ringbead"),
    element("p", { class: "lead" }, "Orbital TIG tube welds, planned in a sheet."),
    status,
    cellExplainer(host, chosen),
    picturesPart(host),
    insertPart(host, chosen, attempt),
    convertPart(host, attempt),
    formulaFinder(host, chosen, attempt),
    troublePart(host, attempt),
    element("details", { class: "cautions", open: "" }, element("summary", {}, "Cautions"), listOf(CAUTIONS)),
    element(
      "footer",
      {},
      element("a", { href: helpPage, target: "_blank", rel: "noopener" }, "Help for every formula"),
      element(
        "a",
        { href: noticesBeside(helpPage), target: "_blank", rel: "noopener" },
        "Licenses and notices",
      ),
      element("span", {}, `Version ${VERSION}`),
    ),
  );
  wear(pane, surroundings);
  root.append(pane);
}

function noticesBeside(helpPage: string): string {
  return helpPage.replace(/help\.html$/, "notices.html");
}

function insertPart(host: Host, chosen: Chosen, attempt: Attempt): HTMLElement {
  const choices = TEMPLATES.map(({ id, title }) => element("option", { value: id }, title));
  const which = element("select", { id: "template" }, ...choices);
  const units = (Object.keys(SYSTEM_NAMES) as Units[]).map((system, i) => {
    const radio = element("input", {
      type: "radio",
      name: "units",
      value: system,
      id: `units-${system}`,
      ...(i === 0 ? { checked: "" } : {}),
    });
    radio.addEventListener("change", () => {
      chosen.choose(system);
    });
    return { system, radio, label: element("label", { for: radio.id }, SYSTEM_NAMES[system]) };
  });
  const guard = element("input", { type: "checkbox", id: "guard" });
  const guardChoice = element(
    "div",
    { class: "choice" },
    guard,
    element("label", { for: guard.id }, "Protect the computed cells (no password)"),
  );
  const insert = async (say: (text: string) => void): Promise<string> => {
    const template = TEMPLATES.find(({ id }) => id === which.value);
    const system = chosen.now();
    if (template === undefined) return "Choose a sheet first.";
    const { name, remark } = await host.insert(template.plan(system), { protect: guard.checked, say });
    return `Inserted “${name}” in ${system} units. Its example values are invented: type your own. ${remark}`.trim();
  };
  return part(
    "Insert a sheet",
    element("label", { for: "template" }, "Sheet"),
    which,
    element(
      "fieldset",
      {},
      element("legend", {}, "Units"),
      ...units.map(({ radio, label }) => element("div", { class: "choice" }, radio, label)),
    ),
    ...(host.canProtect ? [guardChoice] : []),
    button("Insert", attempt(insert)),
  );
}

function convertPart(host: Host, attempt: Attempt): HTMLElement {
  const run = async (): Promise<string> => {
    const form = await host.readForm();
    if (form === undefined) return "Ringbead did not insert this sheet; there is nothing to convert.";
    const conversion = convert(form);
    if ("problem" in conversion) return conversion.problem;
    await host.editForm(form, conversion.edits);
    return `Converted to ${conversion.to}: the typed numbers were rewritten; the physics is unchanged.`;
  };
  return part(
    "Convert this sheet",
    element("p", {}, "Rewrites the typed numbers in the other system of units."),
    button("Convert this sheet", attempt(run)),
  );
}

function listOf(texts: readonly string[]): HTMLElement {
  return element("ul", {}, ...texts.map((text) => element("li", {}, text)));
}
