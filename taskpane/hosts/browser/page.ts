/** The browser sheet: an open-source spreadsheet with our formulas in it and the task pane at its right. */

import "bootstrap/dist/css/bootstrap.min.css";
import "font-awesome/css/font-awesome.min.css";
import "@odoo/o-spreadsheet/dist/o_spreadsheet.css";
import "./page.css";
import "./bench-card/card.css";
import "./dark.css";

import Chart from "chart.js/auto";
import * as chartParts from "chart.js";

import { FORMULAS } from "../../pane/help";
import { mountPane } from "../../pane/pane";
import { tellInUnits } from "./argument-help";
import { showCellsAtOnce } from "./at-once";
import { buildBar } from "./bar";
import { benchCard } from "./bench-card/card";
import { followSheet } from "./bench-card/follow";
import { resultStrip } from "./bench-card/strip";
import { cardOrSheet } from "./bench-card/views";
import { BrowserHost } from "./browser-host";
import { emptyWorkbook, freshWorkbook } from "./fresh";
import type { FunctionDefinition } from "./functions-host";
import { drawCurves } from "./curve";
import { provideFunctionsGlobal, registerFormulas } from "./functions-host";
import { listenToKeys } from "./keys";
import { lockToggle } from "./lock-toggle";
import { acceptDrops, chooseFile } from "./open-file";
import { readWorkbook } from "./open-workbook";
import { paneToggle } from "./pane-toggle";
import { printOnRequest } from "./print";
import { onProtected, protectForms } from "./protect";
import { proposeOursFirst } from "./proposals";
import { saveWorkbook } from "./save";
import { Grid } from "./workbook/grid";
import { workbookMenu } from "./workbook/menu";
import { WorkbookStore } from "./workbook/store";
import { storingLine } from "./workbook/storing-line";
import { Workbooks } from "./workbook/workbooks";

const NAMESPACE = "BEAD";

async function start(): Promise<void> {
  // The engine finds the chart library, and the parts it draws with, on the global.
  Object.assign(globalThis, { Chart: Object.assign(Chart, chartParts, { Chart }) });
  const associated = provideFunctionsGlobal();
  await loadScript("../functions.js");
  const { functions } = (await (await fetch("../functions.json")).json()) as {
    functions: FunctionDefinition[];
  };
  drawCurves();
  showCellsAtOnce();
  registerFormulas(NAMESPACE, functions, (id) => associated.get(id));
  proposeOursFirst(NAMESPACE);

  protectForms();
  const grid = new Grid(byId("sheet"));
  const host = new BrowserHost(emptyWorkbook());
  tellInUnits(NAMESPACE, FORMULAS, () => host.unitsShown());
  const storing = storingLine();
  const workbooks = new Workbooks(grid, host, await WorkbookStore.open(), freshWorkbook, {
    opened: (name, origin) => {
      menu.querySelector("summary")?.replaceChildren(name);
      bar.tellOrigin(name, origin);
      if (origin.how === "restored") storing.show({ state: "stored", at: origin.at });
    },
    storing: storing.show,
    mayLose: (name) =>
      window.confirm(
        `“${name}” is not stored in this browser, and opening another workbook loses it. Go on?`,
      ),
  });
  const menu = workbookMenu(workbooks, (text) => {
    bar.say(text);
  });
  const save = async (): Promise<void> => {
    try {
      await saveWorkbook(grid.model, workbooks.name);
      workbooks.savedToFile();
    } catch (problem) {
      bar.say(`▲ Not saved: ${problem instanceof Error ? problem.message : String(problem)}.`);
    }
  };
  const open = (file: File): void => void openFile(file);
  const views = cardOrSheet(byId("bench"), byId("card"), byId("sheet"));
  const card = benchCard(byId("card"), views.showSheet);
  const actions = {
    openFile: () => {
      chooseFile(open);
    },
    save,
    print: () => {
      window.print();
    },
    togglePane: paneToggle(byId("bench")),
    toggleLock: lockToggle(host),
    startAfresh: () => workbooks.startAfresh(),
  };
  const bar = buildBar(byId("bar"), { menu, storing: storing.line, view: views.toggle }, actions);
  const openFile = async (file: File): Promise<void> => {
    try {
      const { data, remark } = await readWorkbook(file);
      await workbooks.openFile(file.name.replace(/\.xlsx$/i, ""), data, remark);
    } catch (problem) {
      bar.say(
        `▲ “${file.name}” was not opened: ${problem instanceof Error ? problem.message : String(problem)}.`,
      );
    }
  };

  await workbooks.start();
  const pane = byId("pane").attachShadow({ mode: "open" });
  const styles = document.createElement("link");
  styles.rel = "stylesheet";
  styles.href = "../pane.css";
  pane.append(styles);
  mountPane(pane, host, "../help.html");
  acceptDrops(open);
  listenToKeys(actions);
  printOnRequest(
    () => grid.model,
    () => (views.showsCard() ? card.copy() : undefined),
  );
  followSheet(host, () => grid.model, [card.follow, resultStrip(byId("strip"))]);
  onProtected((what) => {
    bar.say(`${what}, or unlock the sheet.`);
  });
  guardLeaving(workbooks);
  // For the console and the tests: what a cell holds, which the painted grid does not tell.
  Object.defineProperty(globalThis, "ringbead", {
    value: {
      get model() {
        return grid.model;
      },
    },
  });
  document.documentElement.dataset.ready = "true";
}

/** The page is left without a question when all is stored; what waits is stored as soon as the tab is out of sight. */
function guardLeaving(workbooks: Workbooks): void {
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void workbooks.flush();
  });
  window.addEventListener("beforeunload", (event) => {
    if (!workbooks.isAtRisk) return;
    void workbooks.flush();
    event.preventDefault();
  });
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
