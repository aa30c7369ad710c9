/**
 * A quarter of a superellipse |x/a|^n + |y/d|^n = 1 with half-breadth a, depth d (mm) and exponent n > 1: its length
 * and points on it. The quarter is cut where x/a = y/d, so that each part is the graph of a smooth function and
 * Gauss-Legendre quadrature is exact to far below what a tape can read. A depth of zero is the flat quarter of length a.
 */
export interface Quarter {
  readonly breadth: number;
  readonly depth: number;
  readonly exponent: number;
}

export function quarterLength({ breadth, depth, exponent }: Quarter): number {
  return partLength(breadth, depth, exponent) + partLength(depth, breadth, exponent);
}

/** One point of a quarter with its outward normal (unit length), both in the quarter's own frame (x ≥ 0, y ≥ 0). */
export interface QuarterPoint {
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
}

/** Points from centre (x = 0) to side (y = 0), both ends included: twice `perPart` steps, even within each part. */
export function quarterPoints(quarter: Quarter, perPart: number): readonly QuarterPoint[] {
  const { breadth, depth, exponent } = quarter;
  const cut = 2 ** (-1 / exponent);
  const points: QuarterPoint[] = [];
  for (let i = 0; i <= perPart; i++) {
    const v = (cut * i) / perPart;
    points.push(pointAt(breadth, depth, exponent, v, (1 - v ** exponent) ** (1 / exponent)));
  }
  for (let i = perPart - 1; i >= 0; i--) {
    const v = (cut * i) / perPart;
    points.push(pointAt(breadth, depth, exponent, (1 - v ** exponent) ** (1 / exponent), v));
  }
  return points;
}

function pointAt(breadth: number, depth: number, exponent: number, v: number, w: number): QuarterPoint {
  const slopeX = v ** (exponent - 1) * depth;
  const slopeY = w ** (exponent - 1) * breadth;
  const size = Math.hypot(slopeX, slopeY) || 1;
  return { x: breadth * v, y: depth * w, normalX: slopeX / size, normalY: slopeY / size };
}

/** Nodes and weights of 10-point Gauss-Legendre quadrature on (0, 1) (Abramowitz and Stegun 1964, table 25.4, halved). */
const nodes = [
  0.0130467357414141, 0.0674683166555077, 0.160295215850488, 0.283302302935376, 0.425562830509184, 0.574437169490816,
  0.716697697064624, 0.839704784149512, 0.932531683344492, 0.986953264258586,
] as const;
const weights = [
  0.0333356721543441, 0.0747256745752903, 0.109543181257991, 0.134633359654998, 0.147762112357376, 0.147762112357376,
  0.134633359654998, 0.109543181257991, 0.0747256745752903, 0.0333356721543441,
] as const;

/** Length of the part where the first axis runs from 0 to its share at the cut: ∫ √(a² + (dy/dv)²) dv. */
function partLength(along: number, across: number, exponent: number): number {
  const cut = 2 ** (-1 / exponent);
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    const power = (cut * (nodes[i] as number)) ** (exponent - 1);
    const v = cut * (nodes[i] as number);
    const slope = across * power * (1 - power * v) ** (1 / exponent - 1);
    sum += (weights[i] as number) * Math.sqrt(along * along + slope * slope);
  }
  return sum * cut;
}
