import { quarterLength, quarterPoints, type QuarterPoint } from "./superellipse";

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
  return {
    leftFront: quarterLength({ breadth: leftBreadth, depth: frontDepth, exponent }),
    rightFront: quarterLength({ breadth: rightBreadth, depth: frontDepth, exponent }),
    leftBack: quarterLength({ breadth: leftBreadth, depth: backDepth, exponent }),
    rightBack: quarterLength({ breadth: rightBreadth, depth: backDepth, exponent }),
  };
}

/** The outline of a section with `4 * 2 * perPart` points. */
export function sectionOutline(section: QuarteredShape, perPart: number): Outline {
  const { leftBreadth, rightBreadth, frontDepth, backDepth, exponent } = section;
  const quarters = quarterLengths(section);
  const ends = {
    rightBack: -quarters.rightFront - quarters.rightBack,
    leftSide: quarters.leftFront,
    leftBack: quarters.leftFront + quarters.leftBack,
  };
  const runs = [
    {
      points: quarterPoints({ breadth: rightBreadth, depth: backDepth, exponent }, perPart),
      left: -1,
      front: -1,
      from: ends.rightBack,
      length: quarters.rightBack,
      reverse: false,
    },
    {
      points: quarterPoints({ breadth: rightBreadth, depth: frontDepth, exponent }, perPart),
      left: -1,
      front: 1,
      from: -quarters.rightFront,
      length: quarters.rightFront,
      reverse: true,
    },
    {
      points: quarterPoints({ breadth: leftBreadth, depth: frontDepth, exponent }, perPart),
      left: 1,
      front: 1,
      from: 0,
      length: quarters.leftFront,
      reverse: false,
    },
    {
      points: quarterPoints({ breadth: leftBreadth, depth: backDepth, exponent }, perPart),
      left: 1,
      front: -1,
      from: ends.leftSide,
      length: quarters.leftBack,
      reverse: true,
    },
  ] as const;
  const perQuarter = 2 * perPart;
  const count = 4 * perQuarter;
  const outline = {
    count,
    x: new Float64Array(count),
    y: new Float64Array(count),
    normalX: new Float64Array(count),
    normalY: new Float64Array(count),
    along: new Float64Array(count),
    quarters,
  };
  for (const [quarter, run] of runs.entries()) {
    const points = run.reverse ? [...run.points].reverse() : run.points;
    const chords = chordSums(points);
    const scale = run.length / (chords[perQuarter] as number);
    for (let i = 0; i < perQuarter; i++) {
      const point = points[i] as QuarterPoint;
      const at = quarter * perQuarter + i;
      outline.x[at] = run.left * point.x;
      outline.y[at] = run.front * point.y;
      outline.normalX[at] = run.left * point.normalX;
      outline.normalY[at] = run.front * point.normalY;
      outline.along[at] = run.from + scale * (chords[i] as number);
    }
  }
  return outline;
}

function chordSums(points: readonly QuarterPoint[]): readonly number[] {
  let sum = 0;
  return points.map((point, i) => {
    const before = points[i - 1];
    if (before) sum += Math.hypot(point.x - before.x, point.y - before.y);
    return sum;
  });
}
