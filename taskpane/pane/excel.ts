/** Starts the pane in Excel. The functions are loaded by the same page, so that both share one runtime. */

import { ExcelHost } from "../host/excel";
import { functionsHeard } from "./associated";
import { mountPane } from "./pane";

const namespace = document.querySelector<HTMLMetaElement>('meta[name="ringbead-namespace"]')?.content;

void Office.onReady().then(() => {
  const host = new ExcelHost({
    functions: functionsHeard(),
    ...(namespace === undefined ? {} : { namespace }),
  });
  mountPane(document.body, host, "help.html");
});
