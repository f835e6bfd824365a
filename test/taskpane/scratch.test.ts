import { gas } from "../../taskpane/sheets/gas";
import { openSheet } from "./open-sheet";
test("x", async () => {
  const s = await openSheet(gas, "US");
  const plan = gas.plan("US");
  const out: string[] = [];
  out.push(JSON.stringify(plan.names.filter((n) => /list|takeoff|lines/.test(n.name))));
  const row = (r: number) => Array.from({ length: 14 }, (_, c) => s.beside("takeoff", c - 5, r));
  for (const r of [0, 1, 2, 6, 7, 200, 201, 202]) out.push(JSON.stringify(row(r)));
  out.push(
    [
      "lines",
      "joints",
      "gas_used",
      "purge_share",
      "gas_bought",
      "gas_per_joint",
      "hours",
      "usable",
      "containers_exact",
      "containers",
      "cost",
      "cost_per_joint",
    ]
      .map((n) => n + "=" + String(s.value(n)))
      .join(" "),
  );
  process.stdout.write(out.join("\n") + "\n");
}, 600000);
