import { quarterLengths as lengthsOf, quarterPoint, type UnitQuarter, unitQuarter } from "./superellipse";

/** Four quarters of superellipses that join at the sides and at centre front and back: half-breadths and depths in mm. */
export interface QuarteredShape {
  readonly leftBreadth: number;
  readonly rightBreadth: number;
  readonly frontDepth: number;
  readonly backDepth: number;
  readonly exponent: number;
}

/**
 * A section drawn as points in the level plane (mm, x to the wearer's left, y to the front), in order from centre back
 * over the right side, centre front and the left side towards centre back again (the last point is not repeated).
 * Each point carries its outward normal and its signed distance along the bare surface from centre front, positive to
 * the left: from minus the right half of the girth up to, but not including, the left half.
 */
export interface Outline {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly normalX: Float64Array;
  readonly normalY: Float64Array;
  readonly along: Float64Array;
  readonly quarters: QuarterLengths;
}

/** Lengths of the four quarters of a section's outline, from centre to side (mm). */
export interface QuarterLengths {
  readonly leftFront: number;
  readonly rightFront: number;
  readonly leftBack: number;
  readonly rightBack: number;
}

export function quarterLengths(section: QuarteredShape): QuarterLengths {
  const { leftBreadth, rightBreadth, frontDepth, backDepth, exponent } = section;
  const length = lengthsOf(exponent);
  return {
    leftFront: length(leftBreadth, frontDepth),
    rightFront: length(rightBreadth, frontDepth),
    leftBack: length(leftBreadth, backDepth),
    rightBack: length(rightBreadth, backDepth),
  };
}

/** The outline of a section with `4 * 2 * perPart` points. */
export function sectionOutline(section: QuarteredShape, perPart: number): Outline {
  const quarters = quarterLengths(section);
  const count = 4 * 2 * perPart;
  const outline = {
    count,
    x: new Float64Array(count),
    y: new Float64Array(count),
    normalX: new Float64Array(count),
    normalY: new Float64Array(count),
    along: new Float64Array(count),
    quarters,
  };
  const unit = unitQuarter(section.exponent, perPart);
  for (const [quarter, run] of quarterRuns(section, quarters).entries())
    drawQuarter(outline, 2 * perPart * quarter, unit, run);
  return outline;
}

/** One quarter on the way round: on which side it lies, where it starts along the outline and how long it is. */
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
  // Points of a quarter are told from its centre to its side; right front and left back are walked the other way.
  const [first, step] = left === front ? [0, 1] : [steps, -1];
  let point = quarterPoint(unit, first, breadth, depth);
  let chords = 0;
  for (let i = 0; i < steps; i++) {
    outline.x[at + i] = left * point.x;
    outline.y[at + i] = front * point.y;
    outline.normalX[at + i] = left * point.normalX;
    outline.normalY[at + i] = front * point.normalY;
    outline.along[at + i] = chords;
    const next = quarterPoint(unit, first + step * (i + 1), breadth, depth);
    const [runX, runY] = [next.x - point.x, next.y - point.y];
    chords += Math.sqrt(runX * runX + runY * runY);
    point = next;
  }
  const scale = run.length / chords;
  for (let i = at; i < at + steps; i++) outline.along[i] = run.from + scale * (outline.along[i] as number);
}
