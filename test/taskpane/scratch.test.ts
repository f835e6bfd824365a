import { procedure } from "../../taskpane/sheets/procedure";
import { openSheet } from "./open-sheet";
test("x", async () => {
  const s = await openSheet(procedure, "US");
  const out: string[] = [];
  const show = (c: Record<string, string>, ...names: string[]) =>
    s.having(c, () => {
      out.push(
        JSON.stringify(c) +
          " => " +
          String(s.value("summary")).slice(0, 1200) +
          " || " +
          names.map((n) => n + "=" + String(s.value(n))).join(" ; "),
      );
    });
  for (const [od, wall] of [
    ["1", "-0.065"],
    ["1", "0"],
    ["1", ""],
    ["1", "thin"],
    ["1", "0.5"],
    ["1", "1.65"],
    ["0.12", "0.065"],
    ["", "0.065"],
    ["-1", "0.065"],
  ])
    show(
      { od, wall },
      "standoff",
      "bore",
      "purge_time",
      "dam_heat",
      "cycle",
      "laminar",
      "vent_wanted",
      "ceiling",
      "check_gap",
      "check_vent",
    );
  show({ wall: "Wall (in)" });
  show({ wall: "0.5" });
  show({ od: "0.4", wall: "0.25" });
  show({ od: "25.4", wall: "1.65" });
  show({ peak_typed: "40" });
  show({ heat_most: "5" });
  show({ heat_most: "" });
  show({ vent: "0.125" });
  show({ vent: "0" });
  show({ purge_flow: "200" });
  show({ vent: "0.0625" });
  show({ vent: "1/16" });
  show({ wall: "'0.065" });
  show({ purge_flow: "0" });
  show({ bead_typed: "-0.1" });
  show({ speed_typed: "-5" });
  show({ material: "C12200" });
  show({ od: "2", bore_typed: "0.87" });
  show({ style: "steady" });
  show({ style: " steady" });
  show({ material: "SS316L" });
  show({ material: "unobtainium" });
  show({ peak_typed: "70", speed_typed: "6", overlap_typed: "30", dwell_typed: "3", volts_typed: "10" });
  show({ overlap_typed: "0" });
  show({ od: "46024" });
  show({ od: "1/2" });
  show({ od: "1/2", wall: "0.049" });
  s.type("wall", "-0.065");
  out.push("msg " + s.message("schedule"));
  process.stdout.write(out.join("\n") + "\n");
}, 600000);
