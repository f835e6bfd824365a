/** What each formula rests on, as its record and the bibliography say. */

import { FORMULAS } from "../../functions/catalogue";
import { HELP } from "../../functions/help";
import type { Rest } from "../../functions/standing";
import { restsOn, STANDINGS } from "../../functions/standing";
import { DESIGNATIONS, MATERIALS } from "../../src/metal/material";
import type { Sourced } from "../../src/sourced";
import { keysCited, SOURCES } from "../../src/sources";

const of = (id: string): readonly Rest[] => HELP.find((one) => one.id === id)?.restsOn ?? [];
const weakest = (id: string): string | undefined => of(id)[0]?.standing;

test("every formula that gives numbers rests on something, the weakest first", () => {
  for (const { id, restsOn: rests } of HELP) {
    const order = rests.map(({ standing }) => STANDINGS.indexOf(standing));
    expect([id, order]).toEqual([id, [...order].sort((a, b) => a - b)]);
    expect([id, rests.length > 0]).toEqual([id, !["ABOUT", "REASON", "VERSION"].includes(id)]);
    expect(new Set(rests.map(({ what }) => what)).size).toBe(rests.length);
    for (const { what } of rests) expect([id, what]).toEqual([id, expect.stringMatching(/\S/)]);
  }
});

test.each([
  ["TRAVEL_RPM", "exact"],
  ["AMPS_MEAN", "exact"],
  ["GAS_JOINT", "exact"],
  ["PULSE_SHARE", "exact"],
  ["ACCEPT_LIMITS", "published"],
  ["PURGE_TINT", "published"],
  ["HEAT_PULSED", "published"],
  ["GAS_CYLINDER", "published"],
  ["STANDOFF", "common practice"],
  ["CYCLE_TIME", "common practice"],
  ["ELECTRODE_DIAMETER", "from memory"],
  ["PIPE_OD", "from memory"],
  ["PURGE_VENT", "from memory"],
  ["ARC_VOLTS", "estimate"],
  ["AMPS_WALL", "estimate"],
  ["AMPS_MELT", "estimate"],
  ["SCHEDULE", "estimate"],
  ["TAKEOFF", "estimate"],
  ["DAM_DISTANCE", "estimate"],
])("%s is no stronger than %s", (id, standing) => {
  expect(weakest(id)).toBe(standing);
});

/** What is said of how a work is known. */
const KNOWN = { copy: "", "second-hand": ", as another work quotes it", memory: ", no copy read" } as const;

test("every work that a source cites is there with how it is known", () => {
  for (const formula of FORMULAS) {
    for (const key of keysCited(formula.source)) {
      const { short, access, standing: printed } = SOURCES[key];
      const found = restsOn(formula, FORMULAS).filter(({ what }) => what.startsWith(`${short} (`));
      const standing = access === "memory" ? "from memory" : "published";
      expect([formula.id, key, found.map((one) => one.standing)]).toEqual([formula.id, key, [standing]]);
      expect(found[0]?.what).toBe(`${short} (${printed}${KNOWN[access]})`);
    }
  }
});

test("what a source calls an estimate, or has from memory, is told as that and in its words", () => {
  const counted = { estimate: 0, "from memory": 0 };
  for (const { id, source, restsOn: rests } of HELP) {
    for (const clause of source.split("; ")) {
      const remembered = /from memory/i.test(clause) ? "from memory" : undefined;
      const standing = /\bestimates?\b/i.test(clause) ? "estimate" : remembered;
      if (standing === undefined) continue;
      counted[standing] += 1;
      const told = rests.some((rest) => rest.standing === standing && clause.includes(rest.what));
      expect([id, clause, told]).toEqual([id, clause, true]);
    }
  }
  for (const times of Object.values(counted)) expect(times).toBeGreaterThan(1);
});

test("nothing that a record calls unconfirmed is left without a weak standing", () => {
  for (const { id, unconfirmed, restsOn: rests } of HELP) {
    if (unconfirmed === "") continue;
    const weak = rests.filter(({ standing }) => standing === "estimate" || standing === "from memory");
    const words = weak.map(({ what }) => what).filter((what) => unconfirmed.includes(what));
    expect([id, words.length > 0]).toEqual([id, true]);
  }
});

test("a metal's weakest number stands where the table of metals has it", () => {
  const told = of("AMPS_MELT").filter(({ what }) => what.startsWith("Weakest value of the metal"));
  for (const designation of DESIGNATIONS) {
    const standings = Object.entries<Sourced>({ ...MATERIALS[designation] }).flatMap(
      ([name, { standing }]) => (name === "surfaceTension" ? [] : [standing]),
    );
    const wanted = standings.includes("estimate")
      ? "estimate"
      : standings.includes("memory")
        ? "from memory"
        : "published";
    const found = told.filter(({ what }) => new RegExp(`(for|,) ${designation}(,| \\()`).test(what));
    expect([designation, found.map((one) => one.standing)]).toEqual([designation, [wanted]]);
  }
  const tension = of("PURGE_CEILING").find(({ standing }) => standing === "published");
  expect(MATERIALS["316L"].surfaceTension.standing).toBe("published");
  expect(tension?.what).toMatch(/316L/);
});

test("a formula named as the source of another lends it its weakest", () => {
  expect(of("AMPS_WALL").map(({ what }) => what)).toContainEqual(expect.stringMatching(/^AMPS_MELT: /));
  expect(of("DAM_DISTANCE").map(({ what }) => what)).toContainEqual(
    expect.stringMatching(/^DAM_TEMPERATURE: /),
  );
});
