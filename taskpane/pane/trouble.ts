/** What helps when cells do not compute, and whether pane and functions are of one version. */

import type { Host } from "../hosts/host";
import { button, element, part } from "./dom";
import { VERSION } from "./help";

type Attempt = (work: () => Promise<string>) => () => Promise<void>;

export function troublePart(host: Host, attempt: Attempt): HTMLElement {
  const repair = async (): Promise<string> => {
    const count = await host.repairFormulas();
    if (count === 0) return "This sheet holds no Ringbead formula; nothing to repair.";
    return `Entered ${String(count)} formula${count === 1 ? "" : "s"} of this sheet again.`;
  };
  const recalculate = async (): Promise<string> => {
    await host.recalculate();
    return "Recalculated this sheet.";
  };
  const versions = element("p", { role: "status" });
  void compareVersions(host).then((text) => {
    versions.textContent = text;
  });
  return part(
    "Trouble?",
    element(
      "p",
      {},
      "Cells show #NAME? or their formulas begin with _xldudf_: this enters them again, as they are.",
    ),
    button("Repair formulas", attempt(repair)),
    element("p", {}, "Cells show #BUSY! or old numbers: this computes them anew."),
    button("Recalculate this sheet", attempt(recalculate)),
    versions,
  );
}

/** "" when all is well, or when the host cannot tell. */
async function compareVersions(host: Host): Promise<string> {
  const running = await host.functionsVersion().catch(() => undefined);
  if (running === undefined || running === VERSION) return "";
  return `The formulas are of version ${running}, this pane of ${VERSION}: close and open ${host.label} again, so that both are new.`;
}
