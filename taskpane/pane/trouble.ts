/** What helps when cells do not compute, and whether pane and functions are of one version. */

import type { Host, Repaired } from "../hosts/host";
import type { Attempt } from "./attempt";
import { button, element } from "./dom";
import { part } from "./part";
import { VERSION } from "./help";

export function troublePart(host: Host, attempt: Attempt): HTMLElement {
  const repair = async (): Promise<string> => {
    return repairedInWords(await host.repairFormulas(), host.label);
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

export function repairedInWords({ count, refused }: Repaired, label: string): string {
  if (count === 0 && refused.length === 0)
    return "This sheet has no Ringbead formulas; there is nothing to repair.";
  const done = `Re-entered ${counted(count)} on this sheet.`;
  if (refused.length === 0) return done;
  return `${done} ${label} refused ${counted(refused.length)}, left as before: ${listed(refused)}. Select each and look at what its formula refers to.`;
}

function counted(formulas: number): string {
  return `${String(formulas)} formula${formulas === 1 ? "" : "s"}`;
}

/** As many addresses as one reads. */
function listed(addresses: readonly string[]): string {
  const more = addresses.length - MOST_NAMED;
  const named = addresses.slice(0, MOST_NAMED).join(", ");
  return more > 0 ? `${named} and ${String(more)} more` : named;
}
const MOST_NAMED = 12;

/** "" when they agree, or when the host cannot tell. */
async function compareVersions(host: Host): Promise<string> {
  const running = await host.functionsVersion().catch(() => undefined);
  if (running === undefined || running === VERSION) return "";
  return `The formulas are version ${running}, this pane is version ${VERSION}: close and reopen ${host.label} to update both.`;
}
