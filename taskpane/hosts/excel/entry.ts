/** Starts the pane in Excel. The functions are loaded by the same page, so that both share one runtime. */

import { ExcelHost } from "./excel-host";
import { functionsHeard } from "./associated";
import { start } from "./start";
import { mountPane } from "../../pane/pane";
import { themeOf } from "../../pane/theme";

const namespace = document.querySelector<HTMLMetaElement>('meta[name="ringbead-namespace"]')?.content;

start(() => {
  const host = new ExcelHost({
    functions: functionsHeard(),
    ...(namespace === undefined ? {} : { namespace }),
  });
  // Some hosts tell no theme, whatever the typings say.
  const theme = Office.context.officeTheme as Office.OfficeTheme | undefined;
  mountPane(document.body, host, "help.html", themeOf(theme?.bodyBackgroundColor));
});
