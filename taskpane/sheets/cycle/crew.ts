/** What the crew of a scenario turns out, and by how much each lever would raise it. */

import { COUNT } from "../../../src/quantity";
import { call } from "../call";
import type { Layout } from "../layout";
import type { Result, Scenario } from "./scenarios";
import { made, of, SCENARIOS, used } from "./scenarios";

export type Pattern = "steady" | "random";

export interface Crew {
  readonly heads: string;
  readonly operators: string;
  readonly load: string;
  readonly machine: string;
}

export function crewOf(scenario: Scenario): Crew {
  return {
    heads: used(scenario, "shop_heads"),
    operators: used(scenario, "operators"),
    load: of(scenario, "load_mean"),
    machine: of(scenario, "machine"),
  };
}

/** Heads of the operators with one more than the others, where heads are fixed; all heads where they are shared. */
export function headsOfOne(scenario: Scenario, { heads, operators }: Crew): string {
  return `IF(${isFixed(scenario)},ROUNDUP(${heads}/${operators},0),${heads})`;
}

export function isFixed(scenario: Scenario): string {
  return `${used(scenario, "heads_are")}="fixed"`;
}

/**
 * Joints a shift of the whole crew. Heads that are fixed are dealt out evenly: some operators have one more than the others;
 * without a head of their own they make nothing.
 */
export function output(scenario: Scenario, crew: Crew, pattern: Pattern): string {
  const { heads, operators, load, machine } = crew;
  const fixed = isFixed(scenario);
  const joints = (count: string, sharing: string): string =>
    call("CREW_OUTPUT", {
      heads: count,
      loadSeconds: load,
      machineSeconds: machine,
      hours: of(scenario, "net_hours"),
      availability: used(scenario, "availability"),
      pattern: `"${pattern}"`,
      walkSeconds: used(scenario, "walk"),
      operators: sharing,
    });
  const each = `INT((${heads})/(${operators}))`;
  const more = `MOD(${heads},${operators})`;
  const first = joints(`IF(${fixed},${each}+1,${heads})`, `IF(${fixed},1,${operators})`);
  const rest = `IF(AND(${fixed},${each}>0),(${operators}-${more})*${joints(`MAX(1,${each})`, "1")},0)`;
  return made(partsOf(scenario, crew), `IF(${fixed},${more},1)*${first}+${rest}`);
}

function partsOf(scenario: Scenario, { load, machine }: Crew): string[] {
  return [
    ...["shop_heads", "operators", "availability", "walk"].map((name) => used(scenario, name)),
    load,
    machine,
    of(scenario, "net_hours"),
  ];
}

/** Half a minute off the load, and a tenth off the purge of the bore: what a shop might well manage. */
const LESS_LOAD = 30;
const LESS_PURGE = 0.1;

interface Lever {
  readonly label: string;
  readonly name: string;
  /** As the bottleneck is called where this lever gains most. */
  readonly bottleneck: string;
  readonly change: (crew: Crew, scenario: Scenario) => Partial<Crew>;
}

export const LEVERS: readonly Lever[] = [
  {
    label: "One more head",
    name: "head",
    bottleneck: "The heads",
    change: ({ heads }) => ({ heads: `${heads}+1` }),
  },
  {
    label: "One more operator",
    name: "operator",
    bottleneck: "The crew",
    change: ({ operators }) => ({ operators: `${operators}+1` }),
  },
  {
    label: `${String(LESS_LOAD)} s less load`,
    name: "load",
    bottleneck: "The load",
    change: ({ load }) => ({ load: `MAX(1,${load}-${String(LESS_LOAD)})` }),
  },
  {
    label: `${String(100 * LESS_PURGE)} % less purge`,
    name: "purge",
    bottleneck: "The purge",
    change: ({ machine }, scenario) => ({
      machine: `${machine}-${String(LESS_PURGE)}*${used(scenario, "purge")}`,
    }),
  },
];

/** Under this fraction of the output no lever is worth pointing at. */
const WORTH = 0.05;

const gainName = (lever: Lever, { end }: Scenario): string => `gain_${lever.name}${end}`;

/** Rank and gain of each lever, as one reads them. */
export const LEVER_ROWS: readonly Result[] = [
  ...LEVERS.map((lever): Result => ({
    label: lever.label,
    name: `lever_${lever.name}`,
    isText: true,
    content: (scenario) => {
      const gain = `{${gainName(lever, scenario)}}`;
      const rank = `1+SUMPRODUCT(--({gains${scenario.end}}>${gain}+0.000001))`;
      return `IF(COUNT({gains${scenario.end}})<${String(LEVERS.length)},"",(${rank})&". +"&TEXT(MAX(0,${gain}),"0.0"))`;
    },
  })),
  {
    label: "Bottleneck",
    name: "bottleneck",
    isText: true,
    content: (scenario) => {
      const gains = `{gains${scenario.end}}`;
      const best = LEVERS.map(({ bottleneck }, i) => [i, bottleneck] as const).reduceRight(
        (rest, [i, bottleneck]) =>
          rest === ""
            ? `"${bottleneck}"`
            : `IF(INDEX(${gains},${String(i + 1)},1)>=MAX(${gains})-0.000001,"${bottleneck}",${rest})`,
        "",
      );
      const worth = `MAX(${gains})<${String(WORTH)}*${of(scenario, "shift_steady")}`;
      return `IF(COUNT(${gains})<${String(LEVERS.length)},"",IF(${worth},"Balanced",${best}))`;
    },
  },
];

/** Behind the page: what each lever gains, joints a shift at steady times. */
export function gainTable(form: Layout): void {
  form.cell(0, "Gained a shift, steady", "heading");
  form.nextLine();
  const top = form.nextRow;
  for (const lever of LEVERS) {
    form.cell(0, lever.label, "label");
    for (const scenario of SCENARIOS) {
      const crew = crewOf(scenario);
      const changed = { ...crew, ...lever.change(crew, scenario) };
      const now = of(scenario, "shift_steady");
      form.cell(
        1 + scenario.place,
        `=${made([now], `${output(scenario, changed, "steady")}-${now}`)}`,
        "note",
      );
      form.name(gainName(lever, scenario), 1 + scenario.place, COUNT);
    }
    form.nextLine();
  }
  for (const { end, place } of SCENARIOS) {
    form.rangeOf(`gains${end}`, 1 + place, top, 1 + place, form.nextRow - 1);
  }
  form.guardBlock("Gains of the levers", "gain_cells", [1, top], [SCENARIOS.length, form.nextRow - 1]);
}
