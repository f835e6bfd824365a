/** What helps when cells do not compute, and whether pane and functions are of one version. */

import type { Host } from "../hosts/host";
import { button, element, part } from "./dom";
import { VERSION } from "./help";

type Attempt = (work: () => Promise<string>) => () => Promise<void>;

export function troublePart(host: Host, attempt: Attempt): HTMLElement {
  const repair = async (): Promise<string> => {
    const count = await host.repairFormulas();
    if (count === 0) return "This sheet has no Ringbead formulas; there is nothing to repair.";
    return `Re-entered ${String(count)} formula${count === 1 ? "" : "s"} on this sheet.`;
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
    element("p", {}, host.troubles.repair),
    button("Repair formulas", attempt(repair)),
    element("p", {}, host.troubles.recalculate),
    button("Recalculate this sheet", attempt(recalculate)),
    versions,
  );
}

/** "" when they agree, or when the host cannot tell. */
async function compareVersions(host: Host): Promise<string> {
  const running = await host.functionsVersion().catch(() => undefined);
  if (running === undefined || running === VERSION) return "";
  return `The formulas are version ${running}, this pane is version ${VERSION}: close and reopen ${host.label} to update both.`;
}
