import { quarterLengths as lengthsOf, quarterPoint, type UnitQuarter, unitQuarter } from "./superellipse";
import { type CurveLengths, type CurveOutline, type SupportShape, tracedLengths, tracedOutline } from "./supportCurve";

/** Four quarters of superellipses that join at the sides and at center front and back: half-breadths and depths in mm. */
export interface QuarteredShape {
  readonly leftBreadth: number;
  readonly rightBreadth: number;
  readonly frontDepth: number;
  readonly backDepth: number;
  readonly frontExponent: number;
  readonly backExponent: number;
}

/** A closed convex curve, however it is known. */
export type ConvexShape = QuarteredShape | SupportShape;

export type Outline = CurveOutline;
export type QuarterLengths = CurveLengths;

export function quarterLengths(shape: ConvexShape): QuarterLengths {
  if ("support" in shape) return tracedLengths(shape);
  const { leftBreadth, rightBreadth, frontDepth, backDepth, frontExponent, backExponent } = shape;
  const front = lengthsOf(frontExponent);
  const back = backExponent === frontExponent ? front : lengthsOf(backExponent);
  return {
    leftFront: front(leftBreadth, frontDepth),
    rightFront: front(rightBreadth, frontDepth),
    leftBack: back(leftBreadth, backDepth),
    rightBack: back(rightBreadth, backDepth),
  };
}

/** All around: the four quarters together (mm). */
export const girthOf = ({ leftFront, rightFront, leftBack, rightBack }: QuarterLengths): number =>
  leftFront + rightFront + leftBack + rightBack;

/** The outline of a section with `4 * 2 * perPart` points. */
export function sectionOutline(shape: ConvexShape, perPart: number): Outline {
  if ("support" in shape) return tracedOutline(shape, 2 * perPart);
  const quarters = quarterLengths(shape);
  const outline = emptyOutline(4 * 2 * perPart, quarters);
  const front = unitQuarter(shape.frontExponent, perPart);
  const back = shape.backExponent === shape.frontExponent ? front : unitQuarter(shape.backExponent, perPart);
  for (const [quarter, run] of quarterRuns(shape, quarters).entries())
    drawQuarter(outline, 2 * perPart * quarter, run.front === 1 ? front : back, run);
  return outline;
}

const emptyOutline = (count: number, quarters: QuarterLengths): Outline => ({
  count,
  x: new Float64Array(count),
  y: new Float64Array(count),
  normalX: new Float64Array(count),
  normalY: new Float64Array(count),
  arcLength: new Float64Array(count),
  quarters,
});

/** One quarter on the way around: on which side it lies, where it starts along the outline and how long it is. */
interface QuarterRun {
  readonly breadth: number;
  readonly depth: number;
  readonly left: 1 | -1;
  readonly front: 1 | -1;
  readonly from: number;
  readonly length: number;
}

/** The quarters in order: right back, right front, left front, left back. */
function quarterRuns(section: QuarteredShape, quarters: QuarterLengths): readonly QuarterRun[] {
  const { leftBreadth, rightBreadth, frontDepth, backDepth } = section;
  const { rightBack, rightFront, leftFront, leftBack } = quarters;
  const [start, side] = [-rightFront - rightBack, -rightFront];
  return [
    { breadth: rightBreadth, depth: backDepth, left: -1, front: -1, from: start, length: rightBack },
    { breadth: rightBreadth, depth: frontDepth, left: -1, front: 1, from: side, length: rightFront },
    { breadth: leftBreadth, depth: frontDepth, left: 1, front: 1, from: 0, length: leftFront },
    { breadth: leftBreadth, depth: backDepth, left: 1, front: -1, from: leftFront, length: leftBack },
  ];
}

/** Draws one quarter's points from a place in the lists on, its last point left to the next quarter. */
function drawQuarter(outline: Outline, at: number, unit: UnitQuarter, run: QuarterRun): void {
  const { breadth, depth, left, front } = run;
  const steps = unit.count - 1;
  // Points of a quarter are told from its center to its side; right front and left back are walked the other way.
  const [first, step] = left === front ? [0, 1] : [steps, -1];
  let point = quarterPoint(unit, first, breadth, depth);
  let chords = 0;
  for (let i = 0; i < steps; i++) {
    outline.x[at + i] = left * point.x;
    outline.y[at + i] = front * point.y;
    outline.normalX[at + i] = left * point.normalX;
    outline.normalY[at + i] = front * point.normalY;
    outline.arcLength[at + i] = chords;
    const next = quarterPoint(unit, first + step * (i + 1), breadth, depth);
    const [runX, runY] = [next.x - point.x, next.y - point.y];
    chords += Math.sqrt(runX * runX + runY * runY);
    point = next;
  }
  const scale = run.length / chords;
  for (let i = at; i < at + steps; i++) outline.arcLength[i] = run.from + scale * (outline.arcLength[i] as number);
}
