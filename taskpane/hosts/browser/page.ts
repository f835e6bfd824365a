/** The browser sheet: an open-source spreadsheet with our formulas in it and the task pane at its right. */

import "bootstrap/dist/css/bootstrap.min.css";
import "font-awesome/css/font-awesome.min.css";
import "@odoo/o-spreadsheet/dist/o_spreadsheet.css";
import "./page.css";

import { Model, Spreadsheet } from "@odoo/o-spreadsheet";
import templates from "@odoo/o-spreadsheet/dist/o_spreadsheet.xml";
import { App } from "@odoo/owl";
import Chart from "chart.js/auto";
import * as chartParts from "chart.js";

import { BrowserHost } from "./browser-host";
import { tellInUnits } from "./argument-help";
import { FORMULAS } from "../../pane/help";
import { mountPane } from "../../pane/pane";
import { procedure } from "../../sheets/procedure";
import type { FunctionDefinition } from "./functions-host";
import { provideFunctionsGlobal, registerFormulas } from "./functions-host";
import { printSheet } from "./print";
import { proposeOursFirst } from "./proposals";
import { saveSheet } from "./save";

const NAMESPACE = "BEAD";

async function start(): Promise<void> {
  // The engine finds the chart library, and the parts it draws with, on the global.
  Object.assign(globalThis, { Chart: Object.assign(Chart, chartParts, { Chart }) });
  const associated = provideFunctionsGlobal();
  await loadScript("../functions.js");
  const { functions } = (await (await fetch("../functions.json")).json()) as {
    functions: FunctionDefinition[];
  };
  registerFormulas(NAMESPACE, functions, (id) => associated.get(id));
  proposeOursFirst(NAMESPACE);

  const model = new Model({
    version: "19.3.0",
    sheets: [{ id: "scratch", name: "Scratch", colNumber: 26, rowNumber: 100 }],
  });
  const host = new BrowserHost(model);
  tellInUnits(NAMESPACE, FORMULAS, () => host.unitsShown());
  await host.insert(procedure.plan("US"));
  await new App(Spreadsheet, { props: { model }, templates, env: {} as never }).mount(byId("sheet"));

  const pane = byId("pane").attachShadow({ mode: "open" });
  const styles = document.createElement("link");
  styles.rel = "stylesheet";
  styles.href = "../pane.css";
  pane.append(styles);
  mountPane(pane, host, "../help.html");
  byId("print").addEventListener("click", () => {
    printSheet(model);
  });
  byId("save").addEventListener("click", () => void saveSheet(model));
  // For the console and the tests: what a cell holds, which the painted grid does not tell.
  Object.assign(globalThis, { ringbead: { model } });
  document.documentElement.dataset.ready = "true";
}

function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.onload = () => {
      resolve();
    };
    script.onerror = () => {
      reject(new Error(`${address} could not be loaded`));
    };
    document.head.append(script);
  });
}

function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no #${id}`);
  return found;
}

start().catch((problem: unknown) => {
  byId("sheet").textContent = `The browser sheet could not start: ${String(problem)}`;
});
