import { type QuarterCurve, quarterCurve, quarterLengths as lengthsOf, unitQuarter } from "./superellipse";

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
  const unit = unitQuarter(section.exponent, perPart);
  for (const [quarter, run] of quarterRuns(section, quarters).entries()) {
    const drawn = quarterCurve(unit, run.breadth, run.depth);
    const order = Array.from({ length: perQuarter + 1 }, (_, i) => (run.startsAtSide ? perQuarter - i : i));
    const chords = chordSums(drawn, order);
    const scale = run.length / (chords[perQuarter] as number);
    for (let i = 0; i < perQuarter; i++) {
      const from = order[i] as number;
      const at = quarter * perQuarter + i;
      outline.x[at] = run.left * (drawn.x[from] as number);
      outline.y[at] = run.front * (drawn.y[from] as number);
      outline.normalX[at] = run.left * (drawn.normalX[from] as number);
      outline.normalY[at] = run.front * (drawn.normalY[from] as number);
      outline.along[at] = run.from + scale * (chords[i] as number);
    }
  }
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
  readonly startsAtSide: boolean;
}

/** The quarters in order: right back, right front, left front, left back. */
function quarterRuns(section: QuarteredShape, quarters: QuarterLengths): readonly QuarterRun[] {
  const { leftBreadth, rightBreadth, frontDepth, backDepth } = section;
  const right = { breadth: rightBreadth, left: -1 } as const;
  const left = { breadth: leftBreadth, left: 1 } as const;
  const front = { depth: frontDepth, front: 1 } as const;
  const back = { depth: backDepth, front: -1 } as const;
  const { rightBack, rightFront, leftFront, leftBack } = quarters;
  return [
    { ...right, ...back, from: -rightFront - rightBack, length: rightBack, startsAtSide: false },
    { ...right, ...front, from: -rightFront, length: rightFront, startsAtSide: true },
    { ...left, ...front, from: 0, length: leftFront, startsAtSide: false },
    { ...left, ...back, from: leftFront, length: leftBack, startsAtSide: true },
  ];
}

function chordSums({ x, y }: QuarterCurve, order: readonly number[]): Float64Array {
  const sums = new Float64Array(order.length);
  for (let i = 1; i < order.length; i++) {
    const [at, before] = [order[i] as number, order[i - 1] as number];
    const runX = (x[at] as number) - (x[before] as number);
    const runY = (y[at] as number) - (y[before] as number);
    sums[i] = (sums[i - 1] as number) + Math.sqrt(runX * runX + runY * runY);
  }
  return sums;
}
