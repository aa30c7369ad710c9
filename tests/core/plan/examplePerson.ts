import type { Measurements } from "../../../src/core/body/measurements";
import { type LevelName, levelNames } from "../../../src/core/body/vocabulary";
import type { Outline } from "../../../src/core/geometry/outline";
import type { Batting } from "../../../src/core/material";
import { type Laid, type LevelOutline, piecesThickness } from "../../../src/core/padding/layerThickness";
import { basis } from "../../../src/core/plan/basis";
import type { Plan, PlannedLevel } from "../../../src/core/plan/plan";
import { mm, ratio } from "../../../src/core/units";

/** An invented form and an invented body that is larger all over, both measured front and back at every level (mm). */
type Lengths = { readonly [name in keyof Measurements]: number };

export const lengths = (values: Lengths): Measurements =>
  Object.fromEntries(Object.entries(values).map(([name, value]) => [name, mm(value)]));

/** A level's girth and front arc, and the back arc that remains. */
export const level = (name: LevelName, girth: number, front: number): Lengths => ({
  [`${name}Girth`]: girth,
  [`${name}FrontArc`]: front,
  [`${name}BackArc`]: girth - front,
});

const heights = { shoulderToApex: 255, napeToWaist: 395, waistToHighHip: 100, waistToFullHip: 200 };

/** Girth and front of every level, from the bust down. */
const torso = (...levels: readonly (readonly [girth: number, front: number])[]): Lengths =>
  Object.assign({}, heights, ...levels.map(([girth, front], i) => level(levelNames[i] as LevelName, girth, front)));

const formLengths = torso([880, 475], [750, 390], [660, 337], [820, 406], [920, 446]);

const bodyLengths = torso([960, 521], [825, 431], [750, 388], [895, 449], [990, 482]);

export const form: Measurements = lengths(formLengths);

/** The body with some lengths of its own. */
export const bodyWith = (changes: Lengths): Measurements => lengths({ ...bodyLengths, ...changes });

export const body: Measurements = bodyWith({});

export const batting: Batting = { name: "batting", layerThickness: mm(7), relativeDeviation: ratio(0.4) };

export const levelOf = (plan: Plan, name: LevelName): PlannedLevel =>
  plan.levels[levelNames.indexOf(name)] as PlannedLevel;

export const levelSectionOf = (person: Measurements, name: LevelName, on: Measurements = form): LevelOutline =>
  basis({ body: person, form: on }).levelSections[levelNames.indexOf(name)] as LevelOutline;

type Part = "front" | "back" | "left" | "right";

const liesIn = ({ x, y }: Outline, i: number, part: Part): boolean => {
  const [toLeft, toFront] = [x[i] as number, y[i] as number];
  return { front: toFront > 0, back: toFront < 0, left: toLeft > 0, right: toLeft < 0 }[part];
};

/** The mean thickness of the padding over some parts of a height at once, such as front and left (mm). */
export function meanThickness(pieces: readonly Laid[], levelSection: LevelOutline, ...parts: readonly Part[]): number {
  const stack = piecesThickness(pieces, levelSection);
  const inside = [...stack].filter((_, i) => parts.every((part) => liesIn(levelSection.outline, i, part)));
  return inside.reduce((sum, thickness) => sum + thickness, 0) / inside.length;
}

/** Every reading of a plan that misses the body by more than a home tape can tell (3 mm), and no shortfall says so. */
export const untoldMisses = (plan: Plan): readonly string[] =>
  plan.levels.flatMap(({ name, predicted, body: wanted }) =>
    (["girth", "frontArc", "backArc"] as const).flatMap((what) => {
      const miss = predicted[what] - wanted[what].value;
      const isTold = plan.shortfalls.some((shortfall) => shortfall.level === name && shortfall.what === what);
      return Math.abs(miss) <= 3 || isTold ? [] : [`${name} ${what} by ${miss.toFixed(1)} mm`];
    }),
  );
