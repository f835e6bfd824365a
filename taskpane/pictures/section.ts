/** The bead's section to scale, along the tube: wall, face, root, center line, and the electrode over its gap. */

import { LENGTH } from "../../src/quantity";
import { SECTORS } from "../sheets/procedure/sectors";
import { BLANK } from "./cells";
import type { Joint, Measure } from "./joint";
import { SIZES } from "./joint";
import type { Picture } from "./picture";
import { notDrawn } from "./picture";
import { sectionFigure } from "./section-figure";

/** What is drawn: one sector's bead under the electrode. */
export interface Section {
  readonly wall: Measure;
  readonly face: Measure;
  readonly root: Measure;
  readonly electrode: Measure;
  readonly gap: Measure;
}

/** A root may be none at all. */
const ROOTS = { ...SIZES, least: 0 };
/** A part thinner than this is no longer seen beside the others, px. */
const THINNEST = 1;

export function sectionPicture(joint: Joint): Picture {
  const wall = joint.size("wall", "wall");
  const gap = joint.measure("standoff", "standoff", LENGTH, SIZES);
  const electrode = joint.measure("electrode", "electrode diameter", LENGTH, SIZES);
  const beads = beadsOf(joint);
  const name = "Section of the bead";
  if (joint.missing !== undefined) return notDrawn("section", name, joint.missing);
  const narrowest = narrowestOf(beads);
  if (wall === undefined || gap === undefined || electrode === undefined || narrowest === undefined) {
    return notDrawn("section", name, { what: ["face and root by sector"], why: "" });
  }
  const section = { wall, gap, electrode, face: narrowest.face, root: narrowest.root };
  const title = finding(beads, narrowest);
  const place = `the end of ${narrowest.label.toLowerCase()}`;
  const says = `${title}. Section along the tube at ${place}, to scale: wall ${wall.shown}, face ${section.face.shown}, root ${section.root.shown}; electrode ${electrode.shown} on the center line, its tip ${gap.shown} above the outside of the tube.`;
  const { thinnest, drawing } = sectionFigure(section, says);
  if (thinnest < THINNEST) {
    const what = [
      "a scale that shows wall, face, electrode and standoff at once: their sizes lie too far apart",
    ];
    return notDrawn("section", name, { what, why: "" });
  }
  return {
    id: "section",
    title,
    notes: [`To scale, at ${place}.`, "Sketched: bead’s sides, electrode’s point."],
    drawing,
  };
}

interface Bead {
  readonly label: string;
  readonly face: Measure;
  readonly root: Measure;
}

function beadsOf(joint: Joint): Bead[] {
  const [faces, roots] = [joint.rows("faces"), joint.rows("roots")];
  return SECTORS.flatMap(([label], i) => {
    const of = (rows: typeof faces, what: string): Measure | undefined => {
      return joint.of(rows[i]?.[0] ?? BLANK, `${what} of ${label.toLowerCase()}`, LENGTH, ROOTS);
    };
    const [face, root] = [of(faces, "face"), of(roots, "root")];
    return face === undefined || root === undefined ? [] : [{ label, face, root }];
  });
}

/** The first of those whose root is narrowest. */
function narrowestOf(beads: readonly Bead[]): Bead | undefined {
  const least = Math.min(...beads.map(({ root }) => root.value));
  return beads.find(({ root }) => root.value === least);
}

/** What the roots say, compared in the digits that a person sees. */
function finding(beads: readonly Bead[], narrowest: Bead): string {
  const open = beads.filter(({ root }) => root.value === 0);
  const [only] = open;
  if (only !== undefined) {
    return open.length === 1
      ? `${only.label} does not melt through`
      : `${String(open.length)} of ${String(beads.length)} sectors do not melt through`;
  }
  const { shown } = narrowest.root;
  return beads.every(({ root }) => root.shown === shown)
    ? `Melts through all around; root ${shown} in every sector`
    : `Melts through all around; narrowest root ${shown}`;
}
