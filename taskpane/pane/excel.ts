/** Starts the pane in Excel. The functions are loaded by the same page, so that both share one runtime. */

import { ExcelHost } from "../host/excel";
import { mountPane } from "./pane";

void Office.onReady().then(() => {
  mountPane(document.body, new ExcelHost(), "help.html");
});
