import type { Reading } from "../body/reading";
import type { SectionAt } from "../body/torsoCurve";
import { sectionReading } from "../body/sectionReading";
import { type LevelName, levelNames } from "../body/vocabulary";
import { girthOf } from "../geometry/outline";
import type { Laid } from "../padding/layerThickness";
import { tautQuarters } from "../surface/paddedSection";
import { paddedSurface } from "../surface/paddedSurface";
import { onLine, nineInTen } from "../tolerances";
import { type Millimetres, mm } from "../units";
import type { Basis } from "./basis";
import type { Plan } from "./plan";

/** Whether the bare form was read on every one of the person's lines. */
export const planBasis = ({ targets }: Pick<Basis, "targets">): Plan["basis"] =>
  levelNames.every((name) => targets[name].form.known.kind === "line") ? "lines" : "draft";

/**
 * What the first readings of a padded form may miss the body by (mm): nine in ten girths and fronts lie within it. Each
 * level's doubt is put together from what the tape would read if the body's line lay higher or lower than planned, how well
 * the bare form is known there, what was estimated of either, and what the section and the whole layers leave. `study:shapes`
 * lays plans on true shapes and says how often it holds.
 */
export function mayMiss(from: Basis, pieces: readonly Laid[]): Millimetres {
  const squares = levelNames.flatMap((name) => {
    const { girth, front } = levelDoubt(from, pieces, name);
    return [girth * girth, front * front];
  });
  const mean = squares.reduce((sum, square) => sum + square, 0) / squares.length;
  return mm(Math.round(nineInTen * Math.sqrt(mean)));
}

interface Doubt {
  readonly girth: number;
  readonly front: number;
}

/** One standard deviation of what the tape will read otherwise at one level (mm). */
function levelDoubt(from: Basis, pieces: readonly Laid[], name: LevelName): Doubt {
  const { depthBelowNape, girth } = from.body.levels[name];
  const { form, body } = from.targets[name];
  const line = lineDoubt(from, pieces, depthBelowNape);
  const bare = form.known.kind === "line" ? 0 : formDoubt(from, depthBelowNape.value);
  const section = sectionDoubt(from);
  return {
    girth: Math.hypot(line.girth, bare, deviationOf(girth), deviationOf(form.girth), section),
    front: Math.hypot(line.front, bare / 2, deviationOf(body.frontArc), deviationOf(form.frontArc), section),
  };
}

const deviationOf = (reading: Reading): number => (reading.kind === "estimated" ? reading.standardDeviation : 0);

/**
 * How much the tape over the padding reads otherwise where the body's line may truly lie: the mean over heights above and below by
 * Gauss and Hermite's rule of three, since edges lie some way from the line and make it anything but straight.
 */
function lineDoubt({ sectionAt }: Basis, pieces: readonly Laid[], depthBelowNape: Reading): Doubt {
  const deviation = deviationOf(depthBelowNape);
  if (deviation === 0) return { girth: 0, front: 0 };
  const surface = paddedSurface(sectionAt, pieces, roughPoints);
  const read = (depth: number) => {
    const quarters = tautQuarters(surface.at(depth));
    return { girth: girthOf(quarters), front: quarters.leftFront + quarters.rightFront };
  };
  const here = read(depthBelowNape.value);
  const away = [-1, 1].map((side) => read(depthBelowNape.value + side * Math.sqrt(3) * deviation));
  const meant = (part: keyof Doubt) => Math.hypot(...away.map((there) => there[part] - here[part])) / Math.sqrt(6);
  return { girth: meant("girth"), front: meant("front") };
}

/** Points in each eighth of the outline: a doubt is wanted to the millimeter. */
const roughPoints = 8;

/** The form where it was not read on the line: how well its own levels were placed, and how far the nearest one lies. */
function formDoubt({ form }: Basis, depth: number): number {
  const nearest = form.levelSections.reduce((best, levelSection) =>
    Math.abs(levelSection.depthBelowNape - depth) < Math.abs(best.depthBelowNape - depth) ? levelSection : best,
  );
  const away = Math.abs(nearest.depthBelowNape - depth);
  const between = away <= onLine ? 0 : betweenDoubt * Math.min(away, mostAway);
  return Math.hypot(slopeDoubt(form.sectionAt, depth, deviationOf(nearest.readings.depthBelowNape)), between);
}

/** How much a girth differs if its height is a standard deviation higher or lower: the larger of both. */
function slopeDoubt(sectionAt: SectionAt, depth: number, deviation: number): number {
  if (deviation === 0) return 0;
  const girthAt = (at: number) => sectionReading(sectionAt(at)).girth;
  const here = girthAt(depth);
  return Math.max(Math.abs(girthAt(depth - deviation) - here), Math.abs(girthAt(depth + deviation) - here));
}

/** How far a form's girth strays from its curve for each mm from where it was read, up to where it strays no further. */
const betweenDoubt = 0.3;
const mostAway = 60;

/** What an assumed section and whole layers leave of the reading over padding (mm), with every breadth of the form read and without. */
const sectionDoubt = ({ targets }: Basis): number =>
  levelNames.every((name) => targets[name].form.breadth.kind === "measured") ? 3.4 : 4.8;
