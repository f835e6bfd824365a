/**
 * What each assumption is worth: the change of the price where it is 10 % higher and all else stays. A row an assumption,
 * behind the page, each the whole way from hours and gas to the price. Containers, electrodes and working periods count
 * exactly here, not rounded up: a step would make an assumption worth nothing, or a whole container.
 */

import type { Cells } from "../call";
import { call } from "../call";
import type { Layout } from "../layout";
import { address } from "../layout";
import { CYLINDER, LIST, LIQUID, priceOf, STARTED, TESTED } from "./results";

/** One tenth more. */
const more = (name: string): string => `1.1*{${name}}`;

/** What the price is made from, as it is typed or computed above. */
const AS_TYPED = {
  hours: "{joint_hours}",
  gas: "{total_gas}",
  start: "{start}",
  setup: "{setup_minutes}",
  period: "{period_hours}",
  coupons: "{period_coupons}",
  couponMinutes: "{coupon_minutes}",
  rate: "{labor_rate}",
  waste: "{waste}",
  usable: "{usable}",
  container: "{container_price}",
  perElectrode: "{joints_per_electrode}",
  electrode: "{electrode_price}",
  coupon: "{coupon_price}",
  reject: "{reject_price}",
  other: "{other_cost}",
  margin: "{margin}",
} as const;
type Terms = Readonly<Record<keyof typeof AS_TYPED, string>>;

/** Hours and gas of the whole list with other terms: one row for all sizes. */
function listWith(changed: Partial<Cells<"TAKEOFF">>): Partial<Terms> {
  const sums = call("TAKEOFF_SIZES", { ...LIST, most: 1, ...changed });
  const [hours, gas] = [5, 8].map((column) => `INDEX(${sums},1,${String(column)})`);
  return { hours: String(hours), gas: String(gas) };
}

function usableOf(supply: string, usable: string): Partial<Terms> {
  return { usable: `IF({supply}="${supply}",${usable},{usable})` };
}

/** By the name of the typed cell. What enters by a formula is called again; the rest is proportion. */
const CHANGED: Readonly<Record<string, Partial<Terms>>> = {
  torch_flow: listWith({ torchFlow: more("torch_flow") }),
  purge_flow: listWith({ purgeFlow: more("purge_flow") }),
  dam_spacing: listWith({ damSpacing: "1.1*{dam_spacing_read}" }),
  target_ppm: listWith({ ppm: more("target_ppm") }),
  supply_ppm: listWith({ supplyPpm: more("supply_ppm") }),
  purge_least: listWith({ purgeAtLeast: more("purge_least") }),
  // More than all of the purge cannot be waited for: the proportion alone.
  purge_waited: {
    hours: "{joint_hours}+0.1*{purge_waited}*SUMPRODUCT({list_counted},{list_purge})/3600",
  },
  overlap: listWith({ overlap: more("overlap") }),
  handling: { hours: "{joint_hours}+0.1*{handling}*{joints}/3600" },
  labor_rate: { rate: more("labor_rate") },
  setup_minutes: { setup: more("setup_minutes") },
  period_hours: {
    period: more("period_hours"),
    coupons: call("COUPONS", { ...TESTED, hours: more("period_hours") }),
  },
  coupon_every: { coupons: call("COUPONS", { ...TESTED, every: more("coupon_every") }) },
  coupon_minutes: { couponMinutes: more("coupon_minutes") },
  coupon_price: { coupon: more("coupon_price") },
  reject_rate: { start: call("JOINTS_START", { ...STARTED, yield: `1-${more("reject_rate")}` }) },
  reject_price: { reject: more("reject_price") },
  joints_per_electrode: { perElectrode: more("joints_per_electrode") },
  electrode_price: { electrode: more("electrode_price") },
  other_cost: { other: more("other_cost") },
  margin: { margin: more("margin") },
  contents: usableOf("contents", "1.1*{usable}"),
  usable_share: { usable: 'IF({supply}="water volume",{usable},1.1*{usable})' },
  water_volume: usableOf("water volume", "1.1*{usable}"),
  full_pressure: usableOf(
    "water volume",
    call("GAS_CYLINDER", { ...CYLINDER, pressure: more("full_pressure") }),
  ),
  residual: usableOf("water volume", call("GAS_CYLINDER", { ...CYLINDER, residual: more("residual") })),
  liquid_liters: usableOf("liquid", call("GAS_LIQUID", { ...LIQUID, liquid: more("liquid_liters") })),
  waste: { waste: more("waste") },
  container_price: { container: more("container_price") },
};

/** Names of the cells that have a worth. */
export const WORTHS: ReadonlySet<string> = new Set(Object.keys(CHANGED));

export function worthName(name: string): string {
  return `${name}_worth`;
}

const HEADINGS = [
  "hours, list",
  "gas",
  "to start",
  "work, h",
  "coupons",
  "time, all",
  "cost",
  "price",
  "change",
];
const FORMATS = ["0.0", "0.0", "0", "0.0", "0.0", "0.0", "#,##0.00", "#,##0.00", "#,##0.00"];
/** Columns of the numbers, behind the label. */
const FIRST = 3;
const LAST = FIRST + HEADINGS.length - 1;

export function worthTable(form: Layout, labels: ReadonlyMap<string, string>): void {
  form.cell(0, "Price where one assumption is 10 % higher", "heading", { columns: FIRST });
  form.across(FIRST, HEADINGS, "columnHead");
  form.nextLine();
  const top = form.nextRow;
  worthRow(form, "as typed", AS_TYPED, top);
  for (const [name, changed] of Object.entries(CHANGED)) {
    form.rangeOf(worthName(name), LAST, form.nextRow, LAST, form.nextRow);
    worthRow(form, labels.get(name) ?? name, { ...AS_TYPED, ...changed }, top);
  }
  form.guardBlock("Worth of the assumptions", "worth_rows", [FIRST, top], [LAST, form.nextRow - 1]);
}

function worthRow(form: Layout, label: string, terms: Terms, top: number): void {
  const row = form.nextRow;
  const [hours, gas, start, work, coupons, time, cost, price] = HEADINGS.map((_, i) =>
    address(FIRST + i, row),
  ) as [string, string, string, string, string, string, string, string];
  const containers = `${gas}*(${start}+${coupons})/{joints}/(1-(${terms.waste}))/(${terms.usable})`;
  const electrodes = `(${start}+${coupons})/(${terms.perElectrode})`;
  const formulas = [
    terms.hours,
    terms.gas,
    terms.start,
    `${hours}*${start}/{joints}+{changes}*(${terms.setup})/60`,
    `${work}/(${terms.period})*(${terms.coupons})`,
    `${work}+${coupons}*(${terms.couponMinutes})/60`,
    `${time}*(${terms.rate})+${containers}*(${terms.container})+${electrodes}*(${terms.electrode})` +
      `+${coupons}*(${terms.coupon})+(${start}-{joints})*(${terms.reject})+${terms.other}`,
    priceOf(cost, terms.margin),
    `${price}-${address(LAST - 1, top)}`,
  ];
  form.cell(0, label, "note", { columns: FIRST });
  form.across(
    FIRST,
    formulas.map((formula) => `=IF(COUNT({price_exact})=0,"",IFERROR(${formula},""))`),
    "note",
    FORMATS,
  );
  form.nextLine();
}
