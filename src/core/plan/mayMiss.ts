import type { Reading } from "../body/reading";
import { sectionReading } from "../body/sectionReading";
import { type SectionAt, torsoCurve } from "../body/torsoCurve";
import { levelNames } from "../body/vocabulary";
import { onLine } from "../tolerances";
import { type Millimetres, mm } from "../units";
import type { Basis } from "./basis";
import type { Plan } from "./plan";

/** Whether the bare form was read on every one of the person's lines. */
export const planBasis = ({ targets }: Pick<Basis, "targets">): Plan["basis"] =>
  levelNames.every((name) => targets[name].form.known.kind === "line") ? "lines" : "draft";

/**
 * What the first readings of a padded form may miss the body by (mm): nine in ten girths and fronts lie within it. Each
 * level's doubt is put together from how far its line may lie off on the body and on the form (a slope takes the tape up or
 * down it), what was estimated, how far from anything read, and what the section itself leaves; then scaled as
 * `study:shapes` found it on true shapes.
 */
export function mayMiss(from: Basis): Millimetres {
  const bodyAt = torsoCurve(from.bodyLines);
  const squares = levelNames.flatMap((name) => {
    const { drop, girth } = from.body.levels[name];
    const { form } = from.targets[name];
    const ofBody = slopeDoubt(bodyAt, drop.value, spreadOf(drop));
    const ofForm = form.known.kind === "line" ? 0 : formDoubt(from, drop.value);
    const parts = [ofBody, ofForm, spreadOf(girth), spreadOf(form.girth), sectionDoubt(from)];
    const front = Math.hypot(spreadOf(from.targets[name].body.frontArc), spreadOf(form.frontArc));
    const whole = Math.hypot(...parts);
    return [whole * whole, (whole * whole) / 4 + front * front];
  });
  const mean = squares.reduce((sum, square) => sum + square, 0) / squares.length;
  return mm(Math.round(calibrated * Math.sqrt(mean)));
}

/** From the root mean square of the doubts to what nine in ten lie within: fitted to `study:shapes`. */
const calibrated = 1.6;

const spreadOf = (reading: Reading): number => (reading.kind === "estimated" ? reading.spread : 0);

/** How much a girth differs on the average if its line lies a standard deviation higher or lower. */
function slopeDoubt(sectionAt: SectionAt, depth: number, spread: number): number {
  if (spread === 0) return 0;
  const girthAt = (at: number) => sectionReading(sectionAt(at)).girth;
  const here = girthAt(depth);
  return Math.hypot(girthAt(depth - spread) - here, girthAt(depth + spread) - here) / Math.SQRT2;
}

/** The form where it was not read on the line: how well its own levels were placed, and how far the nearest one lies. */
function formDoubt({ form }: Basis, depth: number): number {
  const nearest = form.stations.reduce((best, station) =>
    Math.abs(station.depthBelowNape - depth) < Math.abs(best.depthBelowNape - depth) ? station : best,
  );
  const away = Math.abs(nearest.depthBelowNape - depth);
  const between = away <= onLine ? 0 : betweenDoubt * Math.min(away, mostAway);
  return Math.hypot(slopeDoubt(form.sectionAt, depth, spreadOf(nearest.readings.drop)), between);
}

/** How far a form's girth strays from its curve for each mm from where it was read, up to where it strays no further. */
const betweenDoubt = 0.4;
const mostAway = 60;

/** What an assumed section leaves of the reading over padding (mm), with every breadth of the form read and without. */
const sectionDoubt = ({ targets }: Basis): number =>
  levelNames.every((name) => targets[name].form.breadth.kind === "measured") ? 3 : 4.5;
