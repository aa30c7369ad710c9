import type { QuarterReadings } from "../body/levelReadings";
import { solveToTargets } from "../numerics/solveToTargets";
import { tapeQuarters } from "../tape/tape";
import { mm } from "../units";
import type { LaidPiece } from "./laidPiece";
import { fromAnchor, piecesThickness } from "./layerThickness";
import type { LevelChoice } from "./padHalf";
import type { Shape } from "./searchShape";
import type { ShapingLevel, ShapingProblem } from "./shapingProblem";
import { type Half, type HalfFit, halves, leastHalfWidth } from "./sideLevel";

/** Half-widths of the tuning layers at each level (mm); zero on a side that gains nothing. */
export type TuningWidths = {
  readonly [half in Half]: { readonly left: readonly number[]; readonly right: readonly number[] };
};

/**
 * How wide the tuning layers must be for the tape to read its targets, front and back, left and right together, over the structure as
 * it is drawn; and what is missed where they cannot.
 */
export function tunedWidths(
  problem: ShapingProblem,
  { halves: shaped }: Shape,
  structure: readonly LaidPiece[],
  feathers: { readonly [half in Half]: readonly number[] },
): { readonly widths: TuningWidths; readonly misses: readonly QuarterReadings[] } {
  const solved = problem.levels.map((level, i) => {
    const choices = { front: shaped.front.choices[i] as LevelChoice, back: shaped.back.choices[i] as LevelChoice };
    const feather = { front: feathers.front[i] as number, back: feathers.back[i] as number };
    return solveLevel(level, problem, piecesThickness(structure, level), choices, feather);
  });
  const widths = (half: Half, side: "left" | "right") => solved.map((level) => level.widths[half][side]);
  return {
    widths: {
      front: { left: widths("front", "left"), right: widths("front", "right") },
      back: { left: widths("back", "left"), right: widths("back", "right") },
    },
    misses: solved.map(({ misses }) => misses),
  };
}

/** One stretch of tuning layer: on one side of a half, or on both where both sides are alike. */
interface Stretch {
  readonly half: Half;
  readonly sides: readonly ("left" | "right")[];
  readonly fit: HalfFit;
}

type ByHalf<Value> = { readonly [half in Half]: Value };

function solveLevel(
  level: ShapingLevel,
  { layer }: ShapingProblem,
  structure: Float64Array,
  choices: ByHalf<LevelChoice>,
  feathers: ByHalf<number>,
) {
  const stretches = halves.flatMap((half) => stretchesOf(half, choices[half]));
  const { outline, pinned, target, offset } = level;
  const thickness = new Float64Array(outline.count);
  const away = { front: distances(level, "centerFront"), back: distances(level, "centerBack") };
  const read = (widths: readonly number[]): QuarterReadings => {
    thickness.set(structure);
    for (const [k, { half, sides }] of stretches.entries()) {
      addStretch(thickness, away[half], sides, widths[k] as number, feathers[half], layer.each);
    }
    for (let i = 0; i < thickness.length; i++) {
      const [planned, beneath] = [thickness[i] as number, pinned[i] as number];
      thickness[i] = beneath + planned + (beneath > 0 ? 0 : layer.bonus * Math.min(1, planned / layer.each));
    }
    return beyond(tapeQuarters(outline, thickness), offset, target);
  };
  const missOf = (misses: QuarterReadings, { half, sides }: Stretch) =>
    sides.reduce((sum, side) => sum + misses[quarterOf(half, side)], 0) / sides.length;
  const fullest = (fit: HalfFit) => Math.max(leastHalfWidth + 1, fit.reach);
  const found = solveToTargets((widths) => stretches.map((stretch) => missOf(read(widths), stretch)), {
    start: stretches.map(({ fit }) => fit.width),
    targets: stretches.map(() => 0),
    least: stretches.map(() => leastHalfWidth),
    most: stretches.map(({ fit }) => fullest(fit)),
    slopes: stretches.map(({ fit }) => (usualTurn * layer.each) / (fullest(fit) - leastHalfWidth)),
    longestStep: () => longestStep,
    precision: widthPrecision,
    rounds,
  });
  const width = (half: Half, side: "left" | "right") =>
    found.parameters[stretches.findIndex((one) => one.half === half && one.sides.includes(side))] ?? 0;
  return {
    widths: {
      front: { left: width("front", "left"), right: width("front", "right") },
      back: { left: width("back", "left"), right: width("back", "right") },
    },
    misses: read(found.parameters),
  };
}

/** Adds a tuning layer of a half-width to the points of its sides; `away` is how far each lies from its center line. */
function addStretch(
  thickness: Float64Array,
  away: Float64Array,
  sides: Stretch["sides"],
  width: number,
  feather: number,
  each: number,
): void {
  const [isLeft, isRight] = [sides.includes("left"), sides.includes("right")];
  for (let i = 0; i < thickness.length; i++) {
    const s = away[i] as number;
    const inside = (s >= 0 ? isLeft : isRight) ? width - Math.abs(s) : 0;
    if (inside <= 0) continue;
    thickness[i] = (thickness[i] as number) + (inside >= feather ? each : (each * inside) / feather);
  }
}

const usualTurn = 1.2;
const longestStep = 60;
const rounds = 8;

/** Readings of a quarter are met this closely (mm), finer than any tape is read. */
const widthPrecision = 0.1;

function stretchesOf(half: Half, { left, right }: LevelChoice): readonly Stretch[] {
  if (left === right) return left.layers === 0 ? [] : [{ half, sides: ["left", "right"], fit: left }];
  return [
    ...(left.layers === 0 ? [] : [{ half, sides: ["left"] as const, fit: left }]),
    ...(right.layers === 0 ? [] : [{ half, sides: ["right"] as const, fit: right }]),
  ];
}

const quarterOf = (half: Half, side: "left" | "right"): keyof QuarterReadings =>
  half === "front" ? (side === "left" ? "leftFront" : "rightFront") : side === "left" ? "leftBack" : "rightBack";

const distances = ({ outline }: ShapingLevel, anchor: "centerFront" | "centerBack"): Float64Array =>
  outline.arcLength.map((arcLength) => fromAnchor(arcLength, anchor, outline));

const beyond = (
  read: QuarterReadings | { readonly [quarter in keyof QuarterReadings]: number },
  offset: QuarterReadings,
  target: QuarterReadings,
): QuarterReadings => ({
  leftFront: mm(read.leftFront + offset.leftFront - target.leftFront),
  rightFront: mm(read.rightFront + offset.rightFront - target.rightFront),
  leftBack: mm(read.leftBack + offset.leftBack - target.leftBack),
  rightBack: mm(read.rightBack + offset.rightBack - target.rightBack),
});
